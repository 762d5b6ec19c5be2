//! What falls due for one animal, one thing at a time: meals, weighing, lamps, the end of a quarantine, a visit to the vet, the
//! review of its care sheet. The calendar, the sitter's sheet and the week's round take it from here.
//!
//! Everything is due on a day, not at an hour. A calendar of whole days has no time zone: it means the same days on every
//! machine, and nothing moves when clocks are changed.

use jiff::civil::Date;

use crate::figures::calendar::{days_after, days_between};
use crate::figures::plan;
use crate::figures::{AnimalFigures, Figures};
use crate::model::{Animal, Species};

use super::edition::Edition;
use super::sitter_days::{self as days, Event, Repeat};

/// From visit to visit to a vet, days: at least once a year. Common practice.
const VET_DAYS: f64 = 365.0;
/// How many meals and weighings a calendar runs ahead. Each import sets them anew.
const AHEAD: u32 = 8;
/// The most lines of one day that are told apart in the number of a revision.
const LINES_OF_A_DAY: i32 = 99;

/// What kind of thing is due.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum What {
    /// A lamp has served its time.
    Lamp,
    /// A quarantine may end.
    QuarantineEnds,
    /// The care sheet is to be gone through.
    Review,
    /// A vet is to see it.
    Vet,
    /// It is expected to outgrow its enclosure.
    Outgrown,
}

/// Something that is due once.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Due {
    /// What kind of thing.
    pub(super) what: What,
    /// What tells it from the animal's other things, for good.
    pub(super) id: String,
    /// The day.
    pub(super) date: Date,
    /// What is to be done, without the animal's name.
    pub(super) title: String,
    /// A word more.
    pub(super) text: String,
}

/// Everything that is due once, by date; what is overdue has its own day, which has passed.
pub(super) fn once(
    edition: &Edition<'_>,
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
    as_of: Date,
) -> Vec<Due> {
    let due = |what, id: &str, date, title: String, text: &str| Due {
        what,
        id: id.to_owned(),
        date,
        title,
        text: edition.say(text),
    };
    let mut all = Vec::new();
    let lamps = animal.housing.iter().flat_map(|housing| &housing.lamps);
    for (number, lamp) in lamps.enumerate() {
        let Some((fitted, _)) = lamp.fitted else { continue };
        let served = lamp.replace_after.and_then(|after| days_after(fitted, after.days()));
        let Some(date) = served else { continue };
        let title = edition.tell("due-lamp", [("lamp", lamp.kind.as_str().into())]);
        let id = format!("lamp-{}", number + 1);
        all.push(due(What::Lamp, &id, date, title, "due-lamp-text"));
    }
    if let Some(until) = own.quarantine_until {
        let title = edition.say("due-quarantine");
        all.push(due(What::QuarantineEnds, "quarantine", until, title, "due-quarantine-text"));
    }
    let reviewed = species.reviewed.map(|(day, _)| day);
    if let Some(date) = reviewed.and_then(|day| days_after(day, edition.site.review_every.days())) {
        let name = edition.name(species);
        let small = edition.say("due-review-small-letters") == "yes";
        let name = if small { name.to_lowercase() } else { name.to_owned() };
        let title = edition.tell("due-review", [("species", name.into())]);
        all.push(due(What::Review, "review", date, title, "due-review-text"));
    }
    let visit = vet_due(animal, as_of);
    all.push(due(What::Vet, "vet", visit, edition.say("due-vet"), "due-vet-text"));
    let outgrown = own.outgrown.as_ref().and_then(|outgrown| outgrown.dates.expected);
    if let Some(date) = outgrown {
        let title = edition.say("due-outgrown");
        all.push(due(What::Outgrown, "outgrown", date, title, "due-outgrown-text"));
    }
    all.sort_by(|a, b| (a.date, &a.id).cmp(&(b.date, &b.id)));
    all
}

/// A year after it was last seen to by somebody, or after it came; today where neither is known.
fn vet_due(animal: &Animal, as_of: Date) -> Date {
    let seen = animal.history.iter().filter(|entry| entry.by.is_some());
    let seen = seen.filter_map(|entry| entry.date).filter(|date| *date <= as_of).max();
    let came = animal.arrived.map(|(date, _)| date);
    seen.or(came).and_then(|last| days_after(last, VET_DAYS)).unwrap_or(as_of)
}

/// The entries of an animal's calendar, by date. What is overdue stands on the day that the calendar is for.
///
/// Each kind of thing keeps its identifier for good, so that a calendar that is read in again moves its entries and does not
/// double them; meals and weighings are one entry each that repeats.
pub fn calendar(
    edition: &Edition<'_>,
    figures: &Figures,
    key: &str,
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
) -> Vec<Event> {
    let as_of = figures.as_of;
    let event = |id: &str, date: Date, title: String, text: String, repeat| Event {
        uid: uid(edition, &format!("{key}.{id}")),
        date: date.max(as_of),
        title,
        text: if date < as_of {
            let date = ("date", edition.long_date(date).into());
            edition.tell("due-since", [date, ("text", text.into())])
        } else {
            text
        },
        repeat,
    };
    let name = || ("name", animal.name.as_str().into());
    let mut events = Vec::new();
    let every = own.feeding.interval_days.and_then(|(low, high)| low.or(high));
    if let (Some(due), Some(every)) = (own.feeding.next_due, every) {
        let every_days = every.ceil().clamp(1.0, 366.0) as u32;
        let text = capital_sentence(&days::meal(own, edition));
        let repeat = Some(Repeat { every_days, times: AHEAD });
        events.push(event("meal", due, edition.tell("due-feed", [name()]), text, repeat));
    }
    if let Some(due) = plan::weigh_due(animal, species, own, as_of) {
        let every_days = plan::weigh_every_days(species, own).unsigned_abs().max(1);
        let text = edition.tell("due-weigh-text", [("days", every_days.into())]);
        let repeat = Some(Repeat { every_days, times: AHEAD });
        events.push(event("weigh", due, edition.tell("due-weigh", [name()]), text, repeat));
    }
    for due in once(edition, animal, species, own, as_of) {
        let title = edition.tell("due-task", [name(), ("task", due.title.into())]);
        events.push(event(&due.id, due.date, title, due.text, None));
    }
    events.sort_by(|a, b| (a.date, &a.uid).cmp(&(b.date, &b.uid)));
    events
}

fn capital_sentence(text: &str) -> String {
    format!("{}.", super::animal::capital(text))
}

/// An identifier for good: what, and whose. The site's title keeps two sites in one calendar apart.
pub(super) fn uid(edition: &Edition<'_>, what: &str) -> String {
    let site: String = edition
        .site
        .title
        .to_lowercase()
        .split(|letter: char| !letter.is_ascii_alphanumeric())
        .filter(|word| !word.is_empty())
        .collect::<Vec<_>>()
        .join("-");
    format!("{what}@{site}.wardsheet").replace("@.", "@")
}

/// The number of a revision: it rises from day to day, and within a day with every line that the log gains.
///
/// RFC 5545 §3.8.7.4: a program takes the entry with the higher number.
pub fn revision(animals: &[&Animal], as_of: Date) -> u32 {
    let since = days_between(jiff::civil::date(2020, 1, 1), as_of).max(0);
    let lines = animals.iter().flat_map(|animal| &animal.log);
    let today = lines.filter(|entry| entry.date == as_of).count();
    let today = i32::try_from(today).unwrap_or(LINES_OF_A_DAY).min(LINES_OF_A_DAY);
    u32::try_from(since * (LINES_OF_A_DAY + 1) + today).unwrap_or(0)
}
