//! Sources for one figure that lie far apart, with no word on which is followed.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::stated::Amount;
use crate::proof::{Evidence, Rule};
use crate::quantity::{Quantity, Range, Rounding};

static CODE: Code = Code {
    name: "sources-disagree",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Species,
    summary: "sources for one figure lie far apart and nothing says which is followed",
    page: include_str!("sources_disagree.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How far two ranges may lie apart, as a share of the higher end of the lower one, and still be one opinion.
const APART: f64 = 0.05;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for species in evidence.model.species.values() {
        for stated in species.stated() {
            if stated.note.is_some() {
                continue;
            }
            let rival = stated.others.iter().find(|(other, _)| far_apart(&stated.amount, other));
            let Some((rival, sources)) = rival else { continue };
            let names: Vec<&str> = sources.iter().map(|source| source.name.as_str()).collect();
            let by = if names.is_empty() {
                "common practice".to_owned()
            } else {
                format!("`{}`", names.join("`, `"))
            };
            let message = format!(
                "`{}` is given as {}, and {by} gives {}",
                stated.name,
                stated.amount.print(system, Rounding::Nearest).first,
                rival.print(system, Rounding::Nearest).first
            );
            let help = "say in a note which is followed, and why: note = \"…\"";
            found.push(Finding::new(&CODE, stated.place, message).help(help));
        }
    }
}

fn far_apart(one: &Amount, other: &Amount) -> bool {
    match (one, other) {
        (Amount::Temperature(one), Amount::Temperature(other)) => apart(one, other),
        (Amount::Length(one), Amount::Length(other)) => apart(one, other),
        (Amount::Mass(one), Amount::Mass(other)) => apart(one, other),
        (Amount::Humidity(one), Amount::Humidity(other)) => apart(one, other),
        (Amount::Span(one), Amount::Span(other)) => apart(one, other),
        (Amount::Share(one), Amount::Share(other)) => apart(one, other),
        (Amount::UvIndex(one), Amount::UvIndex(other)) => apart(one, other),
        _ => false,
    }
}

fn apart<Q: Quantity>(one: &Range<Q>, other: &Range<Q>) -> bool {
    let gap = |high: Option<Q>, low: Option<Q>| {
        high.zip(low).is_some_and(|(high, low)| low.base() > high.base() * (1.0 + APART))
    };
    gap(one.high(), other.low()) || gap(other.high(), one.low())
}
