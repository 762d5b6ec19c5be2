//! The days of a stay: what is due on each, as boxes to tick and as entries of a calendar.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::AnimalFigures;
use crate::figures::plan::{Day, Food, Plan};
use crate::figures::working::number;
use crate::model::Animal;
use crate::quantity::{Mass, Rounding, System};

use super::blocks::Shown;
use super::frame::{long_date, short_date};
use super::print;

/// A day with its boxes.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct DayRow {
    /// The day.
    pub day: String,
    /// Water, spraying, readings and food; none where nothing is due.
    pub boxes: Vec<DayBox>,
}

/// One cell of a day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct DayBox {
    /// The heading of its column.
    pub label: String,
    /// Whether there is a box to tick.
    pub tick: bool,
    /// What stands beside it.
    pub text: String,
}

/// An entry of a calendar: a whole day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Event {
    /// What tells it apart for good.
    pub uid: String,
    /// The day.
    pub date: Date,
    /// Its title.
    pub title: String,
    /// What to do.
    pub text: String,
}

/// A meal: what and how much.
pub(super) fn meal(own: &AnimalFigures, units: System) -> String {
    let feeding = &own.feeding;
    let mass = feeding
        .mass_g
        .and_then(print::range::<Mass>)
        .map(|range| range.print(units, Rounding::Nearest).into());
    let what = feeding.meal.clone().map(Shown::plain);
    let parts: Vec<Shown> = what.into_iter().chain(mass).collect();
    if parts.is_empty() {
        "as the keeper has shown".to_owned()
    } else {
        print::join(&parts, ", ").to_string()
    }
}

/// Whether a meal is frozen prey that has to thaw; whole mammals and birds are bought frozen.
pub(super) fn is_frozen(own: &AnimalFigures) -> bool {
    let meal = own.feeding.meal.as_deref().unwrap_or_default().to_lowercase();
    let whole = ["mouse", "mice", "rat", "chick", "rabbit", "quail"];
    meal.split(|c: char| !c.is_alphabetic()).any(|word| whole.contains(&word) || word == "rats")
}

/// How it is fed over the stay, in a sentence.
pub(super) fn feeding(own: &AnimalFigures, plan: &Plan, units: System) -> String {
    let last = plan.last_before.map(|date| format!("; last meal {}", long_date(date)));
    let last = last.unwrap_or_default();
    match plan.food {
        Food::Skipped { days, limit_days } => format!(
            "no feeding while the keeper is away: on the last day it will have gone {days} days without food, and up to {} is normal for its species{last}",
            print::days(limit_days).first
        ),
        Food::NoneDue => format!("no meal is due in these days{last}"),
        Food::NotKnown => {
            "the log does not tell when a meal is due: ask the keeper before they leave".to_owned()
        }
        Food::AsDue => {
            let thaw = if is_frozen(own) {
                ". Thaw it overnight in the refrigerator, in its bag; warm the bag in hand-warm water, never in a microwave; offer it with tongs"
            } else {
                ""
            };
            format!(
                "{} on the days that say so{thaw}. Take back what it leaves{last}",
                meal(own, units)
            )
        }
    }
}

/// Every day with its boxes.
pub(super) fn rows(own: &AnimalFigures, plan: &Plan, units: System) -> Vec<DayRow> {
    plan.days.iter().map(|day| row(day, own, plan, units)).collect()
}

fn row(day: &Day, own: &AnimalFigures, plan: &Plan, units: System) -> DayRow {
    let tick = |label: &str, text: String| DayBox { label: label.to_owned(), tick: true, text };
    let blank = |label: &str, text: &str| DayBox {
        label: label.to_owned(),
        tick: false,
        text: text.to_owned(),
    };
    let spray = if day.sprayings == 0 {
        blank("Spray", "–")
    } else {
        let each = own.moisture.as_ref().and_then(|moisture| moisture.spray_ml);
        let each = each.map(|ml| format!(" of {} ml", number(ml, 0))).unwrap_or_default();
        tick("Spray", format!("{} ×{each}", day.sprayings))
    };
    let food = match plan.food {
        _ if day.meal => tick("Food", meal(own, units)),
        Food::NotKnown => blank("Food", "ask the keeper"),
        _ if day.resting => blank("Food", "nothing: it digests, leave it alone"),
        Food::Skipped { .. } => blank("Food", "no feeding"),
        _ => blank("Food", "nothing"),
    };
    let next_meal = plan.days.iter().any(|other| {
        other.meal && crate::figures::calendar::days_between(day.date, other.date) == 1
    });
    let food = if next_meal && is_frozen(own) && !day.meal {
        DayBox { text: format!("{}; this evening: thaw tomorrow's", food.text), ..food }
    } else {
        food
    };
    DayRow {
        day: short_date(day.date),
        boxes: vec![
            tick("Water", "fresh".to_owned()),
            spray,
            tick("Readings", "right".to_owned()),
            food,
            tick("Seen, shut, counted", String::new()),
        ],
    }
}

/// The meals of a stay, and one entry on its first day for an animal that is not fed.
pub(super) fn events(
    key: &str,
    animal: &Animal,
    own: &AnimalFigures,
    plan: &Plan,
    units: System,
) -> Vec<Event> {
    let event = |date: Date, what: &str, title: String, text: String| Event {
        uid: format!("{date}.{key}.{what}@wardsheet"),
        date,
        title,
        text,
    };
    let mut events: Vec<Event> = plan
        .days
        .iter()
        .filter(|day| day.meal)
        .map(|day| {
            let title = format!("Feed {}", animal.name);
            event(day.date, "meal", title, meal(own, units))
        })
        .collect();
    if let (true, Some(first)) = (events.is_empty(), plan.days.first()) {
        let title = format!("{}: no meal", animal.name);
        events.push(event(first.date, "no-meal", title, feeding(own, plan, units)));
    }
    let sprayed = plan.days.iter().filter(|day| day.sprayings > 0 && !day.meal);
    events.extend(sprayed.map(|day| {
        event(day.date, "spray", format!("Spray {}", animal.name), format!("{} ×", day.sprayings))
    }));
    events
}
