//! Laws of cooling, and the cases at its edges.

use super::*;
use proptest::prelude::*;

proptest! {
    #[test]
    fn the_temperature_at_the_expected_time_is_the_critical_one(
        inside in 24.0..35.0_f64, room in 5.0..15.0_f64, critical in 16.0..23.0_f64, constant in 0.1..20.0_f64,
    ) {
        let time = time_without_power(inside, room, critical, constant).expect("in range");
        let TimeWithoutPower::Hours { low_h, expected_h, high_h } = time else {
            return Err(TestCaseError::fail("it cools"));
        };
        let then = temperature_after_c(inside, room, constant, expected_h).expect("in range");
        prop_assert!((then - critical).abs() < 1e-9);
        prop_assert!(low_h < expected_h && expected_h < high_h);
    }

    #[test]
    fn heat_lost_equals_heat_given_up(
        stored in 1e4..1e6_f64, loss in 0.5..20.0_f64, hours in 0.1..30.0_f64,
    ) {
        // The loss summed over short steps against the fall of the store's temperature.
        let constant = time_constant_h(stored, loss).expect("in range");
        let steps = 20_000;
        let step_s = hours * 3600.0 / f64::from(steps);
        let lost: f64 = (0..steps)
            .map(|i| (f64::from(i) + 0.5) * hours / f64::from(steps))
            .map(|at| temperature_after_c(30.0, 15.0, constant, at).expect("in range"))
            .map(|inside| loss * (inside - 15.0) * step_s)
            .sum();
        let after = temperature_after_c(30.0, 15.0, constant, hours).expect("in range");
        prop_assert!((lost / (stored * (30.0 - after)) - 1.0).abs() < 1e-3);
    }
}

#[test]
fn a_warm_room_never_cools_the_animal_below_its_limit() {
    assert_eq!(time_without_power(28.0, 20.0, 18.0, 3.0), Ok(TimeWithoutPower::Never));
    assert_eq!(time_without_power(17.0, 10.0, 18.0, 3.0), Ok(TimeWithoutPower::BelowAlready));
}

#[test]
fn a_wall_gives_back_half_of_what_it_stores() {
    let (whole, half) =
        (store_j_per_k(0.01, 500.0, 1600.0), wall_store_j_per_k(0.01, 500.0, 1600.0));
    assert_eq!(whole, half.map(|half| 2.0 * half));
}

#[test]
fn furnishings_are_named_once() {
    let mut names: Vec<_> = FURNISHINGS.iter().map(|furnishing| furnishing.name).collect();
    names.sort_unstable();
    names.dedup();
    assert_eq!(names.len(), FURNISHINGS.len());
    assert_eq!(furnishing_named(" Sand").map(|sand| sand.density_kg_per_m3), Some(1600.0));
}

#[test]
fn an_enclosure_that_loses_nothing_has_no_time_constant() {
    assert_eq!(time_constant_h(1e5, 0.0).expect_err("perfect").argument, "loss_w_per_k");
}
