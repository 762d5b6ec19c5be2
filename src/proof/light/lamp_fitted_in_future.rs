//! A lamp fitted on a day that has not come.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "lamp-fitted-in-future",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Light,
    summary: "a lamp is fitted on a day that has not come",
    page: include_str!("lamp_fitted_in_future.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let today = evidence.figures.as_of;
    for housed in evidence.housed() {
        for lamp in &housed.housing.lamps {
            let Some((fitted, place)) = lamp.fitted.filter(|(fitted, _)| *fitted > today) else {
                continue;
            };
            let message = format!(
                "the {} of {} is said to be fitted on {fitted}, and today is {today}",
                lamp.kind, housed.animal.name
            );
            found.push(
                Finding::new(&CODE, place, message)
                    .help("correct the date, or write it once the lamp is in its place"),
            );
        }
    }
}
