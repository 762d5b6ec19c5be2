//! A cut-out that trips at once or too late.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::noun;

static CODE: Code = Code {
    name: "cut-out-out-of-range",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a cut-out is set where it trips at once or protects nothing",
    page: include_str!("cut_out_out_of_range.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let limit = housed.species.temperature.never_above.as_ref();
        let most =
            limit.and_then(|limit| Some((limit.value.high().or(limit.value.low())?, limit.place)));
        for heater in &housed.housing.heaters {
            let Some((cut_out, place)) = heater.cut_out else { continue };
            let whose =
                format!("the cut-out of the {} of {}", noun(heater.kind), housed.animal.name);
            let set = heater.set_point.filter(|(set, _)| *set >= cut_out);
            let (message, help, (other, why)) = match (set, most) {
                (Some((set, set_place)), _) => (
                    format!(
                        "{whose} is set to {}, and its thermostat to {}: it would trip every day",
                        housed.one(cut_out),
                        housed.one(set)
                    ),
                    "set it a few degrees above the thermostat and below what the species may ever meet",
                    (set_place, "the thermostat"),
                ),
                (None, Some((most, limit_place))) if cut_out > most => (
                    format!(
                        "{whose} is set to {}, and its species ({}) may never meet more than {}",
                        housed.one(cut_out),
                        housed.species.name,
                        housed.one(most)
                    ),
                    "set it below what the species may ever meet: it is there for the day on which the thermostat fails",
                    (limit_place, "never above this"),
                ),
                _ => continue,
            };
            found.push(Finding::new(&CODE, place, message).help(help).also_at(other, why));
        }
    }
}
