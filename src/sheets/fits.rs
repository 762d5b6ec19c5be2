//! What fits in a space: the species by the floor that a grown animal needs.

use serde::Serialize;

use crate::figures::Figures;

use crate::quantity::{Length, Rounding};

use super::blocks::Shown;
use super::care::standard_title;
use super::compare::{self, Candidate, LinkedTable, Order, Turn};
use super::edition::Edition;
use super::frame::Frame;
use super::{compare_cells, print};

/// The floors that a reader may have to give, m².
const FLOORS_M2: [f64; 8] = [0.25, 0.5, 1.0, 1.5, 2.0, 3.0, 4.0, 6.0];

/// What fits in a space.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct FitsSheet {
    /// The frame.
    pub frame: Frame,
    /// The other pages of the comparison.
    pub orders: Vec<Turn>,
    /// The species by the smallest floor that is enough.
    pub tables: Vec<LinkedTable>,
    /// What the figures mean.
    pub notes: Vec<String>,
}

/// Builds the page. Each species stands once, under the smallest floor that is enough for it.
pub fn fits(edition: &Edition<'_>, figures: &Figures) -> FitsSheet {
    let (mut certain, uncertain): (Vec<_>, Vec<_>) =
        compare::candidates(edition, figures, Order::Space)
            .into_iter()
            .partition(|one| matches!(&one.space, Some(space) if space.left_out.is_empty()));
    let cells = |one: &Candidate<'_>| {
        vec![
            compare_cells::floor(one, edition),
            compare_cells::size(one, edition),
            print::shown::<Length>(one.lengths, edition, Rounding::Nearest),
            print::years(one.of.years, edition),
        ]
    };
    let columns = ["compare-floor", "compare-size", "compare-grows-to", "compare-lives"];
    let head = compare::head(edition, &columns);
    let table = |id: String, title: String, caption: &str, group: &[Candidate<'_>]| {
        let rows: Vec<_> = group.iter().map(|one| compare::row(one, cells(one))).collect();
        let (caption, head) = (edition.say(caption), head.clone());
        (!rows.is_empty()).then_some(LinkedTable { id, title, caption, head, rows })
    };
    let mut tables = Vec::new();
    for (place, floor_m2) in FLOORS_M2.into_iter().enumerate() {
        let enough =
            |one: &Candidate<'_>| one.space.as_ref().is_some_and(|space| space.fits_on(floor_m2));
        let (group, larger) = certain.into_iter().partition(enough);
        certain = larger;
        let caption = if tables.is_empty() { "fits-first" } else { "fits-also" };
        tables.extend(table(
            format!("floor-{}", place + 1),
            title(floor_m2, edition),
            caption,
            &group,
        ));
    }
    let [.., largest] = FLOORS_M2;
    tables.extend(table(
        "floor-more".to_owned(),
        edition.tell("fits-more", [("floor", title(largest, edition).into())]),
        "fits-more-caption",
        &certain,
    ));
    tables.extend(table(
        "floor-open".to_owned(),
        edition.say("fits-open"),
        "fits-open-caption",
        &uncertain,
    ));
    let mut notes = vec![edition.say("compare-note-space"), edition.say("fits-note-shape")];
    let standards: Vec<String> = edition
        .site
        .standards
        .iter()
        .filter(|named| edition.standards.contains_key(&named.name))
        .map(|named| standard_title(edition, &named.name))
        .collect();
    notes.push(if standards.is_empty() {
        edition.say("fits-note-all-standards")
    } else {
        edition.tell("fits-note-standards", [("standards", standards.join("; ").into())])
    });
    FitsSheet {
        frame: Frame::new(
            edition,
            compare::FITS,
            false,
            &edition.say("fits-title"),
            &edition.say("fits-description"),
            figures.as_of,
        ),
        orders: compare::turns(edition, compare::FITS),
        tables,
        notes,
    }
}

fn title(floor_m2: f64, edition: &Edition<'_>) -> String {
    let Shown { first, second, .. } = print::area(floor_m2, edition);
    second.map_or(first.clone(), |second| format!("{first} ({second})"))
}
