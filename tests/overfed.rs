//! Feeding beyond what an animal uses: a species' own limit, and the common one where it has none.

use wardsheet::compile::check;
use wardsheet::finding::{Finding, Severity};
use wardsheet::source::{Layer, Role, Sources};

/// A grown invented lizard of 60 g that is kept at 27 °C and given mealworms every second day.
fn found(stages: &str, energy: &str, meal: &str) -> Vec<Finding> {
    let species = format!(
        "name = \"Example lizard\"\nscientific = \"Exemplum quillmerense\"\nkind = \"lizard\"\nhabit = \"ground\"\n\
         diet = \"insectivore\"\n[size]\nadult = \"15-20 cm\"\n[temperature]\nwarm = \"28-30 C\"\ncool = \"24-26 C\"\n\
         {energy}\n{stages}"
    );
    let animal = format!(
        "name = \"Pip\"\nspecies = \"example-lizard\"\nhatched = 2020-01-01\n\
         [feeding]\nmeal = \"mealworm\"\nmass = \"{meal}\"\nevery = \"2 days\"\n"
    );
    let mut sources = Sources::default();
    for (path, role, name, text) in [
        ("wardsheet.toml", Role::Site, "wardsheet", "title = \"Quillmere\"\n".to_owned()),
        ("species/example-lizard.toml", Role::Species, "example-lizard", species),
        ("animals/pip.toml", Role::Animal, "pip", animal),
        (
            "animals/pip.csv",
            Role::Log,
            "pip",
            "date,what,value,outcome,note\n2026-11-20,weight,60 g,,\n".to_owned(),
        ),
    ] {
        sources.add(path, role, name, Layer::Own, text);
    }
    let day = "2026-11-25".parse().expect("a day");
    let checked = check(&sources, Vec::new(), day);
    let pip = &checked.figures.animals["pip"];
    assert!(pip.energy.is_some(), "{:?}", pip.why);
    checked.findings.into_iter().filter(|finding| finding.code.name == "overfed").collect()
}

const ADULT: &str = "[[feeding]]\nstage = \"adult\"\nevery = \"2 days\"\n";
const GROWING: &str = "[[feeding]]\nstage = \"growing\"\nuntil_age = \"20 years\"\nevery = \"2 days\"\n\
     [[feeding]]\nstage = \"adult\"\nevery = \"2 days\"\n";

#[test]
fn a_grown_animal_on_many_times_its_energy_is_noted_where_its_species_has_no_limit() {
    let found = found(ADULT, "", "12 g");
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].severity, Severity::Note);
    assert!(found[0].message.contains("a grown animal is commonly given at most 5"), "{found:?}");
}

#[test]
fn a_growing_animal_is_left_alone_where_its_species_has_no_limit() {
    assert_eq!(found(GROWING, "", "12 g"), []);
}

#[test]
fn a_limit_of_the_species_is_a_warning_at_any_age() {
    for stages in [ADULT, GROWING] {
        let found = found(stages, "[energy]\nat_most = \"3 x\"", "12 g");
        assert_eq!(found.len(), 1);
        assert_eq!(found[0].severity, Severity::Warning);
        assert!(found[0].message.contains("Example lizard should be given at most 3"), "{found:?}");
        assert_eq!(found[0].related.len(), 1, "the species' own limit is pointed at");
    }
}

#[test]
fn a_modest_meal_is_left_alone() {
    assert_eq!(found(ADULT, "", "1.5 g"), []);
    assert_eq!(found(ADULT, "[energy]\nat_most = \"3 x\"", "1.5 g"), []);
}
