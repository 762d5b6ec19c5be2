//! One animal.

use jiff::civil::Date;

use crate::finding::{FileId, Place};
use crate::quantity::{Length, Mass, Range, Span};

use super::cited::Named;
use super::housing::Housing;
use super::log::{Entry, Event, MealOutcome};
use super::word::{Basis, Sex, Status};

/// One animal and what is known of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Animal {
    /// The file it is written in.
    pub file: FileId,
    /// Its name.
    pub name: String,
    /// Its species.
    pub species: Named,
    /// The named form of its species.
    pub form: Option<Named>,
    /// Its sex.
    pub sex: Sex,
    /// How the sex was told.
    pub sex_basis: Option<String>,
    /// When it hatched or was born, and how sure that is.
    pub hatched: Option<(Date, Basis, Place)>,
    /// When it came.
    pub arrived: Option<(Date, Place)>,
    /// Where it came from.
    pub origin: Option<String>,
    /// How it stands with its keeper.
    pub status: Status,
    /// Whether it has a public page.
    pub publish: bool,
    /// Public words.
    pub story: Option<String>,
    /// Its chip or mark.
    pub chip: Option<String>,
    /// The animals that share its enclosure.
    pub company: Vec<Named>,
    /// Its turn in the daily round, counted from 1.
    pub turn: Option<(u32, Place)>,
    /// The sets of tools that are used for it: tongs, bowls, brushes, cloths.
    pub tools: Vec<Named>,
    /// How it behaves.
    pub temperament: Option<String>,
    /// The file name of its picture.
    pub photo: Option<Named>,
    /// What the picture shows, for those who do not see it.
    pub photo_shows: Option<String>,
    /// Its enclosure.
    pub housing: Option<Housing>,
    /// How it is fed at present.
    pub feeding: Option<Practice>,
    /// Its quarantine.
    pub quarantine: Option<Quarantine>,
    /// Health and treatment, without doses.
    pub history: Vec<HistoryEntry>,
    /// Notes for a sitter, a vet and a new keeper.
    pub notes: Notes,
    /// Whether it is under treatment now, and where that is written; none where nobody has said.
    pub under_treatment: Option<(bool, Place)>,
    /// Papers that go with it.
    pub papers: Vec<String>,
    /// Its data loggers.
    pub loggers: Vec<super::recording::Logger>,
    /// Its log, by date.
    pub log: Vec<Entry>,
}

/// How an animal is fed at present.
#[derive(Debug, Clone, PartialEq)]
pub struct Practice {
    /// Where it is written.
    pub place: Place,
    /// What a meal is.
    pub meal: Option<String>,
    /// The mass of a meal.
    pub mass: Option<(Range<Mass>, Place)>,
    /// How wide the prey is.
    pub width: Option<(Length, Place)>,
    /// How many prey or pieces a meal is.
    pub count: Option<((u32, u32), Place)>,
    /// From meal to meal.
    pub every: Option<(Range<Span>, Place)>,
    /// Whether it comes frozen and has to thaw.
    pub frozen: Option<bool>,
}

/// A quarantine.
#[derive(Debug, Clone, PartialEq)]
pub struct Quarantine {
    /// When it began.
    pub started: Date,
    /// How long it lasts at least.
    pub minimum: Span,
    /// The end that the keeper has written down.
    pub until: Option<(Date, Place)>,
    /// Where it is written.
    pub place: Place,
}

/// One line of an animal's history.
#[derive(Debug, Clone, PartialEq)]
pub struct HistoryEntry {
    /// The day.
    pub date: Option<Date>,
    /// What happened.
    pub what: String,
    /// Who saw to it.
    pub by: Option<String>,
}

/// Notes, all of them private.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Notes {
    /// For a sitter.
    pub sitter: Option<String>,
    /// For a vet.
    pub vet: Option<String>,
    /// For a new keeper.
    pub keeper: Option<String>,
}

impl Animal {
    /// The lengths in its log, oldest first.
    pub fn lengths(&self) -> impl DoubleEndedIterator<Item = (Date, Length)> {
        self.log.iter().filter_map(|entry| match entry.event {
            Event::Length(length) => Some((entry.date, length)),
            _ => None,
        })
    }

    /// The weights in its log, oldest first.
    pub fn weights(&self) -> impl DoubleEndedIterator<Item = (Date, Mass)> {
        self.log.iter().filter_map(|entry| match entry.event {
            Event::Weight(mass) => Some((entry.date, mass)),
            _ => None,
        })
    }

    /// The meals in its log, oldest first: the day, what, how much, and what became of it.
    pub fn meals(
        &self,
    ) -> impl DoubleEndedIterator<Item = (Date, &str, Option<Mass>, MealOutcome)> {
        self.log.iter().filter_map(|entry| match &entry.event {
            Event::Meal { food, mass, outcome } => {
                Some((entry.date, food.as_str(), *mass, *outcome))
            }
            _ => None,
        })
    }

    /// The day of the last meal that it ate, in whole or in part.
    pub fn last_eaten(&self) -> Option<Date> {
        self.meals()
            .rev()
            .find(|(_, _, _, outcome)| *outcome != MealOutcome::Refused)
            .map(|(date, ..)| date)
    }

    /// Whether it lives here now.
    pub fn is_kept(&self) -> bool {
        !matches!(self.status, Status::Rehomed | Status::Died)
    }
}
