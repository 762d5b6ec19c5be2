//! An animal that would be far older than its kind becomes.

use crate::figures::calendar::days_between;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "older-than-its-kind",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal would be older than its kind becomes",
    page: include_str!("older_than_its_kind.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How far beyond the longest published span a day of hatching is doubted.
const MARGIN: f64 = 1.25;
const DAYS_A_YEAR: f64 = 365.25;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        let Some(species) = evidence.model.species.get(&animal.species.name) else { continue };
        let (Some((hatched, _, place)), Some(life)) = (animal.hatched, &species.years) else {
            continue;
        };
        let spans = life.others.iter().map(|other| &other.value).chain([&life.value]);
        let longest =
            spans.filter_map(|span| Some(span.high().or(span.low())?.days())).fold(0.0, f64::max);
        let age = f64::from(days_between(hatched, evidence.figures.as_of));
        if age <= longest * MARGIN {
            continue;
        }
        let message = format!(
            "{} would be {:.0} years old, and its species ({}) lives {:.0} years at the most",
            animal.name,
            age / DAYS_A_YEAR,
            species.name,
            longest / DAYS_A_YEAR
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("look at the year; if it is right, the span of life wants a newer source")
                .also_at(life.place, "the span of life"),
        );
    }
}
