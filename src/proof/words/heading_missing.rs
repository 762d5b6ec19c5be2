//! A care sheet without a section that it owes its reader.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::headings::{headings, owed_in};

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
        for (heading, next) in given.iter().zip(given.iter().skip(1).map(Some).chain([None])) {
            // What stands under a heading of its own belongs to the section.
            let goes_on = next.is_some_and(|next| next.level > heading.level);
            let end = next.map_or(words.text.len(), |next| next.span.start);
            let under = words.text.get(heading.span.end..end).unwrap_or("");
            if heading.level != 2 || goes_on || !under.trim().is_empty() {
                continue;
            }
            let message = format!("the section `{}` of {} is empty", heading.title, species.name);
            let place = Place::new(words.file, heading.span.clone());
            let help = "write what the reader needs, or that there is nothing to say and why";
            found.push(Finding::new(&CODE, place, message).help(help));
        }
        let owed = owed_in(species.language_in(&evidence.model.site));
        let is_given = |ways: &[String; 2]| {
            given
                .iter()
                .any(|heading| heading.level == 2 && ways.iter().any(|way| way == heading.title))
        };
        let missing: Vec<&str> = owed
            .iter()
            .filter(|ways| !is_given(ways))
            .map(|[_, heading]| heading.as_str())
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
