//! A log whose days do not run forward.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "log-out-of-order",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Body,
    summary: "a log's days do not run forward",
    page: include_str!("log_out_of_order.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        for pair in animal.log.windows(2) {
            let [earlier, later] = pair else { continue };
            if later.date < earlier.date {
                let message =
                    format!("this line is dated {}, before the line above it", later.date);
                let finding = Finding::new(&CODE, later.place, message)
                    .help("put the lines in the order of their days, or correct the date");
                found.push(finding.also_at(earlier.place, format!("dated {}", earlier.date)));
            }
        }
    }
}
