//! A length that is far more than the one before it.

use crate::figures::calendar::days_between;
use crate::figures::growth::adult_range_cm;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Sex;
use crate::proof::{Evidence, Rule};
use crate::quantity::Length;

use super::{cm, lengths, meant};

static CODE: Code = Code {
    name: "length-jump",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Body,
    summary: "a length is far more than the one before it",
    page: include_str!("length_jump.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How many times longer nothing becomes within three months.
const TIMES: f64 = 2.2;
/// The time in days.
const DAYS: i32 = 90;
/// How many times the longest adult of its kind no animal reaches, whatever the time.
const TIMES_ADULT: f64 = 2.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for animal in evidence.model.animals.values() {
        let lengths = lengths(animal, evidence.figures.as_of);
        let species = evidence.model.species.get(&animal.species.name);
        let adult = species.and_then(|species| adult_range_cm(species, Sex::Unknown, None));
        let most = adult.map_or(f64::MAX, |(_, longest)| longest * TIMES_ADULT);
        for pair in lengths.windows(2) {
            let [(before, was), (entry, is)] = pair else { continue };
            let days = days_between(before.date, entry.date);
            let jumped = *is > was * TIMES && days <= DAYS || (*is > most && *was <= most);
            if !jumped {
                continue;
            }
            let message = format!(
                "this length of {} follows one of {}, {days} days before",
                cm(*is, system),
                cm(*was, system)
            );
            found.push(
                Finding::new(&CODE, entry.place, message)
                    .help(meant::<Length>(evidence, entry, *was))
                    .also_at(before.place, "the length before it"),
            );
        }
    }
}
