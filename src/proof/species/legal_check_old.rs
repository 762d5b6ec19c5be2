//! A legal status that was looked up too long ago.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{overdue, own_or_built_in};

static CODE: Code = Code {
    name: "legal-check-old",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Species,
    summary: "a species' legal status was looked up too long ago",
    page: include_str!("legal_check_old.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for species in evidence.model.species.values() {
        let Some((checked, place)) = species.legal.checked else { continue };
        let Some(due) = overdue(evidence, checked) else { continue };
        let message = format!(
            "the law on {} was last looked up on {checked}, and was due again on {due}",
            species.name
        );
        let mut finding = Finding::new(&CODE, place, message)
            .help("look it up again where the readers live, and set `checked`");
        finding.severity = own_or_built_in(evidence, species.file, CODE.severity);
        found.push(finding);
    }
}
