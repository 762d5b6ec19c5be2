//! A sun-basking animal without ultraviolet.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::housing::Housing;
use crate::model::word::HeaterKind;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "uv-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Light,
    summary: "a species of zone 2 or higher has no ultraviolet lamp",
    page: include_str!("uv_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// From this zone on a kind meets part of the sun in the field.
const SUNNY_ZONE: u8 = 2;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(zone) = housed.species.light.zone.as_ref().filter(|zone| zone.value >= SUNNY_ZONE)
        else {
            continue;
        };
        if has_ultraviolet(housed.housing) {
            continue;
        }
        let message = format!(
            "the enclosure of {} has no lamp for ultraviolet, and its species ({}) is of ultraviolet zone {}",
            housed.animal.name, housed.species.name, zone.value
        );
        found.push(
            Finding::new(&CODE, housed.housing.place, message)
                .help("add the lamp with what it gives where the animal basks: [[lamp]] with kind, distance and uvi")
                .also_at(zone.place, "its zone"),
        );
    }
}

/// A lamp with a measured index or `UV` in its kind, or a mercury vapour lamp, which gives heat and ultraviolet.
fn has_ultraviolet(housing: &Housing) -> bool {
    let names_it = |kind: &str| {
        let kind = kind.to_lowercase();
        kind.contains("uv") || kind.contains("ultraviolet") || kind.contains("mercury")
    };
    housing.lamps.iter().any(|lamp| lamp.uvi.is_some() || names_it(&lamp.kind))
        || housing.heaters.iter().any(|heater| heater.kind == HeaterKind::MercuryVapour)
}
