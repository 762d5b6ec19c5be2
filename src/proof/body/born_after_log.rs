//! A log with a line from before the animal hatched.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Basis;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "born-after-log",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Body,
    summary: "a log has a line from before the animal hatched",
    page: include_str!("born_after_log.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        let Some((hatched, basis, place)) = animal.hatched else { continue };
        let Some(entry) = animal.log.iter().find(|entry| entry.date < hatched) else { continue };
        let told = match basis {
            Basis::Known => "hatched on",
            Basis::Estimated => "is thought to have hatched on",
        };
        let message =
            format!("this line is dated {}, and {} {told} {hatched}", entry.date, animal.name);
        let finding = Finding::new(&CODE, entry.place, message)
            .help("correct the day of the line or of the hatching");
        found.push(finding.also_at(place, "the day of hatching"));
    }
}
