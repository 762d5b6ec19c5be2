//! Words that bring chlorine and ammonia together.

use std::ops::Range;

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::source::Role;

static CODE: Code = Code {
    name: "chlorine-with-ammonia-in-words",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Hygiene,
    summary: "words bring chlorine and ammonia together",
    page: include_str!("chlorine_with_ammonia_in_words.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// What holds chlorine, as cleaners are spoken of. Chlorine in tap water is another matter.
const CHLORINE: [&str; 3] = ["bleach", "hypochlorite", "chlorine cleaner"];
/// Words of a sentence that warns of the two.
const WARNS: [&str; 12] = [
    "never", "not ", "n't", "nor ", "poison", "toxic", "danger", "gas", "kill", "apart", "instead",
    "separate",
];

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for role in
        [Role::Site, Role::Private, Role::Species, Role::Words, Role::Animal, Role::Log, Role::Page]
    {
        for file in evidence.sources.nearest(role).into_values() {
            for span in together(&file.text) {
                let message = "this sentence brings bleach and ammonia together, which give off a poisonous gas";
                let help = "say that they are never used together, or name one of them only; rinse between two cleaners";
                found.push(Finding::new(&CODE, Place::new(file.id, span), message).help(help));
            }
        }
    }
}

/// The sentences that name both without a warning.
fn together(text: &str) -> Vec<Range<usize>> {
    let mut found = Vec::new();
    let mut start = 0;
    for sentence in text.split_inclusive(['.', '\n', ';']) {
        let lower = sentence.to_lowercase();
        let both = CHLORINE.iter().any(|word| lower.contains(word)) && lower.contains("ammonia");
        if both && !WARNS.iter().any(|word| lower.contains(word)) {
            let lead = sentence.len() - sentence.trim_start().len();
            found.push(start + lead..start + sentence.trim_end().len());
        }
        start += sentence.len();
    }
    found
}

#[cfg(test)]
mod tests {
    use super::together;

    #[test]
    fn only_a_sentence_that_brings_the_two_together_is_found() {
        let text = "Wash. Scrub with bleach, then with an ammonia cleaner. Rinse.";
        let spans = together(text);
        assert_eq!(spans.len(), 1);
        assert_eq!(&text[spans[0].clone()], "Scrub with bleach, then with an ammonia cleaner.");
        for harmless in [
            "Never mix bleach with ammonia.",
            "Bleach and ammonia give off a poisonous gas.",
            "Test the water for chlorine and ammonia.",
            "Use bleach. Test the water for ammonia.",
            "A quaternary ammonium compound, or bleach.",
        ] {
            assert!(together(harmless).is_empty(), "{harmless}");
        }
    }
}
