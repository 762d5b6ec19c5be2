//! The formulas against published and independently computed values.
//!
//! Each table in `tests/checks/` keeps its source beside every row.

mod table;

mod condition;
mod day_length;
mod growth;
mod growth_animals;
mod growth_projection;
mod heat;
mod humidity;
mod least_squares;
mod metabolism;
mod uv;
