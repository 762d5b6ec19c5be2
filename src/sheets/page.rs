//! A further page of the site's own.

use serde::Serialize;

use crate::figures::Figures;
use crate::model::{Model, Page};

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
pub fn page(model: &Model, figures: &Figures, key: &str, page: &Page) -> PageSheet {
    let text = page.words.text.trim_start();
    let words = match text.split_once('\n') {
        Some((first, rest)) if first.starts_with("# ") => rest,
        _ => text,
    };
    PageSheet {
        frame: Frame::new(
            model,
            &super::page_path(key),
            false,
            &page.title,
            &page.title,
            figures.as_of,
        ),
        title: page.title.clone(),
        words: words.to_owned(),
    }
}
