//! Words that quote a figure which the species does not state.

use crate::figures::quoting::{Quote, quotable, quotes};
use crate::finding::{Code, Finding, Place, Severity, Subject, did_you_mean};
use crate::model::species::Words;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "quote-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Words,
    summary: "words quote a figure that is not stated",
    page: include_str!("quote_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for (name, species) in &evidence.model.species {
        let known = quotable(species, evidence.figures.species.get(name));
        for (words, quote) in quoted(species.all_words()) {
            if known.iter().any(|quotable| quotable.name == quote.name) {
                continue;
            }
            let help =
                did_you_mean(quote.name, known.iter().map(|quotable| quotable.name.as_str()));
            let help =
                help.unwrap_or_else(|| format!("state it in {name}.toml, or quote another figure"));
            let message = format!("`{}` is not a figure that {} states", quote.name, species.name);
            found.push(Finding::new(&CODE, Place::new(words.file, quote.span), message).help(help));
        }
    }
    for page in evidence.model.pages.values() {
        for (words, quote) in quoted(page.all_words()) {
            let message = "a page of its own has no figures to quote";
            let place = Place::new(words.file, quote.span);
            found.push(
                Finding::new(&CODE, place, message).help("quote figures in the words of a species"),
            );
        }
    }
}

/// Every quote in words, with the words that it stands in.
fn quoted<'w>(
    all: impl Iterator<Item = &'w Words>,
) -> impl Iterator<Item = (&'w Words, Quote<'w>)> {
    all.flat_map(|words| quotes(&words.text).into_iter().map(move |quote| (words, quote)))
}
