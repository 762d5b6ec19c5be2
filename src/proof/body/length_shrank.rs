//! An animal that is shorter than it was.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::Length;

use super::{cm, lengths, meant};

static CODE: Code = Code {
    name: "length-shrank",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Body,
    summary: "an animal is shorter than it was",
    page: include_str!("length_shrank.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// A fifth shorter: two honest measurements of one animal do not differ so much.
const LEFT: f64 = 0.8;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for animal in evidence.model.animals.values() {
        let lengths = lengths(animal, evidence.figures.as_of);
        for pair in lengths.windows(2) {
            let [(before, was), (entry, is)] = pair else { continue };
            if *is >= was * LEFT {
                continue;
            }
            let message = format!(
                "this length of {} is {:.0} % less than the {} of {}",
                cm(*is, system),
                (1.0 - is / was) * 100.0,
                cm(*was, system),
                before.date
            );
            found.push(
                Finding::new(&CODE, entry.place, message)
                    .help(meant::<Length>(evidence, entry, *was))
                    .also_at(before.place, "longer before"),
            );
        }
    }
}
