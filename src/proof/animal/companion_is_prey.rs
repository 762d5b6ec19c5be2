//! An animal that shares its enclosure with one small enough to be eaten.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Diet;
use crate::proof::{Evidence, Rule};
use crate::quantity::{Mass, Rounding, print_one};

use super::companions;

static CODE: Code = Code {
    name: "companion-is-prey",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Animal,
    summary: "an animal shares its enclosure with one small enough to be eaten",
    page: include_str!("companion_is_prey.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// A companion of this share of the mass or less is a meal to a hunter; keepers part animals long before.
const PREY: f64 = 0.5;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let body = |name: &str| evidence.figures.animals.get(name)?.body.mass_g;
    let system = evidence.model.site.units;
    let grams = |mass: f64| print_one(Mass::from_grams(mass), system, Rounding::Nearest).first;
    for (name, animal) in evidence.model.animals.iter().filter(|(_, animal)| animal.is_kept()) {
        let species = evidence.model.species.get(&animal.species.name);
        if species.is_none_or(|species| species.diet == Diet::Herbivore) {
            continue;
        }
        for companion in companions(evidence, animal) {
            let (Some(own), Some(other)) = (body(name), body(&companion.named.name)) else {
                continue;
            };
            if !companion.animal.is_kept() || other > own * PREY {
                continue;
            }
            let message = format!(
                "{} weighs {} and shares its enclosure with {}, which weighs {}",
                animal.name,
                grams(own),
                companion.animal.name,
                grams(other)
            );
            let help =
                "part them now; animals that eat meat are only kept with others of their size";
            found.push(Finding::new(&CODE, companion.named.place, message).help(help));
        }
    }
}
