//! A language of the site in which the program has no labels.

use crate::finding::{Code, Finding, Place, Severity, Subject, did_you_mean};
use crate::language::Catalogue;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "language-without-labels",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Site,
    summary: "there are no labels in a language that the site asks for",
    page: include_str!("language_without_labels.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let site = &evidence.model.site;
    let mut tell = |language: &str, place: Place| {
        if Catalogue::of(language).is_some() {
            return;
        }
        let known: Vec<&str> = Catalogue::tags().collect();
        let message = format!("there are no labels in `{language}`: its pages have English ones");
        let help = did_you_mean(language, known.iter().copied())
            .unwrap_or_else(|| format!("there are labels in {}", known.join(", ")));
        found.push(Finding::new(&CODE, place, message).help(help));
    };
    tell(&site.language, evidence.field(site.file, "language"));
    for further in &site.languages {
        tell(&further.name, further.place);
    }
}
