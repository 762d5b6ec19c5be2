//! The standing cautions: what can hurt people or animal, and who decides.

use crate::model::Species;
use crate::model::word::{Caution as Danger, Kind};

use super::blocks::Caution;
use super::edition::Edition;
use super::notices;

/// The caution of a name: the labels `caution-NAME` and `caution-NAME-text`.
fn caution(edition: &Edition<'_>, name: &str) -> Caution {
    Caution {
        title: edition.say(&format!("caution-{name}")),
        text: edition.say(&format!("caution-{name}-text")),
    }
}

/// The cautions that a species' sheets must carry: its own dangers first, then those of every animal in a heated box.
///
/// Where the site names jurisdictions that have a public-health notice for its kind, each stands behind the hygiene that holds
/// everywhere, under its own name; ages are then told by the notices alone.
pub fn of_species(edition: &Edition<'_>, species: &Species) -> Vec<Caution> {
    let notices = notices::cautions(edition, species);
    let mut cautions: Vec<Caution> =
        species.cautions.iter().map(|danger| of_danger(edition, *danger)).collect();
    // One place draws the line at one age, another elsewhere: beside a notice no further line is drawn.
    let beside_notices = "caution-salmonella-text-beside-notices";
    let label = if notices.is_empty() { "caution-salmonella-text" } else { beside_notices };
    cautions.push(salmonella(edition, species.kind, label));
    cautions.extend(notices);
    cautions.extend(["heat", "medicines", "law"].map(|name| caution(edition, name)));
    cautions
}

/// The cautions of a wall card: the first few of its own dangers, Salmonella, and the ages that each notice names.
pub fn of_card(edition: &Edition<'_>, species: &Species, dangers: usize) -> Vec<Caution> {
    let notices = notices::brief(edition, species);
    let own = species.cautions.iter().take(dangers).map(|danger| of_danger(edition, *danger));
    let on_card = "caution-salmonella-text-on-card";
    let label = if notices.is_empty() { "caution-salmonella-text" } else { on_card };
    own.chain([salmonella(edition, species.kind, label)]).chain(notices).collect()
}

fn of_danger(edition: &Edition<'_>, danger: Danger) -> Caution {
    caution(
        edition,
        match danger {
            Danger::LargeConstrictor => "large-constrictor",
            Danger::Venom => "venom",
            Danger::StrongBite => "strong-bite",
            Danger::SkinSecretion => "skin-secretion",
            Danger::StrongTail => "strong-tail",
        },
    )
}

/// What carries it differs by the kind of animal.
fn salmonella(edition: &Edition<'_>, kind: Kind, label: &str) -> Caution {
    let carrier = match kind {
        Kind::Frog | Kind::Salamander => "amphibian",
        Kind::Invertebrate => "invertebrate",
        _ => "reptile",
    };
    Caution {
        title: edition.say("caution-salmonella"),
        text: edition.tell(label, [("carrier", carrier.into())]),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::Model;
    use crate::model::word::Word;

    #[test]
    fn whatever_the_kind_the_caution_says_what_carries_salmonella_and_to_wash_hands() {
        let model = Model::default();
        let edition = Edition::of_site(&model);
        let suffixes = ["", "-beside-notices", "-on-card"];
        for (kind, spelling) in Kind::ALL {
            let told = match kind {
                Kind::Frog | Kind::Salamander => "Assume that every amphibian carries Salmonella",
                Kind::Invertebrate => {
                    "Assume that any enclosure and feeder insect can carry Salmonella"
                }
                _ => "Assume that every reptile carries Salmonella",
            };
            for suffix in suffixes {
                let label = format!("caution-salmonella-text{suffix}");
                let text = salmonella(&edition, *kind, &label).text;
                assert!(text.starts_with(told), "{spelling}: {text}");
                assert!(text.contains(". Wash your hands with soap after "), "{spelling}: {text}");
                assert!(!text.contains('\n'), "{spelling}: {text}");
            }
        }
    }
}
