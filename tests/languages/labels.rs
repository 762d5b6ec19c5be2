//! The catalogues against each other and against what asks for them.

use std::collections::BTreeSet;

use wardsheet::language::Catalogue;
use wardsheet::model::word::{Active, Company, Habit, Kind, Sex, Status, Urgency, Word};

use crate::{catalogue, texts};

const FURTHER: [&str; 3] = ["de", "es", "fr"];

#[test]
fn the_languages_are_those_that_are_promised() {
    let tags: BTreeSet<&str> = Catalogue::tags().collect();
    assert_eq!(tags, BTreeSet::from(["de", "en", "es", "fr"]));
}

#[test]
fn no_label_is_missing_in_any_language() {
    let english = catalogue("en");
    for language in FURTHER {
        let other = catalogue(language);
        let missing: Vec<&String> =
            english.keys().filter(|name| !other.contains_key(*name)).collect();
        assert!(missing.is_empty(), "{language} lacks {} labels: {missing:?}", missing.len());
        let idle: Vec<&String> = other.keys().filter(|name| !english.contains_key(*name)).collect();
        assert!(idle.is_empty(), "{language} has labels that English lacks: {idle:?}");
    }
}

#[test]
fn every_language_puts_in_the_same_values() {
    let english = catalogue("en");
    for language in FURTHER {
        let other = catalogue(language);
        let differing: Vec<String> = english
            .iter()
            .filter_map(|(name, label)| {
                let theirs = &other.get(name)?.values;
                (theirs != &label.values).then(|| format!("{name}: {:?}, {theirs:?}", label.values))
            })
            .collect();
        assert!(differing.is_empty(), "{language}:\n{}", differing.join("\n"));
    }
}

/// A label of several words that reads the same in two languages has not been translated.
#[test]
fn nothing_is_left_in_english() {
    let english = catalogue("en");
    for language in FURTHER {
        let other = catalogue(language);
        let left: Vec<&String> = english
            .iter()
            .filter(|(_, label)| {
                label.text.split(|c: char| !c.is_alphabetic()).filter(|word| word.len() > 3).count()
                    >= 3
            })
            .filter(|(name, label)| {
                other.get(*name).is_some_and(|theirs| theirs.text == label.text)
            })
            .map(|(name, _)| name)
            .collect();
        assert!(left.is_empty(), "{language}: {left:?}");
    }
}

/// The names of labels that stand in code or a template behind these marks.
fn asked_for(text: &str) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for mark in ["say(\"", "tell(\"", "say(id=\"", "tell(\n", "say(\n", "put(\"", "label(\""] {
        for (at, _) in text.match_indices(mark) {
            let rest = text[at + mark.len()..].trim_start().trim_start_matches('"');
            let name = rest.split('"').next().unwrap_or_default();
            let is_name = !name.is_empty()
                && !name.ends_with('-')
                && name.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-');
            if is_name {
                found.insert(name.to_owned());
            }
        }
    }
    found
}

#[test]
fn every_label_that_is_asked_for_is_there() {
    let english = catalogue("en");
    let asking = texts("src", &[".rs"]).into_iter().chain(texts("templates", &[".html", ".xml"]));
    let mut count = 0;
    for (file, text) in asking {
        for name in asked_for(&text) {
            count += 1;
            assert!(english.contains_key(&name), "{file} asks for {name}, which English lacks");
        }
    }
    assert!(count > 300, "only {count} labels were found in the source");
}

/// A label that nothing in code or templates spells out: neither its name nor, for words of the files, the name of their field.
#[test]
fn no_label_is_idle() {
    let asking: String = texts("src", &[".rs"])
        .into_iter()
        .chain(texts("templates", &[".html", ".xml"]))
        .map(|(_, text)| text)
        .collect();
    let idle: Vec<String> = catalogue("en")
        .into_keys()
        .filter(|name| {
            let spelt = asking.contains(&format!("\"{name}\""));
            // `figure-size-adult` is asked for as `figure-` and the name of the figure.
            let parts = name.match_indices('-').map(|(at, _)| &name[..=at]);
            let by_part = parts.into_iter().any(|part| {
                asking.contains(&format!("\"{part}{{"))
                    || asking.contains(&format!("\"{}\", ", part.trim_end_matches('-')))
            });
            !spelt && !by_part
        })
        .collect();
    assert!(idle.is_empty(), "nobody asks for {idle:?}");
}

fn words_of<W: Word>(field: &str) {
    for language in Catalogue::tags() {
        let catalogue = Catalogue::of(language).expect("it is one of them");
        for (_, spelling) in W::ALL {
            let name = format!("{field}-{}", spelling.replace(' ', "-"));
            assert!(catalogue.find(&name).is_some(), "{language} lacks {name}");
        }
    }
}

#[test]
fn every_word_of_a_field_has_a_label() {
    words_of::<Kind>("kind");
    words_of::<Habit>("habit");
    words_of::<Active>("active");
    words_of::<Company>("company");
    words_of::<Sex>("sex");
    words_of::<Status>("status");
    words_of::<Urgency>("urgency");
}

#[test]
fn numbers_and_dates_keep_to_the_form_of_the_language() {
    let date = jiff::civil::date(2026, 3, 1);
    let of = |tag: &str| Catalogue::of(tag).expect("there is a catalogue");
    assert_eq!(of("en").long_date(date), "1 March 2026");
    assert_eq!(of("de").long_date(date), "1. März 2026");
    assert_eq!(of("es").long_date(date), "1 de marzo de 2026");
    assert_eq!(of("fr").long_date(date), "1er mars 2026");
    let range = "at most 0.5–1.25\u{a0}kg".to_owned();
    assert_eq!(of("de").figure(range.clone()), "höchstens 0,5–1,25\u{a0}kg");
    assert_eq!(of("fr").figure(range), "au plus 0,5–1,25\u{a0}kg");
    assert_eq!(of("es").figure("2.5\u{a0}years".to_owned()), "2,5\u{a0}años");
}
