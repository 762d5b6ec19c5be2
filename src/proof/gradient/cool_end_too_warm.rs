//! A cool side above its range.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Zone;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "cool-end-too-warm",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "the cool side reads above its range",
    page: include_str!("cool_end_too_warm.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(cool) = &housed.species.temperature.cool else { continue };
        let Some(top) = cool.value.high() else { continue };
        // Warmer than the warm side may be is a graver finding of its own.
        let warm = housed.species.temperature.warm.as_ref().and_then(|warm| warm.value.high());
        let Some((day, place)) = housed
            .by_day(Zone::Cool)
            .filter(|(day, _)| *day > top && warm.is_none_or(|warm| *day <= warm))
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
                .help("cool the room, open vents at the cool end, or heat less at the warm one")
                .also_at(cool.place, "the species' cool side"),
        );
    }
}
