//! Ultraviolet of 8 or more where the animal basks.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::UvIndex;

static CODE: Code = Code {
    name: "uv-too-strong",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Light,
    summary: "the ultraviolet index where it basks is 8 or more",
    page: include_str!("uv_too_strong.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// From here on ultraviolet at the basking spot is unsafe for any kind.
const UNSAFE_UVI: f64 = 8.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for lamp in &housed.housing.lamps {
            let Some((uvi, place)) = lamp.uvi else { continue };
            if uvi.high().or(uvi.low()).is_none_or(|top| top.uvi() < UNSAFE_UVI) {
                continue;
            }
            let message = format!(
                "the {} of {} gives {} where it basks, and {} or more is unsafe for any kind",
                lamp.kind,
                housed.animal.name,
                housed.range(&uvi),
                housed.one(UvIndex::from_uvi(UNSAFE_UVI))
            );
            found.push(
                Finding::new(&CODE, place, message)
                    .help("switch it off, then hang it higher and measure again before the animal is under it"),
            );
        }
    }
}
