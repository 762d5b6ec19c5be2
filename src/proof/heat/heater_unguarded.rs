//! A heater that the animal can touch.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::HeaterKind;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "heater-unguarded",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Heat,
    summary: "a heater that burns on touch has no guard",
    page: include_str!("heater_unguarded.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for heater in housed.housing.heaters.iter().filter(|heater| burns(heater.kind)) {
            let (what, name) = (super::noun(heater.kind), &housed.animal.name);
            let (message, place) = match heater.guard {
                Some((true, _)) => continue,
                Some((false, place)) => (format!("the {what} of {name} has no guard"), place),
                None => (format!("the {what} of {name} is not said to have a guard"), heater.place),
            };
            found.push(Finding::new(&CODE, place, message).help(
                "fit a guard that the animal cannot reach through, then write guard = true; a mesh lid or a height out of its reach counts as one",
            ));
        }
    }
}

/// Kinds whose surface burns skin at once. A panel, a mat and a cable stay cooler, and are held by their thermostats.
fn burns(kind: HeaterKind) -> bool {
    matches!(
        kind,
        HeaterKind::Ceramic
            | HeaterKind::Halogen
            | HeaterKind::BaskingLamp
            | HeaterKind::MercuryVapour
            | HeaterKind::DeepHeat
    )
}
