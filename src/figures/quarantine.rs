//! The clock of a quarantine: its least time, counted from the first day, the last illness and the last newcomer.
//!
//! That illness and newcomers start it again is common practice, read on the page of a care service without a date; for how
//! long it lasts publications differ, and the animal's own file decides.

use jiff::civil::Date;

use crate::model::animal::Quarantine;
use crate::model::log::{Entry, Event};
use crate::model::{Animal, Model};

use super::calendar::days_after;

/// What starts a quarantine again.
#[derive(Debug, Clone, PartialEq)]
pub struct Restart<'a> {
    /// The day.
    pub date: Date,
    /// What it is.
    pub cause: Cause<'a>,
}

/// Why a quarantine starts again.
#[derive(Debug, Clone, PartialEq)]
pub enum Cause<'a> {
    /// The animal fell ill: the line of its log.
    Illness(&'a Entry),
    /// Its log says that another joined it.
    Joined(&'a Entry),
    /// An animal that shares its enclosure fell ill: the line of that animal's log.
    CompanionIll(&'a Animal, &'a Entry),
    /// An animal that shares its enclosure came later.
    CompanionCame(&'a Animal),
}

/// The end of a quarantine by its first day alone.
pub fn least_end(quarantine: &Quarantine) -> Option<Date> {
    days_after(quarantine.started, quarantine.minimum.days().ceil())
}

/// Whether a quarantine has ended on a day, by its first day alone.
pub fn ended_by_first_day(quarantine: &Quarantine, as_of: Date) -> bool {
    least_end(quarantine).is_some_and(|end| end <= as_of)
}

/// The last thing that has started an animal's quarantine again, up to a day.
pub fn last_restart<'a>(model: &'a Model, animal: &'a Animal, as_of: Date) -> Option<Restart<'a>> {
    let started = animal.quarantine.as_ref()?.started;
    let own = animal.log.iter().filter_map(|entry| {
        let cause = match entry.event {
            Event::Illness(_) => Cause::Illness(entry),
            Event::Joined(_) => Cause::Joined(entry),
            _ => return None,
        };
        Some(Restart { date: entry.date, cause })
    });
    let companions = animal.company.iter().filter_map(|named| model.animals.get(&named.name));
    let companions = companions.filter(|other| other.is_kept() && other.file != animal.file);
    let theirs = companions.flat_map(|other| {
        let came = other.arrived.filter(|(date, _)| *date > started);
        let came = came.map(|(date, _)| Restart { date, cause: Cause::CompanionCame(other) });
        let ill = other.log.iter().filter(|entry| matches!(entry.event, Event::Illness(_)));
        let ill =
            ill.map(|entry| Restart { date: entry.date, cause: Cause::CompanionIll(other, entry) });
        came.into_iter().chain(ill)
    });
    let counted =
        own.chain(theirs).filter(|restart| restart.date >= started && restart.date <= as_of);
    counted.max_by_key(|restart| restart.date)
}

/// The day on which an animal's quarantine ends, as things stand on a day.
pub fn until(model: &Model, animal: &Animal, as_of: Date) -> Option<Date> {
    let quarantine = animal.quarantine.as_ref()?;
    let from = last_restart(model, animal, as_of).map_or(quarantine.started, |last| last.date);
    days_after(from, quarantine.minimum.days().ceil())
}
