//! Warm and cool sides too near each other.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Zone;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "gradient-too-steep",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "the gradient is too steep for the length between the probes",
    page: include_str!("gradient_too_steep.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// More than this from one probe to the next is steep, K per cm: 10 K over half a metre.
const STEEP_K_PER_CM: f64 = 0.2;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let readings = housed.readings();
        let of = |zone| {
            readings.iter().filter(|read| read.probe.zone == Some(zone)).find_map(|read| {
                let ((day, place), (at, _)) = (read.day?, read.probe.at?);
                Some((day, place, at))
            })
        };
        let (Some((warm, place, from)), Some((cool, cool_place, to))) =
            (of(Zone::Warm), of(Zone::Cool))
        else {
            continue;
        };
        let (difference, apart) = (warm - cool, (to.cm() - from.cm()).abs());
        if difference.kelvin() <= STEEP_K_PER_CM * apart || difference.kelvin() < 1.0 {
            continue;
        }
        let message = format!(
            "the warm and the cool side of {} differ by {} over {}",
            housed.animal.name,
            housed.one(difference),
            housed.one(crate::quantity::Length::from_cm(apart))
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("check where the probes are; a longer enclosure or a weaker heater makes the change gentler")
                .also_at(cool_place, "the cool side"),
        );
    }
}
