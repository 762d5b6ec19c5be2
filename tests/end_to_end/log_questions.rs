//! A doubtful line for a log: asked about where somebody sits at a terminal, refused elsewhere; the log is only ever added to.

use std::io::Cursor;

use clap::Parser;
use wardsheet::command::{Command, Outcome, Outside};

use crate::site::{Site, TODAY};

/// Runs `log` with somebody at the terminal who gives these answers, or with nobody. Returns how it ended and what was said.
fn log(site: &Site, words: &[&str], answers: Option<&str>) -> (Outcome, String) {
    let folder = site.folder.to_str().expect("UTF-8");
    let at = ["--as-of", TODAY, "--site", folder];
    let line = [["wardsheet", "log"].as_slice(), words, &at].concat();
    let command = Command::try_parse_from(line).expect("a command line");
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let mut typed = Cursor::new(answers.unwrap_or_default().as_bytes().to_vec());
    let mut outside = Outside {
        today: TODAY.parse().expect("a day"),
        here: site.folder.clone(),
        out: &mut out,
        err: &mut err,
        answers: answers.map(|_| &mut typed as &mut dyn std::io::BufRead),
        colour: false,
        terminal: false,
        elapsed: &|| std::time::Duration::ZERO,
    };
    let outcome = command.run(&mut outside);
    (outcome, String::from_utf8(err).expect("UTF-8"))
}

/// Every kind of doubtful line, and a word of what is said of it.
const DOUBTFUL: [(&[&str], &str); 5] = [
    (&["juniper", "weight", "4.52 kg"], "the last weight was"),
    (&["juniper", "length", "9 cm"], "the last length was"),
    (&["juniper", "weight", "452 g", "--on", "2026-11-26"], "is after today"),
    (&["juniper", "meal", "mouse, adult 26 g", "taken", "--on", "2026-11-20"], "after a meal"),
    (&["juniper", "shed", "complete", "--on", "2026-11-01"], "before the last line"),
];

#[test]
fn at_a_terminal_every_doubtful_line_is_asked_about() {
    let site = Site::example("log-asked");
    let before = site.text("animals/juniper.csv");
    for (words, why) in DOUBTFUL {
        let (outcome, said) = log(&site, words, Some("n\n"));
        assert_eq!(outcome, Outcome::Stopped, "{said}");
        assert!(said.contains(why) && said.contains("write it all the same? [y/N]"), "{said}");
        assert_eq!(site.text("animals/juniper.csv"), before);
        // No word is no, and so is a terminal that closes.
        for answer in ["\n", ""] {
            assert_eq!(log(&site, words, Some(answer)).0, Outcome::Stopped);
            assert_eq!(site.text("animals/juniper.csv"), before);
        }
    }
}

#[test]
fn a_yes_writes_a_doubtful_line_once_every_doubt_has_been_told() {
    for (words, why) in DOUBTFUL {
        let site = Site::example("log-answered");
        let before = site.text("animals/juniper.csv");
        let (outcome, said) = log(&site, words, Some("yes\n"));
        assert_eq!(outcome, Outcome::Done, "{said}");
        assert!(said.contains(why), "{said}");
        assert_eq!(said.matches("[y/N]").count(), 1, "{said}");
        let after = site.text("animals/juniper.csv");
        assert!(after.starts_with(&before), "what stood there has changed");
        assert_eq!(after.lines().count(), before.lines().count() + 1);
    }
}

#[test]
fn where_nobody_can_be_asked_a_doubtful_line_needs_yes_on_the_command_line() {
    for (words, why) in DOUBTFUL {
        let site = Site::example("log-nobody");
        let before = site.text("animals/juniper.csv");
        let (outcome, said) = log(&site, words, None);
        assert_eq!(outcome, Outcome::Stopped, "{said}");
        assert!(said.contains(why) && said.contains("--yes") && !said.contains("[y/N]"), "{said}");
        assert_eq!(site.text("animals/juniper.csv"), before);
        let (outcome, said) = log(&site, &[words, &["--yes"]].concat(), None);
        assert_eq!(outcome, Outcome::Done, "{said}");
        assert!(site.text("animals/juniper.csv").starts_with(&before));
    }
}

#[test]
fn an_ordinary_line_is_not_asked_about_and_the_old_bytes_stay() {
    let site = Site::example("log-ordinary");
    // Bytes that a rewriting would put right: no end of the last line, Windows line ends, and spaces.
    let before = site.text("animals/juniper.csv").trim_end().replace('\n', "\r\n");
    site.put("animals/juniper.csv", &before);
    let lines: [&[&str]; 5] = [
        &["juniper", "weight", "452 g"],
        &["juniper", "length", "119 cm"],
        &["juniper", "meal", "mouse, adult 26 g", "taken"],
        &["juniper", "shed", "complete", "--note", "whole, \"in one piece\""],
        &["juniper", "reading", "warm", "31 C", "52 %"],
    ];
    let mut bytes = before;
    for words in lines {
        let (outcome, said) = log(&site, words, Some(""));
        assert_eq!(outcome, Outcome::Done, "{words:?}: {said}");
        assert!(!said.contains("doubtful"), "{said}");
        let after = site.text("animals/juniper.csv");
        assert!(after.starts_with(&bytes), "{words:?} changed what stood there");
        bytes = after;
    }
}

/// An appended line is one write: many at once leave whole lines.
#[test]
fn lines_that_are_written_at_the_same_time_stay_whole() {
    let site = Site::example("log-at-once");
    let before = site.text("animals/juniper.csv");
    let notes: Vec<String> =
        (0..8).map(|number| format!("note {number} {}", "x".repeat(300))).collect();
    std::thread::scope(|scope| {
        for note in &notes {
            scope.spawn(|| log(&site, &["juniper", "weight", "452 g", "--note", note], None));
        }
    });
    let after = site.text("animals/juniper.csv");
    let added = after.strip_prefix(&before).expect("the old lines stay");
    let mut lines: Vec<&str> = added.lines().collect();
    lines.sort_unstable();
    let wanted: Vec<String> =
        notes.iter().map(|note| format!("2026-11-25,weight,452 g,,{note}")).collect();
    assert_eq!(lines, wanted);
}
