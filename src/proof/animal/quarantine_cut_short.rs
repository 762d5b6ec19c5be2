//! A quarantine whose written end comes before its least time has passed.

use crate::figures::quarantine::least_end;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "quarantine-cut-short",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "a quarantine is written to end before its least time has passed",
    page: include_str!("quarantine_cut_short.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        let Some(quarantine) = &animal.quarantine else { continue };
        let Some((written, place)) = quarantine.until else { continue };
        let Some(least) = least_end(quarantine).filter(|least| written < *least) else { continue };
        let message = format!(
            "the quarantine of {} is written to end on {written}; from {} its least time lasts until {least}",
            animal.name, quarantine.started
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("correct the end, or say in `minimum` how long it has to last")
                .also_at(quarantine.place, "the first day"),
        );
    }
}
