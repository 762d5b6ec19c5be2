//! An animal that hatched on a day that has not come yet.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "hatched-in-future",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal hatched on a day that has not come yet",
    page: include_str!("hatched_in_future.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let as_of = evidence.figures.as_of;
    for animal in evidence.model.animals.values() {
        let Some((hatched, _, place)) = animal.hatched else { continue };
        if hatched <= as_of {
            continue;
        }
        let message = format!("{} hatched on {hatched}, and today is {as_of}", animal.name);
        found.push(Finding::new(&CODE, place, message).help("correct the day, or set --as-of"));
    }
}
