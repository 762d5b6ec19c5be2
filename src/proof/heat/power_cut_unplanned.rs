//! No plan for a power cut where the night would kill.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "power-cut-unplanned",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "the room is too cold without power, and no plan is written down",
    page: include_str!("power_cut_unplanned.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(critical) = &housed.species.temperature.critical_low else { continue };
        let Some(least) = critical.value.low().or(critical.value.high()) else { continue };
        let room = housed.housing.room_night.and_then(|room| room.low().or(room.high()));
        let Some(room) = room.filter(|room| *room < least) else { continue };
        if housed.housing.fallback.is_some() {
            continue;
        }
        let message = format!(
            "the room of {} falls to {} by night, its species ({}) comes to harm below {}, and no plan for a power cut is written down",
            housed.animal.name,
            housed.one(room),
            housed.species.name,
            housed.one(least)
        );
        found.push(
            Finding::new(&CODE, housed.housing.place, message)
                .help("write under [enclosure] what is done: fallback = \"…\"")
                .also_at(critical.place, "harm below this"),
        );
    }
}
