//! The first two weeks in a new home, day by day. Common practice, no source, but for the animal's own meals.

use jiff::civil::Date;

use crate::figures::AnimalFigures;
use crate::figures::calendar::days_between;
use crate::figures::plan::rest_days;
use crate::model::{Animal, Species};
use crate::quantity::Rounding;

use super::blocks::{Chapter, Fact, Shown};
use super::edition::Edition;
use super::handover_needs::{both, meal, next_meal};
use super::tables;

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
    let say = |label| edition.say(label);
    let mut chapter = Chapter::new("first-weeks", &say("handover-weeks"));
    let cool = species.temperature.cool.as_ref().or(species.temperature.water.as_ref());
    let ready = cool.map_or_else(
        || say("handover-weeks-run"),
        |cool| {
            let cool = edition.shown(cool.value.print(edition.units(), Rounding::Inward));
            edition.tell("handover-weeks-run-at", [("temperature", both(&cool).into())])
        },
    );
    chapter.facts = vec![
        Fact::plain(say("handover-weeks-before"), ready),
        Fact::plain(say("handover-weeks-daily"), say("handover-weeks-daily-do")),
        Fact::plain(say("handover-weeks-next-meal"), next_meal(edition, own)),
        Fact::plain(say("handover-weeks-refused"), say("handover-weeks-refused-do")),
    ];
    let meals = meal_days(own, as_of);
    let rest = rest_days(species);
    let rows = (1..=DAYS).map(|day| {
        let resting =
            !meals.contains(&day) && meals.iter().any(|meal| (1..=rest).contains(&(day - meal)));
        let mut parts = Vec::new();
        match day {
            1 => parts.push(
                edition.tell("handover-weeks-put-in", [("name", animal.name.as_str().into())]),
            ),
            2 => parts.push(say("handover-weeks-first-check")),
            3 => parts.push(say("handover-weeks-papers")),
            _ => {}
        }
        if let Some(first) = meals.first().filter(|first| **first <= day) {
            if *first == day {
                let meal = both(&meal(own, edition));
                parts.push(edition.tell("handover-weeks-first-meal", [("meal", meal.into())]));
            } else if meals.contains(&day) {
                parts.push(say("handover-weeks-meal"));
            }
        }
        if resting {
            parts.push(say("handover-weeks-digests"));
        } else if (day == 9 || day == DAYS) && !meals.contains(&day) {
            parts.push(say("handover-weeks-weigh"));
        } else if day >= HANDLED_FROM && !meals.contains(&day) {
            parts.push(say("handover-weeks-handle"));
        }
        if parts.is_empty() {
            parts.push(say("handover-weeks-look"));
        }
        vec![Shown::plain(day.to_string()), Shown::plain(parts.join(" "))]
    });
    let head = ["handover-weeks-day", "handover-weeks-done"];
    let table = tables::table(edition, "handover-weeks-table", &head, rows.collect());
    chapter.tables.extend(table);
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
