//! What the compiler must do, seen from outside: the program is run on copies of the example site, and its files are read.

#![expect(
    clippy::disallowed_methods,
    reason = "these tests lay out sites on the disk and read what is written"
)]

mod calendars;
mod compare;
mod drawings;
mod figures;
mod html;
mod interrupted;
mod keeping;
mod languages;
mod links;
mod log_questions;
mod photos;
mod privacy;
mod private_sheets;
mod same_bytes;
mod site;
mod web;
mod weight;
