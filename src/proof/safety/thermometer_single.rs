//! A heated enclosure with one thermometer.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "thermometer-single",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a heated enclosure has fewer than two thermometers",
    page: include_str!("thermometer_single.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(heater) = housed.housing.heaters.first() else { continue };
        let readings = housed.readings();
        let read =
            readings.iter().filter(|read| read.day.is_some() || read.night.is_some()).count();
        if read >= 2 {
            continue;
        }
        let place = readings.first().map_or(heater.place, |read| read.probe.place);
        let number = if read == 0 { "no probe" } else { "one probe" };
        let message = format!(
            "{} is heated, and {number} reads its temperature: nothing would show that a thermostat has failed",
            housed.animal.name
        );
        found.push(Finding::new(&CODE, place, message).help(
            "add a second thermometer at the other end: [[probe]] with name, at, day and night",
        ));
    }
}
