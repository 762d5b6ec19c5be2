//! A published animal without public words.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "story-missing",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Animal,
    summary: "a published animal has no public words",
    page: include_str!("story_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        let told = animal.story.as_deref().is_some_and(|story| !story.trim().is_empty());
        if !animal.publish || told {
            continue;
        }
        let message = format!("{} has a public page and no story on it", animal.name);
        let help = "write a few public sentences: story = \"…\"";
        found.push(Finding::new(&CODE, evidence.field(animal.file, "publish"), message).help(help));
    }
}
