//! A weight that is many times the one before it, or a small part of it.

use crate::figures::calendar::days_between;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::Mass;

use super::{grams, meant, weights};

static CODE: Code = Code {
    name: "weight-jump",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Body,
    summary: "a weight is many times the one before it, or a small part of it",
    page: include_str!("weight_jump.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How many times heavier nothing becomes within two months.
const TIMES: f64 = 8.0;
/// The time in days within which such a rise is no growth: hatchlings of quick species multiply their weight in a season.
const DAYS: i32 = 60;
/// The part that no living animal falls to.
const LEFT: f64 = 0.25;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for animal in evidence.model.animals.values() {
        let weights = weights(animal, evidence.figures.as_of);
        for pair in weights.windows(2) {
            let [(before, was), (entry, is)] = pair else { continue };
            let days = days_between(before.date, entry.date);
            let rose = *is > was * TIMES && days <= DAYS;
            if !rose && *is >= was * LEFT {
                continue;
            }
            let message = format!(
                "this weight of {} follows one of {}, {days} days before",
                grams(*is, system),
                grams(*was, system)
            );
            found.push(
                Finding::new(&CODE, entry.place, message)
                    .help(meant::<Mass>(evidence, entry, *was))
                    .also_at(before.place, "the weight before it"),
            );
        }
    }
}
