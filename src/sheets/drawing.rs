//! Drawings: what each one shows, with its places as shares of its own width and height. The numbers stand in a table beside it.

use serde::Serialize;

use crate::figures::lifetime::inside_cm;
use crate::figures::working::number;
use crate::figures::{AnimalFigures, SpeciesFigures};
use crate::model::Animal;
use crate::model::word::Word;
use crate::quantity::{Dimensions, Humidity, Rounding, Span, System, print_one};

use super::print;

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

const MONTHS: [&str; 12] = ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"];

/// The length of the day through the year; none where the days hardly change.
pub(super) fn year(of: &SpeciesFigures) -> Option<Drawing> {
    let hours = of.light.day_hours?;
    let longest = hours.iter().copied().fold(0.0, f64::max);
    let shortest = hours.iter().copied().fold(24.0, f64::min);
    if longest - shortest < LEAST_CHANGE_HOURS {
        return None;
    }
    let months = hours.iter().zip(MONTHS).enumerate().map(|(place, (hours, letter))| {
        let share = hours / longest * 100.0;
        Month {
            letter: letter.to_owned(),
            hours: number(*hours, 0),
            at: percent((place as f64 + 0.5) / 12.0),
            share: number(share, 1),
            above: number(100.0 - share, 1),
        }
    });
    Some(Drawing {
        id: "year".to_owned(),
        title: "The day through the year".to_owned(),
        text: format!(
            "A column for each month, January first, as high as its day is long: from {} hours in the shortest month to {} in the longest.",
            number(shortest, 1),
            number(longest, 1)
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
pub(super) fn meals(of: &SpeciesFigures, units: System) -> Option<Drawing> {
    let spaced = of.feeding.iter().filter_map(|row| {
        let (low, high) = row.interval_days?;
        // The mark of the middle: a range of days is fed now earlier, now later.
        let middle = (low.or(high)? + high.or(low)?) / 2.0;
        let every = print::shown::<Span>(row.interval_days, units, Rounding::Nearest).first;
        (middle >= 0.5).then(|| (format!("{}, every {every}", row.stage), middle))
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
        title: "Eight weeks of meals at each stage of life".to_owned(),
        text: format!("A strip for each stage with a mark for each meal: {}.", labels.join("; ")),
        picture: Picture::Meals {
            days: STRIP_DAYS.to_string(),
            mark: number(MARK_DAYS, 2),
            stages: stages.collect(),
        },
    })
}

/// The lines on which heaters, lamps and probes stand, shares of the height; a heater below the floor stands on the last.
const LINES: [f64; 4] = [0.12, 0.4, 0.68, 0.93];

/// The enclosure of an animal from the front. None without its inside measures.
pub(super) fn front(animal: &Animal, own: &AnimalFigures, units: System) -> Option<Drawing> {
    let housing = animal.housing.as_ref()?;
    let [long, _, high] = inside_cm(housing)?;
    if long <= 0.0 || high <= 0.0 {
        return None;
    }
    let along = |cm: f64| percent((cm / long).clamp(0.0, 1.0));
    let mut parts = Vec::new();
    let mut letters = 'A'..='Z';
    for heater in &housing.heaters {
        let (Some((at, _)), Some(mark)) = (heater.at, letters.next()) else { continue };
        let line = if heater.below { LINES[3] } else { LINES[0] };
        let (mark, at, line) = (mark.to_string(), along(at.cm()), percent(line));
        parts.push(Part { mark, label: heater.kind.spelling().to_owned(), at, line });
    }
    for lamp in &housing.lamps {
        let (Some((at, _)), Some(mark)) = (lamp.at, letters.next()) else { continue };
        let (mark, at, line) = (mark.to_string(), along(at.cm()), percent(LINES[1]));
        parts.push(Part { mark, label: lamp.kind.clone(), at, line });
    }
    for (place, zone) in own.zones.iter().enumerate() {
        let Some(cm) = zone.at_cm else { continue };
        let temperature = |celsius: Option<f64>, when: &str| {
            celsius.map(|celsius| format!("{} {when}", print::temperature(Some(celsius), units)))
        };
        let mut said: Vec<String> =
            [temperature(zone.day_c, "by day"), temperature(zone.night_c, "by night")]
                .into_iter()
                .flatten()
                .collect();
        let ceiling = own.humidity.readings.iter().find(|reading| reading.zone == zone.zone);
        said.extend(ceiling.map(|reading| {
            let most = Humidity::from_percent(reading.at_most_percent);
            format!("hygrometer at most {}", print_one(most, units, Rounding::Down).first)
        }));
        parts.push(Part {
            mark: (place + 1).to_string(),
            label: std::iter::once(format!("probe, {}", zone.zone))
                .chain(said)
                .collect::<Vec<_>>()
                .join("; "),
            at: along(cm),
            line: percent(LINES[2]),
        });
    }
    let hides = housing.hides.iter().filter_map(|hide| {
        let (at, _) = hide.at?;
        let Dimensions { length, height, .. } = hide.inside?.0;
        // A hide without a height is drawn half as high as it is long, but never through the roof.
        let tall = if height.cm() > 0.0 { height.cm() } else { length.cm() / 2.0 };
        let (tall, wide) = ((tall / high).min(0.5), (length.cm() / long).min(1.0));
        let left = (at.cm() / long - wide / 2.0).clamp(0.0, 1.0 - wide);
        Some(Block {
            left: percent(left),
            long: percent(wide),
            top: percent(1.0 - tall),
            high: percent(tall),
        })
    });
    let hides: Vec<Block> = hides.collect();
    if parts.is_empty() && hides.is_empty() {
        return None;
    }
    let said: Vec<String> =
        parts.iter().map(|part| format!("{}, {}", part.mark, part.label)).collect();
    let boxes = match hides.len() {
        1 => "1 hide".to_owned(),
        many => format!("{many} hides"),
    };
    Some(Drawing {
        id: "front".to_owned(),
        title: "The enclosure from the front".to_owned(),
        text: format!(
            "The warm end is on the left. Heaters, lamps and probes: {}. On the floor: {boxes}.",
            said.join(" | ")
        ),
        picture: Picture::Front(Front {
            long: number(long, 0),
            high: number(high, 0),
            parts,
            hides,
        }),
    })
}

/// A share as per cent.
fn percent(share: f64) -> String {
    number(share * 100.0, 1)
}
