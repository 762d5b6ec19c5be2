//! A heater that keeps the day's heat through the night.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "set-night-missing",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Heat,
    summary: "a heater keeps its set point of the day through the night",
    page: include_str!("set_night_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(night) = &housed.species.temperature.night else { continue };
        let Some(top) = night.value.high() else { continue };
        for heater in &housed.housing.heaters {
            let Some((day, place)) = heater.set_point else { continue };
            let goes_on = !super::shines(heater.kind) && super::has_a_place(heater.kind);
            if !goes_on || heater.set_night.is_some() || day <= top {
                continue;
            }
            let message = format!(
                "the {} of {} has no set point for the night and stays at {}, where {} is asked for",
                super::noun(heater.kind),
                housed.animal.name,
                housed.one(day),
                housed.range(&night.value)
            );
            found.push(
                Finding::new(&CODE, place, message)
                    .help("write what it is set to by night: set_night = \"22 C\"")
                    .also_at(night.place, "the species by night"),
            );
        }
    }
}
