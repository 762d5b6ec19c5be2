//! A cool side below its range.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Zone;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "cool-end-too-cold",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "the cool side reads below its range",
    page: include_str!("cool_end_too_cold.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(cool) = &housed.species.temperature.cool else { continue };
        let Some(low) = cool.value.low() else { continue };
        let Some((day, place)) =
            housed.by_day(Zone::Cool).filter(|(day, _)| *day < low && !housed.winters_at(*day))
        else {
            continue;
        };
        let message = format!(
            "the cool side of {} reads {}, and should be {}",
            housed.animal.name,
            housed.one(day),
            housed.range(&cool.value)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("warm the room, close vents at the cool end, or add a weak heater on a thermostat")
                .also_at(cool.place, "the species' cool side"),
        );
    }
}
