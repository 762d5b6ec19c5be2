//! A room warmer than the cool side should be.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Habit;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "room-too-warm",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "the room is warmer by day than the cool side should be",
    page: include_str!("room_too_warm.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let asked = &housed.species.temperature;
        let in_water = housed.species.habit == Habit::Aquatic && asked.cool.is_none();
        let (zone, words) =
            if in_water { (&asked.water, "water") } else { (&asked.cool, "cool side") };
        let Some(zone) = zone else { continue };
        let room = housed.housing.room_day.and_then(|room| room.low().or(room.high()));
        let (Some(top), Some(room)) = (zone.value.high(), room) else { continue };
        if room <= top {
            continue;
        }
        let message = format!(
            "the room of {} is {} or more by day, and its {words} should be {}",
            housed.animal.name,
            housed.one(room),
            housed.range(&zone.value)
        );
        let help = if in_water {
            "cool the room or the water; a fan over the surface takes off a few degrees, a chiller more"
        } else {
            "keep it in a cooler room: no enclosure is cooler than the room around it"
        };
        found.push(
            Finding::new(&CODE, housed.housing.place, message)
                .help(help)
                .also_at(zone.place, format!("the species' {words}")),
        );
    }
}
