//! The standing cautions: what can hurt people or animal, and who decides.

use crate::model::Species;
use crate::model::word::{Caution as Danger, Kind};

use super::blocks::Caution;
use super::edition::Edition;
use super::notices;

fn caution(title: &str, text: &str) -> Caution {
    Caution { title: title.to_owned(), text: text.to_owned() }
}

/// The cautions that a species' sheets must carry: its own dangers first, then those of every animal in a heated box.
///
/// Where the site names jurisdictions that have a public-health notice for its kind, each stands behind the hygiene that holds
/// everywhere, under its own name; ages are then told by the notices alone.
pub fn of_species(edition: &Edition<'_>, species: &Species) -> Vec<Caution> {
    let notices = notices::cautions(edition, species);
    let mut cautions: Vec<Caution> =
        species.cautions.iter().map(|danger| of_danger(*danger)).collect();
    cautions.push(salmonella(species.kind, !notices.is_empty()));
    cautions.extend(notices);
    cautions.push(caution(
        "Heat and electricity",
        "Guard every heater that the animal can reach and give each one a thermostat of its own. Mains wiring near water is an \
         electrician's work. Keep lamps fixed, clear of anything that burns, and have a smoke alarm in the room.",
    ));
    cautions.push(caution(
        "Medicines",
        "Only a vet decides on a medicine and its dose. None is printed here.",
    ));
    cautions.push(caution(
        "Law",
        "Rules on keeping, selling and moving this animal differ from place to place and change. Ask your local authority; local \
         law decides.",
    ));
    cautions
}

/// The cautions of a wall card: the first few of its own dangers, Salmonella, and the ages that each notice names.
pub fn of_card(edition: &Edition<'_>, species: &Species, dangers: usize) -> Vec<Caution> {
    let notices = notices::brief(edition, species);
    let own = species.cautions.iter().take(dangers).map(|danger| of_danger(*danger));
    let hygiene = if notices.is_empty() {
        salmonella(species.kind, false)
    } else {
        let text = format!(
            "{}. Wash your hands with soap after every contact, and keep all of it out of the kitchen.",
            carrier(species.kind)
        );
        caution("Salmonella", &text)
    };
    own.chain([hygiene]).chain(notices).collect()
}

fn of_danger(danger: Danger) -> Caution {
    match danger {
        Danger::LargeConstrictor => caution(
            "Large constrictor",
            "Never handle or feed a large snake alone: have a second adult in the room. Never put it round a neck, and keep \
             children away while the enclosure is open.",
        ),
        Danger::Venom => caution(
            "Venom",
            "A bite may carry venom. Do not let it chew; wash the wound and ring a doctor if swelling, pain or illness follows. \
             In many places a licence is needed.",
        ),
        Danger::StrongBite => caution(
            "Strong bite",
            "A bite can wound. Feed with long tongs, move slowly, and have deep bites seen by a doctor.",
        ),
        Danger::SkinSecretion => caution(
            "Skin secretion",
            "Its skin can irritate eyes and mouth. Wear wet, powder-free gloves and wash your hands after every contact.",
        ),
        Danger::StrongTail => caution(
            "Strong tail",
            "A blow of the tail can injure an eye. Keep your face away and never hold the animal by its tail.",
        ),
    }
}

fn carrier(kind: Kind) -> &'static str {
    match kind {
        Kind::Frog | Kind::Salamander => "Assume that every amphibian carries Salmonella",
        Kind::Invertebrate => "Assume that any enclosure and feeder insect can carry Salmonella",
        _ => "Assume that every reptile carries Salmonella",
    }
}

fn salmonella(kind: Kind, has_notices: bool) -> Caution {
    let carrier = carrier(kind);
    // One place draws the line at one age, another elsewhere: beside a notice no further line is drawn.
    let who = if has_notices {
        "Who should keep away is told below, place by place; in pregnancy or doubt ask a doctor."
    } else {
        "Children under five, pregnant women, people over 65 and anyone whose defences are weak should not touch it."
    };
    caution(
        "Salmonella",
        &format!(
            "{carrier}, well or not. Wash your hands with soap after touching the animal, its water, its enclosure or its food, \
             and keep all of them out of the kitchen. {who}"
        ),
    )
}
