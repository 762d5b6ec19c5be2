//! A climbing animal in an enclosure lower than it is wide.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Habit;
use crate::proof::{Evidence, Rule};

use super::{cm, housed};

static CODE: Code = Code {
    name: "climber-without-height",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Enclosure,
    summary: "a climbing animal's enclosure is lower than it is wide",
    page: include_str!("climber_without_height.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for housed in housed(evidence) {
        let Some((inside, place)) = housed.housing.inside else { continue };
        let shorter_side = inside.length.cm().min(inside.width.cm());
        let height = inside.height.cm();
        if housed.species.habit != Habit::Climbing || height >= shorter_side {
            continue;
        }
        let message = format!(
            "{} climbs, and this enclosure is {} high on a floor whose shorter side is {}",
            housed.species.name,
            cm(height, system),
            cm(shorter_side, system)
        );
        let help = "give it height, or put the figures in order: length x width x height";
        found.push(Finding::new(&CODE, place, message).help(help));
    }
}
