//! The headings of a text.

use std::ops::Range as Bytes;

/// The headings that a care sheet owes its reader, in their order.
pub(super) const OWED: [&str; 11] = [
    "At a glance",
    "Is this animal for you",
    "Enclosure",
    "Heat and light",
    "Humidity and water",
    "Feeding",
    "Handling and company",
    "Cleaning",
    "Health",
    "Breeding and growth",
    "Law and where it comes from",
];

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
