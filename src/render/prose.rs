//! Markdown to HTML that cannot run anything in a reader's browser.

use pulldown_cmark::{Event, HeadingLevel, Options, Parser, Tag, TagEnd, html};

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
    let options =
        Options::ENABLE_TABLES | Options::ENABLE_FOOTNOTES | Options::ENABLE_STRIKETHROUGH;
    let mut set = String::with_capacity(words.len() + words.len() / 4);
    html::push_html(&mut set, safe(Parser::new_ext(words, options)));
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

/// The page has the first level to itself.
fn down(level: HeadingLevel) -> HeadingLevel {
    if level == HeadingLevel::H1 { HeadingLevel::H2 } else { level }
}
