//! An animal that hatched after it came.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "hatched-after-arrival",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal hatched after it came",
    page: include_str!("hatched_after_arrival.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        let (Some((hatched, _, place)), Some((arrived, came))) = (animal.hatched, animal.arrived)
        else {
            continue;
        };
        if hatched <= arrived {
            continue;
        }
        let message = format!("{} hatched on {hatched}, after it came on {arrived}", animal.name);
        let finding = Finding::new(&CODE, place, message).help(
            "correct one of the two days; of one that came as an egg, the arrival is the hatching",
        );
        found.push(finding.also_at(came, "the day it came"));
    }
}
