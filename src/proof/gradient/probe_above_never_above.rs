//! A reading above what the species may ever meet.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "probe-above-never-above",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Heat,
    summary: "a probe reads more than the species may ever meet",
    page: include_str!("probe_above_never_above.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(limit) = &housed.species.temperature.never_above else { continue };
        let Some(most) = limit.value.high().or(limit.value.low()) else { continue };
        for read in housed.readings() {
            for ((reads, place), when) in [(read.day, "by day"), (read.night, "by night")]
                .into_iter()
                .filter_map(|(at, when)| Some((at?, when)))
            {
                if reads <= most {
                    continue;
                }
                let message = format!(
                    "the probe `{}` of {} reads {} {when}, and its species ({}) may never meet more than {}",
                    read.probe.name,
                    housed.animal.name,
                    housed.one(reads),
                    housed.species.name,
                    housed.one(most)
                );
                found.push(
                    Finding::new(&CODE, place, message)
                        .help("switch that heater off at the wall, air the enclosure, and find out why before it goes on again")
                        .also_at(limit.place, "never above this"),
                );
            }
        }
    }
}
