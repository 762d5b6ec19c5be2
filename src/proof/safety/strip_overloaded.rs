//! More watts on a socket strip than it may carry.

use std::collections::BTreeMap;

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::model::Animal;
use crate::proof::{Evidence, Rule};
use crate::quantity::{Power, Rounding, print_one};

static CODE: Code = Code {
    name: "strip-overloaded",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Heat,
    summary: "a socket strip carries more watts than its rating",
    page: include_str!("strip_overloaded.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How many of the things plugged in are shown with their places.
const SHOWN: usize = 8;

/// What is plugged into one strip.
#[derive(Default)]
struct Load {
    watts: f64,
    places: Vec<Place>,
}

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let site = &evidence.model.site;
    if site.strips.is_empty() {
        return;
    }
    let mut loads: BTreeMap<&str, Load> = BTreeMap::new();
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        let Some(housing) = &animal.housing else { continue };
        if is_counted_with_another(evidence, animal) {
            continue;
        }
        let heaters = housing.heaters.iter().map(|heater| {
            (heater.strip.as_ref(), heater.power.map(|(power, _)| power), heater.place)
        });
        let lamps = housing.lamps.iter().map(|lamp| (lamp.strip.as_ref(), lamp.power, lamp.place));
        for (strip, power, place) in heaters.chain(lamps) {
            let (Some(strip), Some(power)) = (strip, power) else { continue };
            let load = loads.entry(&strip.name).or_default();
            load.watts += power.watts();
            load.places.push(place);
        }
    }
    for strip in &site.strips {
        let Some(load) = loads.get(strip.name.as_str()) else { continue };
        if load.watts <= strip.rating.watts() {
            continue;
        }
        let watts = |power| print_one(power, site.units, Rounding::Nearest).first;
        let message = format!(
            "{} is plugged into the strip `{}`, which may carry {}",
            watts(Power::from_watts(load.watts)),
            strip.name,
            watts(strip.rating)
        );
        let mut finding = Finding::new(&CODE, strip.place, message).help(
            "part the load over sockets of their own, never strip into strip; an electrician says what the circuit bears",
        );
        for place in load.places.iter().take(SHOWN) {
            finding = finding.also_at(*place, "plugged into it");
        }
        found.push(finding);
    }
}

/// Whether a companion that shares the enclosure lists the same things in its own file: they are plugged in once.
fn is_counted_with_another(evidence: &Evidence<'_>, animal: &Animal) -> bool {
    let others = animal.company.iter().filter_map(|named| evidence.model.animals.get(&named.name));
    let mut others = others.filter(|other| other.is_kept() && other.file < animal.file);
    others.any(|other| {
        other
            .housing
            .as_ref()
            .is_some_and(|housing| !housing.heaters.is_empty() || !housing.lamps.is_empty())
    })
}
