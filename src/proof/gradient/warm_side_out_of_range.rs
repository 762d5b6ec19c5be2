//! A warm side outside its range.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Zone;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "warm-side-out-of-range",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "the warm side reads outside its range",
    page: include_str!("warm_side_out_of_range.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(warm) = &housed.species.temperature.warm else { continue };
        let Some((day, place)) = housed
            .by_day(Zone::Warm)
            .filter(|(day, _)| !warm.value.contains(*day) && !housed.winters_at(*day))
        else {
            continue;
        };
        let below = warm.value.low().is_some_and(|low| day < low);
        let help = if below {
            "look at the heater, its set point and whether the room is colder than usual"
        } else {
            "lower the set point, or look for a second source of heat such as the sun"
        };
        let message = format!(
            "the warm side of {} reads {}, and should be {}",
            housed.animal.name,
            housed.one(day),
            housed.range(&warm.value)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help(help)
                .also_at(warm.place, "the species' warm side"),
        );
    }
}
