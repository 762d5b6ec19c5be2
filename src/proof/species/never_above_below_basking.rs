//! An upper limit below a temperature that the species is kept at.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::shown;

static CODE: Code = Code {
    name: "never-above-below-basking",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Species,
    summary: "a species' upper limit lies below a temperature it is kept at",
    page: include_str!("never_above_below_basking.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for species in evidence.model.species.values() {
        let of = &species.temperature;
        let Some(limit) = &of.never_above else { continue };
        let Some(most) = limit.value.high().or(limit.value.low()) else { continue };
        let kept = [
            ("basking spot", &of.basking),
            ("warm side", &of.warm),
            ("cool side", &of.cool),
            ("night", &of.night),
            ("water", &of.water),
        ];
        let zones = kept.into_iter().filter_map(|(name, figure)| Some((name, figure.as_ref()?)));
        let above = zones.filter(|(_, zone)| {
            zone.value.high().or(zone.value.low()).is_some_and(|top| top > most)
        });
        for (name, zone) in above {
            let message = format!(
                "the {name} of {} is kept at {}, and nothing may pass {}",
                species.name,
                shown(&zone.value, system),
                shown(&limit.value, system)
            );
            found.push(
                Finding::new(&CODE, limit.place, message)
                    .help("raise the limit if the source allows it, or lower the zone")
                    .also_at(zone.place, format!("the {name}")),
            );
        }
    }
}
