//! Doses of medicine in a text.

use std::ops::Range as Bytes;

/// Units that medicines are measured in and little else.
const MEDICINES: [&str; 5] = ["mg", "mcg", "µg", "μg", "iu"];
/// Units that water and feeds are measured in as well.
const COMMON: [&str; 3] = ["ml", "units", "cc"];
/// The mass that a dose is given for.
const BODY: [&str; 7] = ["kg", "g", "lb", "kilogram", "kilo", "gram", "pound"];
/// What else a medicine is given for.
const TURN: [&str; 3] = ["day", "dose", "animal"];
/// What stands behind a mass that is not the animal's: the contents of a feed are given so.
const FEED: [&str; 7] = ["of feed", "of food", "of diet", "feed", "food", "diet", "dry"];

/// Finds every amount of a medicine for a body or a time: `mg/kg`, `0.2 mg per kg`, `5 ml/kg`, `2 mg per day`.
///
/// An amount per litre is left alone: water is tested and disinfectants are mixed that way. So is water per day, and what
/// a feed contains per kilogram.
pub(super) fn doses(text: &str) -> Vec<Bytes<usize>> {
    let lower = lower_same_length(text);
    let mut found = Vec::new();
    for (at, word) in words(&lower) {
        let is_medicine = MEDICINES.contains(&word);
        if !is_medicine && !COMMON.contains(&word) {
            continue;
        }
        let rest = &lower[at + word.len()..];
        let trimmed = rest.trim_start_matches([' ', '\u{a0}']);
        let behind = trimmed.strip_prefix('/').or_else(|| trimmed.strip_prefix("per "));
        let behind = behind.map(|behind| behind.trim_start_matches([' ', '\u{a0}']));
        let Some(behind) = behind else { continue };
        let target =
            behind.find(|c: char| !c.is_alphanumeric()).map_or(behind, |end| &behind[..end]);
        let next = behind[target.len()..].trim_start();
        let for_body = BODY.contains(&target) && !FEED.iter().any(|feed| next.starts_with(feed));
        if for_body || (is_medicine && TURN.contains(&target)) {
            let end = lower.len() - behind.len() + target.len();
            found.push(number_before(text, at)..end);
        }
    }
    found
}

/// Finds every amount of a medicine by itself, `0.2 mg`: what a record of a treatment must not carry either.
pub(super) fn amounts(text: &str) -> Vec<Bytes<usize>> {
    let lower = lower_same_length(text);
    words(&lower)
        .filter(|(at, word)| MEDICINES.contains(word) && number_before(text, *at) < *at)
        .filter(|(at, word)| {
            let rest = lower[at + word.len()..].trim_start();
            !["/l", "/ l", "per l"].iter().any(|per| rest.starts_with(per))
        })
        .map(|(at, word)| number_before(text, at)..at + word.len())
        .collect()
}

/// The text with its ASCII letters in lower case, so that every byte stays where it is.
fn lower_same_length(text: &str) -> String {
    text.to_ascii_lowercase()
}

/// The words of a text with where they begin. A number joined to its unit is not part of the word.
fn words(text: &str) -> impl Iterator<Item = (usize, &str)> {
    let mut rest = text;
    std::iter::from_fn(move || {
        let start = text.len() - rest.len() + rest.find(char::is_alphabetic)?;
        let end =
            text[start..].find(|c: char| !c.is_alphabetic()).map_or(text.len(), |end| start + end);
        rest = &text[end..];
        Some((start, &text[start..end]))
    })
}

/// Where the number before a unit begins, or the unit itself where there is none.
fn number_before(text: &str, unit: usize) -> usize {
    let before = text[..unit].trim_end_matches([' ', '\u{a0}']);
    let start = before.trim_end_matches(|c: char| c.is_ascii_digit() || ".,-–".contains(c)).len();
    let number = before[start..].trim_start_matches(['.', ',', '-', '–']);
    if number.is_empty() { unit } else { before.len() - number.len() }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(text: &str) -> Vec<&str> {
        doses(text).into_iter().map(|span| &text[span]).collect()
    }

    #[test]
    fn an_amount_for_a_body_or_a_time_is_a_dose() {
        assert_eq!(told("Give 0.2 mg/kg once"), ["0.2 mg/kg"]);
        assert_eq!(told("5 ml per kg and 10 MG / KG"), ["5 ml per kg", "10 MG / KG"]);
        assert_eq!(told("dosed in mg/kg"), ["mg/kg"]);
        assert_eq!(told("0.5 mg per day; 2 units/kg"), ["0.5 mg per day", "2 units/kg"]);
    }

    #[test]
    fn water_and_food_are_no_doses() {
        assert_eq!(told("Ammonia below 0.02 mg/l, 30 mg per litre of salt"), Vec::<&str>::new());
        assert_eq!(told("10 g of greens a day, 40 ml of water per day"), Vec::<&str>::new());
        assert_eq!(told("spray 40 ml per day; vitamin A 5000 IU/kg of feed"), Vec::<&str>::new());
        assert!(amounts("mouse, adult 28 g; ammonia 0.1 mg/l").is_empty());
        assert_eq!(amounts("given 12.5 mg by mouth").len(), 1);
    }
}
