//! Two folders that define one species: the nearer one is used, and the site is told where they differ.

use wardsheet::figures::figures;
use wardsheet::parse::parse;
use wardsheet::proof::{Evidence, proof};
use wardsheet::source::{Layer, Role, Sources};

const OWN: &str = include_str!("base/species/testing-snake.toml");

/// What is found of overridden files on a site whose own species stands before a library's of the same name.
fn overridden(library: &str) -> Vec<String> {
    let mut sources = Sources::default();
    let mut add = |path: &str, role, name, layer, text: &str| {
        sources.add(path, role, name, layer, text.to_owned());
    };
    add("wardsheet.toml", Role::Site, "wardsheet", Layer::Own, "title = \"Quillmere\"");
    add("species/testing-snake.toml", Role::Species, "testing-snake", Layer::Own, OWN);
    let shared = "../shared/species/testing-snake.toml";
    add(shared, Role::Species, "testing-snake", Layer::Library(0), library);
    let (model, _) = parse(&sources);
    let figures = figures(&model, "2026-11-25".parse().expect("a day"));
    let found = proof(&Evidence { sources: &sources, model: &model, figures: &figures });
    let of_this = found.into_iter().filter(|finding| finding.code.name == "library-overridden");
    of_this.map(|finding| finding.message).collect()
}

#[test]
fn a_library_with_another_figure_is_told_and_the_nearer_one_is_used() {
    let found = overridden(&OWN.replace("22-24 C", "20-22 C"));
    let expected = "`testing-snake` is defined in species/testing-snake.toml and in \
                    ../shared/species/testing-snake.toml, and they differ in `temperature.cool`; species/testing-snake.toml is used";
    assert_eq!(found, [expected]);
}

#[test]
fn a_library_that_says_the_same_is_no_news() {
    assert!(overridden(OWN).is_empty());
    assert!(overridden(&format!("# A comment of the library's own.\n\n{OWN}")).is_empty());
}
