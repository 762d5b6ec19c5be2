//! The fields of `maps/NAME.toml`.

use super::field::{Field, Form, may, must};

pub(super) const FIELDS: &[Field] = &[
    may(
        "separator",
        "What parts the columns; without it, told from the headings",
        Form::Text(&[";", "tab"]),
    ),
    may("decimal", "What stands before decimals; without it, a point", Form::Text(&[",", "."])),
    may("heading", "The line that holds the headings; 0 for none, without it 1", Form::Whole),
    may(
        "date",
        "How a moment is written, of YYYY, YY, MM, DD, hh, mm, ss and AM; without it, YYYY-MM-DD",
        Form::Text(&["DD.MM.YYYY hh:mm", "MM/DD/YYYY"]),
    ),
    must("time", "The columns that hold the moment", Form::Texts(&["Date", "Time"])),
    may("probe", "The probes of a data logger", Form::Tables(PROBE)),
    may("log", "The columns of a log", Form::Table(LOG)),
    may("units", "Units that no heading and no cell names", Form::Table(UNITS)),
    may(
        "words",
        "The table's own words, each with the log's word for it",
        Form::Entries(&Form::Text(&["taken", "mouse, adult"])),
    ),
];

const PROBE: &[Field] = &[
    must("name", "The probe's name, as in the animal's file", Form::Text(&["warm", "cool"])),
    may("temperature", "The column of its temperature", Form::Text(&["T1 (C)"])),
    may("humidity", "The column of its humidity", Form::Text(&["RH1 (%)"])),
    may(
        "unit",
        "The unit of its temperature, C or F; without it, told from the heading",
        Form::Text(&["C", "F"]),
    ),
];

const LOG: &[Field] = &[
    may("what", "What happened, a word of the log", Form::Text(&["Type"])),
    may("value", "The value that belongs to it", Form::Text(&["Value"])),
    may("outcome", "The outcome that belongs to it", Form::Text(&["Result"])),
    may("note", "The note", Form::Text(&["Remark"])),
    may("weight", "A weight", Form::Text(&["Weight (g)"])),
    may("length", "A length", Form::Text(&["Length (cm)"])),
    may("meal", "What was offered", Form::Text(&["Food"])),
    may("meal_mass", "Its mass", Form::Text(&["Food (g)"])),
    may("meal_outcome", "What became of it", Form::Text(&["Eaten"])),
    may("shed", "A shed: complete or partial", Form::Text(&["Shed"])),
];

const UNITS: &[Field] = &[
    may("weight", "The unit of a weight", Form::Text(&["g"])),
    may("length", "The unit of a length", Form::Text(&["cm"])),
    may("meal_mass", "The unit of the mass of a meal", Form::Text(&["g"])),
];
