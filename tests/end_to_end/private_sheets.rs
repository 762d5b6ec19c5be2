//! The private sheets: door cards, records, the sitter's sheet with its calendar, the week's round, and lines for a log.

use std::process::Output;

use crate::site::{Site, TODAY, ends_with, said, same, succeeds, tree};

fn run(site: &Site, verb: &str, words: &[&str]) -> Output {
    let mut command = site.command(verb);
    command.args(["--as-of", TODAY]).args(words).output().expect("the program runs")
}

fn away(site: &Site, words: &[&str]) -> String {
    let days = ["--from", "2026-12-01", "--until", "2026-12-14"];
    succeeds(&run(site, "sitter", &[words, &days].concat()));
    site.text("out/private/sitter/2026-12-01_2026-12-14.html")
}

#[test]
fn every_kept_animal_has_a_door_card_and_every_animal_a_record() {
    let site = Site::example("door-and-record");
    site.edit("animals/ditto.toml", |animal| {
        _ = animal.insert("status".to_owned(), "rehomed".into());
        _ = animal.insert("publish".to_owned(), false.into());
    });
    site.compile();
    let files = tree(&site.out());
    for path in files.keys().filter(|path| path.ends_with("/handover.html")) {
        let folder = path.trim_end_matches("handover.html");
        assert!(files.contains_key(&format!("{folder}record.html")), "{folder} has no record");
        let door = files.contains_key(&format!("{folder}door.html"));
        let name = folder.trim_start_matches("private/").trim_end_matches('/');
        let animal: toml::Table = site.text(&format!("{name}.toml")).parse().expect("TOML");
        let gone = matches!(animal["status"].as_str(), Some("rehomed" | "died"));
        assert_eq!(door, !gone, "{folder}");
    }
}

#[test]
fn a_door_card_says_whom_to_ring_and_where_the_care_sheet_stands() {
    let site = Site::example("door");
    site.compile();
    let card = site.text("out/private/animals/bellrope/door.html");
    for part in
        ["01632 960240", "01632 960241", "Two adults", "https://example.org/quillmere/species/"]
    {
        assert!(card.contains(part), "the card does not say {part}");
    }
    assert!(card.contains("<path d"), "there is no square to read");
}

#[test]
fn without_an_address_a_door_card_has_no_square() {
    let site = Site::example("door-without-address");
    site.edit("wardsheet.toml", |settings| _ = settings.remove("address"));
    site.compile();
    assert!(!site.text("out/private/animals/bellrope/door.html").contains("<svg"));
}

#[test]
fn a_record_holds_every_weight_and_the_open_findings() {
    let site = Site::example("record");
    let log = site.text("animals/juniper.csv") + "2026-11-24,weight,310 g,,\n";
    site.put("animals/juniper.csv", &log);
    site.compile();
    let record = site.text("out/private/animals/juniper/record.html");
    let weights = log.lines().filter(|line| line.contains(",weight,")).count();
    let table = record.split("Every weight").nth(1).and_then(|rest| rest.split("</table>").next());
    let rows = table.expect("a table of weights").matches("<tr").count();
    assert_eq!(rows, weights + 1, "a row each, and the headings");
    assert!(record.matches("<circle").count() > weights, "a point each, and the lengths");
    assert!(
        record.contains("weight-lost") || record.contains("weight-jump"),
        "no finding is shown"
    );
}

#[test]
fn a_record_carries_what_is_open_in_its_own_files_and_its_species_and_no_public_page_does() {
    let site = Site::example("record-findings");
    let species = site.text("animals/juniper.toml").parse::<toml::Table>().expect("TOML");
    let species = species["species"].as_str().expect("a species").to_owned();
    // A warning of its own file, a note of its own log, a warning of its species, and one of another animal.
    site.edit("animals/juniper.toml", |animal| {
        animal["enclosure"]["water"] = "0 l".into();
    });
    let log = site.text("animals/juniper.csv") + "2026-11-24,shed,,partial,\n";
    site.put("animals/juniper.csv", log);
    site.own_species(&species, |species| _ = species.remove("reviewed"));
    site.edit("animals/barrow.toml", |animal| {
        animal["enclosure"].as_table_mut().expect("a table").remove("fallback");
    });
    site.compile();
    let record = site.text("out/private/animals/juniper/record.html");
    let (_, open) = record.split_once("Open findings").expect("the findings have a heading");
    for said in ["warning, no-water", "note, shed-incomplete", "review-missing"] {
        assert!(open.contains(said), "the record does not carry {said}");
    }
    assert!(!open.contains("Barrow"), "the record carries what is open for another animal");
    let codes = wardsheet::proof::codes();
    for (path, bytes) in tree(&site.out()).iter().filter(|(path, _)| path.starts_with("public/")) {
        let text = String::from_utf8_lossy(bytes);
        let told = codes.values().find(|code| code.name.contains('-') && text.contains(code.name));
        // A class of a style sheet may be called as a finding is; words on a page may not.
        assert!(told.is_none() || !path.ends_with(".html"), "{path} shows {told:?}");
    }
}

#[test]
fn a_sitter_is_told_of_every_day_and_whom_to_phone() {
    let site = Site::example("sitter");
    let sheet = away(&site, &[]);
    for part in
        ["Tue 1 Dec", "Mon 14 Dec", "01632 960114", "01632 960241", "phone the vet now", "Fuse box"]
    {
        assert!(sheet.contains(part), "the sheet does not say {part}");
    }
    let calendar = site.text("out/private/sitter/2026-12-01_2026-12-14.ics");
    assert!(
        calendar.lines().count() > 10
            && calendar.matches("\r\n").count() == calendar.matches('\n').count()
    );
    let again = away(&site, &[]);
    assert_eq!(sheet, again, "the same input gives the same bytes");
}

#[test]
fn a_grown_snake_is_not_fed_by_a_stranger_within_its_normal_fast() {
    let site = Site::example("sitter-skips");
    let sheet = away(&site, &["bellrope"]);
    assert!(sheet.contains("no feeding while the keeper is away"), "{sheet}");
    assert!(!sheet.contains("id=latch"), "other animals are on the sheet");
}

#[test]
fn animals_in_quarantine_come_last_on_a_sitters_sheet() {
    let site = Site::example("sitter-quarantine");
    site.edit("animals/bodkin.toml", |animal| {
        let mut quarantine = toml::Table::new();
        let day: toml::value::Datetime = "2026-11-20".parse().expect("a day");
        quarantine.insert("started".to_owned(), day.into());
        quarantine.insert("minimum".to_owned(), "90 days".into());
        animal.insert("quarantine".to_owned(), quarantine.into());
    });
    let sheet = away(&site, &["bodkin", "saffron"]);
    let at = |name: &str| {
        sheet.find(&format!("id={name}")).unwrap_or_else(|| panic!("{name} is not there"))
    };
    assert!(at("saffron") < at("bodkin"));
}

#[test]
fn days_that_cannot_be_are_said_in_one_sentence() {
    let site = Site::example("sitter-days");
    for (from, until) in [("2026-12-14", "2026-12-01"), ("2026-12-01", "2027-03-01")] {
        let output = run(&site, "sitter", &["--from", from, "--until", until]);
        ends_with(&output, 2);
        assert_eq!(said(&output).lines().count(), 1, "{}", said(&output));
    }
    ends_with(
        &run(&site, "sitter", &["nobody", "--from", "2026-12-01", "--until", "2026-12-02"]),
        2,
    );
    assert!(!site.out().exists(), "something was written");
}

#[test]
fn a_compile_leaves_the_sheets_that_were_asked_for() {
    let site = Site::example("asked-for");
    site.compile();
    away(&site, &[]);
    succeeds(&run(&site, "round", &["--week", "2026-11-28"]));
    let before = tree(&site.out());
    assert!(before.contains_key("private/round/2026-11-23.html"));
    site.compile();
    same(&tree(&site.out()), &before);
}

#[test]
fn a_round_names_meals_quarantine_and_the_freezer() {
    let site = Site::example("round");
    succeeds(&run(&site, "round", &[]));
    let sheet = site.text("out/private/round/2026-11-23.html");
    for part in ["Mon 23 Nov", "Sun 29 Nov", "feed ", "thaw ", "weigh: due", "Freezer and shopping"]
    {
        assert!(sheet.contains(part), "the round does not say {part}");
    }
}

#[test]
fn food_by_a_name_of_the_keepers_own_is_thawed_where_its_file_says_so() {
    let site = Site::example("frozen");
    let called = |frozen: Option<bool>| {
        site.edit("animals/juniper.toml", |animal| {
            let feeding = animal.entry("feeding").or_insert(toml::Table::new().into());
            let feeding = feeding.as_table_mut().expect("a table");
            _ = feeding.insert("meal".to_owned(), "Maus, ausgewachsen".into());
            _ = feeding.insert("every".to_owned(), "2 days".into());
            feeding.remove("frozen");
            if let Some(frozen) = frozen {
                _ = feeding.insert("frozen".to_owned(), frozen.into());
            }
        });
        succeeds(&run(&site, "round", &[]));
        site.text("out/private/round/2026-11-23.html").contains("thaw Maus, ausgewachsen")
    };
    assert!(!called(None) && !called(Some(false)) && called(Some(true)));
}

#[test]
fn a_line_is_added_to_a_log_and_nothing_else_is_changed() {
    let site = Site::example("log");
    let before = site.text("animals/juniper.csv");
    site.put("animals/juniper.csv", before.trim_end());
    succeeds(&run(&site, "log", &["juniper", "weight", "452 g", "--note", "calm, on the scale"]));
    let line = "2026-11-25,weight,452 g,,\"calm, on the scale\"\n";
    assert_eq!(site.text("animals/juniper.csv"), before + line);
}

#[test]
fn a_new_log_starts_with_its_heading() {
    let site = Site::example("log-new");
    site.remove("animals/juniper.csv");
    succeeds(&run(&site, "log", &["juniper", "reading", "warm", "31 C", "52 %"]));
    let expected = "date,what,value,outcome,note\n2026-11-25,reading,warm 31 C 52 %,,\n";
    assert_eq!(site.text("animals/juniper.csv"), expected);
}

#[test]
fn a_doubtful_line_is_written_only_on_purpose() {
    let site = Site::example("log-doubtful");
    let before = site.text("animals/juniper.csv");
    let doubtful: [&[&str]; 3] = [
        &["juniper", "weight", "4.52 kg"],
        &["juniper", "meal", "mouse, adult 26 g", "taken", "--on", "2026-11-20"],
        &["juniper", "shed", "complete", "--on", "2026-11-01"],
    ];
    for words in doubtful {
        let output = run(&site, "log", words);
        ends_with(&output, 1);
        assert!(said(&output).contains("doubtful: "), "{}", said(&output));
        assert_eq!(site.text("animals/juniper.csv"), before);
    }
    succeeds(&run(&site, "log", &["juniper", "weight", "4.52 kg", "--yes"]));
    assert!(site.text("animals/juniper.csv").ends_with("2026-11-25,weight,4.52 kg,,\n"));
}

#[test]
fn what_cannot_be_so_is_never_written() {
    let site = Site::example("log-impossible");
    let before = site.text("animals/juniper.csv");
    let impossible: [&[&str]; 3] = [
        &["juniper", "weight", "452", "--yes"],
        &["juniper", "meal", "mouse, adult 26 g", "eaten", "--yes"],
        &["juniper", "reading", "warm", "--yes"],
    ];
    for words in impossible {
        ends_with(&run(&site, "log", words), 1);
        assert_eq!(site.text("animals/juniper.csv"), before, "{words:?}");
    }
    ends_with(&run(&site, "log", &["junipre", "weight", "452 g"]), 2);
}

#[test]
fn a_public_compile_writes_no_private_sheet() {
    let site = Site::example("public-only");
    succeeds(&run(&site, "compile", &["--public-only"]));
    let files = tree(&site.out());
    assert!(files.contains_key("public/index.html"));
    assert!(!files.keys().any(|path| path.starts_with("private/")), "{:?}", files.keys());
}

#[test]
fn a_public_compile_removes_what_a_compile_wrote_and_leaves_what_was_asked_for() {
    let site = Site::example("public-only-after");
    site.compile();
    away(&site, &["juniper"]);
    succeeds(&run(&site, "round", &[]));
    site.put("out/private/own-notes.txt", "not written by the program");
    let output = run(&site, "compile", &["--public-only"]);
    succeeds(&output);
    let told = String::from_utf8_lossy(&output.stdout);
    assert!(told.contains("no private sheet was written"), "{told}");
    let files = tree(&site.out());
    let left: Vec<&String> = files.keys().filter(|path| path.starts_with("private/")).collect();
    let wanted = [
        "private/own-notes.txt",
        "private/round/2026-11-23.html",
        "private/sitter/2026-12-01_2026-12-14.html",
        "private/sitter/2026-12-01_2026-12-14.ics",
    ];
    assert_eq!(left, wanted);
}

#[test]
fn a_sitter_and_a_round_write_only_below_the_private_part() {
    let site = Site::example("only-private");
    away(&site, &[]);
    succeeds(&run(&site, "round", &[]));
    succeeds(&run(&site, "handover", &["juniper"]));
    let files = tree(&site.out());
    assert!(
        files.keys().all(|path| path.starts_with("private/") || path.starts_with(".wardsheet"))
    );
    assert!(files.contains_key("private/animals/juniper/photo-640.jpg"), "its photo is not there");
}

#[test]
fn what_falls_due_in_a_stay_is_moved_or_named() {
    let site = Site::example("sitter-due");
    site.edit("animals/juniper.toml", |animal| {
        let added = "[quarantine]\nstarted = 2026-09-10\nminimum = \"90 days\"\n\
            [[lamp]]\nkind = \"UV tube\"\nfitted = 2025-12-08\nreplace_after = \"12 months\"\n";
        animal.extend(added.parse::<toml::Table>().expect("TOML"));
    });
    let sheet = away(&site, &["juniper"]);
    let before = sheet.split("Before the keeper leaves").nth(1).expect("a list for the keeper");
    let before = before.split("</section>").next().expect("its end");
    assert!(before.contains("replace the UV tube, due 8 December 2026"), "{before}");
    assert!(
        sheet.contains("would end on 9 December 2026; it goes on until the keeper is back"),
        "{sheet}"
    );
}

#[test]
fn several_animals_share_a_day_and_quarantine_is_its_last_line() {
    let site = Site::example("sitter-merged");
    let sheet = away(&site, &["pebble", "bellrope", "latch"]);
    assert_eq!(sheet.matches("<caption>In this order").count(), 1, "one table for all");
    let days = sheet.split("id=days-title").nth(1).expect("the days");
    let first = days.split("<tbody>").nth(1).and_then(|rest| rest.split("</tbody>").next());
    let first = first.expect("a first day");
    let at = |name: &str| first.find(name).unwrap_or_else(|| panic!("no {name} in {first}"));
    assert!(at("Bellrope") < at("Latch") && at("Latch") < at("Pebble (quarantine)"), "{first}");
    assert_eq!(days.matches("<tbody>").count().min(14), 14, "a day each");
}

#[test]
fn a_handover_has_two_weeks_day_by_day_the_charts_and_the_promise_to_take_back() {
    let site = Site::example("handover-whole");
    site.compile();
    let sheet = site.text("out/private/animals/juniper/handover.html");
    let weeks =
        sheet.split("id=first-weeks>").nth(1).and_then(|rest| rest.split("</section>").next());
    let rows = weeks.expect("the first two weeks").matches("<tr").count();
    assert_eq!(rows, 15, "a row a day, and the headings");
    assert!(sheet.contains("<polyline"), "nothing is drawn");
    assert!(sheet.contains("Taken back."), "no promise");
    site.edit("wardsheet.toml", |settings| _ = settings.remove("take_back"));
    site.compile();
    assert!(!site.text("out/private/animals/juniper/handover.html").contains("Taken back."));
}

#[test]
fn a_record_shows_every_meal_of_the_year_on_a_strip_and_in_a_table() {
    let site = Site::example("record-meals");
    site.compile();
    let record = site.text("out/private/animals/juniper/record.html");
    let of_the_year = |line: &&str| line.contains(",meal,") && *line > "2025-11-25";
    let log = site.text("animals/juniper.csv");
    let meals = log.lines().filter(of_the_year).count();
    let strip =
        record.split("id=meal-year-title").nth(1).and_then(|rest| rest.split("</svg>").next());
    let strip = strip.expect("a strip");
    let marks = strip.matches("class=meal").count() + strip.matches("class=refused").count();
    assert!(meals > 3);
    assert_eq!(marks, meals);
    assert!(record.contains("All meals offered"));
}

#[test]
fn a_round_tells_what_the_week_eats_apart_from_the_weeks_ahead() {
    let site = Site::example("round-store");
    succeeds(&run(&site, "round", &[]));
    let sheet = site.text("out/private/round/2026-11-23.html");
    for part in ["This week", "4 weeks", "Cleaning", "Days left on Monday"] {
        assert!(sheet.contains(part), "the round does not say {part}");
    }
}
