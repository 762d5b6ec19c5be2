//! What the whole collection needs in store: food for the next weeks, and disinfectants as they are mixed.

use std::collections::BTreeMap;

use jiff::civil::Date;

use crate::model::site::{Disinfectant, MixStrength};
use crate::model::{Animal, Model};

use super::animal::AnimalFigures;
use super::calendar::{days_after, days_between};
use super::formula::dilution::{Mixture, Strength};
use super::formula::domain::OutOfRange;

/// What has to be in store.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct StoreFigures {
    /// Weeks that the food is for.
    pub weeks: u32,
    /// Food by name.
    pub food: BTreeMap<String, Food>,
    /// Disinfectants by name: what goes into the bucket.
    pub mixtures: Vec<(String, Result<Mixture, OutOfRange>)>,
}

/// How much of one food is needed.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Food {
    /// Meals.
    pub meals: u32,
    /// Pieces: prey or insects.
    pub pieces: f64,
    /// Their mass, g, as far as it is known.
    pub mass_g: f64,
}

/// How many weeks the store is worked out for.
pub const WEEKS: u32 = 4;

/// Works out what the collection eats in the next weeks, from each animal's next due day and interval.
///
/// Animals that have died or gone, and those whose next meal cannot be told, are left out.
pub fn store(
    model: &Model,
    animals: &BTreeMap<String, AnimalFigures>,
    as_of: Date,
) -> StoreFigures {
    let end = days_after(as_of, f64::from(WEEKS * 7));
    let mut food: BTreeMap<String, Food> = BTreeMap::new();
    for (name, animal) in model.animals.iter().filter(|(_, animal)| animal.is_kept()) {
        let Some(of) = animals.get(name) else { continue };
        let feeding = &of.feeding;
        let days = feeding.interval_days.and_then(|(low, high)| low.or(high));
        let (Some(meal), Some(due), Some(days), Some(end)) =
            (&feeding.meal, feeding.next_due, days, end)
        else {
            continue;
        };
        // What is overdue is eaten today.
        let left = days_between(due.max(as_of), end);
        if left < 0 || days <= 0.0 {
            continue;
        }
        let meals = (f64::from(left) / days).floor() as u32 + 1;
        let (count, mass_g) = per_meal(model, animal, of);
        let entry = food.entry(meal.clone()).or_default();
        entry.meals += meals;
        entry.pieces += f64::from(meals) * f64::from(count);
        entry.mass_g += f64::from(meals) * mass_g;
    }
    let mixtures =
        model.site.disinfectants.iter().map(|mix| (mix.name.clone(), mixture(mix))).collect();
    StoreFigures { weeks: WEEKS, food, mixtures }
}

/// Pieces and grams of one meal, the most that is given; 0 where it is not known.
pub fn per_meal(model: &Model, animal: &Animal, of: &AnimalFigures) -> (u32, f64) {
    let feeding = &of.feeding;
    let practised =
        animal.feeding.as_ref().and_then(|practice| practice.count).map(|(count, _)| count);
    let species = model.species.get(&animal.species.name);
    let stage = feeding.stage.and_then(|stage| species?.feeding.get(stage)?.count.as_ref());
    // Weighed prey comes one to a meal; of greens and powders there are no pieces.
    let one = feeding.mass_g.map(|_| (1, 1));
    let count = practised.or(stage.map(|count| count.value)).or(one).map_or(0, |(_, high)| high);
    (count, feeding.mass_g.and_then(|(low, high)| high.or(low)).unwrap_or(0.0))
}

/// What goes into a bucket of a disinfectant.
///
/// # Errors
/// When the strength is none, such as more active substance in the mix than in the bottle.
pub fn mixture(mix: &Disinfectant) -> Result<Mixture, OutOfRange> {
    let strength = match mix.strength {
        MixStrength::OnePartIn(parts) => Strength::OnePartIn(parts),
        MixStrength::PercentOfBottle(percent) => Strength::PercentOfBottle(percent),
        MixStrength::PercentActive { wanted, bottle } => Strength::PercentActive { wanted, bottle },
    };
    strength.mixture(mix.bucket.litres() * 1000.0)
}
