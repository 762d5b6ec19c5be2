//! Ultraviolet outside the band of the species.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "uv-outside-band",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Light,
    summary: "the ultraviolet index where it basks lies outside the species' band",
    page: include_str!("uv_outside_band.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// From here on it is a safety error of its own.
const UNSAFE_UVI: f64 = 8.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(band) = housed.uv_band(evidence) else { continue };
        for lamp in &housed.housing.lamps {
            let Some((uvi, place)) = lamp.uvi else { continue };
            let top = uvi.high().or(uvi.low()).map_or(0.0, |uvi| uvi.uvi());
            if uvi.overlaps(&band) || top >= UNSAFE_UVI {
                continue;
            }
            let weak = band.low().is_some_and(|low| top < low.uvi());
            let distance = lamp.distance.map(|distance| format!(" at {}", housed.one(distance)));
            let message = format!(
                "the {} of {} gives {}{}, and its species ({}) basks in {}",
                lamp.kind,
                housed.animal.name,
                housed.range(&uvi),
                distance.unwrap_or_default(),
                housed.species.name,
                housed.range(&band)
            );
            let help = if weak {
                "bring it nearer or replace it, and measure again where the animal's back is"
            } else {
                "hang it higher or use a weaker one, and measure again where the animal's back is"
            };
            let finding = Finding::new(&CODE, place, message).help(help);
            found.push(match &housed.species.light.uvi {
                Some(own) => finding.also_at(own.place, "the species' band"),
                None => finding,
            });
        }
    }
}
