//! The walk over all species: nothing that a reader of their kind needs is missing.

use std::collections::BTreeSet;

use wardsheet::figures::quoting::quotes;
use wardsheet::model::Species;
use wardsheet::model::source::Followed;
use wardsheet::model::species::CHAPTERS;
use wardsheet::model::word::{Active, Caution, Diet, Habit, Kind, Urgency};

use crate::owed::{ONE_STANDARD, OWED, WITHOUT, eats_plants, is_reptile, measure};
use crate::{library, none};

/// Walks all species with one question; an answer is a fault.
fn walk(ask: impl Fn(&str, &Species, &mut dyn FnMut(String))) {
    let mut faults = Vec::new();
    for (key, species) in &library().species {
        ask(key, species, &mut |fault| faults.push(format!("{key}: {fault}")));
    }
    none(&faults);
}

/// The words of a chapter.
fn chapter<'a>(species: &'a Species, heading: &str) -> &'a str {
    let words = species.words.as_ref().map_or("", |words| words.text.as_str());
    let Some((_, rest)) = words.split_once(&format!("## {heading}\n")) else { return "" };
    rest.split("\n## ").next().unwrap_or(rest)
}

#[test]
fn there_are_two_dozen_species_and_more() {
    assert!(library().species.len() >= 24);
}

#[test]
fn every_kind_has_the_figures_that_it_owes() {
    walk(|key, species, fault| {
        let stated = species.stated();
        let names: BTreeSet<&str> = stated.iter().map(|stated| stated.name.as_str()).collect();
        for owed in OWED.iter().filter(|owed| (owed.applies)(species)) {
            for figure in owed.figures {
                let without =
                    WITHOUT.iter().any(|(name, left_out, _)| *name == key && left_out == figure);
                let there = figure.split('|').any(|either| names.contains(either));
                match (there, without) {
                    (false, false) => fault(format!("{figure} is owed by {}", owed.who)),
                    (true, true) => fault(format!("{figure} is there, and said to be left out")),
                    _ => {}
                }
            }
        }
        if names.contains("temperature.brumation") != names.contains("temperature.brumation_weeks")
        {
            fault("brumation has both a temperature and a length".to_owned());
        }
        if species.size.measure != measure(species.kind) {
            fault(format!("sizes mean {:?}", species.size.measure));
        }
    });
}

#[test]
fn adult_sizes_are_by_sex_where_a_note_says_that_the_sexes_differ() {
    walk(|_, species, fault| {
        for stated in species.stated() {
            let note = stated.note.unwrap_or_default().to_lowercase();
            let differ = ["larger sex", "females are", "males are", "smaller sex"]
                .iter()
                .any(|words| note.contains(words));
            if stated.name == "size.adult" && differ {
                fault(format!("the note on size.adult says that the sexes differ: {note}"));
            }
        }
    });
}

#[test]
fn twelve_figures_at_least_rest_on_something_published() {
    let model = library();
    let published =
        |key: &str| model.sources.get(key).is_some_and(|source| source.read != Followed::Memory);
    walk(|_, species, fault| {
        let sourced = species
            .stated()
            .iter()
            .filter(|stated| stated.sources.iter().any(|named| published(&named.name)))
            .count();
        if sourced < 12 {
            fault(format!("{sourced} figures have a published source"));
        }
    });
}

#[test]
fn two_published_standards_say_how_large_the_enclosure_is_where_there_are_two() {
    walk(|key, species, fault| {
        let least = if ONE_STANDARD.iter().any(|(name, _)| *name == key) { 1 } else { 2 };
        if species.enclosure.len() < least {
            fault(format!("{} standards", species.enclosure.len()));
        }
    });
}

#[test]
fn feeding_goes_from_hatchling_to_old_age() {
    walk(|_, species, fault| {
        let stages = &species.feeding;
        let first = stages.first().map_or("", |stage| stage.name.as_str());
        let last = stages.last().map_or("", |stage| stage.name.as_str());
        if !["hatchling", "neonate", "newborn", "froglet"].contains(&first) || last != "older adult"
        {
            fault(format!("feeding goes from {first} to {last}"));
        }
        for (number, stage) in stages.iter().enumerate() {
            let bound = stage.until_age.is_some()
                || stage.until_length.is_some()
                || stage.until_mass.is_some();
            let is_last = number + 1 == stages.len();
            if stage.meal.is_none() || stage.every.is_none() || bound == is_last {
                fault(format!("the stage {} is not whole", stage.name));
            }
            let told = format!(
                "{} {}",
                stage.meal.as_deref().unwrap_or(""),
                stage.note.as_deref().unwrap_or("")
            );
            let plants =
                ["green", "salad", "weed", "leav", "hay", "grass", "plant", "fruit", "vegetable"];
            if eats_plants(species)
                && !plants.iter().any(|plant| told.to_lowercase().contains(plant))
            {
                fault(format!("no plant is named for the stage {}", stage.name));
            }
            let needs_lime = species.diet == Diet::Insectivore || species.diet == Diet::Herbivore;
            if needs_lime && stage.supplement.is_none() {
                fault(format!("no supplement for the stage {}", stage.name));
            }
        }
        if species.fasts_when.is_none() {
            fault("nothing says when it fasts".to_owned());
        }
    });
}

#[test]
fn the_enclosure_holds_what_its_way_of_life_asks_for() {
    walk(|_, species, fault| {
        let fittings = &species.fittings;
        let owed = [
            ("water", true, fittings.water.is_some()),
            ("substrate", true, fittings.substrate.is_some()),
            ("hides", true, fittings.hides.is_some_and(|hides| hides > 0)),
            ("climbing", species.habit == Habit::Climbing, fittings.climbing.is_some()),
            ("digging", species.habit == Habit::Burrowing, fittings.digging.is_some()),
        ];
        for (what, needed, there) in owed {
            if needed && !there {
                fault(format!("no {what}"));
            }
        }
    });
}

#[test]
fn signs_of_illness_cover_every_urgency() {
    walk(|_, species, fault| {
        let told: BTreeSet<&str> = species
            .signs
            .iter()
            .map(|sign| match sign.urgency {
                Urgency::Now => "now",
                Urgency::Day => "day",
                Urgency::Days => "days",
                Urgency::Watch => "watch",
            })
            .collect();
        if species.signs.len() < 6
            || told.len() < 4
            || species.signs.iter().any(|sign| sign.means.is_none())
        {
            fault(format!("{} signs of {} urgencies", species.signs.len(), told.len()));
        }
    });
}

#[test]
fn the_law_has_its_date_and_the_figures_their_reviewer() {
    walk(|_, species, fault| {
        let law = &species.legal;
        if law.checked.is_none() || law.cites.is_none() || law.rules.is_empty() {
            fault("the law is not complete".to_owned());
        }
        if species.reviewed.is_none() || species.reviewer.is_none() || species.summary.is_none() {
            fault("no review, or no summary".to_owned());
        }
        let local = chapter(species, "Law and where it comes from").to_lowercase();
        if !local.contains("local") && !local.contains("where you live") {
            fault("the words on the law do not send the reader to the local one".to_owned());
        }
    });
}

#[test]
fn the_words_are_five_to_nine_hundred_under_every_heading() {
    walk(|_, species, fault| {
        let words = species.words.as_ref().map_or("", |words| words.text.as_str());
        // A quoted figure counts as one word, a heading as none.
        let mut told = words.to_owned();
        for quote in quotes(words).iter().rev() {
            told.replace_range(quote.span.clone(), "figure");
        }
        let count: usize = told
            .lines()
            .filter(|line| !line.starts_with('#'))
            .map(|line| line.split_whitespace().count())
            .sum();
        if !(500..=900).contains(&count) {
            fault(format!("{count} words"));
        }
        if quotes(words).len() < 12 {
            fault(format!("{} figures are quoted by name", quotes(words).len()));
        }
        for (_, heading) in CHAPTERS {
            if chapter(species, heading).trim().is_empty() {
                fault(format!("no words under {heading}"));
            }
        }
    });
}

#[test]
fn the_words_hold_the_cautions_that_a_vet_would_look_for() {
    walk(|_, species, fault| {
        let words = species.words.as_ref().map_or(String::new(), |words| words.text.to_lowercase());
        let light = chapter(species, "Heat and light").to_lowercase();
        let zone = species.light.zone.as_ref().map_or(1, |zone| zone.value);
        let sun = is_reptile(species) && species.active == Active::Day && zone >= 2;
        let owed = [
            ("Salmonella", true, words.contains("salmonella")),
            ("a vet", true, words.contains("vet")),
            ("quarantine", true, words.contains("quarantine")),
            ("ultraviolet light", sun, light.contains("ultraviolet")),
            (
                "two people at the feeding or handling of a large constrictor",
                species.cautions.contains(&Caution::LargeConstrictor),
                words.contains("two people")
                    || words.contains("second person")
                    || words.contains("second adult"),
            ),
            (
                "drops or spray for a chameleon",
                species.scientific.contains("Chamaeleo") || species.scientific.contains("Furcifer"),
                words.contains("mist") || words.contains("spray"),
            ),
            (
                "calcium",
                species.diet == Diet::Insectivore || species.diet == Diet::Herbivore,
                ["calcium", "supplement", "dust", "cuttlebone"]
                    .iter()
                    .any(|word| words.contains(word)),
            ),
            (
                "papers for a tortoise",
                species.kind == Kind::Tortoise,
                chapter(species, "Law and where it comes from").contains("CITES")
                    || words.contains("certificate")
                    || words.contains("{{ legal.cites }}"),
            ),
        ];
        for (what, needed, there) in owed {
            if needed && !there {
                fault(format!("the words do not speak of {what}"));
            }
        }
    });
}

/// Every figure for which another source says something else has a word on which is followed, however near they lie.
#[test]
fn where_sources_disagree_a_note_says_which_is_followed() {
    walk(|_, species, fault| {
        for stated in species.stated() {
            if !stated.others.is_empty() && stated.note.is_none() {
                fault(format!("{} has rivals and no note", stated.name));
            }
            if stated.others.iter().any(|(_, sources)| sources.is_empty()) {
                fault(format!("{} has a rival without a source", stated.name));
            }
        }
        if let Some(zone) = &species.light.zone
            && !zone.others.is_empty()
            && zone.note.is_none()
        {
            fault("light.zone has rivals and no note".to_owned());
        }
    });
}
