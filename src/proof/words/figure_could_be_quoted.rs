//! Words that repeat a figure that they could quote.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::literals::{could_mean, literals, same};

static CODE: Code = Code {
    name: "figure-could-be-quoted",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Words,
    summary: "the words repeat a figure that they could quote",
    page: include_str!("figure_could_be_quoted.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for species in evidence.model.species.values() {
        let Some(words) = &species.words else { continue };
        for literal in literals(&words.text) {
            let figures = could_mean(&literal, species);
            let Some(stated) = figures.iter().find(|stated| same(&literal.amount, &stated.amount))
            else {
                continue;
            };
            let message = format!(
                "the words repeat {}, which is `{}`",
                &words.text[literal.span.clone()],
                stated.name
            );
            let help =
                format!("quote it, so that the words follow the figure: {{{{ {} }}}}", stated.name);
            found.push(
                Finding::new(&CODE, Place::new(words.file, literal.span), message)
                    .help(help)
                    .also_at(stated.place, "the figure"),
            );
        }
    }
}
