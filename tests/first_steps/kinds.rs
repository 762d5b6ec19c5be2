//! New sites of every kind of keeper, and the check that each is laid out with.

use std::fs;
use std::path::Path;
use std::process::Command;

use super::{DAY, change, empty, own_findings, wardsheet};

/// What each kind of site has of its own.
const KINDS: [(&str, &str); 4] = [
    ("club", "pages/meetings.md"),
    ("rescue", "pages/adopting.md"),
    ("shop", "pages/before-you-buy.md"),
    ("keeper", "CONTRIBUTING.md"),
];

#[test]
fn every_kind_of_site_compiles_as_it_stands() {
    for (kind, own) in KINDS {
        let folder = empty(&format!("new-{kind}"));
        let run = wardsheet(&folder, &["start", ".", "--kind", kind]);
        assert_eq!(run.status, 0, "{}", run.err);
        for path in [
            own,
            ".gitignore",
            ".ci/check",
            ".github/workflows/check.yml",
            ".github/pull_request_template.md",
            "CONTRIBUTING.md",
        ] {
            assert!(folder.join(path).is_file(), "{kind} has {path}");
        }
        let run = wardsheet(&folder, &["compile", "--deny", "warnings", "--as-of", DAY]);
        assert_eq!((run.status, own_findings(&run)), (0, vec![]), "{kind}: {}", run.err);
    }
}

#[test]
fn the_check_of_a_new_site_tells_its_findings_and_makes_no_private_sheet() {
    let folder = empty("new-club-checked");
    assert_eq!(wardsheet(&folder, &["start", ".", "--kind", "club"]).status, 0);
    // The machine that checks has no private file: it is kept out of git.
    fs::remove_file(folder.join("private.toml")).expect("it was laid out");
    let program = Path::new(env!("CARGO_BIN_EXE_wardsheet")).parent().expect("a folder");
    let path = std::env::var_os("PATH").expect("a path");
    let paths = std::env::split_paths(&path);
    let path =
        std::env::join_paths(std::iter::once(program.to_owned()).chain(paths)).expect("a path");
    let check = || {
        Command::new("sh")
            .arg(".ci/check")
            .current_dir(&folder)
            .env("PATH", &path)
            .env("SOURCE_DATE_EPOCH", "1795608000") // noon of DAY
            .output()
            .expect("a shell is there")
    };
    let run = check();
    assert_eq!(run.status.code(), Some(0), "{}", String::from_utf8_lossy(&run.stderr));
    let sarif = fs::read_to_string(folder.join("proof.sarif")).expect("it is written");
    assert!(sarif.contains("\"2.1.0\""));
    assert!(folder.join("out/public/index.html").is_file());
    assert!(!folder.join("out/private").exists());
    change(&folder, "animals/sample.toml", "species =", "species = \"lepard-gecko\"");
    assert_eq!(check().status.code(), Some(1), "an error stops it");
    let sarif = fs::read_to_string(folder.join("proof.sarif")).expect("it is written");
    assert!(sarif.contains("species-unknown"));
}
