//! A map: how a table that was made elsewhere is read. Which column means what, how dates and numbers are written.

use std::collections::BTreeMap;

use crate::finding::{FileId, Place};

/// A map.
#[derive(Debug, Clone, PartialEq)]
pub struct Map {
    /// The file it is written in.
    pub file: FileId,
    /// What parts the columns; none where the headings tell.
    pub separator: Option<char>,
    /// Whether a comma stands before decimals.
    pub decimal_comma: bool,
    /// The line that holds the headings, counted from 1; 0 where there is none.
    pub heading: u32,
    /// How a moment is written.
    pub form: DateForm,
    /// The columns that hold the moment, joined by a space.
    pub time: Vec<Column>,
    /// The probes of a data logger.
    pub probes: Vec<ProbeColumns>,
    /// The columns of a log, by what they hold.
    pub log: BTreeMap<LogColumn, Column>,
    /// Units by what they are of, where no heading names one.
    pub units: BTreeMap<LogColumn, String>,
    /// The table's own words and the log's words for them.
    pub words: BTreeMap<String, String>,
}

/// A column, by its heading or by its number.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Column {
    /// The heading, or `column 3`.
    pub name: String,
    /// Where it is written.
    pub place: Place,
}

/// The columns of one probe.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ProbeColumns {
    /// The probe's name, as in the animal's file.
    pub name: String,
    /// The column of its temperature.
    pub temperature: Option<Column>,
    /// The column of its humidity.
    pub humidity: Option<Column>,
    /// Whether its temperature is in degrees Fahrenheit; none where the heading tells.
    pub fahrenheit: Option<bool>,
}

/// What a column of a log holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum LogColumn {
    /// What happened, a word of the log.
    What,
    /// The value that belongs to it.
    Value,
    /// The outcome that belongs to it.
    Outcome,
    /// The note at the end.
    Note,
    /// A weight.
    Weight,
    /// A length.
    Length,
    /// What was offered.
    Meal,
    /// The mass of what was offered.
    MealMass,
    /// What became of the meal.
    MealOutcome,
    /// A shed.
    Shed,
}

impl super::word::Word for LogColumn {
    const ALL: &'static [(LogColumn, &'static str)] = &[
        (LogColumn::What, "what"),
        (LogColumn::Value, "value"),
        (LogColumn::Outcome, "outcome"),
        (LogColumn::Note, "note"),
        (LogColumn::Weight, "weight"),
        (LogColumn::Length, "length"),
        (LogColumn::Meal, "meal"),
        (LogColumn::MealMass, "meal_mass"),
        (LogColumn::MealOutcome, "meal_outcome"),
        (LogColumn::Shed, "shed"),
    ];
}

/// How a moment is written: numbers and the marks between them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DateForm {
    /// As it was given: `DD.MM.YYYY hh:mm`.
    pub written: String,
    /// Its pieces in order.
    pub pieces: Vec<Piece>,
}

/// A piece of a moment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Piece {
    /// Four digits of a year.
    Year,
    /// Two digits of a year of this century.
    ShortYear,
    /// A month by its number.
    Month,
    /// A day of the month.
    Day,
    /// An hour.
    Hour,
    /// A minute.
    Minute,
    /// A second, with or without decimals.
    Second,
    /// `AM` or `PM`.
    HalfDay,
    /// A mark that stands as it is.
    Mark(char),
}
