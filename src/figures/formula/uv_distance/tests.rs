//! What must hold of any lamp.

use super::*;
use proptest::prelude::*;

fn reading(distance_cm: f64, uvi: f64) -> UvReading {
    UvReading { distance_cm, uvi }
}

fn lamp(constant: f64, exponent: f64) -> Vec<UvReading> {
    [15.0, 20.0, 30.0, 45.0]
        .map(|distance| reading(distance, constant * libm::pow(distance, -exponent)))
        .to_vec()
}

proptest! {
    #[test]
    fn readings_of_a_power_of_the_distance_give_that_power(
        constant in 200.0..900.0_f64, exponent in 1.3..2.0_f64,
    ) {
        let fit = fit_lamp(&lamp(constant, exponent)).expect("a lamp");
        prop_assert!((fit.exponent - exponent).abs() < 1e-9);
        let there = fit.uvi(25.0).expect("within reach").value;
        let back = fit.distance_cm(there).expect("within reach").value;
        prop_assert!((back - 25.0).abs() < 1e-9);
    }

    #[test]
    fn the_index_falls_with_the_distance(exponent in 1.3..2.0_f64, distance in 11.0..60.0_f64) {
        let fit = fit_lamp(&lamp(800.0, exponent)).expect("a lamp");
        let (near, far) = (fit.uvi(distance).expect("near"), fit.uvi(distance + 5.0).expect("far"));
        prop_assert!(near.value > far.value);
    }
}

#[test]
fn a_lamp_is_not_believed_far_from_where_it_was_read() {
    let fit = fit_lamp(&[reading(20.0, 4.0), reading(30.0, 2.0)]).expect("a lamp");
    assert!(fit.uvi(45.0).is_ok() && fit.uvi(13.4).is_ok());
    assert_eq!(fit.uvi(46.0).expect_err("too far").argument, "distance_cm");
    assert!(fit.distance_cm(0.5).is_err(), "half an index would be at 68 cm");
}

#[test]
fn two_readings_say_nothing_of_their_error() {
    let two = fit_lamp(&[reading(10.0, 3.8), reading(20.0, 1.3)]).expect("a lamp");
    assert_eq!(two.uvi(15.0).expect("within reach").interval, None);
    let three =
        fit_lamp(&[reading(10.0, 3.8), reading(20.0, 1.3), reading(15.0, 2.1)]).expect("a lamp");
    let likely = three.uvi(15.0).expect("within reach");
    let (low, high) = likely.interval.expect("three readings");
    assert!(low < likely.value && likely.value < high);
}

#[test]
fn a_band_of_the_index_is_a_band_of_distances() {
    let fit = fit_lamp(&lamp(900.0, 1.7)).expect("a lamp");
    let band = fit.distances_cm((1.0, 2.6)).expect("within reach");
    assert!((fit.uvi(band.nearest_cm).expect("near").value - 2.6).abs() < 1e-9);
    assert!((fit.uvi(band.farthest_cm).expect("far").value - 1.0).abs() < 1e-9);
    // A shade dweller's band begins at nought: as far as the fit is believed.
    let shade = fit.distances_cm((0.0, 1.2)).expect("within reach");
    assert_eq!(shade.farthest_cm, 67.5);
    assert!(fit.distances_cm((2.6, 1.0)).is_err());
}

#[test]
fn readings_that_give_no_lamp_are_named() {
    let same = [reading(20.0, 3.0), reading(20.0, 3.2)];
    assert_eq!(fit_lamp(&same), Err(NoLampFit::OneDistance));
    assert_eq!(fit_lamp(&[]), Err(NoLampFit::OneDistance));
    assert_eq!(fit_lamp(&[reading(10.0, 1.0), reading(20.0, 2.0)]), Err(NoLampFit::NotFalling));
    assert!(matches!(fit_lamp(&[reading(20.0, 0.0)]), Err(NoLampFit::Reading(_))));
}

#[test]
fn quantiles_of_students_t_are_those_of_the_tables() {
    // Abramowitz and Stegun 1964, table 26.10 (from memory).
    for (freedom, quantile) in [(1, 6.314), (10, 1.812), (12, 1.782), (20, 1.725), (60, 1.671)] {
        assert!((student_t_95(freedom) / quantile - 1.0).abs() < 5e-3, "{freedom}");
    }
}
