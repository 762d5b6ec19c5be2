//! An animal that has not shed for far longer than it used to.

use crate::figures::calendar::days_between;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::log::Event;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "shed-overdue",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Body,
    summary: "an animal has not shed for far longer than it used to",
    page: include_str!("shed_overdue.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How many gaps between sheds it takes to know an animal's own rhythm.
const GAPS: usize = 3;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let as_of = evidence.figures.as_of;
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        let known = || animal.log.iter().filter(|entry| entry.date <= as_of);
        let sheds: Vec<_> =
            known().filter(|entry| matches!(entry.event, Event::Shed { .. })).collect();
        let gaps: Vec<i32> = sheds
            .windows(2)
            .map(|pair| days_between(pair[0].date, pair[1].date))
            .filter(|days| *days > 0)
            .collect();
        let (Some(longest), Some(last)) = (gaps.iter().max(), sheds.last()) else { continue };
        // Up to the last line, not up to today: a log that stops says nothing of the skin.
        let Some(end) = known().next_back() else { continue };
        let days = days_between(last.date, end.date);
        if gaps.len() < GAPS || days <= 2 * longest {
            continue;
        }
        let message = format!(
            "the last shed of {} was {days} days before the end of its log, and its longest time between two sheds was {longest} days",
            animal.name
        );
        let help = "look for old skin on toes, tail tip and eyes, check the humidity, and log the shed if it was missed";
        found.push(Finding::new(&CODE, last.place, message).help(help));
    }
}
