//! A species whose legal status nobody has looked up.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "legal-unchecked",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Species,
    summary: "nobody has looked up a species' legal status",
    page: include_str!("legal_unchecked.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for species in evidence.model.species.values() {
        if species.legal.checked.is_some() {
            continue;
        }
        let message = format!("nobody says when the law on {} was looked up", species.name);
        let place = evidence.field(species.file, "name");
        found
            .push(Finding::new(&CODE, place, message).help(
                "look it up and write in [legal]: checked = 2026-11-10 and cites = \"none\"",
            ));
    }
}
