//! Nonlinear least squares against the certified values of the Statistical Reference Datasets of the
//! United States National Institute of Standards and Technology, from both of its starts.

use crate::table::{assert_relative, rows};
use wardsheet::figures::formula::least_squares::{Residuals, solve};

/// A data set, with its model as value and derivatives at one point.
struct Reference {
    points: Vec<(f64, f64)>,
    parameters: usize,
    model: fn(&[f64], f64) -> (f64, Vec<f64>),
}

impl Residuals for Reference {
    fn parameters(&self) -> usize {
        self.parameters
    }

    fn residuals(&self) -> usize {
        self.points.len()
    }

    fn evaluate(&self, parameters: &[f64], residuals: &mut [f64], derivatives: &mut [f64]) {
        let count = self.points.len();
        for (i, &(x, y)) in self.points.iter().enumerate() {
            let (value, slopes) = (self.model)(parameters, x);
            residuals[i] = value - y;
            for (j, slope) in slopes.into_iter().enumerate() {
                derivatives[j * count + i] = slope;
            }
        }
    }
}

/// `b1 (1 - exp(-b2 x))`: Misra1a, BoxBOD, and von Bertalanffy from nothing at day nought.
fn saturating(b: &[f64], x: f64) -> (f64, Vec<f64>) {
    let e = libm::exp(-b[1] * x);
    (b[0] * (1.0 - e), vec![1.0 - e, b[0] * x * e])
}

/// `b1 / (1 + exp(b2 - b3 x))^(1/b4)`: Rat43.
fn richards(b: &[f64], x: f64) -> (f64, Vec<f64>) {
    let e = libm::exp(b[1] - b[2] * x);
    let value = b[0] * libm::pow(1.0 + e, -1.0 / b[3]);
    let by_e = -value / b[3] * e / (1.0 + e);
    (value, vec![value / b[0], by_e, -x * by_e, value * libm::log(1.0 + e) / (b[3] * b[3])])
}

#[test]
fn certified_parameters_are_found_from_both_starts() {
    let data = rows("nist_data.csv");
    let certified = rows("nist_certified.csv");
    for (name, model) in [
        ("Misra1a", saturating as fn(&[f64], f64) -> _),
        ("BoxBOD", saturating),
        ("Rat43", richards),
    ] {
        let points: Vec<_> = (data.iter().filter(|row| row.text("dataset") == name))
            .map(|row| (row.number("x"), row.number("y")))
            .collect();
        let wanted: Vec<_> = certified.iter().filter(|row| row.text("dataset") == name).collect();
        let problem = Reference { points, parameters: wanted.len(), model };
        for start in ["start1", "start2"] {
            let from: Vec<f64> = wanted.iter().map(|row| row.number(start)).collect();
            let found = solve(&problem, &from).unwrap_or_else(|| panic!("{name} from {start}"));
            for (j, row) in wanted.iter().enumerate() {
                let what = format!("{name} {} from {start}", row.text("param"));
                assert_relative(found.parameters[j], row.number("certified_value"), 1e-7, &what);
                let error = found.standard_error(j).expect("degrees of freedom");
                assert_relative(error, row.number("certified_sd"), 1e-5, &what);
                let rss = found.residual_sum_of_squares;
                assert_relative(rss, row.number("certified_rss"), 1e-9, &what);
                // The data file of Rat43 prints 9 degrees of freedom, but its residual deviation has 11.
                let deviation = (rss / found.degrees_of_freedom as f64).sqrt();
                assert_relative(deviation, row.number("certified_resid_sd"), 1e-9, &what);
            }
        }
    }
}

#[test]
fn a_model_that_its_data_do_not_determine_has_no_solution() {
    // Both points lie at x = 0, where the curve is nothing whatever its limit and rate.
    let problem =
        Reference { points: vec![(0.0, 1.0), (0.0, 2.0)], parameters: 2, model: saturating };
    assert_eq!(solve(&problem, &[1.0, 1.0]), None);
}
