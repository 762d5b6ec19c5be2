//! A species with too few signs of illness, or none that is urgent.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Urgency;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "signs-too-few",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Species,
    summary: "a species lists too few signs of illness, or none that is urgent",
    page: include_str!("signs_too_few.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// The least number of signs that a care sheet owes.
const LEAST: usize = 6;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for species in evidence.model.species.values() {
        let urgent = species.signs.iter().any(|sign| sign.urgency == Urgency::Now);
        let signs = species.signs.len();
        let message = if signs < LEAST {
            format!(
                "{} lists fewer signs of illness than the {LEAST} that a care sheet owes: {signs}",
                species.name
            )
        } else if !urgent {
            format!(
                "{} lists {signs} signs of illness, and none that calls for a vet now",
                species.name
            )
        } else {
            continue;
        };
        let help = "add [[sign]] with sign, means and urgency: now, day, days or watch";
        found.push(Finding::new(&CODE, evidence.field(species.file, "name"), message).help(help));
    }
}
