//! The meals of the last year on a strip: a mark for each on its day, read without colour. Every one stands in a table too.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::calendar::{days_after, days_between};
use crate::figures::working::number;
use crate::model::Animal;
use crate::model::log::MealOutcome;

use super::chart::{Mark, month_marks};
use super::edition::Edition;

/// How many days it shows.
const DAYS: f64 = 365.0;

/// A strip of meals. Places are shares of its width in per cent.
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
}

/// The strip of an animal's meals in the year up to a day; none where it was offered nothing.
pub(super) fn meal_strip(edition: &Edition<'_>, animal: &Animal, as_of: Date) -> Option<MealStrip> {
    let first = days_after(as_of, -DAYS)?;
    let meals: Vec<_> =
        animal.meals().filter(|(date, ..)| (first..=as_of).contains(date)).collect();
    if meals.is_empty() {
        return None;
    }
    let x = |date: Date| number(f64::from(days_between(first, date)) / DAYS * 100.0, 2);
    let of = |wanted: MealOutcome| -> Vec<String> {
        meals.iter().filter(|(.., outcome)| *outcome == wanted).map(|(date, ..)| x(*date)).collect()
    };
    let (taken, part, refused) =
        (of(MealOutcome::Taken), of(MealOutcome::Part), of(MealOutcome::Refused));
    let across = month_marks(edition, first, as_of).into_iter().map(|(date, label)| Mark {
        x: x(date),
        y: "100".to_owned(),
        label,
    });
    Some(MealStrip {
        says: edition.tell(
            "chart-meals-says",
            [
                ("count", meals.len().into()),
                ("first", edition.long_date(first).into()),
                ("last", edition.long_date(as_of).into()),
                ("taken", taken.len().into()),
                ("part", part.len().into()),
                ("refused", refused.len().into()),
            ],
        ),
        across: across.collect(),
        taken,
        part,
        refused,
    })
}
