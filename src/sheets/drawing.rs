//! Drawings: what each one shows, with its places as shares of its own width and height. The numbers stand in a table beside it.

mod front;

use serde::Serialize;

use crate::figures::SpeciesFigures;
use crate::figures::working::number;
use crate::quantity::{Rounding, Span};

use super::edition::Edition;
use super::print;

pub(super) use front::{front, grown};

/// A drawing with the words that stand for it where it is not seen.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Drawing {
    /// Its anchor.
    pub id: String,
    /// Its name.
    pub title: String,
    /// What it shows, in words.
    pub text: String,
    /// What is drawn.
    pub picture: Picture,
}

/// What is drawn. Shares are per cent of the drawing's width or height, as text.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
pub enum Picture {
    /// A column a month.
    Year {
        /// The months.
        months: Vec<Month>,
    },
    /// A strip a stage of life, with a mark a meal.
    Meals {
        /// How many days a strip holds.
        days: String,
        /// How wide a mark is, in days.
        mark: String,
        /// The stages in order.
        stages: Vec<Strip>,
    },
    /// An enclosure from the front, its warm end on the left.
    Front(Front),
}

/// A month as a column.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Month {
    /// Its first letter.
    pub letter: String,
    /// Whole hours, for the head of the column.
    pub hours: String,
    /// Where it stands, share of the width.
    pub at: String,
    /// How much of the longest day it is, share of the height.
    pub share: String,
    /// What is above it.
    pub above: String,
}

/// The meals of one stage.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Strip {
    /// The stage and its interval.
    pub label: String,
    /// Where it stands, share of the height.
    pub top: String,
    /// Its height, share of the height.
    pub high: String,
    /// From a mark to the next, in days, the mark itself left out.
    pub gap: String,
}

/// An enclosure from the front.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Front {
    /// Length, whole cm: the proportion of the drawing.
    pub long: String,
    /// Height, whole cm.
    pub high: String,
    /// What is in it, each with a mark.
    pub parts: Vec<Part>,
    /// Hides, to scale.
    pub hides: Vec<Block>,
    /// What holds at places along the length.
    pub zones: Vec<Zone>,
    /// The length of the animal lying straight, share of the width.
    pub animal: Option<String>,
    /// What is to scale in it and what is not.
    pub note: String,
}

/// What holds at a place along an enclosure, written below it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Zone {
    /// Where, share of the width.
    pub at: String,
    /// What the place is called; nothing where a mark says it.
    pub name: Option<String>,
    /// The temperature there.
    pub reads: String,
    /// What a hygrometer may read there.
    pub damp: Option<String>,
    /// Whether it stands a line lower, so that it does not run into its neighbour.
    pub low: bool,
}

/// Something with a mark in the drawing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Part {
    /// Its mark: a letter for what heats or shines, a number for a probe.
    pub mark: String,
    /// What it is, in words, with what it reads.
    pub label: String,
    /// Where it stands along the length, share of the width.
    pub at: String,
    /// On which line of the drawing, share of the height. Heights are not to scale.
    pub line: String,
}

/// A hide in the drawing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Block {
    /// Its left edge, share of the width.
    pub left: String,
    /// Its length, share of the width.
    pub long: String,
    /// Its top, share of the height.
    pub top: String,
    /// Its height, share of the height.
    pub high: String,
}

/// The length of the day through the year; none where the days hardly change.
pub(super) fn year(of: &SpeciesFigures, edition: &Edition<'_>) -> Option<Drawing> {
    let hours = of.light.day_hours?;
    let longest = hours.iter().copied().fold(0.0, f64::max);
    let shortest = hours.iter().copied().fold(24.0, f64::min);
    if longest - shortest < LEAST_CHANGE_HOURS {
        return None;
    }
    let months = hours.iter().zip(1..).enumerate().map(|(place, (hours, month))| {
        let share = hours / longest * 100.0;
        let letter = edition.catalogue().short_month(month).chars().next();
        Month {
            letter: letter.into_iter().flat_map(char::to_uppercase).collect(),
            hours: number(*hours, 0),
            at: percent((place as f64 + 0.5) / 12.0),
            share: number(share, 1),
            above: number(100.0 - share, 1),
        }
    });
    Some(Drawing {
        id: "year".to_owned(),
        title: edition.say("drawing-year"),
        text: edition.tell(
            "drawing-year-text",
            [
                ("shortest", edition.number(shortest, 1).into()),
                ("longest", edition.number(longest, 1).into()),
            ],
        ),
        picture: Picture::Year { months: months.collect() },
    })
}

/// How many days a strip of meals holds.
const STRIP_DAYS: u32 = 56;

/// How wide the mark of a meal is, in days: marks of daily meals still stand apart.
const MARK_DAYS: f64 = 0.4;

/// Where every stage is fed at least this often, the strips are alike to the eye, and nothing is drawn.
const OFTEN_DAYS: f64 = 3.0;

/// Days that differ by less than this through the year are all alike to the eye, and nothing is drawn.
const LEAST_CHANGE_HOURS: f64 = 1.0;

/// Meals by stage of life, over eight weeks each; none where every stage is fed every few days.
pub(super) fn meals(of: &SpeciesFigures, edition: &Edition<'_>) -> Option<Drawing> {
    let spaced = of.feeding.iter().filter_map(|row| {
        let (low, high) = row.interval_days?;
        // The mark of the middle: a range of days is fed now earlier, now later.
        let middle = (low.or(high)? + high.or(low)?) / 2.0;
        let every = print::shown::<Span>(row.interval_days, edition, Rounding::Nearest).first;
        let values = [("stage", row.stage.as_str().into()), ("interval", every.into())];
        (middle >= 0.5).then(|| (edition.tell("drawing-meals-stage", values), middle))
    });
    let spaced: Vec<(String, f64)> = spaced.collect();
    if spaced.iter().all(|(_, days)| *days <= OFTEN_DAYS) {
        return None;
    }
    let count = spaced.len() as f64;
    let stages = spaced.iter().enumerate().map(|(place, (label, days))| Strip {
        label: label.clone(),
        top: percent(place as f64 / count),
        high: percent(1.0 / count),
        gap: number(days - MARK_DAYS, 2),
    });
    let labels: Vec<&str> = spaced.iter().map(|(label, _)| label.as_str()).collect();
    Some(Drawing {
        id: "meals".to_owned(),
        title: edition.say("drawing-meals"),
        text: edition.tell("drawing-meals-text", [("stages", labels.join("; ").into())]),
        picture: Picture::Meals {
            days: STRIP_DAYS.to_string(),
            mark: number(MARK_DAYS, 2),
            stages: stages.collect(),
        },
    })
}

/// A share as per cent.
fn percent(share: f64) -> String {
    number(share * 100.0, 1)
}
