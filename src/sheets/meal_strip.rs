//! The meals of the last year on a strip: a mark for each on its day, read without colour. Every one stands in a table too.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::calendar::{days_after, days_between};
use crate::figures::working::number;
use crate::model::Animal;
use crate::model::log::MealOutcome;

use super::chart::{Mark, month_marks};
use super::frame::long_date;
use super::record::counted;

/// The sides of the strip and the room for its scale, in its own units.
const WIDTH: f64 = 640.0;
const LEFT: f64 = 4.0;
const RIGHT: f64 = 14.0;
const FOOT: f64 = 40.0;
/// How many days it shows.
const DAYS: f64 = 365.0;

/// A strip of meals.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MealStrip {
    /// The same in a sentence.
    pub says: String,
    /// Where a meal was eaten: from the left.
    pub taken: Vec<String>,
    /// Where it was eaten in part.
    pub part: Vec<String>,
    /// Where it was refused.
    pub refused: Vec<String>,
    /// Marks of the scale.
    pub across: Vec<Mark>,
    /// Where the scale runs: left, right.
    pub frame: [String; 2],
}

/// The strip of an animal's meals in the year up to a day; none where it was offered nothing.
pub(super) fn meal_strip(animal: &Animal, as_of: Date) -> Option<MealStrip> {
    let first = days_after(as_of, -DAYS)?;
    let meals: Vec<_> =
        animal.meals().filter(|(date, ..)| (first..=as_of).contains(date)).collect();
    if meals.is_empty() {
        return None;
    }
    let x = |date: Date| {
        let share = f64::from(days_between(first, date)) / DAYS;
        number(LEFT + (WIDTH - LEFT - RIGHT) * share, 1)
    };
    let of = |wanted: MealOutcome| -> Vec<String> {
        meals.iter().filter(|(.., outcome)| *outcome == wanted).map(|(date, ..)| x(*date)).collect()
    };
    let (taken, part, refused) =
        (of(MealOutcome::Taken), of(MealOutcome::Part), of(MealOutcome::Refused));
    let across = month_marks(first, as_of).into_iter().map(|(date, label)| Mark {
        x: x(date),
        y: number(FOOT, 1),
        label,
    });
    Some(MealStrip {
        says: format!(
            "{} offered from {} to {}: {} taken, {} in part, {} refused.",
            counted(meals.len(), "meal"),
            long_date(first),
            long_date(as_of),
            taken.len(),
            part.len(),
            refused.len()
        ),
        across: across.collect(),
        frame: [number(LEFT, 1), number(WIDTH - RIGHT, 1)],
        taken,
        part,
        refused,
    })
}
