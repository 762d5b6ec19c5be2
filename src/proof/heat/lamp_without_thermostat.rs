//! A heat lamp that nothing turns down.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::{HeaterKind, Thermostat};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "lamp-without-thermostat",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a heat lamp has no thermostat of its own",
    page: include_str!("lamp_without_thermostat.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for heater in &housed.housing.heaters {
            if !matches!(heater.kind, HeaterKind::Halogen | HeaterKind::BaskingLamp) {
                continue;
            }
            let place = match heater.thermostat {
                None => heater.place,
                Some((Thermostat::Absent, place)) => place,
                Some(_) => continue,
            };
            let message = format!(
                "the {} of {} has no thermostat, so nothing turns it down on a hot day",
                super::noun(heater.kind),
                housed.animal.name
            );
            let help = "put it on a dimming thermostat with the probe at the basking spot: thermostat = \"dimming\"";
            found.push(Finding::new(&CODE, place, message).help(help));
        }
    }
}
