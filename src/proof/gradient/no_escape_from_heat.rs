//! A cool side hotter than the warm side may be.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Zone;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "no-escape-from-heat",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Heat,
    summary: "the cool side is hotter than the warm side should be",
    page: include_str!("no_escape_from_heat.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(warm) = &housed.species.temperature.warm else { continue };
        let Some(top) = warm.value.high() else { continue };
        let Some((day, place)) = housed.by_day(Zone::Cool).filter(|(day, _)| *day > top) else {
            continue;
        };
        let message = format!(
            "the cool side of {} reads {}, and even its warm side should be no more than {}",
            housed.animal.name,
            housed.one(day),
            housed.one(top)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("switch the heat lamps off, air the enclosure and cool the room; then lower the set points")
                .also_at(warm.place, "the species' warm side"),
        );
    }
}
