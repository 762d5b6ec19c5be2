//! An animal that is to be handed on without the mark that the law asks for.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{Handed, article, help, over_seeking};

static CODE: Code = Code {
    name: "mark-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Law,
    summary: "an animal is to be handed on without the mark that the law asks for",
    page: include_str!("mark_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    over_seeking(evidence, found, check);
}

pub(super) fn check(handed: Handed<'_>, found: &mut Vec<Finding>) {
    let animal = handed.animal;
    let marked = animal.chip.as_ref().is_some_and(|chip| !chip.eq_ignore_ascii_case("none"));
    for rule in handed.law.marks.iter().filter(|_| !marked) {
        let (mark, concerns) = &rule.about;
        let (of_size, known) = handed.is_of_size(concerns);
        if !of_size || !handed.is_concerned(concerns) {
            continue;
        }
        let doubt = if known { "" } else { ", unless it is below the size from which that holds" };
        let message = format!(
            "{} carries no {mark}, and {} asks for one{doubt} ({})",
            animal.name,
            handed.law.name,
            article(&rule.ground)
        );
        let first =
            "have a vet mark it and write the number in chip; log its size where that is not known";
        let place = handed.field("name");
        found.push(Finding::new(&CODE, place, message).help(help(
            first,
            rule.says.as_ref(),
            &rule.ground,
        )));
    }
}
