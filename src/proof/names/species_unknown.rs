//! An animal of a species that nobody defines.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::source::Role;

use super::unknown;

static CODE: Code = Code {
    name: "species-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Names,
    summary: "an animal's species is not defined",
    page: include_str!("species_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let species = &evidence.model.species;
    for animal in evidence.model.animals.values() {
        // A species whose own file has a fault is known; the fault is reported there.
        let has_file = evidence.sources.named(Role::Species, &animal.species.name).is_some();
        if !species.contains_key(&animal.species.name) && !has_file {
            found.push(unknown(
                &CODE,
                &animal.species,
                ("species", ""),
                species.keys().map(String::as_str),
            ));
        }
    }
}
