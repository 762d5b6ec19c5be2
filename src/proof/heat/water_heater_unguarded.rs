//! A heater in the water without a guard.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::HeaterKind;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "water-heater-unguarded",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a heater in the water has no guard",
    page: include_str!("water_heater_unguarded.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let in_water = |kind| kind == HeaterKind::WaterHeater;
        for heater in housed.housing.heaters.iter().filter(|heater| in_water(heater.kind)) {
            if heater.guard.is_some_and(|(guard, _)| guard) {
                continue;
            }
            let place = heater.guard.map_or(heater.place, |(_, place)| place);
            let message = format!("the water heater of {} has no guard", housed.animal.name);
            found.push(
                Finding::new(&CODE, place, message).help(
                    "put it behind a guard or in the filter chamber, then write guard = true",
                ),
            );
        }
    }
}
