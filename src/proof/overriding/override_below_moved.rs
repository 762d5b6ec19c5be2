//! An override whose ground has shifted: the folder below no longer says what it said.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{replaced, shown};

static CODE: Code = Code {
    name: "override-below-moved",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Species,
    summary: "a figure was overridden, and what it stands in place of has changed since",
    page: include_str!("override_below_moved.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for (entry, replaced) in replaced(evidence) {
        let Some((was, place)) = &replaced.was else { continue };
        if *was == replaced.before {
            continue;
        }
        let before = shown(evidence, &replaced.before);
        let message = format!(
            "`{}` of `{}` is set to {} in place of {}, and the library below now says {before}",
            entry.figure.name,
            entry.species,
            shown(evidence, &replaced.after),
            shown(evidence, was),
        );
        let help = format!(
            "read why the library changed; then follow it by removing the entry, or keep the entry with was = \"{before}\""
        );
        found.push(Finding::new(&CODE, *place, message).help(help));
    }
}
