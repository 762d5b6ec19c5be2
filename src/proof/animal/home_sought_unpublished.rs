//! An animal that seeks a home and has no public page.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Status;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "home-sought-unpublished",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal seeks a home and has no public page",
    page: include_str!("home_sought_unpublished.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        if animal.status != Status::SeekingHome || animal.publish {
            continue;
        }
        let message = format!("{} is seeking a home and has no public page", animal.name);
        let help = "write publish = true when it is ready to be seen";
        found.push(Finding::new(&CODE, evidence.field(animal.file, "status"), message).help(help));
    }
}
