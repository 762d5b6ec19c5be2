//! A heat lamp that is lit by night.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::HeaterKind;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "lit-by-night",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Light,
    summary: "a heat lamp has a set point for the night and is lit then",
    page: include_str!("lit_by_night.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for heater in &housed.housing.heaters {
            let word = match heater.kind {
                HeaterKind::Halogen => "halogen lamp",
                HeaterKind::BaskingLamp => "basking lamp",
                HeaterKind::MercuryVapour => "mercury vapour lamp",
                _ => continue,
            };
            let Some((night, place)) = heater.set_night else { continue };
            let message = format!(
                "the {word} of {} is set to {} by night, and lights the enclosure then",
                housed.animal.name,
                housed.one(night)
            );
            found.push(Finding::new(&CODE, place, message).help(
                "warm the night with a ceramic heater or a panel, and remove set_night here",
            ));
        }
    }
}
