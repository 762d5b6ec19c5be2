//! The days of a stay: what is due on each, as boxes to tick and as entries of a calendar.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::AnimalFigures;
use crate::figures::plan::{Day, Food, Plan};
use crate::figures::working::number;
use crate::model::Animal;
use crate::quantity::{Mass, Rounding};

use super::blocks::Shown;
use super::edition::Edition;
use super::print;

/// A day of one animal with its boxes.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct DayRow {
    /// The animal.
    pub who: String,
    /// Whether it is seen to last, with tools of its own.
    pub apart: bool,
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
    /// How it comes again.
    pub repeat: Option<Repeat>,
}

/// How an entry comes again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Repeat {
    /// From day to day.
    pub every_days: u32,
    /// How often in all.
    pub times: u32,
}

/// A day of a stay with a line for every animal.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SitterDay {
    /// The day.
    pub day: String,
    /// The animals in the order in which they are seen to.
    pub animals: Vec<DayRow>,
}

/// A meal: what and how much.
pub(super) fn meal(own: &AnimalFigures, edition: &Edition<'_>) -> String {
    let feeding = &own.feeding;
    let mass = feeding
        .mass_g
        .and_then(print::range::<Mass>)
        .map(|range| edition.shown(range.print(edition.units(), Rounding::Nearest)));
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
pub(super) fn feeding(own: &AnimalFigures, plan: &Plan, edition: &Edition<'_>) -> String {
    let last = plan.last_before.map(|date| format!("; last meal {}", edition.long_date(date)));
    let last = last.unwrap_or_default();
    match plan.food {
        Food::Skipped { days, limit_days } => format!(
            "no feeding while the keeper is away: on the last day it will have gone {days} days without food, and up to {} is normal for its species{last}",
            print::days(limit_days, edition).first
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
                meal(own, edition)
            )
        }
    }
}

/// One animal on every day of a stay.
pub(super) struct Guesting<'a> {
    pub(super) animal: &'a Animal,
    pub(super) own: &'a AnimalFigures,
    pub(super) plan: Plan,
    pub(super) apart: bool,
    /// The days between which a shed may come.
    pub(super) shed: Option<(Date, Date)>,
}

/// Every day of a stay, the animals of each in their order.
pub(super) fn days(guests: &[Guesting<'_>], edition: &Edition<'_>) -> Vec<SitterDay> {
    let Some(first) = guests.first() else { return Vec::new() };
    let day = |(number, day): (usize, &Day)| {
        let rows = guests
            .iter()
            .filter_map(|guest| Some(row(guest.plan.days.get(number)?, guest, edition)));
        SitterDay { day: edition.short_date(day.date), animals: rows.collect() }
    };
    first.plan.days.iter().enumerate().map(day).collect()
}

fn row(day: &Day, guest: &Guesting<'_>, edition: &Edition<'_>) -> DayRow {
    let Guesting { animal, own, plan, apart, shed } = guest;
    let tick = |label: &str, text: String| DayBox { label: label.to_owned(), tick: true, text };
    let blank = |label: &str, text: &str| DayBox {
        label: label.to_owned(),
        tick: false,
        text: text.to_owned(),
    };
    let spray = match spraying(day, own) {
        None => blank("Spray", "–"),
        Some(text) => tick("Spray", text),
    };
    let food = match plan.food {
        _ if day.meal => tick("Food", meal(own, edition)),
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
    let sheds = shed.is_some_and(|(from, until)| (from..=until).contains(&day.date));
    let seen = if sheds { "a shed may come".to_owned() } else { String::new() };
    DayRow {
        who: animal.name.clone(),
        apart: *apart,
        boxes: vec![
            tick("Water", "fresh".to_owned()),
            spray,
            tick("Readings", "right".to_owned()),
            food,
            tick("Seen, shut, counted", seen),
        ],
    }
}

/// The sprayings of a day; none where nothing is sprayed.
fn spraying(day: &Day, own: &AnimalFigures) -> Option<String> {
    let each = own.moisture.as_ref().and_then(|moisture| moisture.spray_ml);
    let each = each.map(|ml| format!(" of {} ml", number(ml, 0))).unwrap_or_default();
    (day.sprayings > 0).then(|| format!("{} ×{each}", day.sprayings))
}

/// An entry a day, with a line for every animal. The days of a stay are its identifiers, so that a sheet that is made anew
/// moves nothing and doubles nothing.
pub(super) fn events(
    guests: &[Guesting<'_>],
    edition: &Edition<'_>,
    uid: impl Fn(Date) -> String,
) -> Vec<Event> {
    let Some(first) = guests.first() else { return Vec::new() };
    let mut events = Vec::new();
    for (number, day) in first.plan.days.iter().enumerate() {
        let (mut titles, mut lines) = (Vec::new(), Vec::new());
        for guest in guests {
            let Some(day) = guest.plan.days.get(number) else { continue };
            let name = &guest.animal.name;
            let row = row(day, guest, edition);
            if day.meal {
                titles.push(format!("feed {name}"));
            }
            let parts: Vec<String> = row
                .boxes
                .iter()
                .filter(|cell| cell.tick || cell.label == "Food")
                .filter(|cell| !cell.text.is_empty())
                .map(|cell| format!("{} {}", cell.label.to_lowercase(), cell.text))
                .collect();
            let apart = if guest.apart { " (quarantine, last)" } else { "" };
            lines.push(format!("{name}{apart}: {}", parts.join("; ")));
        }
        let title = if titles.is_empty() {
            "water, readings, a look at each".to_owned()
        } else {
            titles.join(", ")
        };
        events.push(Event {
            uid: uid(day.date),
            date: day.date,
            title: format!("Animals: {title}"),
            text: lines.join("\n"),
            repeat: None,
        });
    }
    events
}
