//! An enclosure without water.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Habit;
use crate::proof::{Evidence, Rule};

use super::housed;

static CODE: Code = Code {
    name: "no-water",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Enclosure,
    summary: "an enclosure holds no water",
    page: include_str!("no_water.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in housed(evidence) {
        let lives_in_it = matches!(housed.species.habit, Habit::Aquatic | Habit::SemiAquatic);
        let message = match housed.housing.water_l {
            Some(litres) if litres <= 0.0 => "this enclosure holds no water".to_owned(),
            None if lives_in_it => format!(
                "this enclosure does not say how much water it holds, and {} lives in water",
                housed.species.name
            ),
            _ => continue,
        };
        let help = "say how much there is in bowls or the pool: water = \"2 l\" in [enclosure]";
        found.push(Finding::new(&CODE, housed.housing.place, message).help(help));
    }
}
