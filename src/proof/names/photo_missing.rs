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
    for animal in evidence.model.animals.values() {
        if let Some(photo) = &animal.photo
            && !evidence.sources.has_photo(&photo.name)
        {
            let message = format!("there is no photo `photos/{}`", photo.name);
            found.push(
                Finding::new(&CODE, photo.place, message)
                    .help("put the picture there or leave the field out"),
            );
        }
    }
}
