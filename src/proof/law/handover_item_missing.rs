//! A handover sheet without something that the law of a jurisdiction asks for.

use crate::figures::owed::of_animal;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{Handed, article, help, over_seeking};

static CODE: Code = Code {
    name: "handover-item-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Law,
    summary: "a handover sheet lacks something that the law of a jurisdiction asks for",
    page: include_str!("handover_item_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    over_seeking(evidence, found, check);
}

pub(super) fn check(handed: Handed<'_>, found: &mut Vec<Finding>) {
    for (item, ask) in handed.law.items.iter().filter(|(item, _)| item.is_of_animal()) {
        let fields = of_animal(*item, handed.animal);
        if fields.is_empty() {
            continue;
        }
        let said: Vec<&str> = fields.iter().map(|field| in_words(field)).collect();
        let message = format!(
            "the handover of {} says nothing of {}, and {} asks for {} ({})",
            handed.animal.name,
            said.join(", "),
            handed.law.name,
            item.label(),
            article(&ask.ground)
        );
        let first = format!("write what is known: {}", fields.join(", "));
        let mut finding = Finding::new(&CODE, handed.field("name"), message).help(help(
            &first,
            None,
            &ask.ground,
        ));
        // Age and sex are owed where they are known, and only their keeper knows whether they are.
        if fields.iter().all(|field| matches!(*field, "hatched" | "sex")) {
            finding.severity = Severity::Note;
        }
        found.push(finding);
    }
}

fn in_words(field: &str) -> &'static str {
    match field {
        "origin" => "its origin",
        "hatched" => "its age",
        "sex" => "its sex",
        _ => "what a vet has seen",
    }
}
