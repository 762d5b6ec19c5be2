//! A thermostat whose probe cannot see its heater.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::Length;

use super::{has_a_place, near_cm, noun};

static CODE: Code = Code {
    name: "thermostat-probe-far",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a thermostat goes by a probe that sits far from its heater",
    page: include_str!("thermostat_probe_far.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let near = near_cm(housed.housing);
        for heater in housed.housing.heaters.iter().filter(|heater| has_a_place(heater.kind)) {
            let (Some(named), Some((at, _))) = (&heater.probe, heater.at) else { continue };
            let probe = housed.housing.probes.iter().find(|probe| probe.name == named.name);
            let Some((probe_at, probe_place)) = probe.and_then(|probe| probe.at) else { continue };
            let apart = (probe_at.cm() - at.cm()).abs();
            if apart <= near {
                continue;
            }
            let message = format!(
                "the thermostat of the {} of {} goes by the probe `{}`, {} away, which does not see what the heater does",
                noun(heater.kind),
                housed.animal.name,
                named.name,
                housed.one(Length::from_cm(apart))
            );
            found.push(
                Finding::new(&CODE, named.place, message)
                    .help("fix the thermostat's probe where the animal rests nearest to that heater, so that it cannot be moved")
                    .also_at(probe_place, "the probe"),
            );
        }
    }
}
