//! A line that is about to be written into a log: whether it can be so, and what is doubtful about it.

use jiff::civil::Date;

use crate::figures::calendar::days_between;
use crate::figures::plan::rest_days;
use crate::model::log::{Entry, Event};
use crate::model::{Animal, Species};

/// How many times the last value a new one may be, either way, before a slipped decimal point is more likely than growth.
const TIMES: f64 = 5.0;

/// Finds what is doubtful about a line for an animal's log, a sentence each.
pub fn doubts(
    animal: &Animal,
    species: Option<&Species>,
    entry: &Entry,
    today: Date,
) -> Vec<String> {
    let mut found = Vec::new();
    if entry.date > today {
        found.push(format!(
            "{} is after today, {today}; until it comes, a compile stops at this line",
            entry.date
        ));
    }
    let last_line = animal.log.iter().map(|line| line.date).max();
    if let Some(last) = last_line.filter(|last| entry.date < *last) {
        found.push(format!("{} is before the last line of the log, {last}", entry.date));
    }
    match &entry.event {
        Event::Weight(mass) => found.extend(far_off(
            "weight",
            "g",
            mass.grams(),
            animal.weights().rfind(|(date, _)| *date <= entry.date).map(|(_, mass)| mass.grams()),
        )),
        Event::Length(length) => found.extend(far_off(
            "length",
            "cm",
            length.cm(),
            animal.lengths().rfind(|(date, _)| *date <= entry.date).map(|(_, cm)| cm.cm()),
        )),
        Event::Meal { .. } => found.extend(digesting(animal, species, entry.date)),
        _ => {}
    }
    found
}

fn far_off(what: &str, unit: &str, value: f64, last: Option<f64>) -> Option<String> {
    let last = last.filter(|last| *last > 0.0)?;
    let times = value / last;
    if (1.0 / TIMES..=TIMES).contains(&times) {
        return None;
    }
    Some(format!("the last {what} was {last:.1} {unit} and this one is {value:.1} {unit}"))
}

fn digesting(animal: &Animal, species: Option<&Species>, date: Date) -> Option<String> {
    let rest = rest_days(species?);
    let eaten = animal
        .meals()
        .filter(|(_, _, _, outcome)| *outcome != crate::model::log::MealOutcome::Refused);
    let last = eaten.map(|(day, ..)| day).filter(|day| *day <= date).max()?;
    let days = days_between(last, date);
    (days < rest).then(|| {
        format!(
            "it ate {days} days before, on {last}, and is left alone for {rest} days after a meal"
        )
    })
}
