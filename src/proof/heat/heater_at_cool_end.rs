//! A heater at the cool end.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "heater-at-cool-end",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a heater stands at the cool end",
    page: include_str!("heater_at_cool_end.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// Beyond this share of the length from the warm end lies the cool end.
const COOL_END: f64 = 2.0 / 3.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some((inside, inside_place)) = housed.housing.inside else { continue };
        for heater in housed.housing.heaters.iter().filter(|heater| super::has_a_place(heater.kind))
        {
            let Some((at, place)) = heater.at else { continue };
            if at <= inside.length && at.cm() > COOL_END * inside.length.cm() {
                let message = format!(
                    "the {} of {} stands {} from the warm end of {}, which is the cool end",
                    super::noun(heater.kind),
                    housed.animal.name,
                    housed.one(at),
                    housed.one(inside.length)
                );
                found.push(
                    Finding::new(&CODE, place, message)
                        .help("count places from the warm end, or move the heater there: heat one end only")
                        .also_at(inside_place, "the length"),
                );
            }
        }
    }
}
