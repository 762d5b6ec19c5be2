//! An animal that shares its enclosure with one that nobody keeps.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::source::Role;

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
    for (own, animal) in animals {
        for companion in &animal.company {
            let has_file = evidence.sources.named(Role::Animal, &companion.name).is_some();
            if !animals.contains_key(&companion.name) && !has_file {
                let others = animals.keys().filter(|name| *name != own).map(String::as_str);
                found.push(unknown(&CODE, companion, ("animal", ""), others));
            }
        }
    }
}
