//! Markdown words: what would run in a reader's browser is reported here and never rendered.

use std::collections::BTreeMap;

use pulldown_cmark::{Event, Parser, Tag, TagEnd};

use crate::finding::{Finding, Place};
use crate::model::Page;
use crate::model::species::{Translation, Words};
use crate::source::SourceFile;

use super::codes;

pub(super) fn words(file: &SourceFile) -> (Words, Vec<Finding>) {
    let mut findings = Vec::new();
    for (event, span) in Parser::new(&file.text).into_offset_iter() {
        let place = Place::new(file.id, span);
        match event {
            // A comment shows nothing and runs nothing: a club may keep notes to itself in one.
            Event::Html(html) | Event::InlineHtml(html)
                if !html.trim_start().starts_with("<!--") =>
            {
                let message = "HTML in the words is left out of the page";
                findings.push(
                    Finding::new(&codes::WORDS_HTML, place, message).help("write it in Markdown"),
                );
            }
            Event::Start(Tag::Link { dest_url, .. } | Tag::Image { dest_url, .. })
                if !is_safe_address(&dest_url) =>
            {
                let message = format!(
                    "the address `{dest_url}` would run in a reader's browser and is left out"
                );
                findings.push(
                    Finding::new(&codes::WORDS_HTML, place, message)
                        .help("link to a page: https://…"),
                );
            }
            _ => {}
        }
    }
    (Words { file: file.id, text: file.text.clone() }, findings)
}

/// Tells whether an address only leads somewhere: a web page, a mail address, a place on this site.
///
/// Anything else with a scheme (`javascript:`, `data:` …) could run in the reader's browser.
///
/// # Examples
/// ```
/// use wardsheet::parse::is_safe_address;
/// assert!(is_safe_address("https://example.org/") && is_safe_address("../boa/") && is_safe_address("#heat"));
/// assert!(!is_safe_address("JavaScript:alert(1)") && !is_safe_address(" java\tscript:x") && !is_safe_address("data:text/html,x"));
/// ```
pub fn is_safe_address(address: &str) -> bool {
    // Browsers skip white space and control characters inside a scheme.
    let plain: String = address.chars().filter(|c| !c.is_whitespace() && !c.is_control()).collect();
    let scheme_end = plain.find([':', '/', '?', '#']);
    match scheme_end {
        Some(end) if plain[end..].starts_with(':') => {
            matches!(
                plain[..end].to_ascii_lowercase().as_str(),
                "http" | "https" | "mailto" | "tel"
            )
        }
        _ => true,
    }
}

pub(super) fn page(name: &str, file: &SourceFile) -> (Page, Vec<Finding>) {
    let (words, findings) = words(file);
    let title = first_heading(&words.text).unwrap_or_else(|| name.replace('-', " "));
    (Page { title, words, translations: BTreeMap::new() }, findings)
}

/// Words in a further language: a heading of the first level is the name there, what follows up to the next heading a sentence on
/// it.
pub(super) fn translation(file: &SourceFile) -> (Translation, Vec<Finding>) {
    let (mut words, findings) = words(file);
    let text = words.text.trim_start();
    let (title, rest) = match text.strip_prefix("# ") {
        Some(titled) => {
            let (title, rest) = titled.split_once('\n').unwrap_or((titled, ""));
            (Some(title.trim().trim_end_matches('#').trim().to_owned()), rest)
        }
        None => (None, text),
    };
    let before = rest.split("\n#").next().unwrap_or_default().trim();
    let titled = title.is_some() && !before.is_empty() && !rest.trim_start().starts_with('#');
    let summary = titled.then(|| before.split_whitespace().collect::<Vec<_>>().join(" "));
    if title.is_some() {
        // Both are blanked rather than cut out: every place in the words stays where it is in the file.
        let kept = if titled { rest.trim_start().len() - before.len() } else { rest.len() };
        let (taken, kept) = words.text.split_at(words.text.len() - kept);
        let blank = |letter: char| {
            if letter == '\n' { "\n".to_owned() } else { " ".repeat(letter.len_utf8()) }
        };
        words.text = taken.chars().map(blank).collect::<String>() + kept;
    }
    (Translation { title, summary, words }, findings)
}

fn first_heading(text: &str) -> Option<String> {
    let mut title = None;
    for event in Parser::new(text) {
        match (event, &mut title) {
            (Event::Start(Tag::Heading { .. }), None) => title = Some(String::new()),
            (Event::Text(text) | Event::Code(text), Some(title)) => title.push_str(&text),
            (Event::End(TagEnd::Heading(_)), Some(_)) => break,
            _ => {}
        }
    }
    title
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::finding::FileId;
    use crate::source::{Layer, Role};

    fn read(text: &str) -> Translation {
        let mut sources = crate::source::Sources::default();
        let id = sources.add("boa.de.md", Role::Words, "boa.de", Layer::Own, text.to_owned());
        assert_eq!(id, FileId(0));
        translation(&sources.files()[0]).0
    }

    #[test]
    fn a_heading_at_the_top_is_the_name_and_what_follows_it_a_sentence() {
        let text =
            "# Abgottschlange\n\nEine große, ruhige\nSchlange.\n\n## Wärme und Licht\n\nWarm.\n";
        let read = read(text);
        assert_eq!(read.title.as_deref(), Some("Abgottschlange"));
        assert_eq!(read.summary.as_deref(), Some("Eine große, ruhige Schlange."));
        assert_eq!(read.words.text.trim(), "## Wärme und Licht\n\nWarm.");
        assert_eq!(read.words.text.find("Warm."), text.find("Warm."), "places stay where they are");
    }

    #[test]
    fn words_without_a_name_are_words_alone() {
        let text = "## Wärme und Licht\n\nWarm.\n";
        let read = read(text);
        assert_eq!((read.title, read.summary), (None, None));
        assert_eq!(read.words.text, text);
    }

    #[test]
    fn a_name_without_a_sentence_is_a_name_alone() {
        let read = read("# Abgottschlange\n\n## Wärme und Licht\n\nWarm.\n");
        assert_eq!((read.title.as_deref(), read.summary), (Some("Abgottschlange"), None));
        assert_eq!(read.words.text.trim(), "## Wärme und Licht\n\nWarm.");
    }
}
