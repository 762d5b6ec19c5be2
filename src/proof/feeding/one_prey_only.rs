//! An animal that needs variety and has eaten one thing for a year.

use crate::figures::calendar::days_between;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::log::{Event, MealOutcome};
use crate::model::word::Diet;
use crate::proof::{Evidence, Rule};

use super::{fed, meals};

static CODE: Code = Code {
    name: "one-prey-only",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Feeding,
    summary: "an animal that needs variety has eaten one thing for a year",
    page: include_str!("one_prey_only.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// Fewer meals than this say nothing of a diet.
const MEALS: usize = 12;
/// A shorter time may be a season.
const DAYS: i32 = 365;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for fed in fed(evidence) {
        // Whole rodents are a complete food; insects and plants are not, each by itself.
        if fed.species.diet == Diet::Carnivore {
            continue;
        }
        let eaten: Vec<_> = meals(fed.animal, evidence.figures.as_of)
            .into_iter()
            .filter(|(_, outcome)| *outcome != MealOutcome::Refused)
            .filter_map(|(entry, _)| match &entry.event {
                Event::Meal { food, .. } => Some((entry, kind_of(food))),
                _ => None,
            })
            .collect();
        let (Some((first, food)), Some((last, _))) = (eaten.first(), eaten.last()) else {
            continue;
        };
        let long = days_between(first.date, last.date) >= DAYS && eaten.len() >= MEALS;
        if !long || eaten.iter().any(|(_, other)| other != food) {
            continue;
        }
        let message = format!(
            "all {} meals since {} were {food}, and {} needs a varied diet",
            eaten.len(),
            first.date,
            fed.species.name
        );
        let help = "offer other food as well, and log it";
        found.push(
            Finding::new(&CODE, last.place, message).help(help).also_at(first.place, "the first"),
        );
    }
}

/// What was fed, without its size: "cricket" of "cricket, small".
fn kind_of(food: &str) -> String {
    food.split([',', '(']).next().unwrap_or("").trim().to_lowercase()
}
