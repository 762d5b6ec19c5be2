//! A set point above what the species may meet.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "set-point-too-high",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Heat,
    summary: "a thermostat is set above what the species may ever meet",
    page: include_str!("set_point_too_high.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(limit) = &housed.species.temperature.never_above else { continue };
        let Some(most) = limit.value.high().or(limit.value.low()) else { continue };
        for heater in &housed.housing.heaters {
            for (set, place) in heater.set_point.iter().chain(&heater.set_night) {
                if *set <= most {
                    continue;
                }
                let message = format!(
                    "the {} of {} is set to {}, and its species ({}) may never meet more than {}",
                    super::noun(heater.kind),
                    housed.animal.name,
                    housed.one(*set),
                    housed.species.name,
                    housed.one(most)
                );
                found.push(
                    Finding::new(&CODE, *place, message)
                        .help("lower the set point into the species' range, and look at the probe's place")
                        .also_at(limit.place, "never above this"),
                );
            }
        }
    }
}
