//! Nonlinear least squares: the parameters that bring a model closest to what was measured.
//!
//! The search is Levenberg and Marquardt's, as laid out in MINPACK (J. J. Moré 1978, Lecture Notes in
//! Mathematics 630:105-116). From a poor start its first step can land where the model no longer answers
//! to a parameter; it is then begun again with a shorter first step. A few Gauss-Newton steps at the end
//! bring the parameters to the last digits. The standard errors are the usual linear ones,
//! `s² (JᵀJ)⁻¹` with `s² = RSS/(n - p)`.

use levenberg_marquardt::{LeastSquaresProblem, LevenbergMarquardt};
use nalgebra::{DMatrix, DVector, Dyn, Owned};

/// The lengths of the first step that are tried in turn, relative to the start (MINPACK's `factor`).
const FIRST_STEPS: [f64; 3] = [100.0, 1.0, 0.01];

/// A standard error this many times its parameter means that the model does not answer to it.
const UNDETERMINED: f64 = 1e8;

/// A model and its measurements: what is left over, and how that changes with each parameter.
pub trait Residuals {
    /// The number of parameters.
    fn parameters(&self) -> usize;

    /// The number of residuals.
    fn residuals(&self) -> usize;

    /// Writes the residuals at `parameters`, and the derivatives of each residual by each parameter.
    ///
    /// `derivatives[j * n + i]` is that of residual `i` by parameter `j`, with `n` residuals.
    fn evaluate(&self, parameters: &[f64], residuals: &mut [f64], derivatives: &mut [f64]);
}

/// The best parameters, and how well they are known.
#[derive(Debug, Clone, PartialEq)]
pub struct Solution {
    /// The parameters at the least sum of squares.
    pub parameters: Vec<f64>,
    /// The residual sum of squares there.
    pub residual_sum_of_squares: f64,
    /// The number of residuals less the number of parameters.
    pub degrees_of_freedom: usize,
    /// `(JᵀJ)⁻¹`, row by row: the covariance if each residual has unit variance.
    pub unit_covariance: Vec<Vec<f64>>,
}

impl Solution {
    /// Returns the standard error of parameter `index`, the residuals' variance being estimated from them.
    ///
    /// `None` without degrees of freedom: as many parameters as measurements fit anything.
    #[must_use]
    pub fn standard_error(&self, index: usize) -> Option<f64> {
        let freedom = u32::try_from(self.degrees_of_freedom).ok().filter(|&freedom| freedom > 0)?;
        let variance = self.residual_sum_of_squares / f64::from(freedom);
        Some((variance * self.unit_covariance[index][index]).sqrt())
    }
}

/// Returns the parameters of least squares nearest to `start`.
///
/// `None` when the search does not settle, or settles where some parameter no longer matters: the
/// measurements do not determine the model.
///
/// # Panics
///
/// When `start` does not hold one value for each parameter.
///
/// # Example
///
/// A line through three points:
///
/// ```
/// use wardsheet::figures::formula::least_squares::{Residuals, solve};
///
/// struct Line;
/// impl Residuals for Line {
///     fn parameters(&self) -> usize { 2 }
///     fn residuals(&self) -> usize { 3 }
///     fn evaluate(&self, p: &[f64], residuals: &mut [f64], derivatives: &mut [f64]) {
///         for (i, y) in [1.0, 3.0, 5.0].into_iter().enumerate() {
///             residuals[i] = p[0] + p[1] * i as f64 - y;
///             derivatives[i] = 1.0;
///             derivatives[3 + i] = i as f64;
///         }
///     }
/// }
/// let line = solve(&Line, &[0.0, 1.0]).expect("determined");
/// assert!((line.parameters[1] - 2.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn solve<R: Residuals>(problem: &R, start: &[f64]) -> Option<Solution> {
    assert_eq!(start.len(), problem.parameters(), "one start for each parameter");
    FIRST_STEPS.into_iter().find_map(|first_step| {
        let settled = descend(problem, start, first_step);
        polish(problem, settled)
    })
}

/// Walks downhill from `start`; the result is only as good as the walk, which the polish then judges.
fn descend<R: Residuals>(problem: &R, start: &[f64], first_step: f64) -> DVector<f64> {
    let walk = Walk::at(problem, DVector::from_column_slice(start));
    let (walk, _report) = LevenbergMarquardt::new().with_stepbound(first_step).minimize(walk);
    walk.parameters
}

/// Takes Gauss-Newton steps to the bottom, and works out the covariance there.
fn polish<R: Residuals>(problem: &R, parameters: DVector<f64>) -> Option<Solution> {
    let mut best = Walk::at(problem, parameters);
    let mut covariance = best.unit_covariance()?;
    for _ in 0..20 {
        let step = &covariance * best.derivatives.tr_mul(&best.residuals);
        let next = Walk::at(problem, &best.parameters - &step);
        // Rounding in the sum of squares hides the last steps, which still sharpen the parameters.
        let worse = next.sum_of_squares() > best.sum_of_squares() * (1.0 + 1e-13);
        if worse || !next.sum_of_squares().is_finite() {
            break;
        }
        let moved = step.iter().zip(best.parameters.iter()).any(|(s, p)| s.abs() > 1e-13 * p.abs());
        covariance = next.unit_covariance()?;
        best = next;
        if !moved {
            break;
        }
    }
    let count = best.parameters.len();
    Some(Solution {
        residual_sum_of_squares: best.sum_of_squares(),
        degrees_of_freedom: problem.residuals().saturating_sub(count),
        unit_covariance: (0..count).map(|i| covariance.row(i).iter().copied().collect()).collect(),
        parameters: best.parameters.iter().copied().collect(),
    })
}

/// A place on the walk: the parameters, and the model there.
struct Walk<'a, R> {
    problem: &'a R,
    parameters: DVector<f64>,
    residuals: DVector<f64>,
    derivatives: DMatrix<f64>,
}

impl<'a, R: Residuals> Walk<'a, R> {
    fn at(problem: &'a R, parameters: DVector<f64>) -> Self {
        let (rows, columns) = (problem.residuals(), problem.parameters());
        let mut walk = Self {
            problem,
            parameters,
            residuals: DVector::zeros(rows),
            derivatives: DMatrix::zeros(rows, columns),
        };
        walk.evaluate();
        walk
    }

    fn evaluate(&mut self) {
        self.problem.evaluate(
            self.parameters.as_slice(),
            self.residuals.as_mut_slice(),
            self.derivatives.as_mut_slice(),
        );
    }

    fn sum_of_squares(&self) -> f64 {
        self.residuals.norm_squared()
    }

    /// `(JᵀJ)⁻¹`, worked out on columns of unit length since the parameters' sizes may differ widely.
    fn unit_covariance(&self) -> Option<DMatrix<f64>> {
        let scale: Vec<f64> = self.derivatives.column_iter().map(|column| column.norm()).collect();
        if scale.iter().any(|&length| !(length.is_finite() && length > 0.0)) {
            return None;
        }
        let mut normal = self.derivatives.tr_mul(&self.derivatives);
        scale_both(&mut normal, &scale);
        let mut inverse = normal.cholesky()?.inverse();
        scale_both(&mut inverse, &scale);
        let freedom = (self.residuals.len().saturating_sub(scale.len()).max(1)) as f64;
        let variance = self.sum_of_squares() / freedom;
        let determined = self.parameters.iter().enumerate().all(|(j, parameter)| {
            let error = (variance * inverse[(j, j)]).sqrt();
            error <= UNDETERMINED * parameter.abs().max(f64::MIN_POSITIVE)
        });
        determined.then_some(inverse)
    }
}

/// Divides row and column `j` of `matrix` by `scale[j]`, for every `j`.
fn scale_both(matrix: &mut DMatrix<f64>, scale: &[f64]) {
    for (i, row) in scale.iter().enumerate() {
        for (j, column) in scale.iter().enumerate() {
            matrix[(i, j)] /= row * column;
        }
    }
}

impl<R: Residuals> LeastSquaresProblem<f64, Dyn, Dyn> for Walk<'_, R> {
    type ResidualStorage = Owned<f64, Dyn>;
    type JacobianStorage = Owned<f64, Dyn, Dyn>;
    type ParameterStorage = Owned<f64, Dyn>;

    fn set_params(&mut self, parameters: &DVector<f64>) {
        self.parameters.copy_from(parameters);
        self.evaluate();
    }

    fn params(&self) -> DVector<f64> {
        self.parameters.clone()
    }

    fn residuals(&self) -> Option<DVector<f64>> {
        Some(self.residuals.clone())
    }

    fn jacobian(&self) -> Option<DMatrix<f64>> {
        Some(self.derivatives.clone())
    }
}
