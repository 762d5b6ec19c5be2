//! An ultraviolet index without its distance.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "uv-without-distance",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Light,
    summary: "an ultraviolet index is given without the lamp's distance",
    page: include_str!("uv_without_distance.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for lamp in &housed.housing.lamps {
            let Some((uvi, place)) = lamp.uvi.filter(|_| lamp.distance.is_none()) else { continue };
            let message = format!(
                "the {} of {} gives {}, and its distance from the basking spot is not said",
                lamp.kind,
                housed.animal.name,
                housed.range(&uvi)
            );
            found.push(
                Finding::new(&CODE, place, message)
                    .help("measure from the lamp to the animal's back: distance = \"35 cm\""),
            );
        }
    }
}
