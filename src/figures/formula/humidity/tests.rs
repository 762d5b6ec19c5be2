//! Laws of moist air that hold whatever the numbers are.

use super::*;
use proptest::prelude::*;

proptest! {
    #[test]
    fn carrying_a_reading_there_and_back_changes_nothing(
        warm in 20.0..45.0_f64, cool in 10.0..45.0_f64, reading in 1.0..100.0_f64,
    ) {
        let there = humidity_at(warm, reading, cool).expect("in range").relative_humidity_percent;
        prop_assume!(there <= 100.0);
        let back = humidity_at(cool, there, warm).expect("in range").relative_humidity_percent;
        prop_assert!((back / reading - 1.0).abs() < 1e-12);
    }

    #[test]
    fn saturated_air_is_at_its_own_dew_point(temperature in -20.0..60.0_f64) {
        let dew = dew_point_c(temperature, 100.0).expect("in range");
        prop_assert!((dew - temperature).abs() < 1e-6);
    }

    #[test]
    fn the_dew_point_rises_with_humidity_and_stays_below_the_air(
        temperature in -20.0..60.0_f64, humidity in 1.0..99.0_f64,
    ) {
        let drier = dew_point_c(temperature, humidity).expect("in range");
        let damper = dew_point_c(temperature, humidity + 1.0).expect("in range");
        prop_assert!(drier < damper && damper <= temperature + 1e-6);
    }

    #[test]
    fn air_cooled_to_its_dew_point_reads_one_hundred(
        temperature in 5.0..45.0_f64, humidity in 10.0..100.0_f64,
    ) {
        let dew = dew_point_c(temperature, humidity).expect("in range");
        let there = humidity_at(temperature, humidity, dew).expect("in range");
        prop_assert!((there.relative_humidity_percent - 100.0).abs() < 1e-5);
    }
}

#[test]
fn water_condenses_below_the_dew_point_and_not_above() {
    let dew = dew_point_c(28.0, 70.0).expect("in range");
    assert!(humidity_at(28.0, 70.0, dew - 0.01).expect("in range").condenses);
    assert!(!humidity_at(28.0, 70.0, dew + 0.01).expect("in range").condenses);
}

#[test]
fn ice_and_water_meet_at_the_triple_point() {
    // Both equations were fitted to 611.657 Pa there (Guildner, Johnson and Jones 1976, from memory).
    let ice = saturation_pressure_pa(TRIPLE_POINT_C - 1e-9).expect("in range");
    let water = saturation_pressure_pa(TRIPLE_POINT_C).expect("in range");
    assert!((ice / water - 1.0).abs() < 1e-4, "{ice} over ice, {water} over water");
    assert!((water / 611.657 - 1.0).abs() < 2e-4, "{water}");
}

#[test]
fn readings_that_cannot_be_are_refused_by_name() {
    assert_eq!(
        vapour_pressure_pa(20.0, 101.0).expect_err("over 100").argument,
        "relative_humidity_percent"
    );
    assert_eq!(dew_point_c(20.0, 0.0).expect_err("dry air").argument, "relative_humidity_percent");
    assert_eq!(saturation_pressure_pa(f64::NAN).expect_err("no number").argument, "temperature_c");
    assert!(humidity_ratio_g_per_kg(99.0, 100.0, 50_000.0).is_err());
}
