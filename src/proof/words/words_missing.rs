//! A species without words.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "words-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Words,
    summary: "a species has no words",
    page: include_str!("words_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for (name, species) in &evidence.model.species {
        if species.words.as_ref().is_some_and(|words| !words.text.trim().is_empty()) {
            continue;
        }
        let message = format!("{} has figures and no words: there is no {name}.md", species.name);
        let help = "write it beside the .toml file, with the headings of a care sheet";
        found.push(Finding::new(&CODE, evidence.field(species.file, "name"), message).help(help));
    }
}
