//! A heater that nothing switches off.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Thermostat;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "heater-without-thermostat",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Heat,
    summary: "a heater has no thermostat of its own",
    page: include_str!("heater_without_thermostat.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for heater in housed.housing.heaters.iter().filter(|heater| !super::shines(heater.kind)) {
            let (what, name) = (super::noun(heater.kind), &housed.animal.name);
            let (message, place) = match heater.thermostat {
                Some((Thermostat::Absent, place)) => {
                    (format!("the {what} of {name} has no thermostat"), place)
                }
                Some(_) => continue,
                None => {
                    (format!("the {what} of {name} is not said to have a thermostat"), heater.place)
                }
            };
            found.push(Finding::new(&CODE, place, message).help(
                "give it a thermostat of its own and write its kind: thermostat = \"pulse\", \"on-off\" or \"dimming\"",
            ));
        }
    }
}
