//! The days of a stay: what is due on each, as boxes to tick and as entries of a calendar.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::AnimalFigures;
use crate::figures::plan::{Day, Food, Plan};
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

/// What is done with an animal on a day: the columns.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Job {
    /// Fresh water.
    Water,
    /// Spraying.
    Spray,
    /// A look at the instruments.
    Readings,
    /// Food.
    Food,
    /// A look at the animal and its locks.
    Seen,
}

impl Job {
    /// The heading of its column, and the same with a text behind it in an entry of a calendar.
    fn labels(self) -> (&'static str, &'static str) {
        match self {
            Job::Water => ("sitter-job-water", "sitter-line-water"),
            Job::Spray => ("sitter-job-spray", "sitter-line-spray"),
            Job::Readings => ("sitter-job-readings", "sitter-line-readings"),
            Job::Food => ("sitter-job-food", "sitter-line-food"),
            Job::Seen => ("sitter-job-seen", "sitter-line-seen"),
        }
    }
}

/// One cell of a day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct DayBox {
    /// What is done.
    #[serde(skip)]
    pub job: Job,
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
        edition.say("sitter-meal-as-shown")
    } else {
        print::join(&parts, ", ").to_string()
    }
}

/// Whether a meal is frozen prey that has to thaw. Where the animal's file does not say, whole mammals and birds are bought frozen.
pub(super) fn is_frozen(animal: &Animal, own: &AnimalFigures) -> bool {
    if let Some(frozen) = animal.feeding.as_ref().and_then(|practice| practice.frozen) {
        return frozen;
    }
    let meal = own.feeding.meal.as_deref().unwrap_or_default().to_lowercase();
    let whole = ["mouse", "mice", "rat", "chick", "rabbit", "quail"];
    meal.split(|c: char| !c.is_alphabetic()).any(|word| whole.contains(&word) || word == "rats")
}

/// How it is fed over the stay, in a sentence.
pub(super) fn feeding(
    animal: &Animal,
    own: &AnimalFigures,
    plan: &Plan,
    edition: &Edition<'_>,
) -> String {
    let told = match plan.food {
        Food::Skipped { days, limit_days } => {
            let limit = ("limit", print::days(limit_days, edition).first.into());
            edition.tell("sitter-skipped", [("days", days.into()), limit])
        }
        Food::NoneDue => edition.say("sitter-none-due"),
        Food::NotKnown => return edition.say("sitter-not-known"),
        Food::AsDue => {
            let label =
                if is_frozen(animal, own) { "sitter-as-due-thawed" } else { "sitter-as-due" };
            edition.tell(label, [("meal", meal(own, edition).into())])
        }
    };
    let last = plan
        .last_before
        .map(|date| edition.tell("sitter-last-meal", [("date", edition.long_date(date).into())]));
    std::iter::once(told).chain(last).collect::<Vec<_>>().join("; ")
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
    let cell = |job: Job, tick: bool, text: String| DayBox {
        job,
        label: edition.say(job.labels().0),
        tick,
        text,
    };
    let tick = |job, text| cell(job, true, text);
    let blank = |text: &str| cell(Job::Food, false, edition.say(text));
    let spray = match spraying(day, own, edition) {
        None => cell(Job::Spray, false, "–".to_owned()),
        Some(text) => tick(Job::Spray, text),
    };
    let food = match plan.food {
        _ if day.meal => tick(Job::Food, meal(own, edition)),
        Food::NotKnown => blank("sitter-ask"),
        _ if day.resting => blank("sitter-digests"),
        Food::Skipped { .. } => blank("sitter-no-feeding"),
        _ => blank("sitter-nothing"),
    };
    let next_meal = plan.days.iter().any(|other| {
        other.meal && crate::figures::calendar::days_between(day.date, other.date) == 1
    });
    let food = if next_meal && is_frozen(animal, own) && !day.meal {
        DayBox { text: edition.tell("sitter-and-thaw", [("food", food.text.into())]), ..food }
    } else {
        food
    };
    let sheds = shed.is_some_and(|(from, until)| (from..=until).contains(&day.date));
    let seen = if sheds { edition.say("sitter-shed-may-come") } else { String::new() };
    DayRow {
        who: animal.name.clone(),
        apart: *apart,
        boxes: vec![
            tick(Job::Water, edition.say("sitter-fresh")),
            spray,
            tick(Job::Readings, edition.say("sitter-right")),
            food,
            tick(Job::Seen, seen),
        ],
    }
}

/// The sprayings of a day; none where nothing is sprayed.
fn spraying(day: &Day, own: &AnimalFigures, edition: &Edition<'_>) -> Option<String> {
    let each = own.moisture.as_ref().and_then(|moisture| moisture.spray_ml);
    let times = ("times", day.sprayings.into());
    (day.sprayings > 0).then(|| match each {
        None => edition.tell("sitter-spray", [times]),
        Some(ml) => {
            edition.tell("sitter-spray-each", [times, ("each", edition.number(ml, 0).into())])
        }
    })
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
            let name = || ("name", guest.animal.name.as_str().into());
            let row = row(day, guest, edition);
            if day.meal {
                titles.push(edition.tell("sitter-entry-feed", [name()]));
            }
            let parts: Vec<String> = row
                .boxes
                .iter()
                .filter(|cell| cell.tick || cell.job == Job::Food)
                .filter(|cell| !cell.text.is_empty())
                .map(|cell| {
                    edition.tell(cell.job.labels().1, [("text", cell.text.as_str().into())])
                })
                .collect();
            let line = if guest.apart { "sitter-line-apart" } else { "sitter-line" };
            lines.push(edition.tell(line, [name(), ("what", parts.join("; ").into())]));
        }
        let title =
            if titles.is_empty() { edition.say("sitter-entry-no-meal") } else { titles.join(", ") };
        events.push(Event {
            uid: uid(day.date),
            date: day.date,
            title: edition.tell("sitter-entry", [("what", title.into())]),
            text: lines.join("\n"),
            repeat: None,
        });
    }
    events
}
