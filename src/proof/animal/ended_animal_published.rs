//! An animal that has died or gone and is still published.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::standing;

static CODE: Code = Code {
    name: "ended-animal-published",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal that has died or gone is still published",
    page: include_str!("ended_animal_published.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        if !animal.publish || animal.is_kept() {
            continue;
        }
        let message =
            format!("{} {} and still has a public page", animal.name, standing(animal.status));
        let help = "write publish = false, unless the page is meant to stay";
        found.push(Finding::new(&CODE, evidence.field(animal.file, "publish"), message).help(help));
    }
}
