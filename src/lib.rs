//! wardsheet compiles care data into care sheets.
//!
//! The modules stand in reading order, and data flows down the list: files are read ([`source`]), typed ([`parse`] into
//! [`model`]), worked out ([`figures`]) and checked ([`proof`]). What a file may
//! hold is told to editors by [`schema`]. Three pure things stand under all of them: measured things
//! ([`quantity`]), what is wrong ([`finding`]) and pictures ([`photo`]).
//!
//! ```text
//! read    (a site's folder)     -> Sources               disk in
//! parse   (&Sources)            -> (Model, findings)     never fails, reports everything
//! figures (&Model, today)       -> Figures               pure
//! proof   (&Model, &Figures)    -> findings              pure; any error stops here
//! ```

pub mod quantity;

pub mod finding;

pub mod language;

pub mod photo;

pub mod source;

pub mod model;

pub mod parse;

pub mod schema;

pub mod figures;

pub mod proof;

pub mod changes;

pub mod sheets;

pub mod render;

pub mod compile;

pub mod write;

pub mod preview;

pub mod command;
