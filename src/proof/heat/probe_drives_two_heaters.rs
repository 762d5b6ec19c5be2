//! Two heaters whose thermostats go by one probe.

use std::collections::BTreeMap;

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::housing::Heater;
use crate::proof::{Evidence, Rule};

use super::noun;

static CODE: Code = Code {
    name: "probe-drives-two-heaters",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "two heaters go by one probe",
    page: include_str!("probe_drives_two_heaters.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let mut first_by_probe: BTreeMap<&str, &Heater> = BTreeMap::new();
        for heater in &housed.housing.heaters {
            let Some(named) = &heater.probe else { continue };
            let Some(first) = first_by_probe.get(named.name.as_str()) else {
                first_by_probe.insert(&named.name, heater);
                continue;
            };
            let message = format!(
                "the {} and the {} of {} go by one probe, `{}`",
                noun(first.kind),
                noun(heater.kind),
                housed.animal.name,
                named.name
            );
            found.push(
                Finding::new(&CODE, named.place, message)
                    .help("give each heater a thermostat of its own with a probe in the zone that it warms")
                    .also_at(first.place, "the other heater"),
            );
        }
    }
}
