//! A gradient narrower than the species' own.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Zone;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "gradient-too-narrow",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "the gradient is narrower than the species needs",
    page: include_str!("gradient_too_narrow.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let asked = &housed.species.temperature;
        let (top, zone) = match &asked.basking {
            Some(basking) => (basking, Zone::Basking),
            None => match &asked.warm {
                Some(warm) => (warm, Zone::Warm),
                None => continue,
            },
        };
        let Some(cool) = &asked.cool else { continue };
        let (Some(top_low), Some(cool_high)) = (top.value.low(), cool.value.high()) else {
            continue;
        };
        let (Some((warmest, place)), Some((coolest, cool_place))) =
            (housed.by_day(zone), housed.by_day(Zone::Cool))
        else {
            continue;
        };
        let (spans, needed) = (warmest - coolest, top_low - cool_high);
        // An inverted gradient is a finding of its own.
        if spans.kelvin() < 0.0 || spans >= needed {
            continue;
        }
        let message = format!(
            "the gradient of {} spans {}, and its species ({}) needs at least {}",
            housed.animal.name,
            housed.one(spans),
            housed.species.name,
            housed.one(needed)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help(
                    "heat one end only, or give the cool side more room, more air or a cooler room",
                )
                .also_at(cool_place, "the cool side")
                .also_at(top.place, "the species' warm end"),
        );
    }
}
