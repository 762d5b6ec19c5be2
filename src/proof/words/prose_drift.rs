//! A figure in the words that contradicts every figure of the species.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::Rounding;

use super::literals::{agrees_with, could_mean, literals, nearest};
use super::prose_above_ceiling::passed;

static CODE: Code = Code {
    name: "prose-drift",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Words,
    summary: "a figure in the words contradicts every figure of the species",
    page: include_str!("prose_drift.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for species in evidence.model.species.values() {
        let Some(words) = &species.words else { continue };
        for literal in literals(&words.text) {
            let figures = could_mean(&literal, species);
            let is_said = figures.iter().any(|stated| agrees_with(&literal.amount, stated));
            if is_said || passed(&literal, &figures).is_some() {
                continue;
            }
            let Some(meant) = nearest(&literal, &figures) else { continue };
            let message = format!(
                "the words say {}, and `{}`, which they may mean, is {}",
                &words.text[literal.span.clone()],
                meant.name,
                meant.amount.print(system, Rounding::Nearest).first
            );
            let help =
                format!("quote the figure, so that the words follow it: {{{{ {} }}}}", meant.name);
            found.push(
                Finding::new(&CODE, Place::new(words.file, literal.span), message)
                    .help(help)
                    .also_at(meant.place, "the figure"),
            );
        }
    }
}
