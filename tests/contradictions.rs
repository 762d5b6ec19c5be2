//! Contradictions that lie between two files, or in words that are hard to read: each with the sentence that a keeper is told.

#![expect(clippy::disallowed_methods, reason = "the base site lies on the disk")]

use std::path::Path;

use wardsheet::compile::check;
use wardsheet::source::library::role_of;
use wardsheet::source::{Layer, Sources};

/// What is found of a code on the base site, with these files laid over it.
fn told(code: &str, files: &[(&str, &str)]) -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/base");
    let mut texts = std::collections::BTreeMap::new();
    for entry in walkdir::WalkDir::new(&folder) {
        let entry = entry.expect("the base site can be walked");
        if entry.file_type().is_file() {
            let path = entry.path().strip_prefix(&folder).expect("it lies in the base site");
            // A photo is no text, and none is contradicted here.
            let Ok(text) = std::fs::read_to_string(entry.path()) else { continue };
            texts.insert(path.to_string_lossy().replace('\\', "/"), text);
        }
    }
    for (path, more) in files {
        let text: &mut String = texts.entry((*path).to_owned()).or_default();
        // What is added stands at the end; a text that begins with a bar takes the place of the whole.
        match more.strip_prefix('|') {
            Some(whole) => *text = whole.to_owned(),
            None => text.push_str(more),
        }
    }
    let mut sources = Sources::default();
    for (path, text) in texts {
        let Some((role, name)) = role_of(&path) else { continue };
        sources.add(path.clone(), role, name, Layer::Own, text);
    }
    let found = check(&sources, Vec::new(), "2026-11-25".parse().expect("a day")).findings;
    let of_this = found.into_iter().filter(|found| found.code.name == code);
    // Between a number and its unit stands a space that does not break.
    of_this.map(|found| found.message.replace('\u{a0}', " ")).collect()
}

/// A second animal of the base site.
fn rowan(more: &str) -> String {
    format!(
        "|name = \"Rowan\"\nspecies = \"testing-snake\"\nsex = \"male\"\nhatched = 2022-08-01\n{more}"
    )
}

const LOG: &str = "|date,what,value,outcome,note\n";

#[test]
fn a_companions_illness_and_a_companions_arrival_start_a_quarantine_again() {
    let own = "|name = \"Juniper\"\nspecies = \"testing-snake\"\nwith = [\"rowan\"]\narrived = 2026-06-01\n\
               [quarantine]\nstarted = 2026-06-01\nminimum = \"90 days\"\n";
    let quiet = rowan("arrived = 2026-05-01\nwith = [\"juniper\"]\n");
    let late = rowan("arrived = 2026-10-01\nwith = [\"juniper\"]\n");
    let ill = format!("{LOG}2026-09-20,illness,,,bubbles at the nose\n");
    let code = "quarantine-not-restarted";
    let with = |other: &str, log: &str| {
        told(
            code,
            &[
                ("animals/juniper.toml", own),
                ("animals/juniper.csv", LOG),
                ("animals/rowan.toml", other),
                ("animals/rowan.csv", log),
            ],
        )
    };
    assert!(with(&quiet, LOG).is_empty(), "nothing has started it again");
    let came = with(&late, LOG);
    assert_eq!(came.len(), 1, "{came:?}");
    assert!(
        came[0].contains("the arrival of Rowan on 2026-10-01")
            && came[0].contains("until 2026-12-30"),
        "{came:?}"
    );
    let fell_ill = with(&quiet, &ill);
    assert_eq!(fell_ill.len(), 1, "{fell_ill:?}");
    assert!(
        fell_ill[0].contains("the illness of Rowan on 2026-09-20")
            && fell_ill[0].contains("until 2026-12-19"),
        "{fell_ill:?}"
    );
}

#[test]
fn an_enclosure_that_two_animals_share_is_plugged_in_once() {
    let heater = "[[heater]]\nkind = \"ceramic\"\nwatts = \"100 W\"\nthermostat = \"pulse\"\nset_point = \"28 C\"\nguard = true\nstrip = \"shelf\"\n";
    let own =
        format!("|name = \"Juniper\"\nspecies = \"testing-snake\"\nwith = [\"rowan\"]\n{heater}");
    let shared = rowan(&format!("with = [\"juniper\"]\n{heater}"));
    let apart = rowan(heater);
    let strip = "[[strip]]\nname = \"shelf\"\nrating = \"150 W\"\n";
    let with = |other: &str| {
        told(
            "strip-overloaded",
            &[
                ("wardsheet.toml", strip),
                ("animals/juniper.toml", &own),
                ("animals/rowan.toml", other),
            ],
        )
    };
    assert!(with(&shared).is_empty());
    assert_eq!(with(&apart), ["200 W is plugged into the strip `shelf`, which may carry 150 W"]);
}

#[test]
fn a_strip_is_rated_in_watts_or_in_amperes_at_its_volts() {
    let own = "|name = \"Juniper\"\nspecies = \"testing-snake\"\n[[heater]]\nkind = \"ceramic\"\nwatts = \"2.5 kW\"\n\
               thermostat = \"pulse\"\nset_point = \"28 C\"\nguard = true\nstrip = \"shelf\"\n";
    let with = |rating: &str| {
        let strip = format!("[[strip]]\nname = \"shelf\"\nrating = \"{rating}\"\n");
        told("strip-overloaded", &[("wardsheet.toml", &strip), ("animals/juniper.toml", own)]).len()
    };
    assert_eq!(
        [with("10 A x 230 V"), with("13 A × 230 V"), with("2400 W"), with("2.6 kW")],
        [1, 0, 1, 0]
    );
}

#[test]
fn prose_drift_is_found_in_every_way_of_writing_a_figure() {
    let feeding = |sentence: &str| {
        let words = format!("|## Feeding\n\n{sentence}\n");
        told("prose-drift", &[("species/testing-snake.md", &words)])
    };
    for sentence in [
        "A grown snake eats every thirty days.",
        "A grown snake eats every 25 to 30 days.",
        "A grown snake eats every 25–30 days.",
        "| stage | every |\n|---|---|\n| grown | 30 days |",
        "- grown: every 30 days",
    ] {
        let found = feeding(sentence);
        assert_eq!(found.len(), 1, "{sentence}: {found:?}");
        assert!(found[0].contains("feeding."), "{found:?}");
    }
    for sentence in [
        "`every = 30 days`",
        "```\n30 days\n```",
        "Every {{ feeding.adult.every }}.",
        "A grown snake eats every twelve days.",
    ] {
        assert!(feeding(sentence).is_empty(), "{sentence}");
    }
    let heat = |sentence: &str| {
        let words = format!("|## Heat and light\n\n{sentence}\n");
        told("prose-drift", &[("species/testing-snake.md", &words)])
    };
    assert_eq!(
        heat("Keep the cool side at 64 °F.").len(),
        1,
        "18 °C is colder than the cool side and the night"
    );
    assert!(heat("Keep the cool side at 73 °F.").is_empty(), "23 °C is within 22 to 24 °C");
    assert_eq!(heat("Keep the cool side at 17.5 °C.").len(), 1);
}

#[test]
fn a_private_value_is_found_in_public_words_however_it_is_spaced_or_written() {
    let page = |words: &str| {
        told("private-value-in-public", &[("pages/about.md", &format!("|# About\n\n{words}\n"))])
    };
    for words in ["Ring 5550100.", "Ring 555-01-00.", "Come to 1, MILL LANE, quillmere."] {
        assert_eq!(page(words).len(), 1, "{words}");
    }
    assert!(page("Ring the society.").is_empty());
}

#[test]
fn a_figure_without_a_source_is_found_only_where_the_site_asks() {
    let asks = |asked: &str| {
        let site =
            format!("|title = \"x\"\nstandards = [\"testing\"]\nfigures_need_source = {asked}\n");
        told("figure-without-source", &[("wardsheet.toml", &site)])
    };
    assert!(asks("[]").is_empty());
    assert!(asks("\"temperature.never_above\"").is_empty(), "it has a source");
    let all = asks("\"all\"");
    assert!(all.iter().any(|told| told.starts_with("`size.birth` of")), "{all:?}");
    assert_eq!(asks("[\"size.birth\"]").len(), 1);
}
