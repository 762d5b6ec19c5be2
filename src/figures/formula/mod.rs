//! The formulas behind the derived figures: pure functions over plain numbers.
//!
//! One subject stands in each file, and each function names its publication. Every argument carries
//! its unit in its name. Nothing here knows an animal, a file or a date: a day is a number.

pub mod domain;

pub mod day_length;
pub mod humidity;

pub mod cooling;
pub mod electricity;
pub mod heat;
pub mod materials;
pub mod moisture;

pub mod boid_metabolism;
pub mod metabolic_equations;
pub mod metabolism;
pub mod prey;

pub mod uv_distance;
pub mod uv_zones;

pub mod growth;
pub mod growth_data;
pub mod growth_projection;
pub mod least_squares;

mod growth_fit;
mod growth_interval;
mod growth_marginal;

pub mod coil;
pub mod condition;
pub mod dilution;
pub mod instruments;
pub mod weight;
