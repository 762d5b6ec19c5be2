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
//! to match ([`PenalisedGrowth::solved`]), and never lowered.

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
    /// With few data a slow curve to a great length and a fast one to a small length can each have a hollow
    /// of their own, so nine starts are weighed, and the search goes down from the best that leads anywhere.
    fn fit(&self) -> Option<Solution> {
        let first = self.data.first()?;
        let longest_cm = self.data.iter().map(|datum| datum.length_cm).fold(0.0, f64::max);
        let shortest_adult = libm::log(1.02 * longest_cm);
        let mut starts = Vec::with_capacity(9);
        for adult_deviations in [-1.0, 0.0, 1.5] {
            let log_adult = self.adult.log_middle + adult_deviations * self.adult.log_sd;
            let log_adult = log_adult.max(shortest_adult + 0.1 * (1.0 + adult_deviations));
            let log_grown = libm::log(-libm::log1p(-first.length_cm / libm::exp(log_adult)));
            for rate_deviations in [-1.2, 0.0, 1.2] {
                let log_rate = self.rate.log_median + rate_deviations * self.rate.log_sd;
                let start = [log_adult, log_rate, log_grown];
                starts.push((self.sum_of_squares(&start), start));
            }
        }
        starts.sort_by(|a, b| a.0.total_cmp(&b.0));
        starts.into_iter().find_map(|(_, start)| solve(self, &start))
    }

    fn sum_of_squares(&self, parameters: &[f64; 3]) -> f64 {
        let mut residuals = vec![0.0; self.residuals()];
        self.evaluate(parameters, &mut residuals, &mut vec![0.0; 3 * self.residuals()]);
        residuals.iter().map(|residual| residual * residual).sum()
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

impl<'a> PenalisedGrowth<'a> {
    /// Makes the problem and solves it, the errors raised to what the scatter of the lengths shows.
    ///
    /// The scatter is judged about a curve that the species hardly holds (its priors widened tenfold), so
    /// that an animal which outgrows its species is not mistaken for a badly measured one. The stated error
    /// counts as four further measurements, and three data are spent on the curve itself: with `Q` the
    /// weighted sum of squares of `n` data, the scale is the root of `(4 + Q)/(4 + n - 3)`, or 1 if that is
    /// more. Below four data there is nothing to judge by.
    pub(crate) fn solved(
        data: &'a [Datum],
        adult: AdultRange,
        rate: GrowthRate,
    ) -> (Self, Option<Solution>) {
        let stated = Self { data, adult, rate, error_scale: 1.0 };
        let solution = stated.fit();
        // A curve that the species holds misses by more than a free one: if even it is near enough, so is that.
        let held = solution.as_ref().map_or(f64::INFINITY, |solution| stated.scale_shown(solution));
        if data.len() < 4 || held <= 1.0 {
            return (stated, solution);
        }
        let free = Self {
            adult: AdultRange { log_sd: 10.0 * adult.log_sd, ..adult },
            rate: GrowthRate { log_sd: 10.0 * rate.log_sd, ..rate },
            ..stated.clone()
        };
        let error_scale = free.fit().map_or(1.0, |solution| free.scale_shown(&solution).max(1.0));
        let raised = Self { error_scale, ..stated };
        let solution = raised.fit();
        (raised, solution)
    }

    /// The scale of the errors that the lengths show about a fitted curve; may be below 1.
    fn scale_shown(&self, solution: &Solution) -> f64 {
        let count = self.data.len();
        let mut residuals = vec![0.0; self.residuals()];
        let mut derivatives = vec![0.0; self.residuals() * self.parameters()];
        self.evaluate(&solution.parameters, &mut residuals, &mut derivatives);
        let scatter: f64 = residuals[..count].iter().map(|residual| residual * residual).sum();
        ((STATED_ERROR_WEIGHT + scatter) / (STATED_ERROR_WEIGHT + count as f64 - 3.0)).sqrt()
    }
}
