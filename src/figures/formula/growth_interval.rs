//! How likely each adult length is, given one animal's measurements and its species.
//!
//! For every adult length on a grid the two other unknowns are summed over, not fixed at their best: the
//! length on the first day in closed form, since the curve is linear in it, and the rate by Gauss-Hermite
//! quadrature about its likeliest value. The interval is the shortest that holds 90 % of what remains. It
//! stands in for the profile-likelihood interval, whose threshold rests on many data, and which it nears as
//! they grow many. With one or three measurements too it holds the true adult length of nine animals in
//! ten, over animals that come as the priors say; a test draws such animals, and another adds up all curves.

use super::growth::GrowthCurve;
#[cfg(test)]
use super::growth_data::GrowthRate;
use super::growth_data::{AdultRange, Datum};
use super::growth_fit::PenalisedGrowth;
use super::growth_marginal::Marginal;
use super::least_squares::Solution;

/// The nodes of quadrature over the rate.
const NODES: usize = 5;

/// Nodes of five-point Gauss-Hermite quadrature, and the logarithms of its weights times exp(x²)
/// (M. Abramowitz and I. A. Stegun 1964, Handbook of Mathematical Functions, table 25.10).
const HERMITE: [(f64, f64); NODES] = [
    (-2.020182870456086, 0.166775190460090),
    (-0.958572464613819, -0.013509851718672),
    (0.0, -0.056243716497674),
    (0.958572464613819, -0.013509851718672),
    (2.020182870456086, 0.166775190460090),
];

/// The likelihood of curves, with the data laid out for speed.
#[derive(Debug, Clone)]
pub(crate) struct Likelihood<'a> {
    problem: &'a PenalisedGrowth<'a>,
    years: Vec<f64>,
    weights: Vec<f64>,
    left: Vec<f64>,
    /// The rate last found likeliest: the next adult length on the grid starts from it.
    log_rate: f64,
}

/// What the data say of one adult length and one rate.
#[derive(Debug, Clone, Copy)]
struct AtRate {
    /// The weighted misfit and the rate's penalty: half a sum of squares.
    misfit: f64,
    /// Its derivative by the logarithm of the rate.
    slope: f64,
    /// Its second derivative, as Gauss and Newton take it.
    curvature: f64,
    /// Minus the log likelihood, the first length summed over.
    surprise: f64,
    /// The likeliest first length.
    first_cm: f64,
}

/// A rate, the first length that goes with it, and their share of the likelihood of an adult length.
#[derive(Debug, Clone, Copy)]
pub(crate) struct WeightedRate {
    pub(crate) log_rate: f64,
    pub(crate) first_cm: f64,
    pub(crate) weight: f64,
}

impl<'a> Likelihood<'a> {
    /// Lays out the data of `problem`, with `log_rate` as the first guess of the rate.
    pub(crate) fn new(problem: &'a PenalisedGrowth<'a>, log_rate: f64) -> Self {
        let count = problem.data.len();
        let weight = |datum: &Datum| {
            let error_cm = datum.error_cm * problem.error_scale;
            1.0 / (error_cm * error_cm)
        };
        Self {
            problem,
            years: (0..count).map(|i| problem.years(i)).collect(),
            weights: problem.data.iter().map(weight).collect(),
            left: vec![0.0; count],
            log_rate,
        }
    }

    /// The log likelihood of an adult length, by the curvature at the likeliest rate: quick and near.
    pub(crate) fn rough(&mut self, log_adult: f64) -> f64 {
        let at = self.likeliest_rate(log_adult);
        self.log_prior(log_adult) - at.surprise - 0.5 * libm::log(at.curvature)
    }

    /// The log likelihood of an adult length, the rate summed over.
    pub(crate) fn exact(&mut self, log_adult: f64) -> f64 {
        let (log_mass, _) = self.rates(log_adult);
        self.log_prior(log_adult) + log_mass
    }

    /// The rates that go with an adult length, weighted; and the logarithm of the sum of their likelihoods.
    pub(crate) fn rates(&mut self, log_adult: f64) -> (f64, [WeightedRate; NODES]) {
        let likeliest = self.likeliest_rate(log_adult);
        let spread = (2.0 / likeliest.curvature).sqrt();
        let middle = self.log_rate;
        let nodes = HERMITE.map(|(node, log_weight)| {
            let log_rate = middle + spread * node;
            // The middle node is the likeliest rate itself.
            let at = if node == 0.0 { likeliest } else { self.at(log_adult, log_rate) };
            (
                log_weight - at.surprise,
                WeightedRate { log_rate, first_cm: at.first_cm, weight: 0.0 },
            )
        });
        let peak = nodes.iter().map(|node| node.0).fold(f64::NEG_INFINITY, f64::max);
        let shares = nodes.map(|node| libm::exp(node.0 - peak));
        let sum: f64 = shares.iter().sum();
        let mut rates = nodes.map(|node| node.1);
        for (rate, share) in rates.iter_mut().zip(shares) {
            rate.weight = share / sum;
        }
        (peak + libm::log(sum) + libm::log(spread), rates)
    }

    /// The likeliest curve to an adult length.
    pub(crate) fn curve(&mut self, log_adult: f64) -> GrowthCurve {
        let at = self.likeliest_rate(log_adult);
        GrowthCurve {
            adult_length_cm: libm::exp(log_adult),
            k_per_year: libm::exp(self.log_rate),
            day: self.problem.data[0].day,
            length_cm: at.first_cm,
        }
    }

    /// Walks to the likeliest rate for an adult length, leaves it in `log_rate`, and returns what is there.
    fn likeliest_rate(&mut self, log_adult: f64) -> AtRate {
        let mut at = self.at(log_adult, self.log_rate);
        for _ in 0..12 {
            let mut step = (-at.slope / at.curvature).clamp(-1.0, 1.0);
            // A hundredth of the spread is all that the quadrature about it needs.
            if step * step * at.curvature < 1e-4 {
                break;
            }
            let mut next = self.at(log_adult, self.log_rate + step);
            for _ in 0..6 {
                if next.misfit <= at.misfit {
                    break;
                }
                step /= 3.0;
                next = self.at(log_adult, self.log_rate + step);
            }
            if next.misfit > at.misfit {
                break;
            }
            self.log_rate += step;
            at = next;
        }
        at
    }

    /// Weighs one adult length with one rate. `left[i]` is the share of the growth still to do at datum `i`.
    fn at(&mut self, log_adult: f64, log_rate: f64) -> AtRate {
        let (adult_cm, k) = (libm::exp(log_adult), libm::exp(log_rate));
        let (mut square, mut product) = (0.0, 0.0);
        for (i, datum) in self.problem.data.iter().enumerate() {
            let left = libm::exp(-k * self.years[i]);
            self.left[i] = left;
            square += self.weights[i] * left * left;
            product += self.weights[i] * left * (datum.length_cm - adult_cm * (1.0 - left));
        }
        let first_cm = product / square;
        let (mut misfit, mut slope, mut curvature, mut shared) = (0.0, 0.0, 0.0, 0.0);
        for (i, datum) in self.problem.data.iter().enumerate() {
            let left = self.left[i];
            let missed = datum.length_cm - adult_cm + (adult_cm - first_cm) * left;
            let by_rate = (adult_cm - first_cm) * k * self.years[i] * left;
            misfit += self.weights[i] * missed * missed;
            slope -= self.weights[i] * missed * by_rate;
            curvature += self.weights[i] * by_rate * by_rate;
            shared += self.weights[i] * by_rate * left;
        }
        let rate = self.problem.rate;
        let deviation = (log_rate - rate.log_median) / rate.log_sd;
        let misfit = 0.5 * (misfit + deviation * deviation);
        // The first length, with a flat prior below the adult length, summed over in closed form.
        let room = (adult_cm - first_cm) * square.sqrt();
        AtRate {
            misfit,
            slope: slope + deviation / rate.log_sd,
            curvature: (curvature - shared * shared / square).max(0.0)
                + 1.0 / (rate.log_sd * rate.log_sd),
            surprise: misfit + 0.5 * libm::log(square) - log_normal_below(room),
            first_cm: first_cm.clamp(0.0, adult_cm),
        }
    }

    fn log_prior(&self, log_adult: f64) -> f64 {
        log_prior(self.problem.adult, log_adult)
    }
}

/// The adult lengths that the measurements leave likely, about the `best` fit.
pub(crate) fn adult_length(problem: &PenalisedGrowth<'_>, best: &Solution) -> Option<Marginal> {
    let (middle, sd) = (best.parameters[0], best.unit_covariance[0][0].sqrt());
    let mut rough = Likelihood::new(problem, best.parameters[1]);
    let mut exact = rough.clone();
    // A great adult length is harder to rule out than a small one.
    let guess = (middle - 5.0 * sd, middle + 9.0 * sd);
    Marginal::over(guess, |log_adult| rough.rough(log_adult), |log_adult| exact.exact(log_adult))
}

/// The adult lengths of the species, less those below what the animal measures already.
///
/// The species' range is cut off at the longest measurement, softly, by as much as that may be wrong;
/// without one it is whole.
pub(crate) fn at_least_as_long(adult: AdultRange, longest: Option<Datum>) -> Option<Marginal> {
    let species = (adult.log_middle - 5.0 * adult.log_sd, adult.log_middle + 5.0 * adult.log_sd);
    let Some(longest) = longest else {
        return Marginal::over(species, |at| log_prior(adult, at), |at| log_prior(adult, at));
    };
    let log_density = |log_adult: f64| {
        let room = (libm::exp(log_adult) - longest.length_cm) / longest.error_cm;
        log_prior(adult, log_adult) + log_normal_below(room)
    };
    let error = longest.error_cm / longest.length_cm;
    let low = species.0.max(libm::log(longest.length_cm) - 8.0 * error);
    let high = species.1.max(low + 16.0 * error);
    Marginal::over((low, high), log_density, log_density)
}

fn log_prior(adult: AdultRange, log_adult: f64) -> f64 {
    let deviation = (log_adult - adult.log_middle) / adult.log_sd;
    -0.5 * deviation * deviation
}

/// The logarithm of the probability that a standard normal lies below `z`.
fn log_normal_below(z: f64) -> f64 {
    if z > 6.0 {
        0.0
    } else if z > -20.0 {
        libm::log(0.5 * libm::erfc(-z / std::f64::consts::SQRT_2))
    } else {
        // The leading terms of the asymptotic series (Abramowitz and Stegun 1964, eq. 26.2.12).
        -0.5 * z * z - libm::log(-z) - 0.918_938_533_204_672_7 - 1.0 / (z * z)
    }
}

#[cfg(test)]
mod tests;
