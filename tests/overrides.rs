//! Single figures that a nearer folder puts in place of a farther one's: what holds, what is told, and what pages say.

use wardsheet::compile::{check, compile};
use wardsheet::figures::document::document;
use wardsheet::finding::Severity;
use wardsheet::quantity::{Range, Temperature, parse_range};
use wardsheet::source::library::{add_look, role_of};
use wardsheet::source::{Layer, Sources};

const SNAKE: &str = include_str!("base/species/testing-snake.toml");
const WORDS: &str = include_str!("base/species/testing-snake.md");
const STANDARD: &str = include_str!("base/species/standards/testing.toml");
const BIBLIOGRAPHY: &str = include_str!("base/sources.toml");

const CLUB: Layer = Layer::Library(0);
const SHARED: Layer = Layer::Library(1);

/// A site above a library that defines the testing snake, with further files in the folders given.
fn site(further: &[(Layer, &str, &str)]) -> Sources {
    let mut sources = Sources::default();
    let mut add = |layer, path: &str, text: &str| {
        let (role, name) = role_of(path).expect("a file of a site or library");
        let shown = match layer {
            Layer::Own => path.to_owned(),
            _ => format!("../library/{path}"),
        };
        sources.add(shown, role, name, layer, text.to_owned());
    };
    add(Layer::Own, "wardsheet.toml", "title = \"Quillmere\"\nlanguage = \"en\"\n");
    for (layer, path, text) in further {
        add(*layer, path, text);
    }
    add(SHARED, "sources.toml", BIBLIOGRAPHY);
    add(SHARED, "species/testing-snake.toml", SNAKE);
    add(SHARED, "species/testing-snake.md", WORDS);
    add(SHARED, "species/standards/testing.toml", STANDARD);
    add_look(&mut sources);
    sources
}

/// An override of one figure.
fn entry(name: &str, value: &str, was: &str, by: &str) -> String {
    format!(
        "[[figure]]\nname = \"{name}\"\nvalue = \"{value}\"\nwas = \"{was}\"\nreason = \"The room is damp.\"\nby = \"{by}\"\non = 2026-11-01\n"
    )
}

const FILE: &str = "species/testing-snake.override.toml";

fn checked(sources: &Sources) -> wardsheet::compile::Checked {
    check(sources, Vec::new(), "2026-11-25".parse().expect("a day"))
}

/// What holds by night, and the codes of what is found above a note.
fn followed(sources: &Sources) -> (Option<Range<Temperature>>, Vec<&'static str>) {
    let checked = checked(sources);
    let found = checked.findings.iter().filter(|finding| finding.severity > Severity::Note);
    let codes = found.map(|finding| finding.code.name).collect();
    let snake = &checked.model.species["testing-snake"];
    (snake.temperature.night.as_ref().map(|night| night.value), codes)
}

fn night(text: &str) -> Option<Range<Temperature>> {
    Some(parse_range(text).expect("a temperature"))
}

#[test]
fn a_site_sets_one_figure_and_keeps_the_rest_of_the_library() {
    let own = entry("temperature.night", "20-22 C", "19-22 C", "The care group");
    let sources = site(&[(Layer::Own, FILE, &own)]);
    assert_eq!(followed(&sources), (night("20-22 C"), Vec::new()));
    let snake = &checked(&sources).model.species["testing-snake"];
    let without = &checked(&site(&[])).model.species["testing-snake"];
    let others = |species: &wardsheet::model::Species| {
        let stated =
            species.stated().into_iter().filter(|stated| stated.name != "temperature.night");
        stated.map(|stated| (stated.name, stated.amount)).collect::<Vec<_>>()
    };
    assert_eq!(others(snake), others(without));
    assert!(others(snake).len() > 20);
}

#[test]
fn of_three_folders_the_nearest_that_sets_a_figure_is_followed() {
    let club = entry("temperature.night", "19-21 C", "19-22 C", "The club")
        + &entry("humidity.shed", "62-68 %", "60-70 %", "The club");
    let own = entry("temperature.night", "20-22 C", "19-21 C", "The care group");
    let sources = site(&[(Layer::Own, FILE, &own), (CLUB, FILE, &club)]);
    assert_eq!(followed(&sources), (night("20-22 C"), Vec::new()));
    let checked = checked(&sources);
    let snake = &checked.model.species["testing-snake"];
    let by: Vec<(&str, &str)> = snake
        .overrides
        .iter()
        .map(|entry| (entry.figure.name.as_str(), entry.by.as_str()))
        .collect();
    assert_eq!(by, [("humidity.shed", "The club"), ("temperature.night", "The care group")]);
    // Without the site's own entry the club's holds.
    assert_eq!(followed(&site(&[(CLUB, FILE, &club)])), (night("19-21 C"), Vec::new()));
}

#[test]
fn when_the_folder_between_moves_the_site_is_told() {
    let own = entry("temperature.night", "20-22 C", "19-22 C", "The care group");
    let club = entry("temperature.night", "19-21 C", "19-22 C", "The club");
    let (night_found, codes) = followed(&site(&[(Layer::Own, FILE, &own), (CLUB, FILE, &club)]));
    assert_eq!((night_found, codes), (night("20-22 C"), vec!["override-below-moved"]));
}

#[test]
fn a_folder_that_defines_the_whole_species_hides_what_stands_below_it() {
    let club = entry("temperature.night", "20-22 C", "19-22 C", "The club");
    let sources = site(&[(Layer::Own, "species/testing-snake.toml", SNAKE), (CLUB, FILE, &club)]);
    assert_eq!(followed(&sources), (night("19-22 C"), vec!["override-species-unknown"]));
    let both =
        site(&[(Layer::Own, "species/testing-snake.toml", SNAKE), (Layer::Own, FILE, &club)]);
    assert_eq!(followed(&both), (night("19-22 C"), vec!["override-species-unknown"]));
}

#[test]
fn an_entry_without_a_reason_or_a_name_behind_it_changes_nothing() {
    for missing in ["reason", "by"] {
        let text = entry("temperature.night", "20-22 C", "19-22 C", "The care group");
        let kept: String = text
            .lines()
            .filter(|line| !line.starts_with(missing))
            .map(|line| format!("{line}\n"))
            .collect();
        let sources = site(&[(Layer::Own, FILE, &kept)]);
        let found = checked(&sources).findings;
        let missed = found
            .iter()
            .find(|finding| finding.code.name == "field-missing")
            .expect("it is missed");
        assert_eq!(missed.message, format!("`figure.{missing}` is missing"));
        assert_eq!(followed(&sources).0, night("19-22 C"), "{missing}");
    }
}

#[test]
fn a_value_of_another_quantity_is_told_at_its_place() {
    let sources = site(&[(
        Layer::Own,
        FILE,
        &entry("temperature.night", "24 %", "19-22 C", "The care group"),
    )]);
    let found = checked(&sources).findings;
    assert!(found.iter().any(|finding| finding.message.starts_with("figure.value: ")), "{found:?}");
    assert_eq!(followed(&sources).0, night("19-22 C"));
}

#[test]
fn a_site_cannot_silence_the_loosening_of_a_limit() {
    let mut sources = Sources::default();
    let quiet = "title = \"Quillmere\"\nlanguage = \"en\"\n[findings]\n\"override-loosens-limit\" = \"off\"\n";
    let own = entry("humidity.ceiling", "90 %", "70 %", "The care group");
    for file in site(&[(Layer::Own, FILE, &own)]).files() {
        let text = if file.path == "wardsheet.toml" { quiet.to_owned() } else { file.text.clone() };
        sources.add(file.path.clone(), file.role, &file.name, file.layer, text);
    }
    let (_, codes) = followed(&sources);
    assert!(codes.contains(&"override-loosens-limit"), "{codes:?}");
}

#[test]
fn pages_say_by_whom_and_why_and_what_the_library_says() {
    let own = entry("temperature.night", "20-22 C", "19-22 C", "The care group of Quillmere");
    let sources = site(&[(Layer::Own, FILE, &own)]);
    let checked = checked(&sources);
    let files = compile(&sources, &checked).expect("it compiles");
    for path in ["public/species/testing-snake/index.html", "public/sources/index.html"] {
        let page = files.iter().find(|file| file.path == path).expect("a page");
        let text = String::from_utf8_lossy(&page.bytes);
        for said in ["The care group of Quillmere", "The room is damp.", "19–22"] {
            assert!(text.contains(said), "{path} does not say {said:?}");
        }
    }
    let care =
        files.iter().find(|file| file.path.ends_with("testing-snake/index.html")).expect("a page");
    let care = String::from_utf8_lossy(&care.bytes);
    assert!(care.contains("set here by The care group of Quillmere"), "the figure is marked");
    let entry = &document(&checked.figures, &[])["species"]["testing-snake"]["overrides"][0];
    assert_eq!(entry["figure"], "temperature.night");
    assert_eq!(entry["by"], "The care group of Quillmere");
    assert_eq!(entry["before_sources"][0], "testing-handbook");
    assert_eq!(entry["on"], "2026-11-01");
}

/// Every figure that a page states can be set, and by the name that words use.
#[test]
fn every_figure_that_a_species_states_has_a_place_to_be_set() {
    let mut sources = Sources::default();
    wardsheet::source::library::add_species(&mut sources);
    let (mut model, _) = wardsheet::parse::parse(&sources);
    for species in model.species.values_mut() {
        let names: Vec<String> = species.stated().into_iter().map(|stated| stated.name).collect();
        for name in names {
            assert!(species.slot(&name).is_some(), "{}: {name}", species.name);
        }
    }
}
