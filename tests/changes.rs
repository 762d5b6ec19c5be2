//! What `wardsheet changes` tells: two folders, two git revisions, figures, sources and words.

#![expect(clippy::disallowed_methods, reason = "these tests lay out folders and repositories")]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

struct Run {
    status: i32,
    out: String,
    err: String,
}

fn wardsheet(folder: &Path, arguments: &[&str]) -> Run {
    let run = Command::new(env!("CARGO_BIN_EXE_wardsheet"))
        .args(arguments)
        .args(["--as-of", "2026-11-25"])
        .current_dir(folder)
        .output()
        .expect("the program runs");
    Run {
        status: run.status.code().expect("the program ends by itself"),
        out: String::from_utf8_lossy(&run.stdout).into_owned(),
        err: String::from_utf8_lossy(&run.stderr).into_owned(),
    }
}

fn copy(from: &Path, to: &Path) {
    for entry in walkdir::WalkDir::new(from) {
        let entry = entry.expect("the base site can be walked");
        let place = to.join(entry.path().strip_prefix(from).expect("below the folder"));
        if entry.file_type().is_dir() {
            fs::create_dir_all(&place).expect("a folder can be made");
        } else {
            fs::copy(entry.path(), &place).expect("a file can be copied");
        }
    }
}

/// A folder with two copies of the clean base site, `old` and `new`.
fn two(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    let base = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/base");
    copy(&base, &folder.join("old"));
    copy(&base, &folder.join("new"));
    folder
}

fn replace(place: &Path, from: &str, to: &str) {
    let text = fs::read_to_string(place).expect("the file is there");
    assert_eq!(text.matches(from).count(), 1, "`{from}` stands once in {}", place.display());
    fs::write(place, text.replace(from, to)).expect("the file can be written");
}

fn json(folder: &Path, old: &str, new: &str) -> (i32, Value) {
    let run = wardsheet(folder, &["changes", old, new, "--format", "json"]);
    let document = serde_json::from_str(&run.out).unwrap_or_else(|_| panic!("{}", run.err));
    (run.status, document)
}

fn figure<'a>(document: &'a Value, name: &str) -> &'a Value {
    let figures = document["figures"].as_array().expect("a list");
    figures
        .iter()
        .find(|one| one["figure"] == name)
        .unwrap_or_else(|| panic!("{name}: {figures:?}"))
}

#[test]
fn the_same_site_twice_differs_in_nothing() {
    let folder = two("changes-none");
    let run = wardsheet(&folder, &["changes", "old", "new"]);
    assert_eq!((run.status, run.out.as_str()), (0, "No care figure differs between old and new\n"));
}

#[test]
fn a_raised_ceiling_stands_first_with_what_rests_on_it() {
    let folder = two("changes-ceiling");
    let species = folder.join("new/species/testing-snake.toml");
    replace(
        &species,
        "ceiling = { value = \"70 %\", source",
        "ceiling = { value = \"75 %\", source",
    );
    replace(&species, "night = { value = \"19-22 C\"", "night = { value = \"18-22 C\"");
    let (status, document) = json(&folder, "old", "new");
    assert_eq!(status, 1);
    let first = &document["figures"][0];
    assert_eq!(first["weight"], "limit");
    assert_eq!(first["loosened"], true);
    let ceiling = figure(&document, "humidity.ceiling");
    assert_eq!(ceiling["by"], "+5 points of humidity");
    assert_eq!(ceiling["animals"], serde_json::json!(["juniper"]));
    // The reading that stands for the ceiling at the warm side is worked out from it.
    let derived = document["figures"].as_array().expect("a list").iter();
    let derived: Vec<_> = derived
        .filter(|one| one["figure"].as_str().is_some_and(|name| name.contains("at_most_percent")))
        .collect();
    assert!(!derived.is_empty());
    let weights: Vec<&str> = document["figures"]
        .as_array()
        .expect("a list")
        .iter()
        .filter_map(|one| one["weight"].as_str())
        .collect();
    let limits = weights.iter().filter(|weight| **weight == "limit").count();
    assert!(weights[..limits].iter().all(|weight| *weight == "limit"), "{weights:?}");
}

#[test]
fn a_figure_of_one_animal_is_told_under_its_name() {
    let folder = two("changes-animal");
    replace(
        &folder.join("new/animals/juniper.toml"),
        "set_point = \"28 C\"",
        "set_point = \"29 C\"",
    );
    let (status, document) = json(&folder, "old", "new");
    assert_eq!(status, 1);
    let set = figure(&document, "heater.1.set_point");
    assert_eq!((&set["of"], &set["name"]), (&"animal".into(), &"juniper".into()));
    assert!(set["before"].as_str().expect("a text").contains("28"), "{set}");
    assert!(set["after"].as_str().expect("a text").contains("29"), "{set}");
    assert_eq!(document["words"], serde_json::json!([]));
}

#[test]
fn words_alone_are_listed_by_chapter_and_change_no_figure() {
    let folder = two("changes-words");
    let words = folder.join("new/species/testing-snake.md");
    let text = fs::read_to_string(&words).expect("the words are there");
    fs::write(&words, text.replace("## Cleaning\n", "## Cleaning\n\nWash the bowl first.\n"))
        .expect("written");
    let run = wardsheet(&folder, &["changes", "old", "new"]);
    assert_eq!(run.status, 0, "{}", run.out);
    assert!(run.out.contains("Words\n  species testing-snake: Cleaning changed\n"), "{}", run.out);
    assert_eq!(run.out.matches("changed").count(), 1, "{}", run.out);
}

#[test]
fn sources_alone_are_told_and_change_no_figure() {
    let folder = two("changes-sources");
    let species = folder.join("new/species/testing-snake.toml");
    replace(
        &species,
        "never_above = { value = \"35 C\", source = \"testing-handbook\" }",
        "never_above = \"35 C\"",
    );
    let (status, document) = json(&folder, "old", "new");
    assert_eq!((status, &document["figures"]), (0, &serde_json::json!([])));
    assert_eq!(
        document["sources"],
        serde_json::json!([{ "species": "testing-snake", "figure": "temperature.never_above",
            "before": ["testing-handbook"], "after": [] }])
    );
}

#[test]
fn the_same_temperature_in_the_other_unit_is_no_change() {
    let folder = two("changes-unit");
    let species = folder.join("new/species/testing-snake.toml");
    replace(&species, "never_above = { value = \"35 C\"", "never_above = { value = \"95 F\"");
    let run = wardsheet(&folder, &["changes", "old", "new"]);
    assert_eq!(run.status, 0, "{}", run.out);
}

#[test]
fn a_species_that_is_gone_is_told() {
    let folder = two("changes-species");
    for part in ["old", "new"] {
        fs::remove_file(folder.join(part).join("animals/juniper.toml")).expect("removed");
        fs::remove_file(folder.join(part).join("animals/juniper.csv")).expect("removed");
    }
    let file = folder.join("new/species/testing-snake");
    fs::copy(file.with_extension("toml"), folder.join("new/species/second-snake.toml"))
        .expect("copied");
    fs::remove_file(file.with_extension("toml")).expect("removed");
    fs::remove_file(file.with_extension("md")).expect("removed");
    let run = wardsheet(&folder, &["changes", "old", "new"]);
    assert_eq!(run.status, 1);
    assert!(run.out.contains("species testing-snake (Testing snake) removed"), "{}", run.out);
    assert!(run.out.contains("species second-snake (Testing snake) added"), "{}", run.out);
}

#[test]
fn a_side_that_cannot_be_read_is_told_with_its_findings() {
    let folder = two("changes-unreadable");
    replace(&folder.join("new/animals/juniper.toml"), "set_point = \"28 C\"", "set_point = 28");
    let run = wardsheet(&folder, &["changes", "old", "new"]);
    assert_eq!((run.status, run.out.as_str()), (2, ""));
    assert!(run.err.contains("new cannot be read:"), "{}", run.err);
    assert!(run.err.contains("figure-without-unit"), "{}", run.err);
}

#[test]
fn an_unsafe_side_is_compared_all_the_same() {
    let folder = two("changes-unsafe");
    let guard = "set_night = \"21 C\"\nguard = true";
    replace(&folder.join("new/animals/juniper.toml"), guard, &guard.replace("true", "false"));
    let run = wardsheet(&folder, &["changes", "old", "new", "--format", "markdown"]);
    assert_eq!(run.status, 1, "{}", run.err);
    assert!(run.out.contains("new does not pass proof (1 error)"), "{}", run.out);
    assert!(run.out.contains("| juniper | heater.1.guard"), "{}", run.out);
    assert!(run.out.contains("| guarded | no guard |"), "{}", run.out);
}

fn git(folder: &Path, arguments: &[&str]) {
    let run = Command::new("git")
        .args([
            "-c",
            "user.name=Example Keeper",
            "-c",
            "user.email=keeper@example.org",
            "-c",
            "commit.gpgsign=false",
        ])
        .args(arguments)
        .current_dir(folder)
        .output()
        .expect("git is there");
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
}

#[test]
fn two_revisions_are_compared_without_touching_the_work_tree() {
    let folder = two("changes-git");
    let site = folder.join("old");
    git(&folder, &["init", "--quiet", "--initial-branch", "main", "."]);
    git(&folder, &["add", "old"]);
    git(&folder, &["commit", "--quiet", "-m", "first"]);
    let species = site.join("species/testing-snake.toml");
    replace(&species, "never_above = { value = \"35 C\"", "never_above = { value = \"36 C\"");
    git(&folder, &["commit", "--quiet", "-am", "second"]);
    // Neither revision is what stands in the folder now.
    replace(&species, "never_above = { value = \"36 C\"", "never_above = { value = \"37 C\"");

    let (status, document) = json(&site, "HEAD~1", "main");
    assert_eq!(status, 1);
    let never = figure(&document, "temperature.never_above");
    assert_eq!((&never["by"], &never["loosened"]), (&"+1 °C".into(), &true.into()));
    assert!(document["new"]["name"].as_str().expect("a name").starts_with("main ("), "{document}");
    assert!(
        fs::read_to_string(&species).expect("there").contains("37 C"),
        "the work tree is as it was"
    );

    let (_, with_folder) = json(&site, "main", ".");
    assert_eq!(figure(&with_folder, "temperature.never_above")["by"], "+1 °C");

    let run = wardsheet(&site, &["changes", "HEAD", "HEAD"]);
    assert_eq!(run.status, 0, "{}", run.out);
    let run = wardsheet(&site, &["changes", "mian", "HEAD"]);
    assert_eq!(run.status, 2);
    assert!(run.err.contains("`mian` is neither a site's folder nor a revision"), "{}", run.err);
    let run = wardsheet(&site, &["changes", "--", "--output=x", "HEAD"]);
    assert_eq!(run.status, 2, "{}", run.err);
    assert!(!site.join("x").exists());
}

#[test]
fn the_history_of_a_species_tells_when_each_figure_was_written() {
    let folder = two("changes-history");
    let site = folder.join("old");
    git(&folder, &["init", "--quiet", "--initial-branch", "main", "."]);
    git(&folder, &["add", "old"]);
    git(&folder, &["commit", "--quiet", "-m", "first", "--date", "2024-03-05T23:30:00+0200"]);
    let species = site.join("species/testing-snake.toml");
    replace(&species, "never_above = { value = \"35 C\"", "never_above = { value = \"34 C\"");
    git(&folder, &["commit", "--quiet", "-am", "second", "--date", "2026-10-01T08:00:00+0000"]);
    replace(&species, "night = { value = \"19-22 C\"", "night = { value = \"18-22 C\"");
    let run = wardsheet(&site, &["figures", "--history", "testing-snake"]);
    assert_eq!(run.status, 0, "{}", run.err);
    let line = |name: &str| {
        let found = run.out.lines().find(|line| line.trim_start().starts_with(name));
        found.unwrap_or_else(|| panic!("{name}: {}", run.out)).to_owned()
    };
    assert!(
        line("temperature.cool").contains("2024-03-05"),
        "the day where its author was: {}",
        run.out
    );
    assert!(line("temperature.never_above").contains("2026-10-01"), "{}", run.out);
    assert!(line("temperature.never_above").contains("Example Keeper"), "{}", run.out);
    assert!(line("temperature.night").contains("not committed yet"), "{}", run.out);
    let run = wardsheet(&site, &["figures", "--history", "juniper"]);
    assert!(run.status == 2 && run.err.contains("is no species"), "{}", run.err);
}
