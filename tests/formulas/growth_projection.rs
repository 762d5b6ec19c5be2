//! The projected adult length: as sure as it says, and fair to every animal.
//!
//! Animals are drawn at random from what the species says, grown along their own curve and measured with
//! an error; what the projection makes of the measurements is then held against their true adult length.

use proptest::prelude::*;
use wardsheet::figures::formula::growth::{DAYS_PER_YEAR, GrowthCurve};
use wardsheet::figures::formula::growth_data::*;
use wardsheet::figures::formula::growth_projection::*;

/// A snake-like species: 110 to 170 cm, mature at two and a half years, 25 to 36 cm at birth.
fn species() -> (AdultRange, GrowthRate) {
    let adult = AdultRange::new(110.0, 170.0).expect("a range");
    (adult, GrowthRate::from_years_to_maturity(2.5).expect("a rate"))
}

fn record(lengths: &[(f64, f64)]) -> GrowthRecord {
    let measured =
        |&(day, length_cm): &(f64, f64)| LengthMeasurement { day, length_cm, error_cm: None };
    let (adult, rate) = species();
    GrowthRecord { measurements: lengths.iter().map(measured).collect(), birth: None, adult, rate }
}

fn projected(lengths: &[(f64, f64)]) -> Projection {
    project(&record(lengths)).expect("a projection")
}

fn log_width(projection: &Projection) -> f64 {
    libm::log(projection.high_cm / projection.low_cm)
}

/// Draws from the standard normal distribution (G. E. P. Box and M. E. Muller 1958).
fn normal(random: &mut fastrand::Rng) -> f64 {
    let radius = (-2.0 * libm::log(1.0 - random.f64())).sqrt();
    radius * libm::cos(std::f64::consts::TAU * random.f64())
}

/// How the drawn animals come to be measured.
#[derive(Clone, Copy)]
struct Plan {
    measurements: u32,
    years: f64,
    /// Of any size between birth and adult alike; else of any age up to eight years.
    any_size: bool,
    born_here: bool,
    /// How far the true length swings about the curve with the seasons, as a share.
    seasons: f64,
}

/// The percentage of a thousand drawn animals whose true adult length the interval holds.
fn percent_held(plan: Plan) -> f64 {
    let mut random = fastrand::Rng::with_seed(0x5EED);
    let (adult, rate) = species();
    let (low_cm, high_cm) = adult.ninety_percent_cm();
    let adult_sd = libm::log(high_cm / low_cm) / 2.0 / 1.644_853_6;
    let mut held = 0;
    for _ in 0..1000 {
        let adult_cm = adult.median_cm() * libm::exp(adult_sd * normal(&mut random));
        let k = rate.median_per_year() * libm::exp(0.6 * normal(&mut random));
        let born_cm = 30.0 * libm::exp(0.1 * normal(&mut random));
        let born = GrowthCurve::new(adult_cm, k, 0.0, born_cm).expect("a curve");
        let first_cm = if plan.any_size {
            born_cm + (adult_cm - born_cm) * random.f64()
        } else {
            born.length_cm(8.0 * random.f64() * DAYS_PER_YEAR)
        };
        let curve = if plan.born_here {
            born
        } else {
            GrowthCurve::new(adult_cm, k, 0.0, first_cm).expect("a curve")
        };
        let (season, measurements) = (random.f64(), f64::from(plan.measurements));
        let measured = (1..=plan.measurements).map(|i| {
            let years = plan.years * f64::from(i) / measurements;
            let swing = plan.seasons * libm::sin(std::f64::consts::TAU * (years + season));
            let true_cm = curve.length_cm(years * DAYS_PER_YEAR) * (1.0 + swing);
            let read_cm = true_cm * (1.0 + DEFAULT_ERROR_SHARE * normal(&mut random));
            LengthMeasurement { day: years * DAYS_PER_YEAR, length_cm: read_cm, error_cm: None }
        });
        let measurements = measured.collect();
        let birth = plan.born_here.then_some(Birth { day: 0.0, length_cm: (25.4, 35.4) });
        let projection =
            project(&GrowthRecord { measurements, birth, adult, rate }).expect("a projection");
        held += u32::from((projection.low_cm..=projection.high_cm).contains(&adult_cm));
    }
    f64::from(held) / 10.0
}

#[test]
fn ninety_percent_intervals_hold_nine_animals_in_ten() {
    for any_size in [true, false] {
        for (measurements, years) in [(1, 0.5), (3, 1.0), (10, 3.0)] {
            let plan = Plan { measurements, years, any_size, born_here: false, seasons: 0.0 };
            let held = percent_held(plan);
            assert!((86.0..=94.0).contains(&held), "{measurements}, {any_size}: {held} %");
        }
    }
}

#[test]
fn ninety_percent_intervals_hold_nine_home_bred_animals_in_ten() {
    for (measurements, years) in [(1, 0.5), (10, 3.0)] {
        let plan = Plan { measurements, years, any_size: true, born_here: true, seasons: 0.0 };
        let held = percent_held(plan);
        assert!((86.0..=94.0).contains(&held), "{measurements}: {held} %");
    }
}

#[test]
fn growth_by_seasons_does_not_make_the_interval_too_sure() {
    // Two per cent up and down with the year is more than the tape's error of one.
    let plan =
        Plan { measurements: 10, years: 3.0, any_size: true, born_here: false, seasons: 0.02 };
    let held = percent_held(plan);
    assert!((84.0..=97.0).contains(&held), "{held} %");
}

/// A plausible animal: its adult length, rate and first length, and the days on which it is measured.
fn animal() -> impl Strategy<Value = (GrowthCurve, Vec<f64>)> {
    let curve = (100.0..180.0_f64, 0.1..1.2_f64, 0.2..0.98_f64).prop_map(|(adult, k, share)| {
        GrowthCurve::new(adult, k, 0.0, share * adult).expect("a curve")
    });
    (curve, proptest::collection::vec(1.0..1500.0_f64, 1..12))
}

/// The lengths of an animal on some days, read with errors of up to one per cent that repeat themselves.
fn lengths(curve: &GrowthCurve, days: &[f64]) -> Vec<(f64, f64)> {
    let read = |(i, &day): (usize, &f64)| {
        let error = DEFAULT_ERROR_SHARE * libm::sin(12.9898 * i as f64 + day);
        (day, curve.length_cm(day) * (1.0 + error))
    };
    days.iter().enumerate().map(read).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(100))]

    #[test]
    fn the_order_in_which_lengths_were_written_down_changes_nothing((curve, days) in animal()) {
        let forwards = lengths(&curve, &days);
        let backwards: Vec<_> = forwards.iter().rev().copied().collect();
        prop_assert_eq!(projected(&forwards), projected(&backwards));
    }

    #[test]
    fn inches_and_centimetres_give_the_same_animal((curve, days) in animal()) {
        let in_cm = lengths(&curve, &days);
        let in_inches: Vec<_> = in_cm.iter().map(|&(day, length)| (day, length / 2.54)).collect();
        let small = GrowthRecord {
            adult: AdultRange::new(110.0 / 2.54, 170.0 / 2.54).expect("a range"),
            ..record(&in_inches)
        };
        let (inches, cm) = (project(&small).expect("a projection"), projected(&in_cm));
        prop_assert_eq!(inches.basis, cm.basis);
        for (inches, cm) in [
            (inches.estimate_cm, cm.estimate_cm),
            (inches.low_cm, cm.low_cm),
            (inches.high_cm, cm.high_cm),
        ] {
            prop_assert!((inches * 2.54 / cm - 1.0).abs() < 1e-3, "{} and {}", inches * 2.54, cm);
        }
    }

    #[test]
    fn one_more_length_on_the_curve_never_makes_the_adult_length_less_certain(
        (curve, days) in animal(), wait in 30.0..700.0_f64,
    ) {
        let mut known = lengths(&curve, &days);
        let before = projected(&known);
        let last = known.iter().map(|length| length.0).fold(0.0, f64::max);
        let middle = before.curves().expect("measured")[1];
        known.push((last + wait, middle.length_cm(last + wait)));
        let after = projected(&known);
        // It may be the length that shows the others to scatter, which is a reason to be less certain.
        prop_assume!(after.error_scale <= before.error_scale);
        prop_assert!(log_width(&after) <= 1.01 * log_width(&before),
            "{:?} {}..{} then {:?} {}..{}", before.basis, before.low_cm, before.high_cm, after.basis, after.low_cm, after.high_cm);
    }

    #[test]
    fn the_interval_is_in_order_and_not_below_the_animal((curve, days) in animal()) {
        let known = lengths(&curve, &days);
        let projection = projected(&known);
        let longest = known.iter().map(|length| length.1).fold(0.0, f64::max);
        prop_assert!(projection.low_cm < projection.estimate_cm);
        prop_assert!(projection.estimate_cm < projection.high_cm);
        prop_assert!(projection.high_cm > longest * 0.99, "{} {}", projection.high_cm, longest);
        prop_assert!((1.0..3.0).contains(&projection.error_scale));
    }

    #[test]
    fn the_days_of_reaching_a_length_are_in_order((curve, days) in animal(), share in 0.5..1.2_f64) {
        let known = lengths(&curve, &days);
        let projection = projected(&known);
        let target = share * projection.estimate_cm;
        let reach = projection.reach(target).expect("a length").expect("measured");
        prop_assert!((0.0..=1.0).contains(&reach.probability));
        let ordered = [reach.earliest_day, reach.expected_day, reach.latest_day];
        let known: Vec<f64> = ordered.into_iter().flatten().collect();
        prop_assert!(known.is_sorted(), "{:?}", ordered);
        prop_assert_eq!(reach.latest_day.is_some(), reach.probability >= 0.95, "{:?}", reach);
        prop_assert_eq!(reach.expected_day.is_some(), reach.probability >= 0.5, "{:?}", reach);
    }
}
