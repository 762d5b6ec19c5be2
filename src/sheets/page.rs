//! A further page of the site's own.

use serde::Serialize;

use crate::figures::Figures;
use crate::model::Page;

use super::edition::Edition;
use super::frame::Frame;

/// A further page.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PageSheet {
    /// The frame.
    pub frame: Frame,
    /// Its title.
    pub title: String,
    /// Its words, in Markdown, without the heading that became the title.
    pub words: String,
    /// The language of its words, where that is another than the page's.
    pub language: Option<String>,
}

/// Builds a further page.
pub fn page(edition: &Edition<'_>, figures: &Figures, key: &str, page: &Page) -> PageSheet {
    let further = edition.page(page);
    let title = edition.page_title(page);
    let text = further.map_or(&page.words, |one| &one.words).text.trim_start();
    let words = match text.split_once('\n') {
        Some((first, rest)) if first.starts_with("# ") => rest,
        _ => text,
    };
    let path = super::page_path(key);
    let description = format!("{title}. {}", first_words(words));
    let frame = Frame::new(edition, &path, false, title, &description, figures.as_of);
    PageSheet {
        language: frame.site_language.clone().filter(|_| further.is_none()),
        frame,
        title: title.to_owned(),
        words: words.to_owned(),
    }
}

/// The first paragraph of the words, for a search result; a paragraph that needs Markdown's signs is passed over.
fn first_words(words: &str) -> String {
    let signs = ['#', '*', '>', '|', '[', '`', '!', '<', '{', '_'];
    let plain = words.split("\n\n").map(str::trim);
    let first = plain
        .filter(|text| !text.is_empty())
        .find(|text| !text.contains(signs) && !text.starts_with('-'));
    first.map(|text| text.split_whitespace().collect::<Vec<_>>().join(" ")).unwrap_or_default()
}
