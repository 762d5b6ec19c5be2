//! A care sheet without a section that it owes its reader.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::headings::{OWED, headings};

static CODE: Code = Code {
    name: "heading-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Words,
    summary: "a care sheet lacks a section that it owes its reader",
    page: include_str!("heading_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for species in evidence.model.species.values() {
        let Some(words) = species.words.as_ref().filter(|words| !words.text.trim().is_empty())
        else {
            continue;
        };
        let given = headings(&words.text);
        let missing: Vec<&str> = OWED
            .into_iter()
            .filter(|owed| {
                !given.iter().any(|heading| heading.level == 2 && heading.title == *owed)
            })
            .collect();
        if missing.is_empty() {
            continue;
        }
        let message =
            format!("the words of {} have no section `{}`", species.name, missing.join("`, `"));
        let help = format!("add it, spelt like this: ## {}", missing[0]);
        found.push(Finding::new(&CODE, Place::start_of(words.file), message).help(help));
    }
}
