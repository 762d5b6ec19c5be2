//! A species that does not say when and by whom it was gone through.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "review-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Species,
    summary: "a species does not say when and by whom it was gone through",
    page: include_str!("review_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for species in evidence.model.species.values() {
        if species.reviewed.is_some() && species.reviewer.is_some() {
            continue;
        }
        let message =
            format!("{} does not say when its figures were gone through and by whom", species.name);
        let place = evidence.field(species.file, "name");
        found.push(
            Finding::new(&CODE, place, message)
                .help("write reviewed = 2026-11-10 and reviewer = \"…\""),
        );
    }
}
