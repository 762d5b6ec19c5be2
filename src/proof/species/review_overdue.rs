//! A species whose review is overdue.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{overdue, own_or_built_in};

static CODE: Code = Code {
    name: "review-overdue",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Species,
    summary: "a species' review is overdue",
    page: include_str!("review_overdue.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for species in evidence.model.species.values() {
        let Some((checked, place)) = species.reviewed else { continue };
        let Some(due) = overdue(evidence, checked) else { continue };
        let message = format!(
            "the figures of {} were last gone through on {checked}, and were due again on {due}",
            species.name
        );
        let mut finding = Finding::new(&CODE, place, message)
            .help("go through them with their sources, and set `reviewed`");
        finding.severity = own_or_built_in(evidence, species.file, CODE.severity);
        found.push(finding);
    }
}
