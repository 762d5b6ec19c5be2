//! A heater whose power is not written down.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "heater-without-power",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Heat,
    summary: "a heater has no watts written down",
    page: include_str!("heater_without_power.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for heater in housed.housing.heaters.iter().filter(|heater| heater.power.is_none()) {
            let message = format!(
                "the {} of {} does not say how many watts it has",
                super::noun(heater.kind),
                housed.animal.name
            );
            found.push(
                Finding::new(&CODE, heater.place, message)
                    .help("copy the watts from its label: watts = \"100 W\""),
            );
        }
    }
}
