//! A log with a line from before the animal came.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "logged-before-arrival",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Body,
    summary: "a log has a line from before the animal came",
    page: include_str!("logged_before_arrival.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        let Some((arrived, place)) = animal.arrived else { continue };
        let hatched = animal.hatched.map(|(hatched, ..)| hatched);
        let before = animal.log.iter().find(|entry| {
            entry.date < arrived && hatched.is_none_or(|hatched| entry.date >= hatched)
        });
        let Some(entry) = before else { continue };
        let message =
            format!("this line is dated {}, before {} came on {arrived}", entry.date, animal.name);
        let finding = Finding::new(&CODE, entry.place, message)
            .help("leave it if it is the former keeper's record; else correct the day");
        found.push(finding.also_at(place, "the day it came"));
    }
}
