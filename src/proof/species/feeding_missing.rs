//! A species that says nothing about feeding.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "feeding-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Species,
    summary: "a species says nothing about feeding",
    page: include_str!("feeding_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for species in evidence.model.species.values() {
        if !species.feeding.is_empty() {
            continue;
        }
        let message =
            format!("{} has no stage of feeding, so no meal can be planned", species.name);
        let place = evidence.field(species.file, "name");
        found.push(
            Finding::new(&CODE, place, message)
                .help("add [[feeding]] for each stage of life, from hatchling to old age"),
        );
    }
}
