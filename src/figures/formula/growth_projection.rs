//! The adult length to expect of one animal, and the day it will reach a given length.

use super::domain::OutOfRange;
use super::growth::GrowthCurve;
use super::growth_data::{Datum, GrowthRecord};
use super::growth_fit::{PenalisedGrowth, error_scale};
use super::growth_interval::{Likelihood, adult_length, at_least_as_long};
use super::growth_marginal::Marginal;

/// The share of animals whose adult length lies in the interval.
pub const LEVEL: f64 = 0.9;

/// An interval this much of the species' own, or wider, says no more than the species does.
const AS_WIDE: f64 = 0.85;

/// The adult lengths over which the day of reaching a length is worked out.
const SAMPLED_LENGTHS: u32 = 24;

/// What an adult length rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Basis {
    /// The species' range; the animal has not been measured.
    SpeciesRange,
    /// The species' range, less what the animal has outgrown already. One measurement shows no growth.
    AtLeastThisLong,
    /// As above: it has been measured more than once, but not enough to tell its adult length yet.
    NotEnoughYet,
    /// The animal's own growth, with its species as a background.
    Measurements,
}

/// The adult length to expect of one animal, with the curves that lead there.
#[derive(Debug, Clone, PartialEq)]
pub struct Projection {
    /// The adult length that it will as likely exceed as not.
    pub estimate_cm: f64,
    /// The low end of the shortest interval that holds the adult length of [`LEVEL`] of such animals.
    pub low_cm: f64,
    /// The high end of it.
    pub high_cm: f64,
    /// What the figures rest on.
    pub basis: Basis,
    /// How many measurements were used.
    pub measurements: usize,
    /// The likeliest curves to the low end, the estimate and the high end; `None` without a measurement.
    pub curves: Option<[GrowthCurve; 3]>,
    /// The sum of squared distances of the measurements from the middle curve.
    pub residual_sum_of_squares_cm2: f64,
    /// By how much the measurements scatter more than their errors allow; 1 when they do not.
    pub error_scale: f64,
    data: Vec<Datum>,
    marginal: Option<Marginal>,
    record: Priors,
}
