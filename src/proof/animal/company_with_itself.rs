//! An animal that shares its enclosure with itself.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "company-with-itself",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal shares its enclosure with itself",
    page: include_str!("company_with_itself.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for (name, animal) in &evidence.model.animals {
        if let Some(named) = animal.company.iter().find(|named| named.name == *name) {
            let message = format!("{} is named as its own companion", animal.name);
            let help = "name the other animals of its enclosure only; it is counted itself";
            found.push(Finding::new(&CODE, named.place, message).help(help));
        }
    }
}
