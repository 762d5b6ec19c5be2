//! What pages say and how findings are drawn, kept as text that a person reads when it changes.
//!
//! The pages are those of one small invented site, which stands in `tests/snapshots/site`. A finding is provoked by one change
//! to it. `INSTA_UPDATE=always cargo test --test snapshots` writes every snapshot anew.

#![expect(clippy::disallowed_methods, reason = "the site of this test stands on the disk")]

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use jiff::civil::{Date, date};
use serde_json::Value;
use wardsheet::compile::{Checked, check, compile};
use wardsheet::finding::{Finding, draw};
use wardsheet::sheets::compare::Order;
use wardsheet::sheets::sitter::Stay;
use wardsheet::sheets::{self, Wanted};
use wardsheet::source::library::{add_look, role_of};
use wardsheet::source::{Folder, Layer, Photo, Sources};

const TODAY: Date = date(2026, 11, 25);

const SITE: &str = "wardsheet.toml";
const SPECIES: &str = "species/marsh-snake.toml";
const WORDS: &str = "species/marsh-snake.md";
const ANIMAL: &str = "animals/sedge.toml";
const LOG: &str = "animals/sedge.csv";

/// A change to the site: the code that it provokes, the file, what stands there and what is put in its place. Where nothing
/// stands there the file is new.
type Case = (&'static str, &'static str, &'static str, &'static str);

const CASES: &[Case] = &[
    ("readings-column", "maps/shelf.toml", "RH (%)", "Humidity"),
    (
        "list-too-long",
        "maps/shelf.toml",
        "\"Time\"",
        "[\"Time\", \"Year\", \"Month\", \"Day\", \"Hour\", \"Minute\", \"Second\", \"Zone\", \"Season\"]",
    ),
    ("readings-row", "readings/sedge.csv", "20.11.2026 12:00", "20.11.26 12 h"),
    ("code-unknown", SITE, "title", "findings = { log-lime = \"off\" }\ntitle"),
    ("companion-unknown", ANIMAL, "sex =", "with = [\"segde\"]\nsex ="),
    ("date-unreadable", LOG, "2026-11-14", "2026-11-31"),
    ("field-missing", SPECIES, "scientific = \"Palus quillmerensis\"\n", ""),
    ("figure-unbearable", SPECIES, "\"34 C\"", "\"340 C\""),
    ("figure-unreadable", SPECIES, "\"34 C\"", "\"warm\""),
    ("figure-without-unit", SPECIES, "\"34 C\"", "34"),
    ("file-empty", "animals/rush.toml", "", "\n"),
    ("form-unknown", ANIMAL, "sex =", "form = \"dwarf\"\nsex ="),
    ("key-unknown", ANIMAL, "origin =", "orgin ="),
    ("log-heading", LOG, "date,what,value,outcome,note", "day,what,value,outcome,note"),
    ("log-in-future", LOG, "2026-11-20", "2026-11-29"),
    ("log-line", LOG, "length,62 cm", "lenght,62 cm"),
    ("log-out-of-order", LOG, "2026-05-30", "2025-05-30"),
    ("owner-missing", "animals/segde.csv", "", "date,what,value,outcome,note\n"),
    ("photo-kind-not-read", ANIMAL, "sex =", "photo = \"sedge.gif\"\nsex ="),
    ("photo-missing", ANIMAL, "sex =", "photo = \"sedge.jpg\"\nsex ="),
    ("photo-too-large", ANIMAL, "sex =", "photo = \"enormous.png\"\nsex ="),
    ("photo-unreadable", ANIMAL, "sex =", "photo = \"weights.jpg\"\nsex ="),
    ("quote-unknown", WORDS, "temperature.basking", "temperature.baskng"),
    ("range-reversed", SPECIES, "\"26-28 C\"", "\"28-26 C\""),
    (
        "source-unknown",
        SPECIES,
        "\"12-16 years\", source = \"quillmere-report\"",
        "\"12-16 years\", source = \"quillmere\"",
    ),
    ("species-unknown", ANIMAL, "\"marsh-snake\"", "\"marsh-snaek\""),
    ("stage-bounds", SPECIES, "until_age = \"12 months\"\n", ""),
    ("standard-unknown", SPECIES, "[enclosure.quillmere-1990]", "[enclosure.quillmere-1991]"),
    ("toml-syntax", ANIMAL, "name = \"Sedge\"", "name = Sedge"),
    ("unit-unknown", SPECIES, "\"34 C\"", "\"34 cm\""),
    ("word-unknown", SPECIES, "\"snake\"", "\"snaek\""),
    ("words-html", WORDS, "Long rather", "Long <b>rather</b> [see](javascript:alert)"),
    ("wrong-kind", ANIMAL, "\"Sedge\"", "7"),
];

/// What lies in the folder of photos, whether or not an animal names it.
const PHOTOS: [(&str, &[u8]); 3] = [
    ("enormous.png", include_bytes!("base/photos/enormous.png")),
    ("sedge.gif", include_bytes!("base/photos/juniper.gif")),
    ("weights.jpg", include_bytes!("base/photos/weights.jpg")),
];

/// Codes of reading that only a disk can provoke, with the test that does.
const ON_DISK: [&str; 4] = ["link-loop", "name-taken-twice", "name-unusable", "not-utf8"];
/// Codes that no test provokes: a file that may not be read is read by the superuser, and a file of 64 MB is slow.
const UNPROVOKED: [&str; 2] = ["file-unreadable", "file-too-large"];

const PAGES: [&str; 18] = [
    "review",
    "index",
    "care",
    "working",
    "card",
    "animal",
    "compare",
    "fits",
    "not-found",
    "sitemap",
    "feed",
    "sources",
    "page",
    "handover",
    "door",
    "record",
    "sitter",
    "round",
];

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/snapshots")
}

/// The texts of the site by their paths.
fn site() -> Vec<(String, String)> {
    let folder = folder().join("site");
    let walk = walkdir::WalkDir::new(&folder)
        .sort_by_file_name()
        .into_iter()
        .map(|entry| entry.expect("the site's folder"));
    let files = walk.filter(|entry| entry.file_type().is_file());
    let read = files.map(|entry| {
        let path = entry
            .path()
            .strip_prefix(&folder)
            .expect("below the folder")
            .to_string_lossy()
            .replace('\\', "/");
        (path, std::fs::read_to_string(entry.path()).expect("a text"))
    });
    read.collect()
}

fn sources(texts: &[(String, String)]) -> Sources {
    let mut sources = Sources::default();
    for (path, text) in texts {
        let (role, name) = role_of(path).expect("every file of the site has a role");
        sources.add(path.clone(), role, name, Layer::Own, text.clone());
    }
    for (name, bytes) in PHOTOS {
        sources.add_photo(name.to_owned(), Photo::InMemory(bytes.into()));
    }
    sources
}

fn sound() -> Checked {
    let sources = sources(&site());
    let checked = check(&sources, Vec::new(), TODAY);
    let drawn = drawn(&checked.findings, &sources, None);
    assert!(drawn.is_empty(), "the site is sound before it is changed:\n{drawn}");
    checked
}

/// Findings as people see them: those of a code, or those that stop a compile.
fn drawn(findings: &[Finding], sources: &Sources, code: Option<&str>) -> String {
    let chosen: Vec<Finding> = findings
        .iter()
        .filter(|finding| {
            code.map_or(wardsheet::finding::stops(&[(*finding).clone()]), |code| {
                finding.code.name == code
            })
        })
        .cloned()
        .collect();
    draw::draw(&chosen, false, &|file| sources.shown(file))
}

/// Compares a text with its snapshot.
fn compare(name: &str, text: &str) {
    let mut settings = insta::Settings::clone_current();
    settings.set_snapshot_path(folder());
    settings.set_prepend_module_to_snapshot(false);
    settings.set_omit_expression(true);
    settings.bind(|| insta::assert_snapshot!(name, text));
}

/// A sheet as an outline: a line a value, without what is empty.
fn outline(value: &Value, depth: usize, lines: &mut String) {
    let indent = "  ".repeat(depth);
    match value {
        Value::Object(entries) => {
            for (key, value) in entries {
                match plain(value) {
                    Some(text) if text.is_empty() => {}
                    Some(text) => lines.push_str(&format!("{indent}{key}: {text}\n")),
                    None => {
                        lines.push_str(&format!("{indent}{key}\n"));
                        outline(value, depth + 1, lines);
                    }
                }
            }
        }
        Value::Array(items) => {
            for item in items {
                match plain(item) {
                    Some(text) => lines.push_str(&format!("{indent}- {text}\n")),
                    None => {
                        let mut inner = String::new();
                        outline(item, depth + 1, &mut inner);
                        lines.push_str(&format!("{indent}- {}", inner.trim_start()));
                    }
                }
            }
        }
        _ => {}
    }
}

/// What fits on one line: a single value, a value in both systems of units, or a row of a table.
fn plain(value: &Value) -> Option<String> {
    Some(match value {
        Value::Null => String::new(),
        Value::Bool(said) => if *said { "yes" } else { "" }.to_owned(),
        Value::Number(number) => number.to_string(),
        Value::String(text) => text.trim().replace('\n', " / "),
        Value::Array(items) if items.is_empty() => String::new(),
        Value::Array(items) => {
            let cells: Option<Vec<String>> =
                items.iter().map(|item| plain(item).filter(|text| text.len() < 60)).collect();
            cells?.join(" | ")
        }
        Value::Object(entries) => {
            let first = entries.get("first").filter(|_| entries.contains_key("missing"))?;
            let second =
                entries.get("second").and_then(Value::as_str).map(|second| format!(" ({second})"));
            format!("{}{}", plain(first)?, second.unwrap_or_default())
        }
    })
}

#[test]
fn pages_say_what_they_said() {
    let checked = sound();
    let key = || "marsh-snake".to_owned();
    for page in PAGES {
        let wanted = match page {
            "index" => Wanted::Index,
            "care" => Wanted::Care(key()),
            "working" => Wanted::Working(key()),
            "card" => Wanted::Card(key()),
            "animal" => Wanted::Animal("sedge".to_owned()),
            "compare" => Wanted::Compare(Order::Space),
            "fits" => Wanted::Fits,
            "review" => Wanted::Review,
            "not-found" => Wanted::NotFound,
            "sitemap" => Wanted::Sitemap,
            "feed" => Wanted::Feed,
            "sources" => Wanted::Sources,
            "page" => Wanted::Page("about".to_owned()),
            "door" => Wanted::Door("sedge".to_owned()),
            "record" => Wanted::Record("sedge".to_owned()),
            "sitter" => Wanted::Sitter(Stay {
                from: date(2026, 12, 1),
                until: date(2026, 12, 7),
                animals: Vec::new(),
            }),
            "round" => Wanted::Round(date(2026, 11, 23)),
            _ => Wanted::Handover("sedge".to_owned()),
        };
        let sheet = sheets::build(&checked.model, &checked.figures, &wanted)
            .expect("the site has this page");
        let mut lines = String::new();
        outline(&serde_json::to_value(&sheet).expect("a sheet is plain data"), 0, &mut lines);
        compare(&format!("page-{page}"), &lines);
    }
}

#[test]
fn findings_are_drawn_as_they_were() {
    for (code, path, from, to) in CASES {
        let mut texts = site();
        match texts.iter_mut().find(|(changed, _)| changed == path) {
            Some((_, text)) => {
                assert!(text.contains(from), "{path} does not hold `{from}`");
                *text = text.replacen(from, to, 1);
            }
            None => texts.push(((*path).to_owned(), (*to).to_owned())),
        }
        let sources = sources(&texts);
        let found = check(&sources, Vec::new(), TODAY).findings;
        let drawn = drawn(&found, &sources, Some(code));
        assert!(!drawn.is_empty(), "{code} is not found: {found:?}");
        compare(&format!("finding-{code}"), &drawn);
    }
}

#[test]
fn a_template_that_does_not_work_is_drawn_as_it_was() {
    let mut texts = site();
    texts.push((
        "templates/page.html".to_owned(),
        "<h1>{{ title }}</h1>\n<p>{{ subtitle }}</p>\n".to_owned(),
    ));
    let mut sources = sources(&texts);
    add_look(&mut sources);
    let broken = compile(&sources, &check(&sources, Vec::new(), TODAY))
        .expect_err("the template asks for too much");
    compare("finding-template-broken", &drawn(&broken, &sources, None));
}

#[cfg(unix)]
#[test]
fn findings_of_a_disk_are_drawn_as_they_were() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("snapshots-disk");
    let _ = std::fs::remove_dir_all(&folder);
    let put = |path: &str, bytes: &[u8]| {
        let place = folder.join(path);
        std::fs::create_dir_all(place.parent().expect("below the folder")).expect("a folder");
        std::fs::write(place, bytes).expect("a file");
    };
    put("wardsheet.toml", b"title = \"Quillmere\"\n");
    put("pages/opening hours.md", b"# Opening hours\n");
    put("pages/about.md", b"# About\n");
    put("pages/more/about.md", b"# About again\n");
    put("pages/latin.md", b"# Caf\xe9\n");
    std::os::unix::fs::symlink("../pages", folder.join("pages/round")).expect("a link");
    let (sources, found) =
        Folder::find(Some(&folder), &folder).and_then(|folder| folder.read(&[])).expect("a site");
    for code in ON_DISK {
        let drawn = drawn(&found, &sources, Some(code));
        assert!(!drawn.is_empty(), "{code} is not found: {found:?}");
        compare(&format!("finding-{code}"), &drawn);
    }
}

#[test]
fn every_code_of_reading_and_parsing_has_a_case() {
    let known = wardsheet::source::codes::ALL.into_iter().chain(wardsheet::parse::codes::ALL);
    let cased: BTreeSet<&str> =
        CASES.iter().map(|(code, ..)| *code).chain(ON_DISK).chain(UNPROVOKED).collect();
    let without: Vec<&str> =
        known.map(|code| code.name).filter(|name| !cased.contains(name)).collect();
    assert!(without.is_empty(), "no case provokes {without:?}");
}

#[test]
fn no_snapshot_is_left_over() {
    let pages = PAGES.iter().map(|page| format!("page-{page}.snap"));
    let codes = CASES.iter().map(|(code, ..)| *code).chain(ON_DISK).chain(["template-broken"]);
    let expected: BTreeSet<String> =
        codes.map(|code| format!("finding-{code}.snap")).chain(pages).collect();
    let entries = std::fs::read_dir(folder())
        .expect("the folder of the snapshots")
        .map(|entry| entry.expect("an entry"));
    let names = entries.map(|entry| entry.file_name().to_string_lossy().into_owned());
    let left_over: Vec<String> =
        names.filter(|name| name.ends_with(".snap") && !expected.contains(name)).collect();
    assert!(left_over.is_empty(), "no test compares {left_over:?}");
}
