//! An animal that refuses food for longer than is normal for its species.

use crate::figures::calendar::days_between;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::log::MealOutcome;
use crate::proof::{Evidence, Rule};

use super::{fed, meals, shown};

static CODE: Code = Code {
    name: "fast-too-long",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Feeding,
    summary: "an animal refuses food for longer than is normal for its species",
    page: include_str!("fast_too_long.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for fed in fed(evidence) {
        let Some(normal) = &fed.species.fasting else { continue };
        let Some(longest) = normal.value.high().or(normal.value.low()) else { continue };
        let meals = meals(fed.animal, evidence.figures.as_of);
        let eaten = meals.iter().rposition(|(_, outcome)| *outcome != MealOutcome::Refused);
        // Only meals that were offered and refused make a fast: a log that stops says nothing of hunger.
        let refused = &meals[eaten.map_or(0, |place| place + 1)..];
        let (Some((first, _)), Some((last, _))) = (refused.first(), refused.last()) else {
            continue;
        };
        let from = eaten.map_or(first.date, |place| meals[place].0.date);
        let days = days_between(from, last.date);
        if f64::from(days) <= longest.days() {
            continue;
        }
        let message = format!(
            "{} has eaten nothing for {days} days and refused {} times; {} goes without food for {} at the most",
            fed.animal.name,
            refused.len(),
            fed.species.name,
            shown(&normal.value, system).trim_start_matches("at most ")
        );
        let help = "weigh it, check the temperatures, and ask a vet";
        found.push(
            Finding::new(&CODE, last.place, message)
                .help(help)
                .also_at(normal.place, "what is normal"),
        );
    }
}
