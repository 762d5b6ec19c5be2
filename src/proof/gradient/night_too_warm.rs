//! A night without a fall.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "night-too-warm",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Heat,
    summary: "no place is as cool by night as the species' range",
    page: include_str!("night_too_warm.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(night) = &housed.species.temperature.night else { continue };
        let Some(top) = night.value.high() else { continue };
        let coolest = housed
            .readings()
            .into_iter()
            .filter_map(|read| read.night)
            .reduce(|a, b| if b.0 < a.0 { b } else { a });
        let Some((reads, place)) = coolest.filter(|(reads, _)| *reads > top) else { continue };
        let message = format!(
            "the coolest probe of {} reads {} by night, and the night should be {}",
            housed.animal.name,
            housed.one(reads),
            housed.range(&night.value)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("lower the set points of the night, or air the room in the evening")
                .also_at(night.place, "the species by night"),
        );
    }
}
