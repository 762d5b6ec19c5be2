//! An ultraviolet lamp whose age nobody knows.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "lamp-age-unknown",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Light,
    summary: "an ultraviolet lamp has no date of fitting",
    page: include_str!("lamp_age_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for lamp in &housed.housing.lamps {
            let ultraviolet = lamp.uvi.is_some() || lamp.kind.to_lowercase().contains("uv");
            if !ultraviolet || lamp.fitted.is_some() {
                continue;
            }
            let message = format!(
                "the {} of {} does not say when it was fitted",
                lamp.kind, housed.animal.name
            );
            found.push(
                Finding::new(&CODE, lamp.place, message)
                    .help("write the day and how long it serves: fitted = 2026-07-01, replace_after = \"12 months\""),
            );
        }
    }
}
