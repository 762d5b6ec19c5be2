//! No hygrometer where the ceiling holds.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Zone;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "hygrometer-only-warm",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Humidity,
    summary: "humidity is read at the warm end only",
    page: include_str!("hygrometer_only_warm.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(ceiling) = &housed.species.humidity.ceiling else { continue };
        let readings = housed.readings();
        let mut damp = readings.iter().filter_map(|read| Some((read.humidity?, read.probe.zone)));
        let Some(((_, place), _)) = damp.clone().next() else { continue };
        if damp.any(|(_, zone)| !matches!(zone, Some(Zone::Warm | Zone::Basking))) {
            continue;
        }
        let message = format!(
            "the humidity of {} is read at the warm end only, and its ceiling of {} holds at the cool side",
            housed.animal.name,
            housed.range(&ceiling.value)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("put a hygrometer at the cool side as well")
                .also_at(ceiling.place, "the ceiling"),
        );
    }
}
