//! Words that name a temperature or a humidity above the species' limit.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::model::stated::{Amount, Stated};
use crate::proof::{Evidence, Rule};
use crate::quantity::Rounding;

use super::literals::{Literal, agrees_with, could_mean, ends, literals};

static CODE: Code = Code {
    name: "prose-above-ceiling",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Words,
    summary: "the words name a temperature or humidity above the species' limit",
    page: include_str!("prose_above_ceiling.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// Words of a sentence that tells what harms rather than what to do.
const WARNS: [&str; 12] = [
    "never", "not ", "die", "dead", "death", "kill", "harm", "burn", "danger", "too hot",
    "too damp", "illness",
];

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for species in evidence.model.species.values() {
        let Some(words) = &species.words else { continue };
        for literal in literals(&words.text) {
            let figures = could_mean(&literal, species);
            let Some(limit) = passed(&literal, &figures) else { continue };
            let message = format!(
                "the words say {}, above the limit `{}` of {}",
                &words.text[literal.span.clone()],
                limit.name,
                limit.amount.print(system, Rounding::Down).first
            );
            let help =
                format!("quote the figure, so that the words follow it: {{{{ {} }}}}", limit.name);
            found.push(
                Finding::new(&CODE, Place::new(words.file, literal.span), message)
                    .help(help)
                    .also_at(limit.place, "the limit"),
            );
        }
    }
}

/// The limit that a literal passes, if it passes one and no figure of the species says the same.
pub(super) fn passed<'s, 'a>(
    literal: &Literal<'_>,
    figures: &'s [Stated<'a>],
) -> Option<&'s Stated<'a>> {
    let name = match literal.amount {
        Amount::Temperature(_) => "temperature.never_above",
        Amount::Humidity(_) => "humidity.ceiling",
        _ => return None,
    };
    let limit = figures.iter().find(|stated| stated.name == name)?;
    let (_, most) = ends(&limit.amount)?;
    let (_, high) = ends(&literal.amount)?;
    let sentence = literal.sentence.to_lowercase();
    let advises = !WARNS.iter().any(|word| sentence.contains(word));
    let is_said = figures.iter().any(|stated| agrees_with(&literal.amount, stated));
    (high > most && advises && !is_said).then_some(limit)
}
