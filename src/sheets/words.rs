//! The words of a species: its figures put in, and cut into chapters at the headings.

use crate::figures::SpeciesFigures;
use crate::figures::quoting::{quotable, quotes};
use crate::model::Species;

use super::edition::Edition;

/// A chapter of Markdown: its heading and the text under it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Passage {
    /// The heading, without its marks; empty for what stands before the first.
    pub heading: String,
    /// The text under it.
    pub text: String,
}

/// Puts the figures that the words quote in their places.
pub fn with_figures(species: &Species, figures: &SpeciesFigures, edition: &Edition<'_>) -> String {
    let Some(words) = edition.words(species) else { return String::new() };
    let known = quotable(species, Some(figures));
    let mut text = String::with_capacity(words.text.len());
    let mut from = 0;
    for quote in quotes(&words.text) {
        text.push_str(&words.text[from..quote.span.start]);
        match known.iter().find(|quotable| quotable.name == quote.name) {
            Some(quotable) => text.push_str(&match species.legal.cites {
                Some(cites) if quotable.name == "legal.cites" => edition.word("cites", cites),
                _ => edition.shown(quotable.print(edition.units())).to_string(),
            }),
            None => text.push_str(&words.text[quote.span.clone()]),
        }
        from = quote.span.end;
    }
    text.push_str(&words.text[from..]);
    text
}

/// Cuts Markdown at its second-level headings.
///
/// # Examples
/// ```
/// let passages = wardsheet::sheets::words::passages("Before.\n\n## Heat\n\nWarm.\n");
/// assert_eq!((passages[1].heading.as_str(), passages[1].text.as_str()), ("Heat", "Warm."));
/// ```
pub fn passages(text: &str) -> Vec<Passage> {
    let mut passages = vec![Passage { heading: String::new(), text: String::new() }];
    let mut fenced = false;
    for line in text.lines() {
        fenced ^= line.trim_start().starts_with("```");
        match line.strip_prefix("## ") {
            Some(heading) if !fenced => {
                let heading = heading.trim().trim_end_matches('#').trim().to_owned();
                passages.push(Passage { heading, text: String::new() });
            }
            _ => {
                if let Some(passage) = passages.last_mut() {
                    passage.text.push_str(line);
                    passage.text.push('\n');
                }
            }
        }
    }
    for passage in &mut passages {
        passage.text = passage.text.trim().to_owned();
    }
    passages.retain(|passage| !passage.heading.is_empty() || !passage.text.is_empty());
    passages
}

/// Takes the words under a heading out of the passages; nothing where none of its titles heads any.
pub fn taken(passages: &mut Vec<Passage>, titles: &[&str]) -> String {
    let same =
        |heading: &str| titles.iter().any(|one| one.to_lowercase() == heading.to_lowercase());
    let place = passages.iter().position(|passage| same(&passage.heading));
    place.map(|place| passages.remove(place).text).unwrap_or_default()
}
