//! An animal handled too soon after a meal.

use crate::figures::calendar::days_between;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::log::{Event, MealOutcome};
use crate::proof::{Evidence, Rule};

use super::{fed, shown};

static CODE: Code = Code {
    name: "handled-after-meal",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Feeding,
    summary: "an animal was handled too soon after a meal",
    page: include_str!("handled_after_meal.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for fed in fed(evidence) {
        let Some(rest) = &fed.species.rest_after_meal else { continue };
        let Some(days) = rest.value.high().or(rest.value.low()) else { continue };
        let mut meal = None;
        let mut last = None;
        for entry in &fed.animal.log {
            match &entry.event {
                Event::Meal { outcome, .. } if *outcome != MealOutcome::Refused => {
                    meal = Some(entry);
                }
                event if handles(event) => {
                    let soon = meal.filter(|meal| {
                        // On the day itself it was most likely weighed before it was fed.
                        let since = days_between(meal.date, entry.date);
                        since > 0 && f64::from(since) < days.days()
                    });
                    last = soon.map(|meal| (meal, entry)).or(last);
                }
                _ => {}
            }
        }
        let Some((meal, entry)) = last else { continue };
        let message = format!(
            "{} was handled on {}, after the meal of {}; {} is left alone for {}",
            fed.animal.name,
            entry.date,
            meal.date,
            fed.species.name,
            shown(&rest.value, system)
        );
        let help = "weigh and measure on the day before a meal";
        found.push(
            Finding::new(&CODE, entry.place, message)
                .help(help)
                .also_at(meal.place, "the meal")
                .also_at(rest.place, "the species' rule"),
        );
    }
}

/// Whether a line of the log means that the animal was taken in hand.
fn handles(event: &Event) -> bool {
    match event {
        Event::Weight(_) | Event::Length(_) => true,
        Event::Other(words) => words.to_lowercase().contains("handled"),
        _ => false,
    }
}
