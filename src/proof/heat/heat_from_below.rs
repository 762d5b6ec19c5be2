//! A heavy snake on a heat mat.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::Animal;
use crate::model::species::Size;
use crate::model::word::{Kind, Sex};
use crate::proof::{Evidence, Rule};
use crate::quantity::Mass;

static CODE: Code = Code {
    name: "heat-from-below",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a heavy snake is heated from below",
    page: include_str!("heat_from_below.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// From this weight on a snake presses through its floor and covers the heat with its own body, g.
const HEAVY_G: f64 = 1000.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        if housed.species.kind != Kind::Snake {
            continue;
        }
        let weight = housed.animal.weights().next_back().map(|(_, mass)| mass);
        let Some(weight) = weight.or_else(|| expected(housed.animal, &housed.species.size)) else {
            continue;
        };
        if weight.grams() < HEAVY_G {
            continue;
        }
        for heater in housed.housing.heaters.iter().filter(|heater| heater.below) {
            let message = format!(
                "the {} lies under {}, a snake of {}",
                super::noun(heater.kind),
                housed.animal.name,
                housed.one(weight)
            );
            found.push(Finding::new(&CODE, heater.place, message).help(
                "warm it from above, with a radiant panel or a guarded heater on a thermostat",
            ));
        }
    }
}

/// What a grown animal of its sex weighs at least.
fn expected(animal: &Animal, size: &Size) -> Option<Mass> {
    let by_sex = match animal.sex {
        Sex::Female => &size.mass_female,
        Sex::Male => &size.mass_male,
        Sex::Unknown => &None,
    };
    by_sex.as_ref().or(size.mass.as_ref()).and_then(|cited| cited.value.low())
}
