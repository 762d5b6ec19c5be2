//! Single animals whose projected adult length must come out as a keeper would expect.

use wardsheet::figures::formula::growth::{DAYS_PER_YEAR, GrowthCurve};
use wardsheet::figures::formula::growth_data::*;
use wardsheet::figures::formula::growth_projection::*;

fn record(lengths: &[(f64, f64)]) -> GrowthRecord {
    let measured =
        |&(day, length_cm): &(f64, f64)| LengthMeasurement { day, length_cm, error_cm: None };
    GrowthRecord {
        measurements: lengths.iter().map(measured).collect(),
        birth: None,
        adult: AdultRange::new(110.0, 170.0).expect("a range"),
        rate: GrowthRate::from_years_to_maturity(2.5).expect("a rate"),
    }
}

fn projected(lengths: &[(f64, f64)]) -> Projection {
    project(&record(lengths)).expect("a projection")
}

/// Lengths every three months along a curve, alternately a little too long and too short.
fn watched(curve: &GrowthCurve, quarters: u32) -> Vec<(f64, f64)> {
    (0..quarters)
        .map(|quarter| {
            let day = f64::from(quarter) * DAYS_PER_YEAR / 4.0;
            let error = if quarter % 2 == 0 { 1.006 } else { 0.994 };
            (day, curve.length_cm(day) * error)
        })
        .collect()
}

#[test]
fn an_animal_never_measured_has_the_range_of_its_species() {
    let projection = projected(&[]);
    assert_eq!(projection.basis, Basis::SpeciesRange);
    assert!((projection.low_cm - 110.0).abs() < 1e-9 && (projection.high_cm - 170.0).abs() < 1e-9);
    assert!((projection.estimate_cm - (110.0_f64 * 170.0).sqrt()).abs() < 1e-9);
    assert_eq!(projection.curves(), None);
    assert_eq!(projection.reach(100.0), Ok(None));
}

#[test]
fn one_length_of_a_hatchling_says_nothing_new() {
    let projection = projected(&[(0.0, 35.0)]);
    assert_eq!(projection.basis, Basis::AtLeastThisLong);
    assert!((projection.low_cm - 110.0).abs() < 1.0, "{}", projection.low_cm);
    assert!((projection.high_cm - 170.0).abs() < 1.0, "{}", projection.high_cm);
}

#[test]
fn one_length_of_a_grown_animal_rules_out_what_it_has_outgrown() {
    let projection = projected(&[(0.0, 150.0)]);
    assert_eq!(projection.basis, Basis::AtLeastThisLong);
    assert!((147.0..151.0).contains(&projection.low_cm), "{}", projection.low_cm);
    assert!((165.0..180.0).contains(&projection.high_cm), "{}", projection.high_cm);
}

#[test]
fn a_first_year_of_fast_growth_does_not_tell_the_adult_length() {
    let curve = GrowthCurve::new(140.0, 0.45, 0.0, 32.0).expect("a curve");
    let projection = projected(&watched(&curve, 3));
    assert_eq!(projection.basis, Basis::NotEnoughYet);
    assert!(projection.high_cm - projection.low_cm > 50.0, "the width of the species is kept");
}

#[test]
fn an_animal_that_has_stopped_growing_is_about_as_long_as_it_will_be() {
    let curve = GrowthCurve::new(128.0, 0.5, 0.0, 127.5).expect("a curve");
    let projection = projected(&watched(&curve, 12));
    assert_eq!(projection.basis, Basis::Measurements);
    assert!((127.0..131.0).contains(&projection.estimate_cm), "{}", projection.estimate_cm);
    assert!(projection.high_cm < 137.0, "{}", projection.high_cm);
}

#[test]
fn twenty_measurements_overrule_the_book() {
    // The book says 110 to 170 cm; this one is on its way to 230.
    let curve = GrowthCurve::new(230.0, 0.5, 0.0, 60.0).expect("a curve");
    let projection = projected(&watched(&curve, 20));
    assert_eq!(projection.basis, Basis::Measurements);
    assert!(projection.low_cm > 215.0, "{}", projection.low_cm);
    assert!((projection.low_cm..=projection.high_cm).contains(&230.0), "{projection:?}");
}

#[test]
fn an_animal_past_its_species_already_is_projected_past_it() {
    let projection = projected(&[(0.0, 195.0), (200.0, 199.0), (400.0, 202.0)]);
    assert!(projection.low_cm > 197.0, "{}", projection.low_cm);
    assert!(projection.high_cm > 205.0 && projection.high_cm < 260.0, "{}", projection.high_cm);
}

#[test]
fn a_dwarf_form_is_projected_below_its_species() {
    let curve = GrowthCurve::new(80.0, 0.6, 0.0, 30.0).expect("a curve");
    let projection = projected(&watched(&curve, 20));
    assert!(projection.high_cm < 90.0, "{}", projection.high_cm);
    assert!((projection.low_cm..=projection.high_cm).contains(&80.0), "{projection:?}");
}

#[test]
fn a_known_birth_sharpens_what_two_lengths_say() {
    let curve = GrowthCurve::new(140.0, 0.6, 0.0, 30.0).expect("a curve");
    let at = |years: f64| (years * DAYS_PER_YEAR, curve.length_cm(years * DAYS_PER_YEAR));
    let without = record(&[at(1.5), at(2.5)]);
    let born = Birth { day: 0.0, length_cm: (27.0, 33.0) };
    let with = GrowthRecord { birth: Some(born), ..without.clone() };
    let (without, with) = (project(&without).expect("one"), project(&with).expect("one"));
    let width = |projection: &Projection| projection.high_cm - projection.low_cm;
    assert!(width(&with) < 0.7 * width(&without), "{} and {}", width(&with), width(&without));
    assert!((with.estimate_cm - 140.0).abs() < 8.0, "{}", with.estimate_cm);
}

#[test]
fn lengths_that_scatter_more_than_the_tape_widen_the_interval() {
    let curve = GrowthCurve::new(140.0, 0.5, 0.0, 60.0).expect("a curve");
    let smooth = watched(&curve, 12);
    let rough: Vec<_> = smooth
        .iter()
        .map(|&(day, length)| (day, length + 5.0 * (length - curve.length_cm(day))))
        .collect();
    let (smooth, rough) = (projected(&smooth), projected(&rough));
    assert_eq!(smooth.error_scale, 1.0);
    assert!((2.0..4.5).contains(&rough.error_scale), "{}", rough.error_scale);
    assert!(rough.high_cm - rough.low_cm > 1.5 * (smooth.high_cm - smooth.low_cm));
    assert!(rough.residual_sum_of_squares_cm2() > smooth.residual_sum_of_squares_cm2());
}

#[test]
fn the_three_curves_pass_the_measurements_and_lead_to_the_three_lengths() {
    let curve = GrowthCurve::new(145.0, 0.5, 0.0, 60.0).expect("a curve");
    let known = watched(&curve, 8);
    let projection = projected(&known);
    let curves = projection.curves().expect("measured");
    let ends = [projection.low_cm, projection.estimate_cm, projection.high_cm];
    for (curve, end) in curves.iter().zip(ends) {
        assert!((curve.adult_length_cm - end).abs() < 1e-9);
        for &(day, length) in &known {
            assert!((curve.length_cm(day) / length - 1.0).abs() < 0.03, "day {day}");
        }
    }
}

#[test]
fn a_length_is_reached_between_the_earliest_and_the_latest_day() {
    let curve = GrowthCurve::new(145.0, 0.5, 0.0, 60.0).expect("a curve");
    let projection = projected(&watched(&curve, 8));
    let true_day = curve.day_of_length(120.0).expect("reached");
    let reach = projection.reach(120.0).expect("a length").expect("measured");
    let (earliest, latest) = (reach.earliest_day.expect("a day"), reach.latest_day.expect("a day"));
    assert!((earliest..latest).contains(&true_day), "{earliest} to {latest}, truly {true_day}");
    let past = projection.reach(40.0).expect("a length").expect("measured");
    assert_eq!(past.latest_day, Some(0.0), "it was longer than that on the first day");
    let never = projection.reach(400.0).expect("a length").expect("measured");
    assert_eq!((never.earliest_day, never.probability), (None, 0.0));
}

#[test]
fn awkward_logs_have_an_answer() {
    // Twice on one day; exactly alike; a length that went down; a tenth of a millimetre of stated error.
    projected(&[(0.0, 80.0), (0.0, 81.0)]);
    projected(&[(0.0, 80.0), (0.0, 80.0), (0.0, 80.0), (0.0, 80.0), (0.0, 80.0)]);
    projected(&[(0.0, 120.0), (100.0, 120.0), (200.0, 120.0), (300.0, 120.0)]);
    let shrunk = projected(&[(0.0, 120.0), (100.0, 112.0), (200.0, 121.0)]);
    assert!(shrunk.low_cm > 110.0 && shrunk.high_cm.is_finite());
    let mut exact = record(&[(0.0, 60.0), (300.0, 90.0), (700.0, 115.0)]);
    exact.measurements.iter_mut().for_each(|m| m.error_cm = Some(0.01));
    let exact = project(&exact).expect("a projection");
    assert!(exact.low_cm < exact.estimate_cm && exact.estimate_cm < exact.high_cm);
    let giant = projected(&[(0.0, 400.0), (1.0, 1200.0)]);
    assert!(giant.high_cm > 1200.0 * 0.9 && giant.high_cm.is_finite());
}

#[test]
fn lengths_that_cannot_be_are_refused() {
    for wrong in [0.0, -3.0, f64::NAN, f64::INFINITY] {
        assert_eq!(project(&record(&[(0.0, wrong)])).expect_err("no length").argument, "length_cm");
    }
    assert_eq!(project(&record(&[(f64::NAN, 50.0)])).expect_err("no day").argument, "day");
}
