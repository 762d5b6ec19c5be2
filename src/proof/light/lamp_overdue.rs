//! A lamp past its time.

use crate::figures::calendar::days_after;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "lamp-overdue",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Light,
    summary: "a lamp is past the day on which it should be replaced",
    page: include_str!("lamp_overdue.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let today = evidence.figures.as_of;
    for housed in evidence.housed() {
        for lamp in &housed.housing.lamps {
            let (Some((fitted, place)), Some(serves)) = (lamp.fitted, lamp.replace_after) else {
                continue;
            };
            let Some(due) = days_after(fitted, serves.days().round()) else { continue };
            if due >= today {
                continue;
            }
            let message = format!(
                "the {} of {} was fitted on {fitted}, serves {} and was due on {due}",
                lamp.kind,
                housed.animal.name,
                housed.one(serves)
            );
            found.push(Finding::new(&CODE, place, message).help(
                "replace it and write the new day under `fitted`; if a meter shows that it still gives enough, lengthen replace_after",
            ));
        }
    }
}
