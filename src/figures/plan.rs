//! What is due on each day of a span: meals, rest after them, sprayings, and the next weighing.
//!
//! Days are counted from the log and the animal's own rhythm. What is overdue is taken to be done today. Nothing is rounded to
//! a shorter interval than is given: a part of a day makes the next day.

use jiff::civil::Date;

use crate::model::log::Event;
use crate::model::{Animal, Species};

use super::animal::AnimalFigures;
use super::calendar::{days_after, days_between};

/// What is due on one day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Day {
    /// The day.
    pub date: Date,
    /// Whether a meal is due.
    pub meal: bool,
    /// Whether it still digests an earlier one and is left alone.
    pub resting: bool,
    /// How many sprayings are due.
    pub sprayings: u32,
}

/// How an animal is fed over a span of days.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Food {
    /// Meals are due on the days that say so.
    AsDue,
    /// The next meal falls after the span.
    NoneDue,
    /// No meal at all: the whole span lies inside the normal fast of its species.
    Skipped {
        /// Days without food on the last day of the span.
        days: i32,
        /// The species' normal fast, days.
        limit_days: f64,
    },
    /// The log holds no meal, or no interval is given.
    NotKnown,
}

/// The plan of one animal.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// How it is fed.
    pub food: Food,
    /// The last meal before the span, eaten or due.
    pub last_before: Option<Date>,
    /// Every day of the span.
    pub days: Vec<Day>,
}

/// Only an animal whose meals lie at least so many days apart skips one: whatever eats every day or two would go without many.
const SKIPS_FROM_DAYS: f64 = 7.0;

/// How many of its last sheds tell when the next one may come.
const LAST_SHEDS: usize = 4;

/// The longest span that is planned, days.
pub const LONGEST_DAYS: i32 = 60;

/// Plans the days from one to another, both among them.
///
/// Meals follow each other at the shortest interval, from the first due day, or from `as_of` where that has passed. With
/// `may_skip`, an adult that eats weekly or less often and whose days without food stay inside the normal fast of its species to the end of the span is not fed:
/// a missed meal is less of a risk than a meal given by somebody who does not know the animal (common practice, no source).
pub fn plan(
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
    as_of: Date,
    (from, until): (Date, Date),
    may_skip: bool,
) -> Plan {
    let meals = meals(own, as_of, until);
    let last_before = meals
        .iter()
        .flatten()
        .copied()
        .filter(|date| *date < from)
        .max()
        .or(own.feeding.last_eaten.filter(|date| *date < from));
    let inside = meals.as_ref().is_some_and(|meals| meals.iter().any(|date| *date >= from));
    let skipped = skipped(species, own, last_before, until).filter(|_| may_skip && inside);
    let food = match (&meals, skipped) {
        (None, _) => Food::NotKnown,
        (Some(_), Some((days, limit_days))) => Food::Skipped { days, limit_days },
        (Some(_), None) if inside => Food::AsDue,
        (Some(_), None) => Food::NoneDue,
    };
    let fed: Vec<Date> = match food {
        Food::AsDue | Food::NoneDue => meals.unwrap_or_default(),
        _ => last_before.into_iter().collect(),
    };
    let rest_days = rest_days(species);
    let span = days_between(from, until).max(0);
    let day = |number: i32| {
        let date = days_after(from, f64::from(number))?;
        let meal = food == Food::AsDue && fed.contains(&date);
        let since = |meal: &Date| days_between(*meal, date);
        let resting = !meal
            && last_before.iter().chain(&fed).any(|meal| (1..=rest_days).contains(&since(meal)));
        Some(Day { date, meal, resting, sprayings: sprayings(animal, number) })
    };
    Plan { food, last_before, days: (0..=span).filter_map(day).collect() }
}

/// The days on which a meal is due, from today on; none where that cannot be told.
fn meals(own: &AnimalFigures, as_of: Date, until: Date) -> Option<Vec<Date>> {
    let feeding = &own.feeding;
    let (shortest, longest) = feeding.interval_days?;
    let every = shortest.or(longest)?.ceil().max(1.0);
    let mut due = feeding.next_due?.max(as_of);
    let mut meals = Vec::new();
    while due <= until {
        meals.push(due);
        due = days_after(due, every)?;
    }
    Some(meals)
}

/// Days without food at the end and the limit, for a grown animal that stays inside it.
fn skipped(
    species: &Species,
    own: &AnimalFigures,
    last: Option<Date>,
    until: Date,
) -> Option<(i32, f64)> {
    if is_young(species, own) {
        return None;
    }
    let (shortest, longest) = own.feeding.interval_days?;
    let limit = own.upkeep.fast_limit_days?;
    let days = days_between(last?, until);
    let seldom = shortest.or(longest)? >= SKIPS_FROM_DAYS;
    (seldom && f64::from(days) <= limit).then_some((days, limit))
}

/// Whether it is in a stage before the grown one; an animal whose stage is not known counts as young.
pub fn is_young(species: &Species, own: &AnimalFigures) -> bool {
    let grown = species
        .grown_stage()
        .and_then(|grown| species.feeding.iter().position(|stage| stage == grown));
    match (own.feeding.stage, grown) {
        (Some(stage), Some(grown)) => stage < grown,
        _ => true,
    }
}

/// How many days after a meal it is left alone.
pub fn rest_days(species: &Species) -> i32 {
    let rest = species.rest_after_meal.as_ref();
    let days = rest
        .and_then(|cited| cited.value.high().or(cited.value.low()))
        .map_or(0.0, |span| span.days());
    days.ceil().clamp(0.0, 60.0) as i32
}

/// Sprayings on the day of that number: several a day, or one every so many days.
fn sprayings(animal: &Animal, number: i32) -> u32 {
    let every = animal.housing.as_ref().and_then(|housing| housing.spray_every);
    let Some(days) = every.map(|(span, _)| span.days()).filter(|days| *days > 0.0) else {
        return 0;
    };
    if days <= 1.0 {
        return (1.0 / days).round().clamp(1.0, 24.0) as u32;
    }
    u32::from(number % (days.floor() as i32) == 0)
}

/// The days between which the next shed may come: the shortest and the longest of its own last intervals, after its last shed.
///
/// None for an animal with fewer than three sheds in its log, and where even the latest day has passed. From its own log alone;
/// common practice, no source.
pub fn shed_expected(animal: &Animal, as_of: Date) -> Option<(Date, Date)> {
    let sheds = animal.log.iter().filter(|entry| matches!(entry.event, Event::Shed { .. }));
    let days: Vec<Date> = sheds.map(|entry| entry.date).filter(|date| *date <= as_of).collect();
    let last = *days.last()?;
    let newest = days.len().saturating_sub(LAST_SHEDS);
    let apart = days.get(newest..)?.windows(2);
    let apart: Vec<i32> = apart.map(|pair| days_between(pair[0], pair[1])).collect();
    if apart.len() < 2 {
        return None;
    }
    let after = |days: &i32| days_after(last, f64::from(*days));
    let (first, latest) = (after(apart.iter().min()?)?, after(apart.iter().max()?)?);
    (latest >= as_of).then_some((first.max(as_of), latest))
}

/// From weighing to weighing, days: a young animal weekly, a grown one monthly; common practice, no source.
pub fn weigh_every_days(species: &Species, own: &AnimalFigures) -> i32 {
    if is_young(species, own) { 7 } else { 30 }
}

/// The day on which the next weighing is due; today for an animal that was never weighed.
pub fn weigh_due(
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
    as_of: Date,
) -> Option<Date> {
    let last = animal.weights().map(|(date, _)| date).filter(|date| *date <= as_of).max();
    match last {
        Some(last) => days_after(last, f64::from(weigh_every_days(species, own))),
        None => Some(as_of),
    }
}
