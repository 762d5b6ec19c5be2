//! An animal offered to a new keeper without its origin.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Status;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "origin-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal is offered to a new keeper and its origin is not said",
    page: include_str!("origin_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        if animal.status != Status::SeekingHome || animal.origin.is_some() {
            continue;
        }
        let message =
            format!("{} is seeking a home, and nothing says where it came from", animal.name);
        let help = "write what is known, also where that is nothing: origin = \"Found, history not known\"";
        found.push(Finding::new(&CODE, evidence.field(animal.file, "status"), message).help(help));
    }
}
