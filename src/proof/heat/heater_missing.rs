//! A warm-living animal without a heater.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "heater-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "an enclosure has no heater, and its room is colder than the species' warm side",
    page: include_str!("heater_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let asked = &housed.species.temperature;
        let Some(warm) = asked.basking.as_ref().or(asked.warm.as_ref()) else { continue };
        let room = housed.housing.room_day.and_then(|room| room.high().or(room.low()));
        let (Some(least), Some(room)) = (warm.value.low(), room) else { continue };
        if !housed.housing.heaters.is_empty() || room >= least {
            continue;
        }
        let message = format!(
            "{} has no heater, its room is at most {}, and the warm end should be {}",
            housed.animal.name,
            housed.one(room),
            housed.range(&warm.value)
        );
        found.push(
            Finding::new(&CODE, housed.housing.place, message)
                .help("add each heater with its thermostat: [[heater]]")
                .also_at(warm.place, "the species' warm end"),
        );
    }
}
