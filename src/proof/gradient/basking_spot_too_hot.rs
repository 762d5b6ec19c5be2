//! A basking spot above its range.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Zone;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "basking-spot-too-hot",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "the basking spot reads above its range",
    page: include_str!("basking_spot_too_hot.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let asked = &housed.species.temperature;
        let Some(basking) = &asked.basking else { continue };
        let Some(top) = basking.value.high() else { continue };
        let limit = asked.never_above.as_ref();
        let most = limit.and_then(|limit| limit.value.high().or(limit.value.low()));
        // Above the limit itself it is a safety error of its own.
        let Some((day, place)) = housed
            .by_day(Zone::Basking)
            .filter(|(day, _)| *day > top && most.is_none_or(|most| *day <= most))
        else {
            continue;
        };
        let message = format!(
            "the basking spot of {} reads {}, and should be {}",
            housed.animal.name,
            housed.one(day),
            housed.range(&basking.value)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("raise the lamp or lower its set point")
                .also_at(basking.place, "the species' basking spot"),
        );
    }
}
