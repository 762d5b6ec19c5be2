//! The built-in species against what was published, and against what a care sheet of their kind owes its reader.
//!
//! The tables beside it, `tests/checks/species_published.csv` and `tests/checks/standards_space.csv`, hold what the sources
//! print, each row with title, issuer and year; they were copied from the sources, not from the species files.

mod complete;
mod owed;
mod published;
mod space;
mod standards;
mod table;

use wardsheet::finding::Finding;
use wardsheet::model::Model;
use wardsheet::parse::parse;
use wardsheet::source::library::add_species;
use wardsheet::source::{Layer, Role, Sources};

/// The built-in library as texts, with the settings of a site that names nothing of its own.
fn texts() -> Sources {
    let mut sources = Sources::default();
    let title = "title = \"Quillmere\"".to_owned();
    sources.add("wardsheet.toml", Role::Site, "wardsheet", Layer::Own, title);
    add_species(&mut sources);
    sources
}

/// The built-in library as it is read.
fn library() -> Model {
    let (model, findings): (Model, Vec<Finding>) = parse(&texts());
    assert!(findings.is_empty(), "the library is read without a fault: {findings:?}");
    model
}

/// Fails with every fault at once, a line each.
#[track_caller]
fn none(faults: &[String]) {
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
}
