//! A night colder than the species asks for.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::species::Temperatures;
use crate::proof::{Evidence, Rule};
use crate::quantity::Temperature;

static CODE: Code = Code {
    name: "night-too-cold",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "no place is as warm by night as the species needs",
    page: include_str!("night_too_cold.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let asked = &housed.species.temperature;
        let Some(night) = &asked.night else { continue };
        let Some(low) = night.value.low() else { continue };
        let warmest = housed
            .readings()
            .into_iter()
            .filter_map(|read| read.night)
            .reduce(|a, b| if b.0 > a.0 { b } else { a });
        let Some((reads, place)) = warmest.filter(|(reads, _)| {
            *reads < low && !housed.winters_at(*reads) && !is_critical(asked, *reads)
        }) else {
            continue;
        };
        let message = format!(
            "the warmest probe of {} reads {} by night, and the night should be {}",
            housed.animal.name,
            housed.one(reads),
            housed.range(&night.value)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("raise the set point of the night, or add a heater without light on a thermostat")
                .also_at(night.place, "the species by night"),
        );
    }
}

/// Below the temperature of harm it is a safety error of its own.
fn is_critical(asked: &Temperatures, reads: Temperature) -> bool {
    let critical = asked.critical_low.as_ref();
    let least = critical.and_then(|critical| critical.value.low().or(critical.value.high()));
    least.is_some_and(|least| reads < least)
}
