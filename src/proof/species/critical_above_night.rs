//! A temperature that the species is kept at below the one that harms it.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::shown;

static CODE: Code = Code {
    name: "critical-above-night",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Species,
    summary: "a species is kept below the temperature that harms it",
    page: include_str!("critical_above_night.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for species in evidence.model.species.values() {
        let of = &species.temperature;
        let Some(critical) = &of.critical_low else { continue };
        let Some(least) = critical.value.low().or(critical.value.high()) else { continue };
        // Brumation is left out: it is entered slowly, and is colder than a power cut may make an active animal.
        let kept = [("night", &of.night), ("cool side", &of.cool), ("water", &of.water)];
        let zones = kept.into_iter().filter_map(|(name, figure)| Some((name, figure.as_ref()?)));
        for (name, zone) in zones {
            let bottom = zone.value.low().or(zone.value.high());
            if bottom.is_none_or(|bottom| bottom >= least) {
                continue;
            }
            let message = format!(
                "the {name} of {} is kept at {}, and it comes to harm below {}",
                species.name,
                shown(&zone.value, system),
                shown(&critical.value, system)
            );
            found.push(
                Finding::new(&CODE, zone.place, message)
                    .help("correct one of the two")
                    .also_at(critical.place, "harm begins here"),
            );
        }
    }
}
