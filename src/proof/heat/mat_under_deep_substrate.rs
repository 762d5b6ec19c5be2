//! A heat mat under a deep floor.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::Length;

static CODE: Code = Code {
    name: "mat-under-deep-substrate",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a heat mat or cable lies under deep substrate",
    page: include_str!("mat_under_deep_substrate.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// Deeper than this a floor holds the heat back instead of passing it on, cm.
const DEEP_CM: f64 = 5.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(substrate) = &housed.housing.substrate else { continue };
        if substrate.thickness.cm() <= DEEP_CM {
            continue;
        }
        for heater in housed.housing.heaters.iter().filter(|heater| heater.below) {
            let message = format!(
                "the {} of {} lies under {} of {}, and more than {} holds its heat back",
                super::noun(heater.kind),
                housed.animal.name,
                housed.one(substrate.thickness),
                substrate.material,
                housed.one(Length::from_cm(DEEP_CM))
            );
            found.push(
                Finding::new(&CODE, heater.place, message)
                    .help("warm a deep floor from above, or keep it shallow over the mat")
                    .also_at(substrate.place, "the floor over it"),
            );
        }
    }
}
