//! The invariants of the architecture: which room may use which, what touches the disk, the clock and the environment, how
//! long a file may grow. Each is also broken on purpose here, to show that it would be caught.

#![expect(clippy::disallowed_methods, reason = "this test reads the source tree")]

#[path = "architecture/code.rs"]
mod code;
#[path = "architecture/rooms.rs"]
mod rooms;
#[path = "architecture/templates.rs"]
mod templates;

use std::collections::BTreeSet;
use std::path::Path;

use rooms::{ROWS, breaks};

const LONGEST_FILE: usize = 400;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// The files below a folder whose names end so, with their paths from that folder and their texts.
fn texts(folder: &Path, endings: &[&str]) -> Vec<(String, String)> {
    let walk = walkdir::WalkDir::new(folder).sort_by_file_name().into_iter();
    let walk = walk.filter_entry(|entry| {
        !matches!(entry.file_name().to_str(), Some("out" | "node_modules" | "pictures"))
    });
    let files = walk
        .map(|entry| entry.expect("the tree can be read"))
        .filter(|entry| entry.file_type().is_file());
    let named = files.map(|entry| entry.into_path()).filter(|path| {
        let name = path.file_name().and_then(|name| name.to_str()).unwrap_or_default();
        endings.iter().any(|ending| name.ends_with(ending))
    });
    let read = named.map(|path| {
        let inside = path
            .strip_prefix(folder)
            .expect("below the folder")
            .to_string_lossy()
            .replace('\\', "/");
        (inside, std::fs::read_to_string(&path).expect("source is UTF-8"))
    });
    read.collect()
}

/// The crates that `Cargo.toml` brings in, under the names that code gives them.
fn dependencies(tables: &[&str]) -> BTreeSet<String> {
    let manifest = std::fs::read_to_string(root().join("Cargo.toml")).expect("Cargo.toml");
    let manifest: toml::Table = manifest.parse().expect("Cargo.toml is TOML");
    let names = tables.iter().filter_map(|table| manifest.get(*table)?.as_table());
    names.flat_map(|table| table.keys()).map(|name| name.replace('-', "_")).collect()
}

#[track_caller]
fn none(broken: &[String]) {
    assert!(broken.is_empty(), "\n{}", broken.join("\n"));
}

#[test]
fn every_file_keeps_to_its_room() {
    let outside = dependencies(&["dependencies", "dev-dependencies"]);
    let files = texts(&root().join("src"), &[".rs"]);
    assert!(files.len() > 100, "the source was not found");
    let broken: Vec<String> =
        files.iter().flat_map(|(file, text)| breaks(file, text, &outside)).collect();
    none(&broken);
}

#[test]
fn a_room_uses_only_rooms_above_it() {
    let order: Vec<&str> =
        ROWS.iter().map(|(room, ..)| room.split(['/', '.']).next().unwrap_or(room)).collect();
    for (place, (room, rooms, _)) in ROWS.iter().enumerate() {
        for used in *rooms {
            assert!(
                order[..=place].contains(used),
                "{room} is given {used}, which stands below it"
            );
        }
    }
}

#[test]
fn every_crate_from_outside_has_a_room_that_uses_it() {
    let given: BTreeSet<&str> = ROWS.iter().flat_map(|(.., crates)| *crates).copied().collect();
    let brought = dependencies(&["dependencies"]);
    let idle: Vec<String> =
        brought.into_iter().filter(|name| !given.contains(name.as_str())).collect();
    assert!(idle.is_empty(), "no room may use {idle:?}");
    let known = dependencies(&["dependencies", "dev-dependencies"]);
    let gone: Vec<&&str> = given.iter().filter(|name| !known.contains(**name)).collect();
    assert!(gone.is_empty(), "Cargo.toml does not bring in {gone:?}");
}

#[test]
fn files_stay_short_and_are_named_for_what_they_hold() {
    for folder in ["src", "tests", "benches"] {
        for (file, text) in texts(&root().join(folder), &[".rs"]) {
            let lines = text.lines().count();
            assert!(lines <= LONGEST_FILE, "{folder}/{file} has {lines} lines");
            let name = file.rsplit('/').next().unwrap_or(&file);
            let vague = ["util.rs", "utils.rs", "helper.rs", "helpers.rs", "common.rs", "misc.rs"];
            assert!(!vague.contains(&name), "{folder}/{file} is not named for what it holds");
        }
    }
}

#[test]
fn texts_speak_of_the_work_and_not_of_how_it_came_about() {
    let words = [
        concat!("issue", " #"),
        concat!("ses", "sion"),
        concat!("age", "nt"),
        concat!("as an", " ai"),
    ];
    let endings = [
        ".rs", ".toml", ".md", ".csv", ".html", ".css", ".svg", ".sh", ".mjs", ".js", ".snap",
        "run",
    ];
    for folder in
        ["src", "tests", "benches", "templates", "theme", "species", "site-example", ".ci"]
    {
        for (file, text) in texts(&root().join(folder), &endings) {
            let text = format!(" {} ", text.to_lowercase());
            for word in words {
                let whole = text.match_indices(word).any(|(start, _)| {
                    let (before, after) =
                        (&text[..start], text[start + word.len()..].trim_start_matches('s'));
                    !before.ends_with(char::is_alphanumeric)
                        && !after.starts_with(char::is_alphabetic)
                });
                assert!(!whole, "{folder}/{file} says `{word}`");
            }
        }
    }
}

#[test]
fn breaking_an_invariant_is_caught() {
    let outside = dependencies(&["dependencies", "dev-dependencies"]);
    let cases = [
        ("model/animal.rs", "use crate::render::Look;", "room `render`"),
        (
            "model/animal.rs",
            "use crate::{\n    quantity::Length,\n    render::{Look, File},\n};",
            "room `render`",
        ),
        ("model/mod.rs", "use super::render::Look;", "room `render`"),
        ("model/animal.rs", "use crate as c;", "another name"),
        ("figures/light.rs", "let text = std::fs::read(path);", "touches the disk"),
        ("figures/light.rs", "use std::{fs, io};", "`std::fs`"),
        ("figures/light.rs", "let root = area.powf(0.75);", "use libm"),
        ("figures/light.rs", "let root = f64::exp(area);", "use libm"),
        ("figures/light.rs", "let title = \"<b>zone</b>\";", "knows HTML"),
        ("sheets/care.rs", "let page = tera::Tera::default();", "crate `tera`"),
        ("sheets/care.rs", "use tera as t;", "crate `tera`"),
        ("sheets/care.rs", "use {serde::Serialize, tera};", "crate `tera`"),
        ("sheets/care.rs", "use ::tera::Tera;", "crate `tera`"),
        ("sheets/care.rs", "extern crate tera;", "`extern`"),
        ("proof/mod.rs", "println!(\"checked\");", "prints"),
        ("main.rs", "eprintln!(\"checked\");", "prints"),
        ("command/mod.rs", "let out = std::io::stdout();", "standard stream"),
        ("command/mod.rs", "if path.exists() {}", "asks the disk"),
        ("command/mod.rs", "let today = jiff::ZonedDateTime::now();", "reads the clock"),
        ("write/mod.rs", "let start = std::time::Instant::now();", "reads the clock"),
        ("source/read.rs", "use std::process::{Command, Stdio};", "starts another program"),
        ("command/changes.rs", "std::process::Command::new(\"git\");", "starts another program"),
        ("source/mod.rs", "let home = std::env::var(\"HOME\");", "reads the environment"),
        ("figures/formula/humidity.rs", "use super::super::working::Working;", "two modules up"),
        ("render/mod.rs", "let file = File::create(path);", "touches the disk"),
        ("parse/mod.rs", "use std::collections::HashMap;", "no order"),
        ("parse/mod.rs", "#[allow(dead_code)]\nfn spare() {}", "silences a lint"),
        ("parse/mod.rs", "#![allow(dead_code)]", "silences a lint"),
        ("attic/mod.rs", "", "belongs to no room"),
    ];
    for (file, text, expected) in cases {
        let found = breaks(file, text, &outside);
        assert!(
            found.iter().any(|what| what.contains(expected)),
            "{file}: `{text}` passes: {found:?}"
        );
    }
}

#[test]
fn what_keeps_to_the_invariants_is_left_alone() {
    let outside = dependencies(&["dependencies", "dev-dependencies"]);
    let cases = [
        ("figures/light.rs", "// As std::fs and crate::render do.\nlet exp = libm::exp(1.0);"),
        (
            "figures/light.rs",
            "/* println!(\"\") */ let mark = '\"'; let name: &'static str = r#\"crate::render\"#;",
        ),
        (
            "figures/light.rs",
            "let text = \"crate::render \\\" println!()\"; let size = area.sqrt();",
        ),
        ("main.rs", "use wardsheet::command::Command; let day = jiff::ZonedDateTime::now();"),
        ("write/mod.rs", "std::fs::write(path, crate::render::bytes)"),
        ("command/figures.rs", "use super::open::open; let version = env!(\"CARGO_PKG_VERSION\");"),
    ];
    for (file, text) in cases {
        none(&breaks(file, text, &outside));
    }
}

#[test]
fn templates_work_nothing_out_and_escape_everything() {
    let files = texts(&root().join("templates"), &[".html"]);
    assert!(files.len() > 5, "the templates were not found");
    let broken: Vec<String> =
        files.iter().flat_map(|(file, text)| templates::breaks(file, text)).collect();
    none(&broken);
}

#[test]
fn a_template_that_does_either_is_caught() {
    let cases = [
        ("<p>{{ width * 2 }}", "works something out"),
        ("{%- set wide = columns + 1 -%}", "works something out"),
        ("<p>{{ story | safe }}", "`safe` stands behind `story`"),
        ("<p>{{ story | prose | upper | safe }}", "`safe` stands behind `upper`"),
        ("{% autoescape false %}", "turns escaping off"),
    ];
    for (text, expected) in cases {
        let found = templates::breaks("page.html", text);
        assert!(found.len() == 1 && found[0].contains(expected), "{text}: {found:?}");
    }
    none(&templates::breaks("page.html", "{# a * b #}{{ <facts facts /> }}{{ \"a + b\" }}"));
    none(&templates::breaks("page.html", "{{ words | prose | safe }}{% if a and not b -%}"));
}
