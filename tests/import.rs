//! A spreadsheet brought into a log: shown first, written once, nothing lost and nothing twice.

#![expect(clippy::disallowed_methods, reason = "these tests lay out folders")]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

const MAP: &str = "separator = \";\"\ndecimal = \",\"\ndate = \"DD.MM.YYYY\"\ntime = \"Datum\"\n\
    [log]\nweight = \"Gewicht (g)\"\nmeal = \"Futter\"\nmeal_outcome = \"Wie\"\nnote = \"Bemerkung\"\n\
    [words]\n\"gefressen\" = \"taken\"\n\"Maus\" = \"mouse, adult 28 g\"\n";

/// Two rows are in the log already (17 and 22 November), two are new, one cannot be read, one is not yet.
const TABLE: &str = "\u{feff}Datum;Gewicht (g);Futter;Wie;Bemerkung\r\n\
    15.07.2026;570,5;;;nach der Häutung\r\n\
    17.11.2026;;Maus;gefressen;\r\n\
    22.11.2026;590;;;\r\n\
    24.11.2026;591;;;\r\n\
    40.11.2026;600;;;\r\n\
    24.12.2026;610;;;\r\n";

fn site(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    let base = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/base");
    for entry in walkdir::WalkDir::new(&base) {
        let entry = entry.expect("the base site can be walked");
        let place = folder.join(entry.path().strip_prefix(&base).expect("below the folder"));
        if entry.file_type().is_dir() {
            fs::create_dir_all(&place).expect("a folder can be made");
        } else {
            fs::copy(entry.path(), &place).expect("a file can be copied");
        }
    }
    fs::write(folder.join("map.toml"), MAP).expect("the map can be written");
    fs::write(folder.join("table.csv"), TABLE).expect("the table can be written");
    folder
}

fn import(folder: &Path, more: &[&str]) -> (Option<i32>, String, String) {
    let run = Command::new(env!("CARGO_BIN_EXE_wardsheet"))
        .args(["import", "table.csv", "--animal", "juniper", "--map", "map.toml"])
        .args(["--as-of", "2026-11-25"])
        .args(more)
        .current_dir(folder)
        .stdin(Stdio::null())
        .output()
        .expect("the program runs");
    let text = |bytes: Vec<u8>| String::from_utf8_lossy(&bytes).into_owned();
    (run.status.code(), text(run.stdout), text(run.stderr))
}

fn log(folder: &Path) -> String {
    fs::read_to_string(folder.join("animals/juniper.csv")).expect("the log is there")
}

#[test]
fn what_was_understood_is_shown_and_nothing_is_written_without_a_yes() {
    let folder = site("import-shown");
    let before = log(&folder);
    let (status, out, err) = import(&folder, &[]);
    assert_eq!(status, Some(1), "{err}");
    for said in [
        "table.csv: 6 rows",
        "Gewicht (g)  weight, in g",
        "the date, as DD.MM.YYYY",
        "2026-07-15,weight,570.5 g,,nach der Häutung  (line 2)",
        "table.csv:6: `40.11.2026` is not of the form DD.MM.YYYY",
        "table.csv:7: 2026-12-24 has not come yet",
        "in the log already: 2",
        "new: 2",
    ] {
        assert!(out.contains(said), "`{said}` is said: {out}");
    }
    assert!(err.contains("nothing was written"), "{err}");
    assert_eq!(log(&folder), before);
}

#[test]
fn new_lines_stand_at_their_days_and_a_second_run_adds_none() {
    let folder = site("import-twice");
    let before = log(&folder);
    let (status, out, err) = import(&folder, &["--yes"]);
    assert_eq!(status, Some(0), "{out}{err}");
    let after = log(&folder);
    // Every old line is there as it was, and in its order.
    let mut rest = after.lines();
    for line in before.lines() {
        assert!(rest.any(|other| other == line), "`{line}` is still there");
    }
    assert_eq!(after.lines().count(), before.lines().count() + 2);
    let place = |line: &str| after.lines().position(|other| other.starts_with(line)).expect(line);
    assert_eq!(place("2026-07-15,weight"), place("2026-08-30") - 1);
    assert_eq!(place("2026-11-24,weight,591 g"), after.lines().count() - 1);

    let (status, out, _) = import(&folder, &["--yes"]);
    assert_eq!(status, Some(0));
    assert!(out.contains("nothing is new"), "{out}");
    assert_eq!(log(&folder), after);
    assert!(!folder.join("animals/juniper.csv.new").exists());
}

#[test]
fn an_animal_or_a_file_that_is_not_there_ends_with_two() {
    let folder = site("import-absent");
    let run = |arguments: &[&str]| {
        let run = Command::new(env!("CARGO_BIN_EXE_wardsheet"))
            .args(arguments)
            .current_dir(&folder)
            .output()
            .expect("the program runs");
        (run.status.code(), String::from_utf8_lossy(&run.stderr).into_owned())
    };
    let (status, err) = run(&["import", "table.csv", "--animal", "junper", "--map", "map.toml"]);
    assert!(status == Some(2) && err.contains("did you mean `juniper`"), "{err}");
    let (status, err) = run(&["import", "tabel.csv", "--animal", "juniper", "--map", "map.toml"]);
    assert!(status == Some(2) && err.contains("tabel.csv: this file is not there"), "{err}");
}
