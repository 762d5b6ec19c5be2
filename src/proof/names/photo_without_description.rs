//! A photo that nobody described.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "photo-without-description",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Names,
    summary: "a photo is not described",
    page: include_str!("photo_without_description.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let animals =
        evidence.model.animals.values().map(|animal| (&animal.photo, &animal.photo_shows));
    let species =
        evidence.model.species.values().map(|species| (&species.photo, &species.photo_shows));
    for (photo, shows) in animals.chain(species) {
        if let (Some(photo), None) = (photo, shows) {
            let message = format!("the photo `{}` has no description", photo.name);
            let help = "say in `photo_shows` what it shows: photo_shows = \"Juniper in her hide\"";
            found.push(Finding::new(&CODE, photo.place, message).help(help));
        }
    }
}
