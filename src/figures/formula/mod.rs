//! The formulas behind the derived figures: pure functions over plain numbers.
//!
//! One subject stands in each file, and each function names its publication. Every argument carries
//! its unit in its name. Nothing here knows an animal, a file or a date: a day is a number.

pub mod domain;

pub mod day_length;
pub mod humidity;

pub mod growth;
pub mod least_squares;
