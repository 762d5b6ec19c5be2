//! A last shed that did not come off whole.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::log::Event;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "shed-incomplete",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Body,
    summary: "the last shed did not come off whole",
    page: include_str!("shed_incomplete.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let as_of = evidence.figures.as_of;
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        let known = animal.log.iter().rev().filter(|entry| entry.date <= as_of);
        let last = known.into_iter().find_map(|entry| match entry.event {
            Event::Shed { complete } => Some((entry, complete)),
            _ => None,
        });
        if let Some((entry, Some(false))) = last {
            let message = format!(
                "the last shed of {}, on {}, did not come off whole",
                animal.name, entry.date
            );
            let help = "look for skin left on toes, tail tip and eyes; never pull an eye cap, and ask a vet within days if it stays";
            found.push(Finding::new(&CODE, entry.place, message).help(help));
        }
    }
}
