//! Every care sheet in one document, for one print order.

use serde::Serialize;

use crate::figures::Figures;

use super::blocks::Link;
use super::care::{self, CareSheet};
use super::edition::Edition;
use super::frame::Frame;
use super::order;

/// Every care sheet in one document.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BinderSheet {
    /// The frame.
    pub frame: Frame,
    /// The page's heading.
    pub title: String,
    /// The contents, by group.
    pub contents: Vec<Contents>,
    /// The sheets in the order of the contents.
    pub sheets: Vec<BoundSheet>,
}

/// A group of species in the contents.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Contents {
    /// Its heading.
    pub title: String,
    /// Its sheets; the links lead down the document.
    pub links: Vec<Link>,
}

/// A care sheet in the document.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BoundSheet {
    /// What stands before each of its anchors.
    pub prefix: String,
    /// The folder of its own page, seen from the document.
    pub folder: String,
    /// The sheet, without its workings: they fold away on a screen and are on the sheet's own page.
    pub care: CareSheet,
}

/// Builds the document.
pub fn binder(edition: &Edition<'_>, figures: &Figures) -> BinderSheet {
    let mut contents = Vec::new();
    let mut sheets = Vec::new();
    for kind in order::GROUPS {
        let mut links = Vec::new();
        for (key, species) in order::in_order(edition) {
            let Some(of) = figures.species.get(key).filter(|_| species.kind == kind) else {
                continue;
            };
            let mut care = care::care(edition, figures, key, species, of);
            care.chapters.iter_mut().for_each(|chapter| chapter.workings.clear());
            links.push(Link { text: edition.name(species).to_owned(), href: format!("#{key}") });
            let folder = super::care_path(key).trim_end_matches("index.html").to_owned();
            sheets.push(BoundSheet { prefix: format!("{key}-"), folder, care });
        }
        if !links.is_empty() {
            contents.push(Contents { title: edition.word("group", kind), links });
        }
    }
    let title = edition.say("binder-title");
    BinderSheet {
        frame: Frame::new(
            edition,
            super::BINDER,
            false,
            &title,
            &edition.say("binder-description"),
            figures.as_of,
        ),
        title,
        contents,
        sheets,
    }
}
