//! The species side by side, as somebody who is choosing an animal wants them: facts, no score, in several orders.

use std::cmp::Ordering;

use serde::Serialize;

use crate::figures::grown::{GrownSpace, grown_space};
use crate::figures::working::Ends;
use crate::figures::{Figures, SpeciesFigures};
use crate::model::Species;
use crate::model::word::Word;

use super::blocks::{Link, Shown};
use super::compare_cells::{asked, daily, room};
use super::edition::Edition;
use super::frame::Frame;
use super::{index, order};

/// An order in which the species can stand.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Order {
    /// By common name.
    Name,
    /// By the floor that a grown animal needs.
    Space,
    /// By length when grown.
    Length,
    /// By span of life.
    Years,
    /// By what a year of keeping it costs.
    Cost,
}

impl Order {
    /// Every order, the one that a reader meets first in front.
    pub const ALL: [Order; 5] =
        [Order::Name, Order::Space, Order::Length, Order::Years, Order::Cost];

    /// The path of its page inside the public part.
    pub fn path(self) -> &'static str {
        match self {
            Order::Name => "compare/index.html",
            Order::Space => "compare/by-space.html",
            Order::Length => "compare/by-length.html",
            Order::Years => "compare/by-years.html",
            Order::Cost => "compare/by-cost.html",
        }
    }

    /// What stands at the end of the names of its labels.
    fn key(self) -> &'static str {
        match self {
            Order::Name => "name",
            Order::Space => "space",
            Order::Length => "length",
            Order::Years => "years",
            Order::Cost => "cost",
        }
    }

    /// A label that is there for each order: `compare-turn-name`, `compare-turn-space`.
    fn label(self, edition: &Edition<'_>, what: &str) -> String {
        edition.say(&format!("compare-{what}-{}", self.key()))
    }
}

/// The path of the page that says what fits in a space.
pub const FITS: &str = "compare/fits.html";

/// The species side by side.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CompareSheet {
    /// The frame.
    pub frame: Frame,
    /// The page's heading.
    pub title: String,
    /// In which order the species stand.
    pub explained: String,
    /// The same in other orders, and what fits in a space.
    pub orders: Vec<Turn>,
    /// The tables, each with every species.
    pub tables: Vec<LinkedTable>,
    /// What the figures mean.
    pub notes: Vec<String>,
}

/// A link between the pages of the comparison.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Turn {
    /// Where it leads.
    pub link: Link,
    /// Whether it is the page itself.
    pub here: bool,
}

/// A table whose rows are headed by links to care sheets.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct LinkedTable {
    /// Its anchor.
    pub id: String,
    /// Its heading.
    pub title: String,
    /// A sentence above the rows.
    pub caption: String,
    /// The headings, that of the animals included.
    pub head: Vec<String>,
    /// The rows.
    pub rows: Vec<LinkedRow>,
}

/// A species in a table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct LinkedRow {
    /// Its care sheet.
    pub link: Link,
    /// Its kind of animal.
    pub kind: String,
    /// What is said of it, a cell for each heading after the first.
    pub cells: Vec<Shown>,
}

/// A species with what is compared.
pub(super) struct Candidate<'a> {
    pub(super) key: &'a str,
    pub(super) species: &'a Species,
    pub(super) of: &'a SpeciesFigures,
    pub(super) lengths: Option<Ends>,
    pub(super) space: Option<GrownSpace>,
}

/// Every species in an order.
pub(super) fn candidates<'a>(
    edition: &'a Edition<'a>,
    figures: &'a Figures,
    order: Order,
) -> Vec<Candidate<'a>> {
    let all = order::in_order(edition).into_iter().filter_map(|(key, species)| {
        let of = figures.species.get(key)?;
        let (lengths, space) = (index::lengths(species), grown_space(&of.enclosure));
        Some(Candidate { key, species, of, lengths, space })
    });
    let mut all: Vec<Candidate<'a>> = all.collect();
    // What is open or not known comes last: nobody should take it for little.
    let most = |ends: Option<Ends>| ends.and_then(|(_, most)| most);
    all.sort_by(|a, b| {
        let first = match order {
            Order::Name => Ordering::Equal,
            Order::Space => last_if_none(
                a.space.as_ref().map(|space| space.floor_m2),
                b.space.as_ref().map(|space| space.floor_m2),
            ),
            Order::Length => last_if_none(most(a.lengths), most(b.lengths)),
            Order::Years => last_if_none(most(a.of.years), most(b.of.years)),
            Order::Cost => {
                let most = |one: &Candidate<'_>| one.of.cost.as_ref().map(|cost| cost.per_year.1);
                last_if_none(most(a), most(b))
            }
        };
        first.then_with(|| a.species.name.to_lowercase().cmp(&b.species.name.to_lowercase()))
    });
    all
}

fn last_if_none(a: Option<f64>, b: Option<f64>) -> Ordering {
    a.unwrap_or(f64::INFINITY).total_cmp(&b.unwrap_or(f64::INFINITY))
}

/// The row of a species, headed by a link to its care sheet.
pub(super) fn row(one: &Candidate<'_>, cells: Vec<Shown>) -> LinkedRow {
    LinkedRow {
        link: Link { text: one.species.name.clone(), href: super::care_path(one.key) },
        kind: one.species.kind.spelling().to_owned(),
        cells,
    }
}

/// The links between the pages of the comparison; `here` is the path of the page itself.
pub(super) fn turns(edition: &Edition<'_>, here: &str) -> Vec<Turn> {
    let orders = Order::ALL.map(|order| (order.label(edition, "turn"), order.path()));
    let all = orders.into_iter().chain([(edition.say("compare-turn-fits"), FITS)]);
    all.map(|(text, href)| Turn { link: Link { text, href: href.to_owned() }, here: href == here })
        .collect()
}

/// The headings of a table whose first column holds the animals; `rest` are the labels of the others.
pub(super) fn head(edition: &Edition<'_>, rest: &[&str]) -> Vec<String> {
    let all = std::iter::once(&"compare-animal").chain(rest);
    all.map(|label| edition.say(label)).collect()
}

/// Builds the comparison in an order.
pub fn compare(edition: &Edition<'_>, figures: &Figures, order: Order) -> CompareSheet {
    let all = candidates(edition, figures, order);
    let say = |label| edition.say(label);
    let title = order.label(edition, "title");
    let explained = order.label(edition, "order");
    let described = edition.tell("compare-description", [("order", explained.as_str().into())]);
    let tables = vec![
        LinkedTable {
            id: "room".to_owned(),
            title: say("compare-room"),
            caption: say("compare-room-caption"),
            head: head(
                edition,
                &[
                    "compare-grows-to",
                    "compare-lives",
                    "compare-floor",
                    "compare-size",
                    "compare-electricity",
                    "compare-cost",
                ],
            ),
            rows: all.iter().map(|one| row(one, room(one, edition))).collect(),
        },
        LinkedTable {
            id: "daily".to_owned(),
            title: say("compare-daily"),
            caption: say("compare-daily-caption"),
            head: head(
                edition,
                &[
                    "compare-eats",
                    "compare-uv-zone",
                    "compare-humidity",
                    "compare-active",
                    "compare-company",
                    "compare-dangers",
                ],
            ),
            rows: all.iter().map(|one| row(one, daily(one, edition))).collect(),
        },
        LinkedTable {
            id: "asks".to_owned(),
            title: say("compare-asks"),
            caption: say("compare-asks-caption"),
            head: head(
                edition,
                &[
                    "compare-insects",
                    "compare-lamp",
                    "compare-warmest",
                    "compare-rest",
                    "compare-cites",
                ],
            ),
            rows: all.iter().map(|one| row(one, asked(one, edition))).collect(),
        },
    ];
    let notes = ["compare-note-space", "compare-note-cost", "compare-note-choose"];
    CompareSheet {
        frame: Frame::new(edition, order.path(), false, &title, &described, figures.as_of),
        title,
        explained,
        orders: turns(edition, order.path()),
        tables,
        notes: notes.map(say).to_vec(),
    }
}
