//! How the figures of a care sheet were worked out: a page of its own, so that the sheet stays light.

use serde::Serialize;

use crate::figures::{Figures, SpeciesFigures};
use crate::model::Species;
use crate::model::word::Word;

use super::blocks::WorkingBlock;
use super::care;
use super::edition::Edition;
use super::frame::Frame;

/// The workings of a care sheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WorkingSheet {
    /// The frame.
    pub frame: Frame,
    /// The species' common name.
    pub name: String,
    /// What kind of animal it is.
    pub kind: String,
    /// The chapters of the sheet that have something worked out.
    pub chapters: Vec<Worked>,
}

/// The workings of a chapter.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Worked {
    /// The chapter's anchor on the sheet and here.
    pub id: String,
    /// Its heading.
    pub title: String,
    /// How its figures were worked out.
    pub workings: Vec<WorkingBlock>,
}

/// Builds the page of a species' workings.
pub fn working(
    edition: &Edition<'_>,
    figures: &Figures,
    key: &str,
    species: &Species,
    of: &SpeciesFigures,
) -> WorkingSheet {
    let chapters = care::care(edition, figures, key, species, of).chapters.into_iter();
    let worked = chapters.filter(|chapter| !chapter.workings.is_empty()).map(|chapter| Worked {
        id: chapter.id,
        title: chapter.title,
        workings: chapter.workings,
    });
    WorkingSheet {
        frame: Frame::new(
            edition,
            &super::working_path(key),
            false,
            &edition.tell("working-title", [("name", edition.name(species).into())]),
            &edition.tell("working-description", [("name", edition.name(species).into())]),
            figures.as_of,
        ),
        name: edition.name(species).to_owned(),
        kind: species.kind.spelling().to_owned(),
        chapters: worked.collect(),
    }
}
