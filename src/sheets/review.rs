//! What is due for review: the day on which every species was last gone through, by whom, and when that is due again.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::Figures;
use crate::figures::calendar::days_after;
use crate::model::Species;
use crate::model::word::Word;
use crate::quantity::{Rounding, print_one};

use super::blocks::{Link, Shown};
use super::compare::{LinkedRow, LinkedTable};
use super::edition::Edition;
use super::frame::Frame;

/// What is due for review.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ReviewSheet {
    /// The frame.
    pub frame: Frame,
    /// The tables: overdue, due within the year, later. One that would be empty is left out.
    pub tables: Vec<LinkedTable>,
    /// What a review is.
    pub notes: Vec<String>,
}

/// How far ahead a review counts as due soon, days.
const SOON_DAYS: f64 = 182.0;

/// Builds the page.
pub fn review(edition: &Edition<'_>, figures: &Figures) -> ReviewSheet {
    let as_of = figures.as_of;
    let every = edition.site.review_every;
    let due = |species: &Species| {
        let (reviewed, _) = species.reviewed.filter(|_| species.reviewer.is_some())?;
        days_after(reviewed, every.days())
    };
    let soon = days_after(as_of, SOON_DAYS).unwrap_or(as_of);
    let mut all: Vec<(Option<Date>, &String, &Species)> =
        edition.species.iter().map(|(key, species)| (due(species), key, species)).collect();
    all.sort_by_key(|(due, key, _)| (*due, *key));
    let say = |label| edition.say(label);
    let head = ["review-animal", "review-last", "review-by", "review-due"].map(say).to_vec();
    let table = |id: &str, title: &str, caption: &str, belongs: &dyn Fn(Option<Date>) -> bool| {
        let rows: Vec<LinkedRow> = all
            .iter()
            .filter(|(due, ..)| belongs(*due))
            .map(|(due, key, species)| row(edition, key, species, *due))
            .collect();
        let (id, title, caption) = (id.to_owned(), edition.say(title), edition.say(caption));
        let head = head.clone();
        (!rows.is_empty()).then_some(LinkedTable { id, title, caption, head, rows })
    };
    let tables = [
        table("overdue", "review-overdue", "review-overdue-caption", &|due| {
            due.is_none_or(|due| due <= as_of)
        }),
        table("soon", "review-soon", "review-soon-caption", &|due| {
            due.is_some_and(|due| due > as_of && due <= soon)
        }),
        table("later", "review-later", "review-later-caption", &|due| {
            due.is_some_and(|due| due > soon)
        }),
    ];
    let (title, description) = (edition.say("review-title"), edition.say("review-description"));
    let span = edition.shown(print_one(every, edition.units(), Rounding::Nearest)).first;
    ReviewSheet {
        frame: Frame::new(edition, super::REVIEW, false, &title, &description, as_of),
        tables: tables.into_iter().flatten().collect(),
        notes: vec![edition.tell("review-note", [("span", span.into())])],
    }
}

fn row(edition: &Edition<'_>, key: &str, species: &Species, due: Option<Date>) -> LinkedRow {
    let reviewed = species.reviewed.map(|(date, _)| Shown::plain(edition.long_date(date)));
    let reviewer = species.reviewer.clone().map(Shown::plain);
    LinkedRow {
        link: Link { text: edition.name(species).to_owned(), href: super::care_path(key) },
        kind: species.kind.spelling().to_owned(),
        cells: vec![
            reviewed.unwrap_or_else(|| Shown::plain(edition.say("review-never"))),
            reviewer.unwrap_or_else(|| Shown::plain(edition.say("review-nobody"))),
            Shown::plain(
                due.map_or_else(|| edition.say("review-now"), |due| edition.long_date(due)),
            ),
        ],
    }
}
