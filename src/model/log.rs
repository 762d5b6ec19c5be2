//! An animal's log: weights, lengths, meals, sheds and readings, by date.

use jiff::civil::Date;

use crate::finding::Place;
use crate::quantity::{Humidity, Length, Mass, Temperature};

/// One line of a log.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// The day.
    pub date: Date,
    /// What happened.
    pub event: Event,
    /// The note at its end.
    pub note: Option<String>,
    /// Where it is written.
    pub place: Place,
}

/// What a line of a log records.
#[derive(Debug, Clone, PartialEq)]
pub enum Event {
    /// A weight.
    Weight(Mass),
    /// A length, by the species' own measure.
    Length(Length),
    /// A meal.
    Meal {
        /// What was offered.
        food: String,
        /// How much, where it was weighed.
        mass: Option<Mass>,
        /// Whether it was eaten.
        outcome: MealOutcome,
    },
    /// A shed.
    Shed {
        /// Whether it came off whole.
        complete: Option<bool>,
    },
    /// A reading at a probe.
    Reading {
        /// The probe's name.
        probe: String,
        /// The temperature.
        temperature: Option<Temperature>,
        /// The humidity.
        humidity: Option<Humidity>,
    },
    /// An illness, in words.
    Illness(String),
    /// A treatment, in words without a dose.
    Treatment(String),
    /// A newcomer joined it.
    Joined(String),
    /// Anything else, in words.
    Other(String),
}

/// What became of a meal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MealOutcome {
    /// Eaten.
    Taken,
    /// Eaten in part.
    Part,
    /// Refused.
    Refused,
}
