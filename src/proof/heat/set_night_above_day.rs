//! A night set point above the day's.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "set-night-above-day",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a heater is set warmer by night than by day",
    page: include_str!("set_night_above_day.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for heater in &housed.housing.heaters {
            let (Some((day, day_place)), Some((night, place))) =
                (heater.set_point, heater.set_night)
            else {
                continue;
            };
            if night <= day {
                continue;
            }
            let message = format!(
                "the {} of {} is set to {} by night and to {} by day",
                super::noun(heater.kind),
                housed.animal.name,
                housed.one(night),
                housed.one(day)
            );
            found.push(
                Finding::new(&CODE, place, message)
                    .help("set it lower by night than by day, or exchange the two figures")
                    .also_at(day_place, "by day"),
            );
        }
    }
}
