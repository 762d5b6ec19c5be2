//! A thermostat whose set point is not written down.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::{HeaterKind, Thermostat};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "set-point-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a thermostat has no set point written down",
    page: include_str!("set_point_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for heater in &housed.housing.heaters {
            let Some((thermostat, place)) = heater.thermostat else { continue };
            let regulated =
                thermostat != Thermostat::Absent && heater.kind != HeaterKind::MercuryVapour;
            if regulated && heater.set_point.is_none() {
                let message = format!(
                    "the thermostat of the {} of {} has no set point",
                    super::noun(heater.kind),
                    housed.animal.name
                );
                found.push(
                    Finding::new(&CODE, place, message)
                        .help("write what it is set to: set_point = \"30 C\""),
                );
            }
        }
    }
}
