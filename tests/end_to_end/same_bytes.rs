//! The same input gives the same bytes; what has not changed is not written again.

use std::collections::BTreeMap;
use std::time::SystemTime;

use crate::site::{Site, ends_with, same, succeeds, tree};

#[test]
fn two_compiles_give_the_same_bytes() {
    let site = Site::example("two-compiles");
    let (first, second) = (site.folder.join("first"), site.folder.join("second"));
    for out in [&first, &second] {
        let output =
            site.command("compile").args(["--as-of", "2026-11-25", "--out"]).arg(out).output();
        succeeds(&output.expect("the program runs"));
    }
    let pages = tree(&first);
    assert!(
        pages.keys().filter(|path| path.ends_with(".html")).count() > 50,
        "the pages were not written"
    );
    same(&pages, &tree(&second));
}

#[test]
fn the_folder_that_a_site_stands_in_does_not_change_its_bytes() {
    let (here, there) = (Site::example("stands-here"), Site::example("stands-there/further-down"));
    here.compile();
    there.compile();
    same(&tree(&here.out()), &tree(&there.out()));
}

#[test]
fn a_compile_that_changes_nothing_writes_nothing() {
    let site = Site::example("nothing-changed");
    site.compile();
    let written = modified(&site);
    site.compile();
    let again = modified(&site);
    let touched: Vec<&String> = written
        .iter()
        .filter(|(path, when)| again.get(*path) != Some(*when))
        .map(|(path, _)| path)
        .collect();
    assert!(touched.is_empty(), "written again: {touched:?}");
    assert_eq!(written.len(), again.len());
}

#[test]
fn the_day_of_source_date_epoch_is_today() {
    let site = Site::example("source-date-epoch");
    let as_of = |epoch: &str, further: &[&str]| {
        let command = &mut site.command("figures");
        let output = command
            .args(["--format", "json", "juniper"])
            .args(further)
            .env("SOURCE_DATE_EPOCH", epoch)
            .output();
        let output = output.expect("the program runs");
        succeeds(&output);
        let document: serde_json::Value = serde_json::from_slice(&output.stdout).expect("JSON");
        document["as_of"].as_str().expect("a day").to_owned()
    };
    // 25 and 26 November 2026, midnight of universal time, in seconds since 1970.
    assert_eq!(as_of("1795564800", &[]), "2026-11-25");
    assert_eq!(as_of("1795651200", &[]), "2026-11-26");
    assert_eq!(as_of("1795651199", &[]), "2026-11-25");
    assert_eq!(
        as_of("1795651200", &["--as-of", "2026-11-27"]),
        "2026-11-27",
        "the command line goes first"
    );
}

#[test]
fn source_date_epoch_gives_the_bytes_that_the_same_day_gives() {
    let site = Site::example("same-day");
    site.compile();
    let expected = tree(&site.out());
    let out = site.folder.join("by-epoch");
    let output = site
        .command("compile")
        .arg("--out")
        .arg(&out)
        .env("SOURCE_DATE_EPOCH", "1795600000")
        .output();
    ends_with(&output.expect("the program runs"), 0);
    same(&tree(&out), &expected);
}

/// When each file of the output was last written.
fn modified(site: &Site) -> BTreeMap<String, SystemTime> {
    let when = |path: &String| {
        let about = site.out().join(path).metadata().expect("a file of the output");
        about.modified().expect("a time of writing")
    };
    tree(&site.out()).into_keys().map(|path| (path.clone(), when(&path))).collect()
}
