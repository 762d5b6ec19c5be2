//! A picture in the words without a description.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::links::links;

static CODE: Code = Code {
    name: "picture-without-description",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Words,
    summary: "a picture in the words has no description",
    page: include_str!("picture_without_description.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let of_species = evidence.model.species.values().flat_map(|species| species.all_words());
    let of_pages = evidence.model.pages.values().flat_map(|page| page.all_words());
    for words in of_species.chain(of_pages) {
        for link in links(&words.text) {
            if !link.is_picture || !link.label.is_empty() {
                continue;
            }
            let message = format!("the picture `{}` has no description", link.target);
            let help = "say in the square brackets what it shows: ![a snake in a tight hide](…)";
            found.push(Finding::new(&CODE, Place::new(words.file, link.span), message).help(help));
        }
    }
}
