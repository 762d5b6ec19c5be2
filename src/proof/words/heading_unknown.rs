//! A heading that care sheets do not have, or one out of its place.

use crate::finding::{Code, Finding, Place, Severity, Subject, did_you_mean};
use crate::proof::{Evidence, Rule};

use super::headings::{OWED, headings};

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
    for species in evidence.model.species.values() {
        let Some(words) = &species.words else { continue };
        let mut last = 0;
        for heading in headings(&words.text) {
            let place = Place::new(words.file, heading.span.clone());
            let position = OWED.iter().position(|owed| *owed == heading.title);
            let finding = match (heading.level, position) {
                (1, _) => Finding::new(
                    &CODE,
                    place,
                    format!(
                        "`{}` is a heading of the first level, which is the animal's name",
                        heading.title
                    ),
                )
                .help("write it with two number signs"),
                (2, None) => {
                    let near = did_you_mean(heading.title, OWED);
                    let help = near.unwrap_or_else(|| {
                        "use ### for headings of its own, under one of a care sheet's".to_owned()
                    });
                    let message = format!("`{}` is not a section of a care sheet", heading.title);
                    Finding::new(&CODE, place, message).help(help)
                }
                (2, Some(position)) if position < last => {
                    let message = format!(
                        "`{}` stands after `{}`, and comes before it on other care sheets",
                        heading.title, OWED[last]
                    );
                    Finding::new(&CODE, place, message)
                        .help("put the sections in their order, so that readers find them")
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
}
