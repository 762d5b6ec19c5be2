//! What a host shows where there is no page.

use serde::Serialize;

use crate::figures::Figures;

use super::edition::Edition;
use super::frame::{Frame, full_address};

/// The page for an address that leads nowhere.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct NotFoundSheet {
    /// The frame.
    pub frame: Frame,
}

/// Builds the page.
pub fn not_found(edition: &Edition<'_>, figures: &Figures) -> NotFoundSheet {
    let mut frame = Frame::new(
        edition,
        super::NOT_FOUND,
        false,
        &edition.say("lost-title"),
        &edition.say("lost-description"),
        figures.as_of,
    );
    // A host shows this page at whatever address was asked for, however deep: only full addresses lead back from there.
    if let Some(root) = full_address(&edition.site, "") {
        (frame.root, frame.base) = (root.clone(), root);
    }
    // It has no address of its own.
    frame.address = None;
    frame.editions.clear();
    NotFoundSheet { frame }
}
