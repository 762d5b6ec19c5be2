//! An override that says what the folder below says already.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{replaced, shown};

static CODE: Code = Code {
    name: "override-changes-nothing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Species,
    summary: "a figure is overridden by the very figure that the library has",
    page: include_str!("override_changes_nothing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for (entry, replaced) in
        replaced(evidence).filter(|(_, replaced)| replaced.after == replaced.before)
    {
        let message = format!(
            "`{}` of `{}` is set to {}, which is what the library says",
            entry.figure.name,
            entry.species,
            shown(evidence, &replaced.after)
        );
        let help = "remove the entry, so that a later correction of the library arrives";
        found.push(Finding::new(&CODE, entry.figure.place, message).help(help));
    }
}
