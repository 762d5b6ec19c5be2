//! Hay or straw under a heat lamp.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::HeaterKind;
use crate::proof::{Evidence, Rule};
use crate::quantity::Length;

static CODE: Code = Code {
    name: "dry-bedding-under-lamp",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "hay, straw or paper lies under a heat lamp",
    page: include_str!("dry_bedding_under_lamp.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// A lamp is kept this far from anything that burns, cm: 18 to 20 inches, the farther of the two.
const CLEAR_CM: f64 = 50.0;
/// What catches fire from a lamp before other floors do.
const BURNS: [&str; 5] = ["hay", "straw", "paper", "newsprint", "cardboard"];

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(substrate) = &housed.housing.substrate else { continue };
        let words = substrate.material.to_lowercase();
        let mut words = words.split(|c: char| !c.is_alphanumeric());
        if !words.any(|word| BURNS.contains(&word)) {
            continue;
        }
        let height = housed.housing.inside.map(|(inside, _)| inside.height);
        // A lamp hangs no higher than the roof; in an enclosure that is high enough it can be clear of the floor.
        if height.is_some_and(|height| height.cm() >= CLEAR_CM + substrate.thickness.cm()) {
            continue;
        }
        let lamps = housed.housing.heaters.iter().filter(|heater| {
            matches!(
                heater.kind,
                HeaterKind::Halogen | HeaterKind::BaskingLamp | HeaterKind::MercuryVapour
            )
        });
        for lamp in lamps {
            let message = format!(
                "the floor of {} is {}, and its heat lamp cannot hang {} clear of it",
                housed.animal.name,
                substrate.material,
                housed.one(Length::from_cm(CLEAR_CM))
            );
            found.push(
                Finding::new(&CODE, substrate.place, message)
                    .help("use soil, sand or bark under the lamp, keep hay for the cool end in a rack, and fix the lamp so that it cannot fall")
                    .also_at(lamp.place, "the lamp"),
            );
        }
    }
}
