//! A set point above the hottest zone that the species asks for.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::HeaterKind;
use crate::proof::{Evidence, Rule};
use crate::quantity::Temperature;

static CODE: Code = Code {
    name: "set-point-above-basking",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a thermostat is set above the hottest zone of the species",
    page: include_str!("set_point_above_basking.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let asked = &housed.species.temperature;
        let (air, water) = (asked.basking.as_ref().or(asked.warm.as_ref()), asked.water.as_ref());
        let limit = asked.never_above.as_ref();
        let most = limit.and_then(|limit| limit.value.high().or(limit.value.low()));
        for heater in &housed.housing.heaters {
            let in_water = heater.kind == HeaterKind::WaterHeater;
            let Some(zone) = (if in_water { water } else { air }) else { continue };
            let Some(top) = zone.value.high() else { continue };
            let unsafe_already = |set: Temperature| most.is_some_and(|most| set > most);
            for (set, place) in heater.set_point.iter().chain(&heater.set_night) {
                if *set <= top || unsafe_already(*set) {
                    continue;
                }
                let message = format!(
                    "the {} of {} is set to {}, and the warmest zone should be {}",
                    super::noun(heater.kind),
                    housed.animal.name,
                    housed.one(*set),
                    housed.range(&zone.value)
                );
                found.push(
                    Finding::new(&CODE, *place, message)
                        .help("lower the set point into that range")
                        .also_at(zone.place, "the species' warmest zone"),
                );
            }
        }
    }
}
