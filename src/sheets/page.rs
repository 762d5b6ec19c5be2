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
}

/// Builds a further page.
pub fn page(edition: &Edition<'_>, figures: &Figures, key: &str, page: &Page) -> PageSheet {
    let text = page.words.text.trim_start();
    let words = match text.split_once('\n') {
        Some((first, rest)) if first.starts_with("# ") => rest,
        _ => text,
    };
    PageSheet {
        frame: Frame::new(
            edition,
            &super::page_path(key),
            false,
            &page.title,
            &format!("{}. {}", page.title, first_words(words)),
            figures.as_of,
        ),
        title: page.title.clone(),
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
