//! What a sitter does when something goes wrong: a line each for the first page, and cards with the steps.

use serde::Serialize;

use super::blocks::{Fact, Shown, Table};
use super::edition::Edition;
use super::sitter_days::Guesting;
use super::upkeep;

/// A card.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Card {
    /// What has happened.
    pub title: String,
    /// What is done, in order.
    pub steps: Vec<String>,
    /// What it means for each animal.
    pub table: Option<Table>,
}

/// A line each. Common practice; where people are in danger they come first.
pub(super) fn first_page(edition: &Edition<'_>) -> Vec<Fact> {
    [
        ("sitter-power-cut", "sitter-power-cut-text"),
        ("sitter-escape", "sitter-escape-text"),
        ("sitter-bite", "sitter-bite-text"),
        ("sitter-fire", "sitter-fire-text"),
        ("sitter-hands", "sitter-hands-text"),
    ]
    .map(|(label, text)| Fact::plain(edition.say(label), edition.say(text)))
    .into()
}

/// The cards. Common practice, no source, but for the hours of each enclosure, which are worked out.
pub(super) fn cards(guests: &[Guesting<'_>], edition: &Edition<'_>) -> Vec<Card> {
    let card = |name: &str, steps: u32, table| Card {
        title: edition.say(&format!("sitter-card-{name}")),
        steps: (1..=steps).map(|step| edition.say(&format!("sitter-card-{name}-{step}"))).collect(),
        table,
    };
    vec![
        card("power", 4, power_cut(guests, edition)),
        card("hot", 3, None),
        card("gone", 4, None),
        card("reading", 3, None),
    ]
}

/// How long each enclosure bears it, and what is done then.
fn power_cut(guests: &[Guesting<'_>], edition: &Edition<'_>) -> Option<Table> {
    let say = |label| edition.say(label);
    let rows = guests.iter().map(|guest| {
        let hours = upkeep::power_cut(guest.own, edition).map(|fact| fact.value);
        let housing = guest.animal.housing.as_ref();
        let fallback = housing.and_then(|housing| housing.fallback.clone());
        vec![
            Shown::plain(guest.animal.name.clone()),
            hours.unwrap_or_else(|| Shown::plain(say("sitter-hours-not-known"))),
            Shown::plain(fallback.unwrap_or_else(|| say("sitter-ask"))),
        ]
    });
    let head = [&*say("sitter-animal"), &say("sitter-without-power"), &say("sitter-what-then")];
    Table::of(say("sitter-bears"), &head, rows.collect())
}
