//! The headings of a text.

use std::ops::Range as Bytes;

use crate::language::Catalogue;
use crate::model::species::CHAPTERS;

/// The headings that words in a language may have: as its pages head them, and in English.
pub(super) fn owed_in(language: &str) -> Vec<[String; 2]> {
    let labels = Catalogue::nearest(language);
    let both = |(anchor, heading): (&str, &str)| {
        [heading.to_owned(), labels.say(&format!("chapter-{anchor}"))]
    };
    CHAPTERS.map(both).to_vec()
}

/// The headings owed, by their English names, under which words in a language say anything. As on the page, capitals count for
/// nothing.
pub(in crate::proof) fn said_under(text: &str, language: &str) -> Vec<&'static str> {
    let owed = owed_in(language);
    let mut said = Vec::new();
    let mut sections = headings(text).into_iter().filter(|heading| heading.level <= 2).peekable();
    while let Some(section) = sections.next() {
        let end = sections.peek().map_or(text.len(), |next| next.span.start);
        let under = text.get(section.span.end..end).unwrap_or_default();
        let title = section.title.to_lowercase();
        let is_its = |ways: &[String; 2]| ways.iter().any(|way| way.to_lowercase() == title);
        if let Some(place) = owed.iter().position(is_its).filter(|_| !under.trim().is_empty()) {
            said.push(CHAPTERS[place].1);
        }
    }
    said
}

/// A heading of any level.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Heading<'a> {
    /// How many signs stand before it.
    pub(super) level: usize,
    /// Its words.
    pub(super) title: &'a str,
    /// The bytes of its line.
    pub(super) span: Bytes<usize>,
}

/// Finds every heading that is written with number signs, those in fenced blocks left out.
pub(super) fn headings(text: &str) -> Vec<Heading<'_>> {
    let mut found = Vec::new();
    let mut fenced = false;
    let mut start = 0;
    for line in text.split_inclusive('\n') {
        fenced ^= line.trim_start().starts_with("```");
        let level = line.chars().take_while(|c| *c == '#').count();
        if !fenced && (1..=6).contains(&level) && line[level..].starts_with(' ') {
            let title = line[level..].trim().trim_end_matches('#').trim_end();
            found.push(Heading { level, title, span: start..start + line.trim_end().len() });
        }
        start += line.len();
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_heading_is_that_of_the_pages() {
        for [english, label] in owed_in("en") {
            assert_eq!(english, label);
        }
        assert_eq!(owed_in("de")[3], ["Heat and light", "Wärme und Licht"]);
    }

    #[test]
    fn a_section_says_something_in_either_language() {
        let text =
            "## Wärme und Licht\n\nWarm.\n\n## Cleaning\n\n## Gesundheit\n\n### Zecken\n\nKeine.\n";
        let said = |heading| said_under(text, "de").contains(&heading);
        assert!(said("Heat and light"));
        assert!(!said_under(text, "en").contains(&"Heat and light"));
        assert!(!said("Cleaning"), "it stands empty");
        assert!(said("Health"), "what stands under a further heading belongs to it");
        assert!(!said("Feeding"), "it is not there");
        assert_eq!(said_under("## cleaning\n\nDaily.\n", "en"), ["Cleaning"]);
    }
}
