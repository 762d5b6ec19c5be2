//! The first steps of a newcomer: a new site, a word misspelt, a file that does not read. Each has its exit status.

#![expect(
    clippy::disallowed_methods,
    reason = "these tests lay out folders and look at what is in them"
)]

mod kinds;
mod look;

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// The day for which the built-in library counts as reviewed.
const DAY: &str = "2026-11-25";

struct Run {
    status: i32,
    out: String,
    err: String,
}

fn wardsheet(folder: &Path, arguments: &[&str]) -> Run {
    let run = Command::new(env!("CARGO_BIN_EXE_wardsheet"))
        .args(arguments)
        .current_dir(folder)
        .env_remove("SOURCE_DATE_EPOCH")
        .output()
        .expect("the program runs");
    Run {
        status: run.status.code().expect("the program ends by itself"),
        out: String::from_utf8_lossy(&run.stdout).into_owned(),
        err: String::from_utf8_lossy(&run.stderr).into_owned(),
    }
}

/// An empty folder of that name.
fn empty(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder can be made");
    folder
}

/// A new site as `start` lays it out, in a folder of that name.
fn started(name: &str) -> PathBuf {
    let folder = empty(name);
    let run = wardsheet(&folder, &["start", "."]);
    assert_eq!(run.status, 0, "{}", run.err);
    folder
}

/// Replaces the one line that begins with `start`.
fn change(folder: &Path, file: &str, start: &str, line: &str) {
    let place = folder.join(file);
    let text = fs::read_to_string(&place).expect("the file is there");
    assert_eq!(
        text.lines().filter(|old| old.starts_with(start)).count(),
        1,
        "one line of {file} begins with `{start}`"
    );
    let lines = text.lines().map(|old| if old.starts_with(start) { line } else { old });
    fs::write(place, lines.map(|line| format!("{line}\n")).collect::<String>())
        .expect("the file can be written");
}

fn files_below(folder: &Path) -> Vec<String> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).expect("the folder can be read") {
        let path = entry.expect("the entry can be read").path();
        if path.is_dir() {
            found.extend(files_below(&path));
        } else {
            found.push(path.to_string_lossy().into_owned());
        }
    }
    found
}

/// What is wrong or doubtful with the files of the site itself. The built-in library may have notes of its own.
fn own_findings(run: &Run) -> Vec<&str> {
    let places = run.err.lines().filter_map(|line| line.trim_start().strip_prefix("--> "));
    let own = places.filter(|place| !place.starts_with("built-in "));
    own.chain(
        run.err.lines().filter(|line| line.starts_with("error") || line.starts_with("warning")),
    )
    .collect()
}

#[test]
fn a_new_site_has_no_findings() {
    let folder = started("new-site-proofs");
    let run = wardsheet(&folder, &["proof", "--deny", "warnings", "--as-of", DAY]);
    assert_eq!((run.status, own_findings(&run)), (0, vec![]), "{}", run.err);
    assert!(run.out.contains("1 animal"), "{}", run.out);
}

#[test]
fn a_new_site_compiles() {
    let folder = started("new-site-compiles");
    let run = wardsheet(&folder, &["compile", "--deny", "warnings", "--as-of", DAY]);
    assert_eq!((run.status, own_findings(&run)), (0, vec![]), "{}", run.err);
    for path in [
        "public/index.html",
        "public/species/leopard-gecko/index.html",
        "public/species/leopard-gecko/card.html",
        "public/pages/about/index.html",
        "public/sources/index.html",
        "private/animals/sample/handover.html",
        "private/DO-NOT-PUBLISH.txt",
    ] {
        assert!(folder.join("out").join(path).is_file(), "out/{path} is written");
    }
    // Its animal is not published, and its private file stays private.
    assert!(!folder.join("out/public/animals").exists());
    for file in files_below(&folder.join("out/public")) {
        let text = fs::read(&file).expect("the file can be read");
        let text = String::from_utf8_lossy(&text);
        assert!(
            !text.contains("01632") && !text.contains("Exampletown"),
            "{file} holds something private"
        );
    }
    assert!(
        fs::read_to_string(folder.join("out/private/animals/sample/handover.html"))
            .is_ok_and(|text| text.contains("01632\u{a0}960102"))
    );
}

#[test]
fn a_new_site_keeps_private_things_and_output_out_of_git() {
    let folder = started("new-site-git");
    let ignored = fs::read_to_string(folder.join(".gitignore"))
        .expect("the file is laid out under its own name");
    let lines: Vec<&str> = ignored.lines().collect();
    assert!(lines.contains(&"private.toml") && lines.contains(&"out/"), "{ignored}");
}

#[test]
fn every_file_of_a_new_site_says_that_it_is_an_example() {
    let folder = started("new-site-marked");
    for file in files_below(&folder) {
        let text = fs::read_to_string(&file).expect("the file is text");
        assert!(file.ends_with(".gitignore") || text.to_lowercase().contains("example"), "{file}");
    }
}

#[test]
fn a_folder_that_holds_something_is_left_alone() {
    let folder = empty("not-empty");
    fs::write(folder.join("letter.txt"), "mine").expect("a file can be written");
    let run = wardsheet(&folder, &["start", "."]);
    assert_eq!(run.status, 2);
    assert!(run.err.contains("is not empty; nothing was written"), "{}", run.err);
    assert_eq!(files_below(&folder), [folder.join("letter.txt").to_string_lossy()]);
    assert_eq!(fs::read_to_string(folder.join("letter.txt")).expect("it is still there"), "mine");
}

#[test]
fn a_folder_that_is_no_site_is_named_with_the_way_on() {
    // A folder that lies in no site: the search for one goes upwards.
    let folder = empty("no-site");
    for command in [&["proof"][..], &["compile"], &["figures"], &["handover", "sample"]] {
        let run = wardsheet(&folder, command);
        assert_eq!(run.status, 2, "{command:?}");
        assert!(
            run.err.contains("holds no wardsheet.toml") && run.err.contains("wardsheet start DIR"),
            "{}",
            run.err
        );
    }
    let run = wardsheet(&folder, &["proof", "--site", "nowhere"]);
    assert_eq!((run.status, run.err.trim()), (2, "wardsheet: there is no folder nowhere"));
}

#[test]
fn a_word_misspelt_on_the_command_line_gets_the_nearest_one() {
    let folder = started("misspelt");
    for (arguments, meant) in [
        (&["profo"][..], "'proof'"),
        (&["compile", "--dney", "warnings"], "'--deny'"),
        (&["proof", "--deny", "warning"], "'warnings'"),
        (&["figures", "--format", "jsn"], "'json'"),
        (&["figures", "smaple"], "did you mean `sample`?"),
        (&["figures", "cornsnake"], "did you mean `corn-snake`?"),
        (&["handover", "Sample"], "did you mean `sample`?"),
        (&["explain", "figure-witout-unit"], "did you mean `figure-without-unit`?"),
        (&["schema", "specis"], "did you mean `species`?"),
        (&["proof", "--format", "srif"], "'sarif'"),
    ] {
        let run = wardsheet(&folder, arguments);
        assert_eq!(run.status, 2, "{arguments:?}: {}", run.err);
        assert!(run.err.contains(meant), "{arguments:?} should offer {meant}: {}", run.err);
        assert_eq!(run.out, "", "{arguments:?} prints no results");
    }
}

#[test]
fn a_name_like_nothing_known_gets_the_way_to_the_list() {
    let folder = started("unlike");
    for (arguments, way) in [
        (&["explain", "qqq"][..], "`wardsheet explain` lists every code"),
        (&["handover", "qqq"], "there are: sample"),
        (&["figures", "qqq"], "give the name of its file"),
    ] {
        let run = wardsheet(&folder, arguments);
        assert_eq!(run.status, 2, "{arguments:?}");
        assert!(run.err.contains(way), "{arguments:?} should say {way}: {}", run.err);
    }
}

#[test]
fn a_day_that_is_none_says_how_to_write_one() {
    let folder = started("no-day");
    let run = wardsheet(&folder, &["proof", "--as-of", "25.11.2026"]);
    assert_eq!(run.status, 2);
    assert!(run.err.contains("write the year, month and day: 2026-11-25"), "{}", run.err);
}

#[test]
fn a_fault_in_a_file_is_shown_at_its_place_and_stops_the_compile() {
    let animal = "animals/sample.toml";
    for (name, start, line, said) in [
        (
            "bare-number",
            "room_night",
            "room_night = 18",
            ["figure-without-unit", "write \"18 C\" (64 °F)"],
        ),
        (
            "unknown-key",
            "room_day",
            "rom_day = \"21-23 C\"",
            ["key-unknown", "did you mean `room_day`?"],
        ),
        ("reversed", "room_day", "room_day = \"23-21 C\"", ["range-reversed", "write \"21-23 C\""]),
        (
            "no-such-species",
            "species",
            "species = \"leopard gecko\"",
            ["species-unknown", "did you mean `leopard-gecko`?"],
        ),
    ] {
        let folder = started(&format!("fault-{name}"));
        change(&folder, animal, start, line);
        for command in ["proof", "compile"] {
            let run = wardsheet(&folder, &[command, "--as-of", DAY]);
            assert_eq!(run.status, 1, "{name}: {}", run.err);
            assert!(
                run.err.contains(animal) && run.err.contains(line),
                "{name} shows the line: {}",
                run.err
            );
            assert!(
                said.iter().all(|said| run.err.contains(said)),
                "{name} should say {said:?}: {}",
                run.err
            );
            assert_eq!(run.err.matches("error[").count(), 1, "{name} is one fault: {}", run.err);
        }
        assert!(!folder.join("out").exists(), "{name}: nothing is written");
    }
}

#[test]
fn a_log_line_from_the_future_is_found() {
    let folder = started("future");
    let log = folder.join("animals/sample.csv");
    let text = fs::read_to_string(&log).expect("the log is there");
    fs::write(&log, format!("{text}2031-01-01,weight,64 g,,\n")).expect("the log can be written");
    let run = wardsheet(&folder, &["proof", "--as-of", DAY]);
    assert_eq!(run.status, 1);
    assert!(
        run.err.contains("this line is dated 2031-01-01, and today is 2026-11-25"),
        "{}",
        run.err
    );
    // On that day it is no longer the future.
    let run = wardsheet(&folder, &["proof", "--as-of", "2031-01-01"]);
    assert!(!run.err.contains("log-in-future"), "{}", run.err);
}

/// The findings that the README shows.
fn shown_in_readme() -> Vec<String> {
    let readme = fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/README.md"))
        .expect("the README is there");
    let blocks = readme.split("\n```text\n").skip(1).filter_map(|rest| rest.split("\n```").next());
    blocks.filter(|block| block.starts_with("error[")).map(str::to_owned).collect()
}

#[test]
fn the_finding_that_the_readme_shows_is_the_one_that_is_printed() {
    let shown = shown_in_readme();
    let folder = started("shown-in-readme");
    change(&folder, "animals/sample.toml", "room_night", "room_night = 18");
    let run = wardsheet(&folder, &["proof", "--as-of", DAY]);
    assert_eq!(shown.len(), 2, "this one, and that of a template");
    assert!(
        run.err.contains(&shown[0]),
        "the README shows\n{}\nand this is printed\n{}",
        shown[0],
        run.err
    );
}
