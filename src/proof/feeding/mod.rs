//! Meals, intervals and stages.

pub(super) mod fast_too_long;
pub(super) mod fed_live;
pub(super) mod handled_after_meal;
pub(super) mod interval_outside_stage;
pub(super) mod mass_and_share_disagree;
pub(super) mod meal_overdue;
pub(super) mod meal_share_too_large;
pub(super) mod meal_too_heavy;
pub(super) mod meal_too_wide;
pub(super) mod one_prey_only;
pub(super) mod overfed;
pub(super) mod stage_bounds;

use jiff::civil::Date;

use crate::figures::AnimalFigures;
use crate::model::log::{Entry, Event, MealOutcome};
use crate::model::species::Stage;
use crate::model::{Animal, Species};
use crate::proof::Evidence;
use crate::quantity::{Mass, Quantity, Range, Rounding, System, print_one};

/// An animal that is kept, with its species, its figures and its stage of life.
struct Fed<'a> {
    animal: &'a Animal,
    species: &'a Species,
    figures: &'a AnimalFigures,
    stage: Option<&'a Stage>,
}

/// Every animal that is kept.
fn fed<'a>(evidence: &Evidence<'a>) -> Vec<Fed<'a>> {
    let (model, figures) = (evidence.model, evidence.figures);
    let kept = model.animals.iter().filter(|(_, animal)| animal.is_kept());
    kept.filter_map(|(name, animal)| {
        let species = model.species.get(&animal.species.name)?;
        let figures = figures.animals.get(name)?;
        let stage = figures.feeding.stage.and_then(|stage| species.feeding.get(stage));
        Some(Fed { animal, species, figures, stage })
    })
    .collect()
}

/// The meals of a log up to a day, oldest first, with what became of them.
fn meals(animal: &Animal, as_of: Date) -> Vec<(&Entry, MealOutcome)> {
    let known = animal.log.iter().filter(|entry| entry.date <= as_of);
    known
        .filter_map(|entry| match &entry.event {
            Event::Meal { outcome, .. } => Some((entry, *outcome)),
            _ => None,
        })
        .collect()
}

/// A range in the system that the site puts first.
fn shown<Q: Quantity>(range: &Range<Q>, system: System) -> String {
    range.print(system, Rounding::Nearest).first
}

/// A mass in the system that the site puts first.
fn grams(value: f64, system: System) -> String {
    print_one(Mass::from_grams(value), system, Rounding::Nearest).first
}
