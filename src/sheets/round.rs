//! The work of a week for the whole collection: who is fed when and with what, sprayings, weighings, lamps, quarantine,
//! reviews and what has to be bought. It is private.

use std::collections::{BTreeMap, BTreeSet};

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::calendar::{days_after, days_between};
use crate::figures::plan;
use crate::figures::store::{Food, per_meal};
use crate::figures::{AnimalFigures, Figures};
use crate::model::{Animal, Species};

use super::blocks::{Shown, Table};
use super::due::{self, What};
use super::edition::Edition;
use super::frame::Frame;
use super::print;
use super::sitter::in_quarantine;
use super::sitter_days::{is_frozen, meal};

/// The work of a week.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RoundSheet {
    /// The frame.
    pub frame: Frame,
    /// From when to when.
    pub span: String,
    /// The days with their work.
    pub days: Vec<WorkDay>,
    /// Work that the week holds once.
    pub once: Vec<Task>,
    /// Cleaning that falls into the week.
    pub cleaning: Vec<String>,
    /// Animals in quarantine, in the order of the round.
    pub quarantine: Option<Table>,
    /// What has to be in store.
    pub store: Option<Table>,
}

/// One day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct WorkDay {
    /// The day.
    pub day: String,
    /// What is done.
    pub tasks: Vec<Task>,
}

/// One thing to do.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Task {
    /// For whom.
    pub who: String,
    /// What.
    pub what: String,
}

/// The Monday of the week that a day is in.
pub fn monday(day: Date) -> Date {
    days_after(day, -f64::from(day.weekday().to_monday_zero_offset())).unwrap_or(day)
}

/// Builds the work of the week that begins on a Monday.
pub fn round(edition: &Edition<'_>, figures: &Figures, monday: Date) -> RoundSheet {
    let sunday = days_after(monday, 6.0).unwrap_or(monday);
    let mut kept: Vec<(bool, &Animal, &Species, &AnimalFigures)> = edition
        .animals
        .keys()
        .filter_map(|key| super::of_animal(edition, figures, key))
        .filter(|(animal, ..)| animal.is_kept())
        .map(|(animal, species, (own, _))| {
            (in_quarantine(animal, own, monday), animal, species, own)
        })
        .collect();
    kept.sort_by(|a, b| a.0.cmp(&b.0).then_with(|| a.1.name.cmp(&b.1.name)));
    let days = (0..7).filter_map(|number| days_after(monday, f64::from(number)));
    let mut days: Vec<WorkDay> =
        days.map(|date| WorkDay { day: edition.short_date(date), tasks: Vec::new() }).collect();
    let say = |label| edition.say(label);
    let mut once = Vec::new();
    let mut week: BTreeMap<String, Food> = BTreeMap::new();
    for (apart, animal, species, own) in &kept {
        // One day more than the week, for what has to thaw on its last evening.
        let after = days_after(sunday, 1.0).unwrap_or(sunday);
        let plan = plan::plan(animal, species, own, figures.as_of, (monday, after), false);
        let who = if *apart {
            edition.tell("round-quarantined", [("name", animal.name.as_str().into())])
        } else {
            animal.name.clone()
        };
        for (number, day) in plan.days.iter().enumerate() {
            let mut add = |at: Option<usize>, what: String| {
                if let Some(work) = at.and_then(|at| days.get_mut(at)) {
                    work.tasks.push(Task { who: who.clone(), what });
                }
            };
            if day.meal && number < 7 {
                let (pieces, mass_g) = per_meal(edition, animal, own);
                let name = own.feeding.meal.clone().unwrap_or_else(|| say("round-store-unnamed"));
                let food = week.entry(name).or_default();
                food.meals += 1;
                food.pieces += f64::from(pieces);
                food.mass_g += mass_g;
            }
            if day.meal {
                let meal = || [("meal", meal(own, edition).into())];
                add(Some(number), edition.tell("round-feed", meal()));
                if is_frozen(animal, own) {
                    add(number.checked_sub(1), edition.tell("round-thaw", meal()));
                }
            }
            // What is sprayed every day stands once, not seven times.
            if day.sprayings > 0 && !sprayed_daily(animal) {
                add(Some(number), say("round-spray"));
            }
        }
        let mut add = |what: String| once.push(Task { who: who.clone(), what });
        if sprayed_daily(animal) {
            let times = plan.days.first().map_or(1, |day| day.sprayings);
            let times = ("times", times.into());
            add(match own.moisture.as_ref().and_then(|moisture| moisture.spray_ml) {
                None => edition.tell("round-spray-daily", [times]),
                Some(ml) => {
                    let each = ("each", edition.number(ml, 0).into());
                    edition.tell("round-spray-daily-each", [times, each])
                }
            });
        }
        if plan.food == plan::Food::NotKnown {
            add(say("round-meals-not-known"));
        }
        let weigh = plan::weigh_due(animal, species, own, figures.as_of);
        if let Some(due) = weigh.filter(|due| *due <= sunday) {
            let days = ("days", plan::weigh_every_days(species, own).into());
            add(edition.tell("round-weigh", [("date", edition.long_date(due).into()), days]));
        }
        for due in due::once(edition, animal, species, own, figures.as_of) {
            // A review belongs to the species and stands once below.
            if due.date <= sunday && due.what != What::Review {
                let date = ("date", edition.long_date(due.date).into());
                add(edition.tell("round-due", [("task", due.title.into()), date]));
            }
        }
    }
    once.extend(reviews(edition, sunday));
    let [from, until] = [monday, sunday].map(|date| edition.long_date(date));
    let title = edition.tell("round-title", [("date", from.as_str().into())]);
    RoundSheet {
        frame: Frame::new(edition, &super::round_path(monday), true, &title, &title, figures.as_of),
        span: edition.tell("round-span", [("from", from.into()), ("until", until.into())]),
        days,
        once,
        quarantine: quarantine(edition, &kept, monday),
        cleaning: cleaning(edition, figures, monday),
        store: store(figures, &week, edition),
    }
}

fn sprayed_daily(animal: &Animal) -> bool {
    let every = animal.housing.as_ref().and_then(|housing| housing.spray_every);
    every.is_some_and(|(span, _)| span.days() <= 1.0)
}

/// Species with an animal here whose care sheet has to be gone through.
fn reviews(edition: &Edition<'_>, sunday: Date) -> Vec<Task> {
    let every = edition.site.review_every.days();
    let kept = |key: &str| {
        edition.animals.values().any(|animal| animal.is_kept() && animal.species.name == key)
    };
    let due = edition.species.iter().filter(|(key, _)| kept(key)).filter_map(|(_, species)| {
        let (reviewed, _) = species.reviewed?;
        let due = days_after(reviewed, every).filter(|due| *due <= sunday)?;
        Some(Task {
            who: edition.name(species).to_owned(),
            what: edition.tell("round-review", [("date", edition.long_date(due).into())]),
        })
    });
    due.collect()
}

/// Those in quarantine, the one with fewest days left first: it has shown itself well for longest.
fn quarantine(
    edition: &Edition<'_>,
    kept: &[(bool, &Animal, &Species, &AnimalFigures)],
    monday: Date,
) -> Option<Table> {
    let mut apart: Vec<_> = kept.iter().filter(|(apart, ..)| *apart).collect();
    apart.sort_by_key(|(.., own)| (own.quarantine_until.is_none(), own.quarantine_until));
    let rows: Vec<Vec<Shown>> = apart
        .iter()
        .map(|(_, animal, species, own)| {
            let until = own.quarantine_until;
            vec![
                Shown::plain(animal.name.clone()),
                Shown::plain(edition.name(species)),
                until.map_or_else(
                    || edition.missing(),
                    |until| Shown::plain(edition.long_date(until)),
                ),
                until.map_or_else(
                    || edition.missing(),
                    |until| Shown::plain(days_between(monday, until).max(0).to_string()),
                ),
            ]
        })
        .collect();
    let head = ["round-animal", "round-species", "round-until", "round-days-left"];
    let head = head.map(|head| edition.say(head));
    Table::of(edition.say("round-quarantine-order"), &head.each_ref().map(String::as_str), rows)
}

/// Cleaning: what every week asks, and what the first week of a month adds. Common practice, no source.
fn cleaning(edition: &Edition<'_>, figures: &Figures, monday: Date) -> Vec<String> {
    let mut lines =
        vec![edition.say("round-cleaning-everybody"), edition.say("round-cleaning-cloths")];
    if monday.day() > 7 {
        return lines;
    }
    lines.push(edition.say("round-cleaning-month"));
    let mixed = figures.store.mixtures.iter().filter_map(|(name, mixture)| {
        let mixture = mixture.as_ref().ok()?;
        let [bottle, water] =
            [mixture.bottle_ml, mixture.water_ml].map(|ml| edition.number(ml, 0).into());
        let parts = [("name", name.as_str().into()), ("bottle", bottle), ("water", water)];
        Some(edition.tell("round-mixture", parts))
    });
    lines.extend(mixed);
    lines
}

/// What the week eats, and what the next weeks eat, food by food.
fn store(figures: &Figures, week: &BTreeMap<String, Food>, edition: &Edition<'_>) -> Option<Table> {
    let none = Food::default();
    let amounts = |food: &Food| {
        if food.meals == 0 {
            return [Shown::plain("–"), Shown::plain("–")];
        }
        let pieces = Some(food.pieces.round()).filter(|pieces| *pieces > 0.0);
        let pieces = pieces.map(|pieces| edition.tell("round-pieces", [("pieces", pieces.into())]));
        let meals = edition.tell("round-meals", [("meals", food.meals.into())]);
        let eaten: Vec<String> = std::iter::once(meals).chain(pieces).collect();
        let mass = if food.mass_g > 0.0 {
            print::mass(food.mass_g, edition)
        } else {
            Shown::plain(edition.say("round-not-weighed"))
        };
        [Shown::plain(eaten.join(", ")), mass]
    };
    let names: BTreeSet<&String> = week.keys().chain(figures.store.food.keys()).collect();
    let rows = names.into_iter().map(|name| {
        let now = amounts(week.get(name).unwrap_or(&none));
        let ahead = amounts(figures.store.food.get(name).unwrap_or(&none));
        std::iter::once(Shown::plain(name.clone())).chain(now).chain(ahead).collect()
    });
    let weeks = || ("weeks", figures.store.weeks.into());
    let date = ("date", edition.long_date(figures.as_of).into());
    let caption = edition.tell("round-store-weeks", [weeks(), date]);
    let [food, now, mass] =
        ["round-store-food", "round-store-now", "round-store-mass"].map(|head| edition.say(head));
    let ahead = edition.tell("round-store-ahead", [weeks()]);
    Table::of(caption, &[&*food, &now, &mass, &ahead, &mass], rows.collect())
}
