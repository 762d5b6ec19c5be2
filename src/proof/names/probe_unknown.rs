//! A thermostat that goes by a probe which its enclosure does not have.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::unknown;

static CODE: Code = Code {
    name: "probe-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Names,
    summary: "a thermostat goes by a probe that its enclosure does not have",
    page: include_str!("probe_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        let Some(housing) = &animal.housing else { continue };
        for named in housing.heaters.iter().filter_map(|heater| heater.probe.as_ref()) {
            if housing.probes.iter().all(|probe| probe.name != named.name) {
                let known = housing.probes.iter().map(|probe| probe.name.as_str());
                let whose = format!(" in the enclosure of {}", animal.name);
                found.push(unknown(&CODE, named, ("probe", &whose), known));
            }
        }
    }
}
