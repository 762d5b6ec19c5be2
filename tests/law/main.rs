//! What the law owes a reader: the built-in files agree with the tables of the reading notes, notices are never joined, and nothing
//! that the law holds back is handed over in silence.

#![expect(clippy::disallowed_methods, reason = "the tables and the base site lie on the disk")]

mod handed_on;
mod sheets;
mod tables;

use std::path::PathBuf;

use wardsheet::compile::{Checked, check};
use wardsheet::source::library::{add_look, add_species};
use wardsheet::source::{Layer, Role, Sources};

const AS_OF: &str = "2026-11-25";

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// The built-in library under a site that names these jurisdictions, with further files.
fn site(jurisdictions: &str, files: &[(&str, Role, &str, &str)]) -> (Sources, Checked) {
    let mut sources = Sources::default();
    let text = format!("title = \"Quillmere\"\njurisdictions = [{jurisdictions}]\n");
    sources.add("wardsheet.toml", Role::Site, "wardsheet", Layer::Own, text);
    for (path, role, name, text) in files {
        sources.add(*path, *role, name, Layer::Own, (*text).to_owned());
    }
    add_species(&mut sources);
    add_look(&mut sources);
    let checked = check(&sources, Vec::new(), AS_OF.parse().expect("a day"));
    (sources, checked)
}

/// An animal under treatment.
const PIP: (&str, Role, &str, &str) = (
    "animals/pip.toml",
    Role::Animal,
    "pip",
    "name = \"Pip\"\nspecies = \"corn-snake\"\norigin = \"Invented\"\nhatched = 2023-01-01\nunder_treatment = true\n",
);
