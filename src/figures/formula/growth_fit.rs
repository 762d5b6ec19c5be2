//! The likeliest growth curve of one animal, by penalised least squares.
//!
//! Three unknowns: the adult length `A` and the rate `k`, both drawn towards the species by a penalty, and
//! how far the animal had grown on the first day. That last one is of no interest in itself, but with it
//! every measurement's error counts once and no birth date is needed:
//! `L(t) = A - (A - L₁) exp(-k (t - t₁))` with `L₁ = A (1 - exp(-u))`. The fit is in ln A, ln k and ln u,
//! which keeps all lengths positive and below the adult length.
//!
//! Errors are taken as independent and normal. Real animals also grow by seasons, which is no error of
//! the tape; where the lengths scatter about the curve more than the tape allows, all errors are raised
//! to match ([`error_scale`]), and never lowered.

use super::growth::DAYS_PER_YEAR;
use super::growth_data::{AdultRange, Datum, GrowthRate};
use super::least_squares::{Residuals, Solution, solve};

/// How many measurements' worth of trust the stated error has when the scatter is judged.
const STATED_ERROR_WEIGHT: f64 = 4.0;

/// The standard deviation of ln u about 0: so wide that a hatchling (u = 0.1) and an adult (u = 5) are alike.
///
/// It only gives the search a floor to stand on where a full-grown animal could be of any age.
const LOG_GROWN_SD: f64 = 3.0;

/// The data in order of day, with the three penalties: a least-squares problem.
#[derive(Debug, Clone)]
pub(crate) struct PenalisedGrowth<'a> {
    pub(crate) data: &'a [Datum],
    pub(crate) adult: AdultRange,
    pub(crate) rate: GrowthRate,
    /// What every error is multiplied by.
    pub(crate) error_scale: f64,
}

impl PenalisedGrowth<'_> {
    /// The years from the first datum to datum `i`.
    pub(crate) fn years(&self, i: usize) -> f64 {
        (self.data[i].day - self.data[0].day) / DAYS_PER_YEAR
    }

    /// Returns the likeliest (ln adult length, ln rate, ln of the growth done); `None` without data.
    ///
    /// The search is begun from three rates, since with few data a slow curve to a great length and a fast
    /// one to a small length can each have a hollow of their own.
    pub(crate) fn fit(&self) -> Option<Solution> {
        let first = self.data.first()?;
        let longest_cm = self.data.iter().map(|datum| datum.length_cm).fold(0.0, f64::max);
        let log_adult = self.adult.log_middle.max(libm::log(1.05 * longest_cm));
        let log_grown = libm::log(-libm::log1p(-first.length_cm / libm::exp(log_adult)));
        [-1.0, 0.0, 1.0]
            .into_iter()
            .filter_map(|deviations| {
                let log_rate = self.rate.log_median + deviations * self.rate.log_sd;
                solve(self, &[log_adult, log_rate, log_grown])
            })
            .min_by(|a, b| a.residual_sum_of_squares.total_cmp(&b.residual_sum_of_squares))
    }
}

impl Residuals for PenalisedGrowth<'_> {
    fn parameters(&self) -> usize {
        3
    }

    fn residuals(&self) -> usize {
        self.data.len() + 3
    }

    fn evaluate(&self, parameters: &[f64], residuals: &mut [f64], derivatives: &mut [f64]) {
        let (count, data) = (self.residuals(), self.data.len());
        let adult_cm = libm::exp(parameters[0]);
        let k = libm::exp(parameters[1]);
        let grown = libm::exp(parameters[2]);
        derivatives.fill(0.0);
        for (i, datum) in self.data.iter().enumerate() {
            let years = self.years(i);
            let left = libm::exp(-grown - k * years);
            let weight = 1.0 / (datum.error_cm * self.error_scale);
            residuals[i] = weight * (adult_cm * (1.0 - left) - datum.length_cm);
            derivatives[i] = weight * adult_cm * (1.0 - left);
            derivatives[count + i] = weight * adult_cm * k * years * left;
            derivatives[2 * count + i] = weight * adult_cm * grown * left;
        }
        let penalties = [
            (self.adult.log_middle, self.adult.log_sd),
            (self.rate.log_median, self.rate.log_sd),
            (0.0, LOG_GROWN_SD),
        ];
        for (j, (middle, sd)) in penalties.into_iter().enumerate() {
            residuals[data + j] = (parameters[j] - middle) / sd;
            derivatives[j * count + data + j] = 1.0 / sd;
        }
    }
}

/// Returns by how much the measurements scatter more than their stated errors: 1, or above.
///
/// The scatter is judged about a curve that the species hardly holds (its priors widened tenfold), so
/// that an animal which outgrows its species is not mistaken for a badly measured one. The stated error
/// counts as four further measurements, and three data are spent on the curve itself: with `Q` the
/// weighted sum of squares of `n` data, the scale is the root of `(4 + Q)/(4 + n - 3)`. Below four data
/// there is nothing to judge by, and the scale is 1.
pub(crate) fn error_scale(data: &[Datum], adult: AdultRange, rate: GrowthRate) -> f64 {
    if data.len() < 4 {
        return 1.0;
    }
    let free = PenalisedGrowth {
        data,
        adult: AdultRange { log_sd: 10.0 * adult.log_sd, ..adult },
        rate: GrowthRate { log_sd: 10.0 * rate.log_sd, ..rate },
        error_scale: 1.0,
    };
    let Some(solution) = free.fit() else {
        return 1.0;
    };
    let mut residuals = vec![0.0; free.residuals()];
    let mut derivatives = vec![0.0; free.residuals() * free.parameters()];
    free.evaluate(&solution.parameters, &mut residuals, &mut derivatives);
    let scatter: f64 = residuals[..data.len()].iter().map(|residual| residual * residual).sum();
    let expected = STATED_ERROR_WEIGHT + data.len() as f64 - 3.0;
    ((STATED_ERROR_WEIGHT + scatter) / expected).max(1.0).sqrt()
}
