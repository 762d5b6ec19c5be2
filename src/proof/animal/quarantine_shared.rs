//! An animal in quarantine that shares its enclosure with one that is not.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Status;
use crate::proof::{Evidence, Rule};

use super::{companions, standing};

static CODE: Code = Code {
    name: "quarantine-shared",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Animal,
    summary: "an animal in quarantine shares its enclosure with one that is not",
    page: include_str!("quarantine_shared.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        for companion in companions(evidence, animal) {
            let other = companion.animal;
            let one_of_two =
                (animal.status == Status::Quarantine) != (other.status == Status::Quarantine);
            if !one_of_two || !other.is_kept() || companion.is_second {
                continue;
            }
            let message = format!(
                "{} {} and shares its enclosure with {}, which {}",
                animal.name,
                standing(animal.status),
                other.name,
                standing(other.status)
            );
            let help = "part them, each with its own tools; or both are in quarantine, and its clock starts again";
            found.push(Finding::new(&CODE, companion.named.place, message).help(help));
        }
    }
}
