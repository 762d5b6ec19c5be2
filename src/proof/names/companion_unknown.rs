//! An animal that shares its enclosure with one that nobody keeps.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::unknown;

static CODE: Code = Code {
    name: "companion-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Names,
    summary: "an animal shares its enclosure with one that is not defined",
    page: include_str!("companion_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let animals = &evidence.model.animals;
    for animal in animals.values() {
        for companion in &animal.company {
            if !animals.contains_key(&companion.name) {
                found.push(unknown(&CODE, companion, "animal", animals.keys().map(String::as_str)));
            }
        }
    }
}
