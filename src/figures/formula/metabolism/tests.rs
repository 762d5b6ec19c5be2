//! Laws of resting metabolism that hold for any animal.

use super::*;
use proptest::prelude::*;

const GROUPS: [MetabolicGroup; 6] = [
    MetabolicGroup::BoasAndPythons,
    MetabolicGroup::OtherSnakes,
    MetabolicGroup::Lizards,
    MetabolicGroup::TortoisesAndTurtles,
    MetabolicGroup::Amphibians,
    MetabolicGroup::Invertebrates,
];

proptest! {
    #[test]
    fn a_larger_or_warmer_animal_burns_more_and_less_than_in_proportion(
        group in 0..6_usize, mass in 10.0..200.0_f64, temperature in 20.0..30.0_f64,
    ) {
        let energy = |mass, temperature| {
            resting_energy(GROUPS[group], "", mass, temperature).expect("in range").equations
        };
        let (here, larger) = (energy(mass, temperature), energy(2.0 * mass, temperature));
        let warmer = energy(mass, temperature + 2.0);
        for (equation, here) in here {
            let of = |list: &[(Equation, f64)]| list.iter().find(|e| e.0 == equation).map(|e| e.1);
            let larger = of(&larger).expect("in range");
            prop_assert!(here < larger && larger < 2.0 * here);
            prop_assert!(here < of(&warmer).expect("in range"));
        }
    }

    #[test]
    fn a_meal_is_used_up_at_the_rate_it_is_given(
        mass in 20.0..5000.0_f64, meal in 5.0..2000.0_f64, interval in 1.0..30.0_f64,
    ) {
        // Fed each `interval` at some multiple, a meal covers that multiple for just that interval.
        let resting = resting_energy(MetabolicGroup::Lizards, "", mass, 28.0).expect("in range");
        let (low, high) = resting.food_ratio(meal, interval).expect("a ratio");
        prop_assume!(low >= 0.1);
        prop_assert!((resting.days_covered(meal, low).expect("days").0 / interval - 1.0).abs() < 1e-9);
        prop_assert!((resting.days_covered(meal, high).expect("days").1 / interval - 1.0).abs() < 1e-9);
    }
}

#[test]
fn a_group_with_one_equation_still_has_a_band() {
    let tortoise =
        resting_energy(MetabolicGroup::TortoisesAndTurtles, "", 1500.0, 28.0).expect("in range");
    assert_eq!(tortoise.equations.len(), 1);
    let (_, energy) = tortoise.equations[0];
    assert!(tortoise.low_kj_per_day < energy && energy < tortoise.high_kj_per_day);
}

#[test]
fn a_species_that_was_measured_adds_its_own_line() {
    let python = |name| {
        resting_energy(MetabolicGroup::BoasAndPythons, name, 1200.0, 29.0).expect("in range")
    };
    assert_eq!(
        python("Python regius").equations.len(),
        python("Python nobody").equations.len() + 1
    );
}

#[test]
fn a_model_is_not_asked_beyond_the_animals_it_was_made_from() {
    // A hatchling of 6 g is lighter than any boid or iguana that was measured: the squamates' equation is left.
    let hatchling = resting_energy(MetabolicGroup::BoasAndPythons, "Python regius", 6.0, 30.0)
        .expect("in range");
    assert_eq!(hatchling.equations.len(), 1);
    let cold = resting_energy(MetabolicGroup::OtherSnakes, "", 500.0, 4.0).expect_err("brumating");
    assert_eq!(cold.argument, "temperature_c");
}

#[test]
fn boas_and_pythons_are_told_by_their_genus() {
    assert!(is_boa_or_python("Morelia spilota") && is_boa_or_python("boa constrictor"));
    assert!(!is_boa_or_python("Pantherophis guttatus") && !is_boa_or_python(""));
}

#[test]
fn a_free_reptile_spends_some_times_what_it_burns_at_rest() {
    // Field over resting is 2.0 to 2.5 in a fence lizard (A. F. Bennett and K. A. Nagy 1977, Ecology, abstract).
    let (free, rest) = (
        field_kj_per_day(10.0).expect("in range"),
        Equation::SquamatesResting.kj_per_day(10.0, 33.0).expect("in range"),
    );
    assert!((1.5..4.0).contains(&(free / rest)), "{}", free / rest);
}
