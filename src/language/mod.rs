//! What labels say in each language, and how numbers and dates are written there.
//!
//! A language is a folder of `languages/`: catalogues in Fluent's format, the open standard of project Fluent. It brings no
//! code: the decimal mark, the names of the months and the order of a date stand in `form.ftl` beside the labels.

mod catalogue;
mod form;

pub use catalogue::{Catalogue, Value, is_same, primary};
