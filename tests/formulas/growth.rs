//! The growth curve against closed forms, and the plain fit against the curves it came from.

use crate::table::{assert_near, assert_relative, rows};
use wardsheet::figures::formula::growth::{DAYS_PER_YEAR, GrowthCurve};
use wardsheet::figures::formula::growth_data::GrowthRate;
use wardsheet::figures::formula::least_squares::{Residuals, solve};

#[test]
fn lengths_ages_rates_and_increments_agree_with_the_closed_form() {
    for row in rows("growth_exact.csv") {
        let (adult, k, t0) = (row.number("Linf"), row.number("k"), row.number("t0"));
        let (age, length) = (row.number("age"), row.number("L"));
        let what = format!("{adult} cm, {k} a year, age {age}");
        let curve = GrowthCurve::from_age(adult, k, t0).expect("a curve");
        let day = age * DAYS_PER_YEAR;
        assert_relative(curve.length_cm(day), length, 1e-8, &what);
        assert_near(curve.rate_cm_per_year(day), row.number("dLdt"), 1e-7, &what);
        let back = curve.day_of_length(length).expect("reached") / DAYS_PER_YEAR;
        // Near the limit the inverse magnifies the table's last printed digit.
        let tolerance = 1e-8 + 2e-8 / (k * (adult - length));
        assert_near(back, row.number("age_back"), tolerance, &what);
        let from_here = GrowthCurve::new(adult, k, 0.0, length).expect("a curve");
        let later = from_here.length_cm(0.75 * DAYS_PER_YEAR);
        assert_relative(later, row.number("L_after_dt_0.75"), 1e-8, &what);
    }
}

/// Length against age, in (ln limit, ln rate, age at nothing).
struct ByAge(Vec<(f64, f64)>);

impl Residuals for ByAge {
    fn parameters(&self) -> usize {
        3
    }

    fn residuals(&self) -> usize {
        self.0.len()
    }

    fn evaluate(&self, p: &[f64], residuals: &mut [f64], derivatives: &mut [f64]) {
        let (limit, k, count) = (libm::exp(p[0]), libm::exp(p[1]), self.0.len());
        for (i, &(age, length)) in self.0.iter().enumerate() {
            let e = libm::exp(-k * (age - p[2]));
            residuals[i] = limit * (1.0 - e) - length;
            derivatives[i] = limit * (1.0 - e);
            derivatives[count + i] = limit * k * (age - p[2]) * e;
            derivatives[2 * count + i] = -limit * k * e;
        }
    }
}

#[test]
fn a_fit_through_points_of_a_curve_returns_the_curve() {
    let table = rows("growth_exact.csv");
    for adult in [250.0, 1800.0, 120.0] {
        let of_curve: Vec<_> = table.iter().filter(|row| row.number("Linf") == adult).collect();
        let points: Vec<_> =
            of_curve.iter().map(|row| (row.number("age"), row.number("L"))).collect();
        let longest = points.iter().map(|point| point.1).fold(0.0, f64::max);
        let oldest = points.iter().map(|point| point.0).fold(0.0, f64::max);
        let start = [libm::log(1.1 * longest), libm::log(3.0 / oldest), 0.0];
        let found = solve(&ByAge(points), &start).expect("determined");
        let (k, t0) = (of_curve[0].number("k"), of_curve[0].number("t0"));
        assert_relative(libm::exp(found.parameters[0]), adult, 1e-8, "adult length");
        assert_relative(libm::exp(found.parameters[1]), k, 1e-8, "rate");
        assert_relative(found.parameters[2], t0, 1e-8, "age at nothing");
    }
}

#[test]
fn a_species_of_which_nothing_is_known_may_grow_as_fast_as_any_published() {
    // The middle 98 % of the prior, ln k within 2.33 standard deviations of one.
    let median = GrowthRate::unknown().median_per_year();
    let (slowest, fastest) = (median * libm::exp(-2.33), median * libm::exp(2.33));
    let mut compared = 0;
    for row in rows("growth_published_parameters.csv") {
        for k in row.text("k").split('-').filter_map(|k| k.parse::<f64>().ok()) {
            assert!((slowest..fastest).contains(&k), "{}: {k} a year", row.text("species"));
            compared += 1;
        }
    }
    assert!(compared >= 6, "{compared} rates");
}
