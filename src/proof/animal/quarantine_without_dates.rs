//! An animal in quarantine without the day on which that began.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Status;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "quarantine-without-dates",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal is in quarantine and nothing says since when",
    page: include_str!("quarantine_without_dates.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        if animal.status != Status::Quarantine || animal.quarantine.is_some() {
            continue;
        }
        let message = format!(
            "{} is in quarantine, and nothing says since when or for how long",
            animal.name
        );
        let help = "add [quarantine] with started = 2026-10-20 and minimum = \"90 days\"";
        found.push(Finding::new(&CODE, evidence.field(animal.file, "status"), message).help(help));
    }
}
