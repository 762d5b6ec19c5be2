//! A mercury vapour lamp on a thermostat.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::{HeaterKind, Thermostat, Word};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "mercury-vapour-on-thermostat",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a mercury vapour lamp is on a thermostat, which it does not bear",
    page: include_str!("mercury_vapour_on_thermostat.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for heater in &housed.housing.heaters {
            let Some((thermostat, place)) = heater.thermostat else { continue };
            if heater.kind != HeaterKind::MercuryVapour || thermostat == Thermostat::Absent {
                continue;
            }
            let message = format!(
                "the mercury vapour lamp of {} is on a thermostat ({}), and such a lamp bears neither dimming nor switching",
                housed.animal.name,
                thermostat.spelling()
            );
            found.push(Finding::new(&CODE, place, message).help(
                "set it by its height, write thermostat = \"none\", and let another heater on a thermostat do the rest",
            ));
        }
    }
}
