//! Markdown to HTML that cannot run anything in a reader's browser.

use pulldown_cmark::{CowStr, Event, HeadingLevel, Options, Parser, Tag, TagEnd, html};

use crate::parse::is_safe_address;

/// Sets Markdown as HTML. Raw HTML is left out; a link that would run something keeps its text and loses its address.
///
/// A first-level heading goes down by one, since the page has its own above it.
///
/// # Examples
/// ```
/// use wardsheet::render::prose::html;
/// assert_eq!(html("a <b>c</b> [d](javascript:e)"), "<p>a c d</p>\n");
/// ```
pub fn html(words: &str) -> String {
    html_within(words, Within::default())
}

/// Where words stand in a document that holds the words of several pages.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Within<'a> {
    /// What is put before every anchor, so that none stands twice.
    pub prefix: &'a str,
    /// The folder of the page that the words were written for, seen from the document.
    pub from: &'a str,
    /// Whether headings go down by one more level.
    pub deeper: bool,
}

/// Sets Markdown as [`html()`] does, in a document of many pages: anchors get the prefix, and links are followed from the folder.
pub fn html_within(words: &str, place: Within<'_>) -> String {
    let options =
        Options::ENABLE_TABLES | Options::ENABLE_FOOTNOTES | Options::ENABLE_STRIKETHROUGH;
    let mut set = String::with_capacity(words.len() + words.len() / 4);
    let events = safe(Parser::new_ext(words, options)).map(|event| moved(event, place));
    html::push_html(&mut set, events);
    set
}

/// Sets one line of Markdown as HTML without a paragraph around it, for a cell or a fact.
pub fn line(words: &str) -> String {
    let set = html(words);
    let inner = set.trim().strip_prefix("<p>").and_then(|rest| rest.strip_suffix("</p>"));
    match inner {
        Some(inner) if !inner.contains("<p>") => inner.to_owned(),
        _ => set.trim().to_owned(),
    }
}

fn safe<'a>(events: impl Iterator<Item = Event<'a>>) -> impl Iterator<Item = Event<'a>> {
    // Links that are left out still send their end; the stack tells which one it is.
    let mut left_out = Vec::new();
    events.filter_map(move |event| match event {
        Event::Html(_) | Event::InlineHtml(_) => None,
        Event::Start(Tag::Link { ref dest_url, .. } | Tag::Image { ref dest_url, .. }) => {
            let keep = is_safe_address(dest_url);
            left_out.push(!keep);
            keep.then_some(event)
        }
        Event::End(TagEnd::Link | TagEnd::Image) => {
            (!left_out.pop().unwrap_or(false)).then_some(event)
        }
        Event::Start(Tag::Heading { level, id, classes, attrs }) => {
            Some(Event::Start(Tag::Heading { level: down(level), id, classes, attrs }))
        }
        Event::End(TagEnd::Heading(level)) => Some(Event::End(TagEnd::Heading(down(level)))),
        other => Some(other),
    })
}

/// Puts an event in its place in a document of many pages.
fn moved<'a>(event: Event<'a>, place: Within<'_>) -> Event<'a> {
    let Within { prefix, from, deeper } = place;
    let address = |address: CowStr<'a>| -> CowStr<'a> {
        match address.strip_prefix('#') {
            Some(anchor) => format!("#{prefix}{anchor}").into(),
            // What has a scheme or starts at a root leads to the same place from everywhere.
            None if address.contains(':') || address.starts_with('/') => address,
            None => format!("{from}{address}").into(),
        }
    };
    let level = |level| if deeper { next(level) } else { level };
    match event {
        Event::Start(Tag::Link { link_type, dest_url, title, id }) => {
            Event::Start(Tag::Link { link_type, dest_url: address(dest_url), title, id })
        }
        Event::Start(Tag::Image { link_type, dest_url, title, id }) => {
            Event::Start(Tag::Image { link_type, dest_url: address(dest_url), title, id })
        }
        Event::Start(Tag::FootnoteDefinition(name)) => {
            Event::Start(Tag::FootnoteDefinition(format!("{prefix}{name}").into()))
        }
        Event::FootnoteReference(name) => {
            Event::FootnoteReference(format!("{prefix}{name}").into())
        }
        Event::Start(Tag::Heading { level: at, id, classes, attrs }) => {
            Event::Start(Tag::Heading { level: level(at), id, classes, attrs })
        }
        Event::End(TagEnd::Heading(at)) => Event::End(TagEnd::Heading(level(at))),
        other => other,
    }
}

fn next(level: HeadingLevel) -> HeadingLevel {
    HeadingLevel::try_from(level as usize + 1).unwrap_or(HeadingLevel::H6)
}

/// The page has the first level to itself.
fn down(level: HeadingLevel) -> HeadingLevel {
    if level == HeadingLevel::H1 { HeadingLevel::H2 } else { level }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_keep_their_links_and_anchors_in_a_document_of_many_pages() {
        let place = Within { prefix: "boa-", from: "species/boa/", deeper: true };
        let set = html_within(
            "## Heat\n\n[a](../corn/index.html) [b](#heat) [c](https://example.org/)[^1]\n\n[^1]: Seen.\n",
            place,
        );
        for expected in [
            "<h3>Heat</h3>",
            r#"href="species/boa/../corn/index.html""#,
            r##"href="#boa-heat""##,
            r#"href="https://example.org/""#,
            r#"id="boa-1""#,
        ] {
            assert!(set.contains(expected), "{expected} is not in {set}");
        }
    }
}
