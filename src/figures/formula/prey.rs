//! What prey is worth as food, and how large it is beside the animal that eats it.

use super::domain::{OutOfRange, at_least, within};

/// Kilojoules in a kilocalorie.
pub const KJ_PER_KCAL: f64 = 4.184;

/// The energy of one kind of prey.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PreyEnergy {
    /// What it is.
    pub name: &'static str,
    /// Other words for it, or for prey that is taken to be like it.
    pub other_names: &'static [&'static str],
    /// The mass of the animals analysed, in g, where it was given.
    pub mass_g: Option<f64>,
    /// Energy in kcal per g as fed, water and all.
    pub kcal_per_g: f64,
}

const fn prey(
    name: &'static str,
    other_names: &'static [&'static str],
    mass_g: Option<f64>,
    kcal_per_g: f64,
) -> PreyEnergy {
    PreyEnergy { name, other_names, mass_g, kcal_per_g }
}

/// Prey of known energy, as fed.
///
/// Source: Small Animal Clinical Nutrition, 5th edition, tables 71-5 and 71-6, p. 1242 (read). To two digits,
/// from few animals: a well-fed mouse differs from a lean one by more than the rounding.
pub const PREY: &[PreyEnergy] = &[
    prey("mouse pup", &["mouse, pinky", "pinky mouse"], Some(1.5), 0.8),
    prey("furred mouse pup", &["mouse, fuzzy", "mouse, hopper"], Some(4.0), 1.7),
    prey("mouse", &["mouse, adult", "adult mouse", "mouse, weanling"], Some(27.0), 1.7),
    prey("rat", &["rat, adult", "adult rat"], Some(330.0), 1.6),
    prey("chick", &["day-old chick", "chick, day-old"], Some(40.0), 1.3),
    prey("smelt", &["atlantic smelt"], Some(100.0), 1.0),
    prey("cricket", &["crickets", "house cricket", "house crickets"], None, 1.9),
    prey("wax worm", &["waxworm", "waxworms", "wax worms"], None, 2.1),
    prey("earthworm", &["earthworms"], None, 0.5),
    prey("mealworm", &["mealworms"], None, 2.1),
    prey("fly larva", &["fly larvae", "maggots"], None, 1.5),
];

/// Returns the energy in kJ per g, as fed, of prey of that name, each of `mass_g` where it is known.
///
/// Mice change as they grow fur and fat: between 1.5 g and 4 g the energy is taken on the straight line, and
/// the mass decides over the name. Young rats are taken as adult ones from 15 g on, when they are furred
/// (an assumption); nothing is known of naked ones.
///
/// `None` for prey, or greens, without a published value.
///
/// # Example
///
/// ```
/// use wardsheet::figures::formula::prey::prey_kj_per_g;
///
/// let mouse = prey_kj_per_g("mouse, adult", Some(28.0)).expect("published");
/// assert_eq!((28.0 * mouse).round(), 199.0);
/// assert_eq!(prey_kj_per_g("leafy greens and weeds", None), None);
/// ```
///
/// Source: [`PREY`].
#[must_use]
pub fn prey_kj_per_g(name: &str, mass_g: Option<f64>) -> Option<f64> {
    let name = name.trim().to_ascii_lowercase();
    let kind = name.split([',', ' ']).next().unwrap_or_default();
    let kcal_per_g = match (kind, mass_g) {
        ("mouse" | "mice", Some(mass_g)) => 0.8 + 0.9 * ((mass_g - 1.5) / 2.5).clamp(0.0, 1.0),
        ("rat" | "rats", Some(mass_g)) if mass_g >= 15.0 => 1.6,
        ("rat" | "rats", Some(_)) => return None,
        _ => {
            PREY.iter()
                .find(|prey| prey.name == name || prey.other_names.contains(&&*name))?
                .kcal_per_g
        }
    };
    Some(kcal_per_g * KJ_PER_KCAL)
}

/// Returns the mass of a meal as a percentage of the animal's.
///
/// Hatchling rat snakes swallowed 20 to 60 % in experiments, corn snakes 5 to 45 %, and 25 % is the usual
/// meal of python physiology; what a keeper should give is the species' business, and less.
///
/// # Errors
///
/// [`OutOfRange`] when the meal is negative or the animal has no mass.
///
/// Source: relative prey mass, H. W. Greene and K. D. Wiseman 2023, J. Herpetol. 57(3):340 (abstract; authors
/// from memory).
pub fn meal_percent(meal_g: f64, animal_g: f64) -> Result<f64, OutOfRange> {
    at_least("meal_g", meal_g, 0.0)?;
    at_least("animal_g", animal_g, 0.01)?;
    Ok(100.0 * meal_g / animal_g)
}

/// Returns the mass of the meal in g that is `percent` of an animal of `animal_g`.
///
/// # Errors
///
/// [`OutOfRange`] when the percentage is not within 0 to 100 or the animal has no mass.
pub fn meal_of_percent_g(percent: f64, animal_g: f64) -> Result<f64, OutOfRange> {
    within("percent", percent, 0.0, 100.0)?;
    at_least("animal_g", animal_g, 0.01)?;
    Ok(percent / 100.0 * animal_g)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_mouse_gains_energy_as_it_grows_fur_and_no_more_after() {
        let of = |mass| prey_kj_per_g("mouse, pinky", Some(mass)).expect("published");
        assert!(of(1.0) == of(1.5) && of(1.5) < of(2.5) && of(2.5) < of(4.0));
        assert_eq!(of(4.0), of(40.0));
    }

    #[test]
    fn a_name_is_found_in_any_case_and_once() {
        assert_eq!(prey_kj_per_g(" House Cricket ", None), prey_kj_per_g("crickets", None));
        let mut names: Vec<_> = (PREY.iter())
            .flat_map(|prey| std::iter::once(prey.name).chain(prey.other_names.iter().copied()))
            .collect();
        let count = names.len();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), count);
    }

    #[test]
    fn what_was_never_analysed_has_no_energy() {
        for (name, mass) in [("locust", None), ("rat, pinky", Some(7.0)), ("rat", None), ("", None)]
        {
            let known = prey_kj_per_g(name, mass);
            assert_eq!(known.is_some(), name == "rat" && mass.is_none(), "{name}");
        }
    }

    #[test]
    fn a_share_of_the_animal_and_back_is_the_same_meal() {
        let meal = meal_of_percent_g(12.5, 640.0).expect("a meal");
        assert_eq!((meal, meal_percent(meal, 640.0)), (80.0, Ok(12.5)));
        assert_eq!(meal_percent(10.0, 0.0).expect_err("weightless").argument, "animal_g");
    }
}
