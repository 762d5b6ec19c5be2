//! What a sitter does when something goes wrong: a line each for the first page, and cards with the steps.

use serde::Serialize;

use super::blocks::{Fact, Shown, Table};
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
pub(super) fn first_page() -> Vec<Fact> {
    [
        ("Power cut", "Lids stay shut, blankets over the glass, ring the keeper; then the card at the end of this sheet."),
        ("Escape", "Shut the room's door, look along the floor, ring. Do not grab a snake that you do not know."),
        ("Bite", "Wash it with soap and water. Deep, in the face, or swelling: a doctor. A large snake that holds on: the second adult unwinds it from the tail; ring the emergency number."),
        ("Fire", "People out, door shut, ring the emergency number. Nobody goes back for an animal."),
        ("Hands", "Soap and water after every enclosure. Children under five, pregnant women, people over 65 and anyone whose defences are weak stay away: reptiles and amphibians can carry Salmonella."),
    ]
    .into_iter()
    .map(|(label, text)| Fact::plain(label, text))
    .collect()
}

/// The cards. Common practice, no source, but for the hours of each enclosure, which are worked out.
pub(super) fn cards(guests: &[Guesting<'_>]) -> Vec<Card> {
    let card = |title: &str, steps: &[&str], table| Card {
        title: title.to_owned(),
        steps: steps.iter().map(|step| (*step).to_owned()).collect(),
        table,
    };
    vec![
        card(
            "The power is off",
            &[
                "Look whether the street is dark. A tripped switch is reset once; if it trips again, leave it and ring the keeper. Wiring is an electrician's work.",
                "Keep every lid and door shut. Free the vents, lay a blanket over the glass, give no food.",
                "Ring the keeper, and say which of the hours below comes first.",
                "When the power is back: look whether every heater works and every reading is right within two hours.",
            ],
            power_cut(guests),
        ),
        card(
            "It is too hot",
            &[
                "A reading above the upper bound of its table: switch the heaters of that enclosure off at the wall, open the room's door and windows, leave the enclosure shut against escape.",
                "Fresh, cool water in the bowl. No ice, no cold bath.",
                "Look again after half an hour. Still too hot, or it gapes or lies limp: phone the vet now, then the keeper.",
            ],
            None,
        ),
        card(
            "One is not there",
            &[
                "Count again: hides, under the substrate, behind the back wall.",
                "Shut the door of the room, put a towel along its foot, switch nothing off, keep cats and dogs out.",
                "Look along the walls, under and behind warm things, in shoes and folds. Ring the keeper.",
                "Seen: a bucket or a box over it, then ring. A large snake is never caught by one person alone.",
            ],
            None,
        ),
        card(
            "A reading is out of bounds",
            &[
                "Between “right” and “act now”: is the probe in its place, the door shut, the lamp on? Look again after half an hour.",
                "Past “act now”: phone the keeper at once, and read them the probe, the number and the hour. Change no set point unless they say so.",
                "Nobody answers within 15 minutes: the second number, then the vet.",
            ],
            None,
        ),
    ]
}

/// How long each enclosure bears it, and what is done then.
fn power_cut(guests: &[Guesting<'_>]) -> Option<Table> {
    let rows = guests.iter().map(|guest| {
        let hours = upkeep::power_cut(guest.own).map(|fact| fact.value);
        let housing = guest.animal.housing.as_ref();
        let fallback = housing.and_then(|housing| housing.fallback.clone());
        vec![
            Shown::plain(guest.animal.name.clone()),
            hours.unwrap_or_else(|| Shown::plain("not worked out: ask the keeper")),
            fallback.map_or_else(|| Shown::plain("ask the keeper"), Shown::plain),
        ]
    });
    Table::of("How long each bears it", &["Animal", "Without power", "What then"], rows.collect())
}
