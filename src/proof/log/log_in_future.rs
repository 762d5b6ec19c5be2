//! A log line for a day that has not come.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "log-in-future",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Body,
    summary: "a log line is dated after today",
    page: include_str!("log_in_future.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let today = evidence.figures.as_of;
    for animal in evidence.model.animals.values() {
        for entry in animal.log.iter().filter(|entry| entry.date > today) {
            let message = format!("this line is dated {}, and today is {today}", entry.date);
            let help = "correct the date, or pass the day that the sheets are for with `--as-of`";
            found.push(Finding::new(&CODE, entry.place, message).help(help));
        }
    }
}
