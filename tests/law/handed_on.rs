//! What stands between an animal and being handed on.

use std::path::Path;
use std::process::Command;

use wardsheet::compile::before_handover;
use wardsheet::source::Role;

use super::{AS_OF, PIP, site};

#[test]
fn an_animal_under_treatment_is_held_up_where_that_is_forbidden_and_where_there_are_conditions() {
    for (place, says) in [("england", "may not be sold"), ("scotland", "only on conditions")] {
        let (sources, checked) = site(&format!("\"{place}\""), &[PIP]);
        let found = before_handover(&sources, &checked, "pip");
        assert!(
            found.iter().any(|finding| finding.code.name == "handed-on-under-treatment"
                && finding.message.contains(says)),
            "{place}: {found:?}"
        );
    }
    let (sources, checked) = site("\"ireland\"", &[PIP]);
    let found = before_handover(&sources, &checked, "pip");
    assert!(found.iter().all(|finding| finding.code.name != "handed-on-under-treatment"));
}

/// A tortoise of a species that needs a certificate, with a shell of this length.
fn tortoise(length: &str, papers: &str, chip: &str) -> Vec<String> {
    let animal = format!(
        "name = \"Tile\"\nspecies = \"hermanns-tortoise\"\nsex = \"female\"\norigin = \"Invented\"\nhatched = 2024-01-01\n{chip}papers = [{papers}]\n"
    );
    let log = format!("date,what,value,outcome,note\n2026-11-01,length,{length},,\n");
    let files = [
        ("animals/tile.toml", Role::Animal, "tile", animal.as_str()),
        ("animals/tile.csv", Role::Log, "tile", log.as_str()),
    ];
    let (sources, checked) = site("\"england\", \"us-federal\"", &files);
    let found = before_handover(&sources, &checked, "tile");
    found.into_iter().map(|finding| finding.message).collect()
}

#[test]
fn certificates_chips_and_sizes_follow_the_length_of_the_shell() {
    let has = |found: &[String], words: &str| found.iter().any(|message| message.contains(words));
    let small = tortoise("55 mm", "", "");
    assert!(has(&small, "one-transaction certificate"), "{small:?}");
    assert!(!has(&small, "microchip") && has(&small, "none below"), "{small:?}");
    let larger = tortoise("120 mm", "\"A letter\"", "");
    assert!(has(&larger, "`Article 10 certificate`") && has(&larger, "microchip"), "{larger:?}");
    assert!(!has(&larger, "one-transaction") && !has(&larger, "none below"), "{larger:?}");
    let papered = tortoise("120 mm", "\"Article 10 certificate, 2025\"", "chip = \"1\"\n");
    assert!(!has(&papered, "certificate") && !has(&papered, "microchip"), "{papered:?}");
}

#[test]
fn wardsheet_handover_says_what_holds_an_animal_back_and_the_sheet_carries_it() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("law-handover");
    let _ = std::fs::remove_dir_all(&folder);
    let put = |path: &str, text: &str| {
        let place = folder.join(path);
        std::fs::create_dir_all(place.parent().expect("a folder")).expect("a folder");
        std::fs::write(place, text).expect("a file");
    };
    put("wardsheet.toml", "title = \"Quillmere\"\njurisdictions = [\"england\"]\n");
    put("animals/pip.toml", PIP.3);
    let run = || {
        Command::new(env!("CARGO_BIN_EXE_wardsheet"))
            .args(["handover", "pip", "--as-of", AS_OF, "--site"])
            .arg(&folder)
            .output()
            .expect("the program runs")
    };
    let ran = run();
    let said = String::from_utf8_lossy(&ran.stderr).into_owned();
    assert!(ran.status.success(), "{said}");
    assert!(said.contains("handed-on-under-treatment"), "{said}");
    assert_eq!(said.matches("is under treatment; in England").count(), 1, "{said}");
    let sheet = std::fs::read_to_string(folder.join("out/private/animals/pip/handover.html"))
        .expect("the sheet is written");
    assert!(sheet.contains("Before it goes") && sheet.contains("may not be sold"));
    // An animal that seeks a home is told of by proof; it is not said twice.
    put("animals/pip.toml", &format!("{}status = \"seeking a home\"\n", PIP.3));
    let said = String::from_utf8_lossy(&run().stderr).into_owned();
    assert_eq!(said.matches("is under treatment; in England").count(), 1, "{said}");
}
