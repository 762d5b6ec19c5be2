//! The energy an animal burns at rest, by published allometry.
//!
//! An equation fits a group of animals and one temperature scale; between equations that fit the same
//! animal the results differ by a factor of two. So the answer is a band over the equations that apply,
//! never one number, and a ratio of food to rest made from it is a guard against overfeeding and no more.
//!
//! The veterinary rule of 32 kilocalories times the 0.75th power of the kilograms is left out: as written it
//! is six to ten times what respirometry measures.

use super::boid_metabolism::BOID_SPECIES;
use super::domain::{OutOfRange, at_least, within};
use super::metabolic_equations::Equation;

/// The factor either way by which a lone equation is widened: between equations the spread is about two.
const LONE_EQUATION_FACTOR: f64 = 1.41;

/// Animals that share equations.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MetabolicGroup {
    /// Boas and pythons, which rest at about half the rate of other snakes.
    BoasAndPythons,
    /// All other snakes.
    OtherSnakes,
    /// Lizards.
    Lizards,
    /// Tortoises and turtles: only an equation for all reptiles was found.
    TortoisesAndTurtles,
    /// Frogs and salamanders.
    Amphibians,
    /// Spiders, scorpions, insects and the like.
    Invertebrates,
}

/// Genera of boas and pythons in keeping (common knowledge, no source).
const BOID_GENERA: [&str; 23] = [
    "Acrantophis",
    "Antaresia",
    "Apodora",
    "Aspidites",
    "Boa",
    "Bothrochilus",
    "Calabaria",
    "Candoia",
    "Charina",
    "Chilabothrus",
    "Corallus",
    "Epicrates",
    "Eryx",
    "Eunectes",
    "Gongylophis",
    "Leiopython",
    "Liasis",
    "Lichanura",
    "Malayopython",
    "Morelia",
    "Python",
    "Sanzinia",
    "Simalia",
];

/// Returns whether a scientific name is that of a boa or a python.
#[must_use]
pub fn is_boa_or_python(scientific_name: &str) -> bool {
    let genus = scientific_name.split_whitespace().next().unwrap_or_default();
    BOID_GENERA.iter().any(|boid| boid.eq_ignore_ascii_case(genus))
}

/// The energy burnt at rest, over the equations that apply.
#[derive(Debug, Clone, PartialEq)]
pub struct RestingEnergy {
    /// The least, in kJ a day.
    pub low_kj_per_day: f64,
    /// The most.
    pub high_kj_per_day: f64,
    /// Each equation with its own result; with one alone, the band is that widened by 1.41 either way.
    pub equations: Vec<(Equation, f64)>,
}

/// Returns the energy that an animal burns at rest at the temperature it is kept at.
///
/// `scientific_name` adds the line of a single species of boa or python where one was measured.
///
/// # Errors
///
/// [`OutOfRange`] when no equation for the group covers the mass and the temperature; it is that of the
/// widest of them.
///
/// # Example
///
/// ```
/// use wardsheet::figures::formula::metabolism::{MetabolicGroup, resting_energy};
///
/// let resting = resting_energy(MetabolicGroup::OtherSnakes, "Pantherophis guttatus", 800.0, 27.0)?;
/// assert_eq!((resting.low_kj_per_day.round(), resting.high_kj_per_day.round()), (14.0, 19.0));
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: [`Equation::source`].
pub fn resting_energy(
    group: MetabolicGroup,
    scientific_name: &str,
    mass_g: f64,
    temperature_c: f64,
) -> Result<RestingEnergy, OutOfRange> {
    let general: &[Equation] = match group {
        MetabolicGroup::BoasAndPythons => {
            &[Equation::SquamatesStandard, Equation::BoidsPooled, Equation::BoidsRegression]
        }
        MetabolicGroup::OtherSnakes => &[Equation::SquamatesStandard, Equation::SquamatesResting],
        MetabolicGroup::Lizards => {
            &[Equation::SquamatesStandard, Equation::SquamatesResting, Equation::GreenIguana]
        }
        MetabolicGroup::TortoisesAndTurtles => &[Equation::Reptiles],
        MetabolicGroup::Amphibians => &[Equation::Amphibians],
        MetabolicGroup::Invertebrates => &[Equation::Invertebrates],
    };
    let own = BOID_SPECIES.iter().find(|boid| boid.is_named(scientific_name)).map(Equation::Boid);
    // The first of a group has the widest range: where it does not hold, none does.
    general[0].kj_per_day(mass_g, temperature_c)?;
    let equations: Vec<(Equation, f64)> = (general.iter().copied().chain(own))
        .filter_map(|e| e.kj_per_day(mass_g, temperature_c).ok().map(|energy| (e, energy)))
        .collect();
    let low = equations.iter().map(|&(_, energy)| energy).fold(f64::INFINITY, f64::min);
    let high = equations.iter().map(|&(_, energy)| energy).fold(0.0, f64::max);
    let factor = if equations.len() == 1 { LONE_EQUATION_FACTOR } else { 1.0 };
    Ok(RestingEnergy { low_kj_per_day: low / factor, high_kj_per_day: high * factor, equations })
}

/// Returns the energy in kJ a day that a free-living reptile of `mass_g` uses in all.
///
/// No temperature enters: it is what reptiles in the field spent, each at its own. Valid for 1 g to 100 kg.
///
/// # Errors
///
/// [`OutOfRange`] outside those masses.
///
/// Source: K. A. Nagy 2005, J. Exp. Biol. 208:1621-1625; exponent read in the abstract of Nagy et al. 1999,
/// factor in a package that cites the paper.
pub fn field_kj_per_day(mass_g: f64) -> Result<f64, OutOfRange> {
    within("mass_g", mass_g, 1.0, 100_000.0)?;
    Ok(0.196 * libm::pow(mass_g, 0.889))
}

impl RestingEnergy {
    /// How many times its resting energy an animal is fed: `meal_kj` each `interval_days`, low and high.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the meal is negative or the interval shorter than an hour.
    pub fn food_ratio(&self, meal_kj: f64, interval_days: f64) -> Result<(f64, f64), OutOfRange> {
        at_least("meal_kj", meal_kj, 0.0)?;
        at_least("interval_days", interval_days, 1.0 / 24.0)?;
        let daily = meal_kj / interval_days;
        Ok((daily / self.high_kj_per_day, daily / self.low_kj_per_day))
    }

    /// For how many days a meal covers `multiple` times the resting energy, low and high.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the meal is negative or the multiple less than a tenth.
    pub fn days_covered(&self, meal_kj: f64, multiple: f64) -> Result<(f64, f64), OutOfRange> {
        at_least("meal_kj", meal_kj, 0.0)?;
        at_least("multiple", multiple, 0.1)?;
        let days = |resting_kj: f64| meal_kj / (multiple * resting_kj);
        Ok((days(self.high_kj_per_day), days(self.low_kj_per_day)))
    }
}

#[cfg(test)]
mod tests;
