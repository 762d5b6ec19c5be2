//! A meal heavier than the animal's stage of life allows.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::model::log::{Event, MealOutcome};
use crate::proof::{Evidence, Rule};

use super::{Fed, fed, grams, meals};

static CODE: Code = Code {
    name: "meal-too-heavy",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Feeding,
    summary: "a meal is heavier than the animal's stage of life allows",
    page: include_str!("meal_too_heavy.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// Prey comes in sizes: a meal a quarter above the range is the next size up, not a mistake.
const MARGIN: f64 = 1.25;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for fed in fed(evidence) {
        let Some((most, whence, rule)) = most(&fed) else { continue };
        let practised = fed.animal.feeding.as_ref().and_then(|practice| practice.mass);
        let practised = practised
            .and_then(|(range, place)| Some((range.high().or(range.low())?.grams(), place)));
        let eaten = meals(fed.animal, evidence.figures.as_of).into_iter().rev();
        let eaten =
            eaten.filter(|(_, outcome)| *outcome != MealOutcome::Refused).find_map(|(entry, _)| {
                match &entry.event {
                    Event::Meal { mass, .. } => Some((mass.as_ref()?.grams(), entry.place)),
                    _ => None,
                }
            });
        for (mass, place) in practised.into_iter().chain(eaten) {
            if mass <= most * MARGIN {
                continue;
            }
            let message = format!(
                "a meal of {} is more than the {} that {whence}",
                grams(mass, system),
                grams(most, system)
            );
            let help = "offer smaller prey, or correct the figure; an animal that swallows too much brings it up";
            found.push(
                Finding::new(&CODE, place, message).help(help).also_at(rule, "the species' rule"),
            );
        }
    }
}

/// The heaviest meal that the stage allows, in grams: by its share of the last weight or as a mass, whichever is more.
fn most(fed: &Fed<'_>) -> Option<(f64, String, Place)> {
    let stage = fed.stage?;
    let by_share = stage.share.as_ref().zip(fed.figures.body.mass_g).and_then(|(share, mass)| {
        let percent = share.value.high()?.fraction() * 100.0;
        let why = format!("{percent} % of its own mass come to");
        Some((mass * percent / 100.0, why, share.place))
    });
    let by_mass = stage.mass.as_ref().and_then(|mass| {
        let why = format!("the stage `{}` names", stage.name);
        Some((mass.value.high()?.grams(), why, mass.place))
    });
    by_share.into_iter().chain(by_mass).max_by(|a, b| a.0.total_cmp(&b.0))
}
