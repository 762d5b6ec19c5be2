//! A lamp that leaves no night.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::Span;

static CODE: Code = Code {
    name: "no-dark",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Light,
    summary: "a lamp leaves hardly any night",
    page: include_str!("no_dark.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// A lamp that is lit for longer leaves no night worth the name, hours.
const LONGEST_DAY_H: f64 = 20.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for lamp in &housed.housing.lamps {
            let Some((hours, place)) = lamp.hours else { continue };
            let lit = hours.high().or(hours.low()).map_or(0.0, |hours| hours.hours());
            if lit <= LONGEST_DAY_H {
                continue;
            }
            let dark = (24.0 - lit).max(0.0);
            let message = format!(
                "the {} of {} is lit for {} a day and leaves {} of dark",
                lamp.kind,
                housed.animal.name,
                housed.range(&hours),
                housed.one(Span::from_days(dark / 24.0))
            );
            found.push(
                Finding::new(&CODE, place, message)
                    .help("put it on a timer: hours = \"12 hours\"; for warmth by night use a heater without light"),
            );
        }
    }
}
