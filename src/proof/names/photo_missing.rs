//! A photo that is not there.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "photo-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Names,
    summary: "a photo is named and not there",
    page: include_str!("photo_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let animals = evidence.model.animals.values().filter_map(|animal| animal.photo.as_ref());
    let species = evidence.model.species.values().filter_map(|species| species.photo.as_ref());
    for photo in animals.chain(species) {
        if !evidence.sources.has_photo(&photo.name) {
            let message = format!("there is no photo `photos/{}`", photo.name);
            found.push(
                Finding::new(&CODE, photo.place, message)
                    .help("put the picture there or leave the field out"),
            );
        }
    }
}
