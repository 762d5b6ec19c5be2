//! An override that does not recall what it stands in place of.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{replaced, shown};

static CODE: Code = Code {
    name: "override-without-was",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Species,
    summary: "an override does not say what the library said when it was written",
    page: include_str!("override_without_was.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for (entry, replaced) in replaced(evidence).filter(|(_, replaced)| replaced.was.is_none()) {
        let message = format!(
            "the entry for `{}` of `{}` does not say what it stands in place of",
            entry.figure.name, entry.species
        );
        let help = format!(
            "add what the library says now: was = \"{}\"",
            shown(evidence, &replaced.before)
        );
        found.push(Finding::new(&CODE, entry.figure.place, message).help(help));
    }
}
