//! A heading that care sheets do not have, or one out of its place.

use crate::finding::{Code, Finding, Place, Severity, Subject, did_you_mean};
use crate::model::species::Words;
use crate::proof::{Evidence, Rule};

use super::headings::{headings, owed_in};

static CODE: Code = Code {
    name: "heading-unknown",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Words,
    summary: "a care sheet has a heading of its own, or its sections out of order",
    page: include_str!("heading_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let site = &evidence.model.site;
    for species in evidence.model.species.values() {
        let own = species.words.iter().map(|words| (species.language_in(site), words));
        let further =
            species.translations.iter().map(|(language, one)| (language.as_str(), &one.words));
        for (language, words) in own.chain(further) {
            check(words, &owed_in(language), found);
        }
    }
}

/// Looks at the headings of words. Each of those that are owed may be written in either of two ways.
fn check(words: &Words, owed: &[[String; 2]], found: &mut Vec<Finding>) {
    let mut last = 0;
    for heading in headings(&words.text) {
        let place = Place::new(words.file, heading.span.clone());
        let position = owed.iter().position(|ways| ways.iter().any(|way| way == heading.title));
        let finding = match (heading.level, position) {
            (1, _) => {
                let title = heading.title;
                let message = format!(
                    "`{title}` is a heading of the first level, which is the animal's name"
                );
                Finding::new(&CODE, place, message).help("write it with two number signs")
            }
            (2, None) => {
                let ways = owed.iter().flat_map(|ways| ways.iter().rev()).map(String::as_str);
                let help = did_you_mean(heading.title, ways).unwrap_or_else(|| {
                    "use ### for headings of its own, under one of a care sheet's".to_owned()
                });
                let message = format!("`{}` is not a section of a care sheet", heading.title);
                Finding::new(&CODE, place, message).help(help)
            }
            (2, Some(position)) if position < last => {
                let [_, before] = &owed[last];
                let message = format!(
                    "`{}` stands after `{before}`, and comes before it on other care sheets",
                    heading.title
                );
                let help = "put the sections in their order, so that readers find them";
                Finding::new(&CODE, place, message).help(help)
            }
            (2, Some(position)) => {
                last = position;
                continue;
            }
            _ => continue,
        };
        found.push(finding);
    }
}
