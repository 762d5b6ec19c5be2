//! A warm side cooler than the cool side.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Zone;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "gradient-inverted",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Heat,
    summary: "the warm side reads cooler than the cool side",
    page: include_str!("gradient_inverted.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some((cool, cool_place)) = housed.by_day(Zone::Cool) else { continue };
        for (zone, words) in [(Zone::Basking, "basking spot"), (Zone::Warm, "warm side")] {
            let Some((warm, place)) = housed.by_day(zone).filter(|(warm, _)| *warm < cool) else {
                continue;
            };
            let message = format!(
                "the {words} of {} reads {}, less than its cool side at {}",
                housed.animal.name,
                housed.one(warm),
                housed.one(cool)
            );
            found.push(
                Finding::new(&CODE, place, message)
                    .help("exchange the two readings if they changed places; if not, look at the heater now")
                    .also_at(cool_place, "the cool side"),
            );
        }
    }
}
