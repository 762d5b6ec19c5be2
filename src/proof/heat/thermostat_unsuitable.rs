//! A thermostat that does not suit its heater.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::housing::Heater;
use crate::model::word::{HeaterKind, Thermostat, Word};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "thermostat-unsuitable",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a thermostat is of a kind that does not suit its heater",
    page: include_str!("thermostat_unsuitable.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// Below this a mat or cable may be too small a load for a dimmer, W: common practice, and the label decides.
const LEAST_DIMMED_W: f64 = 40.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for heater in &housed.housing.heaters {
            let Some((thermostat, place)) = heater.thermostat else { continue };
            let Some((why, better)) = unsuitable(heater, thermostat) else { continue };
            let message = format!(
                "the {} of {} is on a thermostat of the kind `{}`, {why}",
                super::noun(heater.kind),
                housed.animal.name,
                thermostat.spelling()
            );
            found.push(Finding::new(&CODE, place, message).help(better));
        }
    }
}

/// Why a thermostat does not suit a heater, and what would.
fn unsuitable(heater: &Heater, thermostat: Thermostat) -> Option<(&'static str, &'static str)> {
    let small = heater.power.is_some_and(|(power, _)| power.watts() < LEAST_DIMMED_W);
    match (heater.kind, thermostat) {
        (HeaterKind::Halogen | HeaterKind::BaskingLamp, Thermostat::OnOff) => Some((
            "which puts the light out whenever it is warm enough and ages the lamp",
            "use a dimming thermostat",
        )),
        (HeaterKind::Halogen | HeaterKind::BaskingLamp, Thermostat::Pulse) => Some((
            "whose pulses make the light flicker all day",
            "use a dimming thermostat; a pulse thermostat is for heaters without light",
        )),
        (HeaterKind::Mat | HeaterKind::Cable, Thermostat::Dimming) if small => Some((
            "and most dimmers do not regulate so small a load",
            "use a pulse or on-off thermostat, or one whose label allows a load this small",
        )),
        (HeaterKind::WaterHeater, Thermostat::Pulse | Thermostat::Dimming) => Some((
            "and the heater's own electronics bear neither pulses nor dimming",
            "use an on-off thermostat beside the heater's own",
        )),
        (HeaterKind::RoomHeater, Thermostat::Pulse | Thermostat::Dimming) => Some((
            "which is not made for a load that large or for a motor",
            "use an on-off room thermostat rated for the heater; ask an electrician",
        )),
        _ => None,
    }
}
