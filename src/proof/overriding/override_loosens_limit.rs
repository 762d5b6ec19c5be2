//! An override that lets an animal come nearer to harm than the library does.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::stated::Amount;
use crate::proof::{Evidence, Rule};
use crate::quantity::{Quantity, Range};

use super::{replaced, shown};

static CODE: Code = Code {
    name: "override-loosens-limit",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Species,
    summary: "an override raises a ceiling or lowers a floor that keeps an animal from harm",
    page: include_str!("override_loosens_limit.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// The figures that are limits, and whether a higher value is the looser one.
const LIMITS: [(&str, bool); 3] = [
    ("temperature.never_above", true),
    ("humidity.ceiling", true),
    ("temperature.critical_low", false),
];

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for (entry, replaced) in replaced(evidence) {
        let Some((_, up)) = LIMITS.iter().find(|(name, _)| *name == entry.figure.name) else {
            continue;
        };
        if !looser(&replaced.after, &replaced.before, *up) {
            continue;
        }
        let every = replaced.before_others.iter().all(|other| looser(&replaced.after, other, *up));
        let beyond = if every { ", and no source that the library names goes so far" } else { "" };
        let authority = if entry.sources.is_empty() { ", without a source" } else { "" };
        let message = format!(
            "`{}` of `{}` is set to {}{authority}, where the library says {}{beyond}",
            entry.figure.name,
            entry.species,
            shown(evidence, &replaced.after),
            shown(evidence, &replaced.before),
        );
        let help = "ask a vet who treats this kind before you loosen a limit, and name the source";
        let mut finding = Finding::new(&CODE, entry.figure.place, message).help(help);
        // Somebody with a source may know better; then it stays in sight and does not stop the site.
        if !(every && entry.sources.is_empty()) {
            finding.severity = Severity::Warning;
        }
        found.push(finding);
    }
}

/// Whether one limit lets an animal come nearer to harm than another.
fn looser(one: &Amount, other: &Amount, up: bool) -> bool {
    fn ends<Q: Quantity>(range: &Range<Q>, up: bool) -> Option<f64> {
        let end = if up { range.high().or(range.low()) } else { range.low().or(range.high()) };
        end.map(Quantity::base)
    }
    let pair = match (one, other) {
        (Amount::Temperature(one), Amount::Temperature(other)) => {
            ends(one, up).zip(ends(other, up))
        }
        (Amount::Humidity(one), Amount::Humidity(other)) => ends(one, up).zip(ends(other, up)),
        _ => None,
    };
    pair.is_some_and(|(one, other)| if up { one > other } else { one < other })
}
