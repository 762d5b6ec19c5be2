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
    let head = compare::head(&["Floor", "Sizes to buy or build", "Grows to", "Lives"]);
    let table = |id: String, title: String, caption: &str, group: &[Candidate<'_>]| {
        let rows: Vec<_> = group.iter().map(|one| compare::row(one, cells(one))).collect();
        let (caption, head) = (caption.to_owned(), head.clone());
        (!rows.is_empty()).then_some(LinkedTable { id, title, caption, head, rows })
    };
    let mut tables = Vec::new();
    for (place, floor_m2) in FLOORS_M2.into_iter().enumerate() {
        let enough =
            |one: &Candidate<'_>| one.space.as_ref().is_some_and(|space| space.fits_on(floor_m2));
        let (group, larger) = certain.into_iter().partition(enough);
        certain = larger;
        let caption = if tables.is_empty() { FIRST } else { ALSO };
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
        format!("More than {}", title(largest, edition)),
        "These need a floor of their own size",
        &certain,
    ));
    tables.extend(table(
        "floor-open".to_owned(),
        "Not certain".to_owned(),
        "Not every standard in force could be worked out for these, or none has a rule for them",
        &uncertain,
    ));
    let mut notes = vec![
        compare::SPACE.to_owned(),
        "A floor of the right area must have the right shape and height as well: look at the sizes. A young animal needs less for a while; what counts is what it will need.".to_owned(),
    ];
    let standards: Vec<String> = edition
        .site
        .standards
        .iter()
        .filter(|named| edition.standards.contains_key(&named.name))
        .map(|named| standard_title(edition, &named.name))
        .collect();
    notes.push(if standards.is_empty() {
        "The standards in force are all those that a species names.".to_owned()
    } else {
        format!("The standards in force: {}.", standards.join("; "))
    });
    FitsSheet {
        frame: Frame::new(
            edition,
            compare::FITS,
            false,
            "What fits in this space",
            "Which species fit on which floor when they are grown, by every standard in force.",
            figures.as_of,
        ),
        orders: compare::turns(compare::FITS),
        tables,
        notes,
    }
}

/// What stands over the species of the smallest floor.
const FIRST: &str = "Enough for";

/// What stands over those of a larger one.
const ALSO: &str = "Enough for all of the above, and for";

fn title(floor_m2: f64, edition: &Edition<'_>) -> String {
    let Shown { first, second, .. } = print::area(floor_m2, edition);
    second.map_or(first.clone(), |second| format!("{first} ({second})"))
}
