//! An animal whose next meal is overdue.

use crate::figures::calendar::days_between;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::log::Event;
use crate::proof::{Evidence, Rule};

use super::{fed, meals};

static CODE: Code = Code {
    name: "meal-overdue",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Feeding,
    summary: "an animal's next meal is overdue",
    page: include_str!("meal_overdue.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let as_of = evidence.figures.as_of;
    for fed in fed(evidence) {
        let Some(until) = fed.figures.feeding.due_until.filter(|until| *until < as_of) else {
            continue;
        };
        let meals = meals(fed.animal, as_of);
        let Some((last, _)) = meals.iter().max_by_key(|(entry, _)| entry.date) else { continue };
        if fed.animal.log.iter().any(|entry| entry.date >= last.date && winters(&entry.event)) {
            continue;
        }
        let message = format!(
            "food was last offered on {}, and the next meal was due by {until}, {} days ago",
            last.date,
            days_between(until, as_of)
        );
        let help = "offer food, or bring the log up to date";
        found.push(Finding::new(&CODE, last.place, message).help(help));
    }
}

/// Whether a line says that the animal was put down for the winter, when nothing is fed.
fn winters(event: &Event) -> bool {
    match event {
        Event::Other(words) => {
            let words = words.to_lowercase();
            words.contains("brumat") || words.contains("hibernat")
        }
        _ => false,
    }
}
