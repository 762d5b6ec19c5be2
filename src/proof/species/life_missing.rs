//! A species that does not say how long it lives.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "life-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Species,
    summary: "a species does not say how long it lives",
    page: include_str!("life_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for species in evidence.model.species.values() {
        if species.years.is_some() {
            continue;
        }
        let message = format!("{} does not say how many years it lives", species.name);
        let place = evidence.field(species.file, "name");
        found.push(
            Finding::new(&CODE, place, message)
                .help("write in [life]: years = \"15-20 years\", with its source"),
        );
    }
}
