//! Food energy over resting energy: a guard against overfeeding, as a band over the published equations.

use crate::model::Species;
use crate::model::word::Kind;

use super::formula::metabolism::{MetabolicGroup, is_boa_or_python, resting_energy};
use super::formula::prey::prey_kj_per_g;
use super::heat::{asked_c, middle_c};
use super::working::{Working, number};

/// Which equations fit a species.
pub fn group(species: &Species) -> MetabolicGroup {
    match species.kind {
        Kind::Snake if is_boa_or_python(&species.scientific) => MetabolicGroup::BoasAndPythons,
        Kind::Snake => MetabolicGroup::OtherSnakes,
        Kind::Lizard => MetabolicGroup::Lizards,
        Kind::Tortoise | Kind::Turtle => MetabolicGroup::TortoisesAndTurtles,
        Kind::Frog | Kind::Salamander => MetabolicGroup::Amphibians,
        Kind::Invertebrate => MetabolicGroup::Invertebrates,
    }
}

/// The temperature that a species is kept at on the whole, °C: the mean of warm and cool sides, or its water.
pub fn kept_c(species: &Species) -> Option<f64> {
    asked_c(species)
        .or_else(|| species.temperature.water.as_ref().and_then(|water| middle_c(&water.value)))
}

/// What is fed: the food by name, its mass in g, and the days to the next meal.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Meal<'a> {
    /// The food, by the name that the table of prey knows.
    pub food: &'a str,
    /// The mass of the whole meal, g.
    pub mass_g: f64,
    /// Days to the next.
    pub interval_days: f64,
}

/// Works out how many times its resting energy an animal of `body_g` is fed, lowest and highest over the equations.
///
/// Source: the equations of [`super::formula::metabolic_equations`]; energy of prey, Small Animal Clinical Nutrition, 5th
/// edition, tables 71-5 and 71-6.
///
/// # Errors
/// Why there is no such figure: no published energy of the food, no equation that fits.
pub fn ratio(
    species: &Species,
    body_g: f64,
    meal: Meal<'_>,
) -> Result<((f64, f64), Working), String> {
    let kept_c = kept_c(species).ok_or("the species gives no temperature that it is kept at")?;
    let kj_per_g = prey_kj_per_g(meal.food, Some(meal.mass_g))
        .ok_or_else(|| format!("no published energy is known of `{}`", meal.food))?;
    let resting = resting_energy(group(species), &species.scientific, body_g, kept_c)
        .map_err(|reason| reason.to_string())?;
    let ratio = resting
        .food_ratio(meal.mass_g * kj_per_g, meal.interval_days)
        .map_err(|reason| reason.to_string())?;
    let sources: Vec<&str> =
        resting.equations.iter().map(|(equation, _)| equation.source()).collect();
    let mut working = Working::new(
        "Food energy over resting energy",
        "ratio = (mass of the meal × energy per g / days) / resting energy a day",
        format!(
            "{}; energy of prey: Small Animal Clinical Nutrition, 5th edition, tables 71-5 and 71-6",
            sources.join("; ")
        ),
    );
    working.step(format!(
        "{} g × {} kJ/g / {} days = {} kJ a day",
        number(meal.mass_g, 1),
        number(kj_per_g, 2),
        number(meal.interval_days, 1),
        number(meal.mass_g * kj_per_g / meal.interval_days, 2)
    ));
    for (equation, kj) in &resting.equations {
        working.step(format!(
            "resting, {} g at {} °C: {} kJ a day ({})",
            number(body_g, 1),
            number(kept_c, 1),
            number(*kj, 2),
            equation.source()
        ));
    }
    working.step(format!("ratio {} to {}", number(ratio.0, 2), number(ratio.1, 2)));
    working.assume(
        "The equations differ by a factor of two between them: a band, and a guard, no recipe.",
    );
    Ok((ratio, working))
}
