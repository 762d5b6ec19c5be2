//! A lamp or heater nearer to what burns than fire services advise.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::{HeaterKind, Word};
use crate::proof::{Evidence, Rule};
use crate::quantity::Length;

static CODE: Code = Code {
    name: "lamp-near-what-burns",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a lamp or heater is nearer than 45 cm to something that burns",
    page: include_str!("lamp_near_what_burns.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// The nearer end of what a fire service advises, cm: 18 to 20 inches.
const LEAST_CLEAR_CM: f64 = 45.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let heaters = housed.housing.heaters.iter().filter(|heater| is_hot(heater.kind));
        let heaters = heaters.map(|heater| (heater.kind.spelling(), heater.clearance));
        let lamps = housed.housing.lamps.iter().map(|lamp| (lamp.kind.as_str(), lamp.clearance));
        for (what, clearance) in heaters.chain(lamps) {
            let Some((clearance, place)) = clearance else { continue };
            if clearance.cm() >= LEAST_CLEAR_CM {
                continue;
            }
            let message = format!(
                "the heater or lamp ({what}) of {} is {} from the nearest thing that burns; a fire service advises {} at the least",
                housed.animal.name,
                housed.one(clearance),
                housed.one(Length::from_cm(LEAST_CLEAR_CM))
            );
            found.push(Finding::new(&CODE, place, message).help(
                "move away what burns (hay, curtains, wood, paper) or line it with what does not, and hang the lamp so that it cannot fall",
            ));
        }
    }
}

/// Whether it is hot enough to set fire to what lies near. Mats, cables and panels lie against surfaces by design.
fn is_hot(kind: HeaterKind) -> bool {
    matches!(
        kind,
        HeaterKind::Ceramic
            | HeaterKind::Halogen
            | HeaterKind::BaskingLamp
            | HeaterKind::MercuryVapour
            | HeaterKind::DeepHeat
    )
}
