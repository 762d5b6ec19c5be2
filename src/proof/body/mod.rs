//! Weights, lengths and sheds in the log.

pub(super) mod born_after_log;
pub(super) mod length_jump;
pub(super) mod length_shrank;
pub(super) mod logged_before_arrival;
pub(super) mod shed_incomplete;
pub(super) mod shed_overdue;
pub(super) mod size_beyond_species;
pub(super) mod weight_against_length;
pub(super) mod weight_jump;
pub(super) mod weight_lost;

use jiff::civil::Date;

use crate::model::Animal;
use crate::model::log::{Entry, Event};
use crate::proof::Evidence;
use crate::quantity::{Length, Mass, Quantity, Rounding, System, parse_one, print_one};

/// The weights of a log up to a day, oldest first, in grams.
fn weights(animal: &Animal, as_of: Date) -> Vec<(&Entry, f64)> {
    let known = animal.log.iter().filter(|entry| entry.date <= as_of);
    known
        .filter_map(|entry| match entry.event {
            Event::Weight(mass) => Some((entry, mass.grams())),
            _ => None,
        })
        .collect()
}

/// The lengths of a log up to a day, oldest first, in centimetres.
fn lengths(animal: &Animal, as_of: Date) -> Vec<(&Entry, f64)> {
    let known = animal.log.iter().filter(|entry| entry.date <= as_of);
    known
        .filter_map(|entry| match entry.event {
            Event::Length(length) => Some((entry, length.cm())),
            _ => None,
        })
        .collect()
}

fn grams(value: f64, system: System) -> String {
    print_one(Mass::from_grams(value), system, Rounding::Nearest).first
}

fn cm(value: f64, system: System) -> String {
    print_one(Length::from_cm(value), system, Rounding::Nearest).first
}

/// The figure that was probably meant: the same number in the unit that comes nearest to the last value, or ten times more
/// or less where only the decimal point can be wrong.
fn meant<Q: Quantity>(evidence: &Evidence<'_>, entry: &Entry, last: f64) -> String {
    let line = evidence.text_at(entry.place);
    let value = line.split(',').nth(2).unwrap_or("").trim();
    let number_end = value.find(|c: char| !(c.is_ascii_digit() || c == '.')).unwrap_or(value.len());
    let number = &value[..number_end];
    let near = |value: f64| (value / last).max(last / value);
    let units = Q::UNITS.iter().map(|unit| format!("{number} {}", unit.spelling()));
    let read = units.filter_map(|text| Some((near(parse_one::<Q>(&text).ok()?.base()), text)));
    match read.min_by(|a, b| a.0.total_cmp(&b.0)) {
        Some((ratio, text)) if ratio < 1.8 => format!("did you mean `{text}`?"),
        _ => {
            "correct the figure or its unit; if it is right, say so in the note of the line before"
                .to_owned()
        }
    }
}
