//! The first two weeks in a new home, day by day. Common practice, no source, but for the animal's own meals.

use jiff::civil::Date;

use crate::figures::AnimalFigures;
use crate::figures::calendar::days_between;
use crate::figures::plan::rest_days;
use crate::model::{Animal, Species};
use crate::quantity::Rounding;

use super::blocks::{Chapter, Fact, Shown, Table};
use super::edition::Edition;
use super::handover_needs::{both, meal, next_meal};

/// How many days the chapter tells of.
const DAYS: i32 = 14;
/// The longest that a first meal waits for an animal to settle, days.
const SETTLES_DAYS: i32 = 7;
/// The first day on which it may be taken out.
const HANDLED_FROM: i32 = 10;

/// The first two weeks, if it moves on the day of the sheet.
pub(super) fn first_weeks(
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
    edition: &Edition<'_>,
    as_of: Date,
) -> Chapter {
    let mut chapter = Chapter::new("first-weeks", "The first two weeks");
    let cool = species.temperature.cool.as_ref().or(species.temperature.water.as_ref());
    let ready = cool.map(|cool| {
        let cool: Shown = edition.shown(cool.value.print(edition.units(), Rounding::Inward));
        format!(", with the cool side or the water at {}", both(&cool))
    });
    chapter.facts = vec![
        Fact::plain(
            "Before it comes",
            format!(
                "Run the enclosure for some days until its readings hold by day and by night{}.",
                ready.unwrap_or_default()
            ),
        ),
        Fact::plain(
            "Every day",
            "Fresh water, readings, doors and locks, a look without opening more than you must. Hands washed after it.",
        ),
        Fact::plain("Next meal due where it was", next_meal(edition, own)),
        Fact::plain(
            "A meal it refuses",
            "is taken away and offered again at the next turn, not sooner",
        ),
    ];
    let meals = meal_days(own, as_of);
    let rest = rest_days(species);
    let rows = (1..=DAYS).map(|day| {
        let resting = !meals.contains(&day)
            && meals.iter().any(|meal| (1..=rest).contains(&(day - meal)));
        let mut parts = Vec::new();
        match day {
            1 => parts.push(format!("Put {} in, close up, leave it alone. No food, no handling", animal.name)),
            2 => parts.push("Note the readings by day and by night. Ring a vet who treats reptiles and amphibians for a first check with a sample of droppings".to_owned()),
            3 => parts.push("Put the papers away, and report the animal where local law asks for it".to_owned()),
            _ => {}
        }
        if let Some(first) = meals.first().filter(|first| **first <= day) {
            if *first == day {
                parts.push(format!("Offer the first meal: {}. Take back what it leaves", both(&meal(own, edition))));
            } else if meals.contains(&day) {
                parts.push("Offer the next meal".to_owned());
            }
        }
        if resting {
            parts.push("It digests: leave it alone".to_owned());
        } else if (day == 9 || day == DAYS) && !meals.contains(&day) {
            parts.push("Weigh it and write it down".to_owned());
        } else if day >= HANDLED_FROM && !meals.contains(&day) {
            parts.push("Short, calm handling, if it is of a kind that bears it".to_owned());
        }
        if parts.is_empty() {
            parts.push("Look only: eyes, skin, breath, droppings".to_owned());
        }
        vec![Shown::plain(day.to_string()), Shown::plain(format!("{}.", parts.join(". ")))]
    });
    chapter.tables.extend(Table::of("Day by day", &["Day", "What is done"], rows.collect()));
    chapter
}

/// The days on which it is fed: not before it is due, nor before it has settled. What eats every few days waits for two of its
/// turns, what eats seldom for a week.
fn meal_days(own: &AnimalFigures, as_of: Date) -> Vec<i32> {
    let Some((shortest, longest)) = own.feeding.interval_days else { return Vec::new() };
    let Some(every) = shortest.or(longest).map(|days| days.ceil().clamp(1.0, 366.0) as i32) else {
        return Vec::new();
    };
    let settled = (2 * every).min(SETTLES_DAYS) + 1;
    let due = own.feeding.next_due.map_or(settled, |due| days_between(as_of, due) + 1);
    let mut day = settled.max(due);
    let mut days = Vec::new();
    while day <= DAYS {
        days.push(day);
        day += every;
    }
    days
}
