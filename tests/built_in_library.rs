//! The built-in species are clean: nothing is found on them above a note, with every standard in force.

use wardsheet::figures::figures;
use wardsheet::finding::{Severity, draw};
use wardsheet::parse::parse;
use wardsheet::proof::{Evidence, proof, with_site_severities};
use wardsheet::source::library::add_species;
use wardsheet::source::{Layer, Role, Sources};

#[test]
fn nothing_above_a_note_is_found_on_the_built_in_species() {
    let mut sources = Sources::default();
    let title = "title = \"Quillmere\"".to_owned();
    sources.add("wardsheet.toml", Role::Site, "wardsheet", Layer::Own, title);
    add_species(&mut sources);
    let (model, mut found) = parse(&sources);
    let figures = figures(&model, "2026-11-25".parse().expect("a day"));
    found.extend(proof(&Evidence { sources: &sources, model: &model, figures: &figures }));
    let mut found = with_site_severities(&model, found);
    assert!(!model.species.is_empty());
    found.retain(|finding| finding.severity > Severity::Note);
    assert!(found.is_empty(), "{}", draw::draw(&found, false, &|file| sources.shown(file)));
}
