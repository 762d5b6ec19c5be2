//! An animal below the size at which the law lets it be sold.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{Handed, article, help, length, over_seeking};

static CODE: Code = Code {
    name: "handed-on-below-size",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Law,
    summary: "an animal to be handed on is smaller than the law lets it be sold, or nobody has measured it",
    page: include_str!("handed_on_below_size.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    over_seeking(evidence, found, check);
}

pub(super) fn check(handed: Handed<'_>, found: &mut Vec<Finding>) {
    for rule in &handed.law.sizes {
        let Some(least) = rule.about.shell_below else { continue };
        if !handed.has_shell() || !handed.is_concerned(&rule.about) {
            continue;
        }
        let name = &handed.animal.name;
        let (state, first) = match handed.shell() {
            Some(shell) if shell >= least => continue,
            Some(shell) => (
                format!("{name} has a shell of {}", length(handed.evidence, shell)),
                "keep it until it has grown",
            ),
            None => (
                format!("no shell length of {name} is logged"),
                "measure the shell, straight, and log the length",
            ),
        };
        let message = format!(
            "{state}, and in {} none below {} may be sold ({})",
            handed.law.name,
            length(handed.evidence, least),
            article(&rule.ground)
        );
        let place = handed.field("species");
        found.push(Finding::new(&CODE, place, message).help(help(
            first,
            rule.says.as_ref(),
            &rule.ground,
        )));
    }
}
