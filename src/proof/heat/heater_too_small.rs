//! Heaters that cannot make up for what the enclosure loses.

use crate::figures::formula::heat::UNCERTAINTY;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::HeaterKind;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "heater-too-small",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "an enclosure loses more heat than its heaters give",
    page: include_str!("heater_too_small.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(heat) = &housed.figures.heat else { continue };
        let heaters = &housed.housing.heaters;
        // A power that is not written down is unknown, not nothing; a heated room or pool makes its own balance.
        let weighed = heaters.iter().all(|heater| {
            heater.power.is_some()
                && !matches!(heater.kind, HeaterKind::RoomHeater | HeaterKind::WaterHeater)
        });
        let Some(first) = heaters.first().filter(|_| weighed) else { continue };
        let (lost_w, when) = if heat.night_w >= heat.typical_w {
            (heat.night_w, "in the coldest night")
        } else {
            (heat.typical_w, "by day in the room as it usually is")
        };
        // Within the error of the estimate nothing is known to be wrong.
        if heat.installed_w >= lost_w * (1.0 - UNCERTAINTY) {
            continue;
        }
        let message = format!(
            "the heaters of {} give {:.0} W together, and its enclosure loses about {lost_w:.0} W {when}",
            housed.animal.name, heat.installed_w,
        );
        let help = "insulate the walls, warm the room, or have a larger heater fitted with its thermostat and guard";
        found.push(Finding::new(&CODE, first.place, message).help(help));
    }
}
