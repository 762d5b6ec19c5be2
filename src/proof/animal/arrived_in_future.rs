//! An animal that came on a day that has not come yet.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "arrived-in-future",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal came on a day that has not come yet",
    page: include_str!("arrived_in_future.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let as_of = evidence.figures.as_of;
    for animal in evidence.model.animals.values() {
        let Some((arrived, place)) = animal.arrived else { continue };
        if arrived <= as_of {
            continue;
        }
        let message = format!("{} came on {arrived}, and today is {as_of}", animal.name);
        found.push(Finding::new(&CODE, place, message).help("correct the day, or set --as-of"));
    }
}
