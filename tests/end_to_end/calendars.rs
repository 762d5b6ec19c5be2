//! Calendars, read back by a parser of another hand: RFC 5545, Internet Calendaring and Scheduling Core Object Specification, 2009.

use std::collections::BTreeMap;

use icalendar::parser::{Component, read_calendar, unfold};
use jiff::civil::Date;

use crate::site::{Site, TODAY, same, succeeds, tree};

/// The properties of an entry by name.
type Entry = BTreeMap<String, String>;

/// Reads a calendar, holds it to the standard, and hands out its entries.
#[track_caller]
fn read(text: &str) -> Vec<Entry> {
    assert!(text.ends_with("END:VCALENDAR\r\n"), "it does not end as a calendar does");
    // §3.1: lines end with CR LF, and none but a folded one is longer than 75 bytes without its end.
    assert_eq!(text.matches('\n').count(), text.matches("\r\n").count(), "a line ends otherwise");
    for line in text.split("\r\n") {
        assert!(line.len() <= 75, "{} bytes: {line}", line.len());
        assert!(!line.chars().any(char::is_control), "a control character: {line:?}");
    }
    let unfolded = unfold(text);
    let calendar = read_calendar(&unfolded).expect("a calendar that can be read");
    let head: Vec<(&str, &str)> =
        calendar.properties.iter().map(|own| (own.name.as_str(), own.val.as_str())).collect();
    // §3.6: both must be there.
    assert!(head.contains(&("VERSION", "2.0")), "{head:?}");
    assert!(head.iter().any(|(name, _)| *name == "PRODID"), "{head:?}");
    let entries: Vec<Entry> = calendar.components.iter().map(entry).collect();
    let mut names: Vec<&String> = entries.iter().map(|entry| &entry["UID"]).collect();
    names.sort();
    let all = names.len();
    names.dedup();
    assert_eq!(names.len(), all, "two entries have one identifier");
    entries
}

#[track_caller]
fn entry(component: &Component<'_>) -> Entry {
    assert_eq!(component.name.as_str(), "VEVENT");
    let properties = component.properties.iter();
    let entry: Entry =
        properties.map(|own| (own.name.as_str().to_owned(), own.val.as_str().to_owned())).collect();
    assert_eq!(entry.len(), component.properties.len(), "a property stands twice: {entry:?}");
    // §3.6.1: UID and DTSTAMP must be there, DTSTART where the calendar is published.
    for name in ["UID", "DTSTAMP", "DTSTART", "DTEND", "SEQUENCE", "SUMMARY", "DESCRIPTION"] {
        assert!(entry.contains_key(name), "no {name}: {entry:?}");
    }
    for name in ["DTSTART", "DTEND"] {
        let property = component.find_prop(name).expect("it is there");
        let parameters = property.params.iter();
        let parameters: Vec<String> = parameters
            .map(|own| {
                format!("{}={}", own.key.as_str(), own.val.as_ref().map_or("", |val| val.as_str()))
            })
            .collect();
        assert_eq!(parameters, ["VALUE=DATE"], "{name} is no whole day");
    }
    let (from, until) = (day(&entry["DTSTART"]), day(&entry["DTEND"]));
    assert_eq!(from.tomorrow().expect("a day after"), until, "the end is the day after, §3.6.1");
    entry
}

fn day(text: &str) -> Date {
    Date::strptime("%Y%m%d", text).expect("a day")
}

#[track_caller]
fn run(site: &Site, verb: &str, as_of: &str, words: &[&str]) {
    let mut command = site.command(verb);
    succeeds(&command.args(["--as-of", as_of]).args(words).output().expect("the program runs"));
}

fn care(site: &Site, as_of: &str, animal: &str) -> Vec<Entry> {
    run(site, "compile", as_of, &[]);
    read(&site.text(&format!("out/private/animals/{animal}/care.ics")))
}

fn of<'a>(entries: &'a [Entry], what: &str) -> &'a Entry {
    let found = entries.iter().find(|entry| entry["UID"].contains(&format!(".{what}@")));
    found.unwrap_or_else(|| panic!("no entry for {what}: {entries:?}"))
}

#[test]
fn every_kept_animal_has_a_calendar_that_another_program_reads() {
    let site = Site::example("calendar-all");
    site.edit("animals/ditto.toml", |animal| {
        _ = animal.insert("status".to_owned(), "rehomed".into());
        _ = animal.insert("publish".to_owned(), false.into());
    });
    site.compile();
    let files = tree(&site.out());
    let calendars: Vec<&String> = files.keys().filter(|path| path.ends_with("care.ics")).collect();
    let doors = files.keys().filter(|path| path.ends_with("door.html")).count();
    assert_eq!(calendars.len(), doors, "{calendars:?}");
    assert!(!calendars.iter().any(|path| path.contains("/ditto/")), "it no longer lives here");
    for path in calendars {
        let entries = read(std::str::from_utf8(&files[path]).expect("UTF-8"));
        assert!(entries.len() >= 3, "{path}: {entries:?}");
    }
}

#[test]
fn a_calendar_says_when_to_feed_weigh_change_lamps_end_quarantine_and_see_a_vet() {
    let site = Site::example("calendar-due");
    site.edit("animals/juniper.toml", |animal| {
        let quarantine = "[quarantine]\nstarted = 2026-11-01\nminimum = \"90 days\"\n";
        animal.extend(quarantine.parse::<toml::Table>().expect("TOML"));
        let lamps =
            "[[lamp]]\nkind = \"T5 tube\"\nfitted = 2026-06-01\nreplace_after = \"12 months\"\n";
        animal.extend(lamps.parse::<toml::Table>().expect("TOML"));
    });
    let entries = care(&site, TODAY, "juniper");
    let meal = of(&entries, "meal");
    assert!(meal["SUMMARY"].starts_with("Feed Juniper"), "{meal:?}");
    assert!(meal["RRULE"].starts_with("FREQ=DAILY;INTERVAL="), "{meal:?}");
    assert!(of(&entries, "weigh").contains_key("RRULE"));
    // 1 November and 90 days, and 1 June and twelve months of 30.4 days, less a part of a day.
    assert_eq!(of(&entries, "quarantine")["DTSTART"], "20270130");
    assert!(of(&entries, "lamp-1")["DTSTART"].starts_with("202706"), "{entries:?}");
    for what in ["vet", "review"] {
        assert!(day(&of(&entries, what)["DTSTART"]) >= day("20261125"), "{what} lies in the past");
    }
}

#[test]
fn a_calendar_read_in_again_moves_its_entries_and_doubles_none() {
    let site = Site::example("calendar-again");
    let first = care(&site, TODAY, "juniper");
    assert_eq!(first, care(&site, TODAY, "juniper"), "the same day gives the same calendar");
    let names = |entries: &[Entry]| {
        let mut names: Vec<String> = entries.iter().map(|entry| entry["UID"].clone()).collect();
        names.sort();
        names
    };
    // A meal is noted the same day: the next one moves, under its own name and with a higher number.
    run(&site, "log", TODAY, &["juniper", "meal", "mouse, adult 26 g", "taken"]);
    let second = care(&site, TODAY, "juniper");
    assert_eq!(names(&first), names(&second));
    let (before, after) = (of(&first, "meal"), of(&second, "meal"));
    assert!(day(&before["DTSTART"]) < day(&after["DTSTART"]), "{before:?} {after:?}");
    let number = |entry: &Entry| entry["SEQUENCE"].parse::<u32>().expect("a number");
    assert!(number(before) < number(after));
    let third = care(&site, "2026-11-26", "juniper");
    assert_eq!(names(&first), names(&third));
    assert!(number(after) < number(of(&third, "meal")), "the number falls from day to day");
}

#[test]
fn days_stay_days_when_clocks_are_changed() {
    // Clocks go back on 31 October 2027 in Europe and on 7 November in North America; forward on 28 March and 14 March 2027.
    for (from, until, days) in [("2027-10-26", "2027-11-10", 16), ("2027-03-10", "2027-03-31", 22)]
    {
        for zone in ["Europe/London", "America/New_York", "Pacific/Auckland", "UTC"] {
            let site = Site::example("calendar-clocks");
            let words = ["--from", from, "--until", until, "--as-of", TODAY];
            let mut command = site.command("sitter");
            succeeds(&command.args(words).env("TZ", zone).output().expect("the program runs"));
            let text = site.text(&format!("out/private/sitter/{from}_{until}.ics"));
            assert!(!text.contains("TZID") && !text.contains("VTIMEZONE"), "{zone}");
            let entries = read(&text);
            let starts: Vec<Date> = entries.iter().map(|entry| day(&entry["DTSTART"])).collect();
            let first: Date = from.parse().expect("a day");
            let wanted: Vec<Date> =
                std::iter::successors(Some(first), |day| day.tomorrow().ok()).take(days).collect();
            assert_eq!(starts, wanted, "{zone}");
        }
    }
}

#[test]
fn a_sitters_calendar_has_a_line_for_each_animal_on_each_day() {
    let site = Site::example("calendar-sitter");
    let words = ["bellrope", "latch", "--from", "2026-12-19", "--until", "2027-01-02"];
    run(&site, "sitter", TODAY, &words);
    let path = "out/private/sitter/2026-12-19_2027-01-02.ics";
    let first = site.text(path);
    let entries = read(&first);
    assert_eq!(entries.len(), 15);
    for entry in &entries {
        assert!(
            entry["DESCRIPTION"].contains("Bellrope") && entry["DESCRIPTION"].contains("Latch"),
            "{entry:?}"
        );
    }
    run(&site, "sitter", TODAY, &words);
    assert_eq!(site.text(path), first);
}

#[test]
fn text_with_every_sign_of_the_format_is_read_back_whole() {
    let site = Site::example("calendar-text");
    site.edit("animals/juniper.toml", |animal| {
        let name = "Juniper; \"the\" first, née\\Ü\nEND:VCALENDAR\r\nBEGIN:VEVENT \u{7}🐍";
        animal.insert("name".to_owned(), name.into());
    });
    let entries = care(&site, TODAY, "juniper");
    assert!(entries.iter().all(|entry| entry["SUMMARY"].contains("née")), "{entries:?}");
}

#[test]
fn private_sheets_on_request_give_the_same_bytes() {
    let site = Site::example("requested-same");
    let all = || {
        run(&site, "compile", TODAY, &[]);
        run(&site, "sitter", TODAY, &["--from", "2026-12-01", "--until", "2026-12-14"]);
        run(&site, "round", TODAY, &[]);
        run(&site, "handover", TODAY, &["juniper", "--for", "A. Example"]);
        tree(&site.out())
    };
    let first = all();
    assert!(first.keys().any(|path| path.ends_with("care.ics")));
    std::fs::remove_dir_all(site.out()).expect("the output can be removed");
    same(&all(), &first);
    assert!(
        first
            .keys()
            .filter(|path| path.contains("sitter") || path.contains("round"))
            .all(|path| { path.starts_with("private/") || path.contains("assets") }),
        "a sheet on request stands outside the private part"
    );
}
