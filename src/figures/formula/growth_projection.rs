//! The adult length to expect of one animal, and the day it will reach a given length.
//!
//! An animal without a measurement has its species' range. One measurement shows no growth, but cuts off
//! what it has outgrown. From the second on, its own growth counts, and the more the longer it is watched:
//! a year of fast early growth says little about the adult, and the width of the interval says so.

use super::domain::{OutOfRange, within};
use super::growth::{DAYS_PER_YEAR, GrowthCurve};
use super::growth_data::{AdultRange, Datum, GrowthRate, GrowthRecord};
use super::growth_fit::PenalisedGrowth;
use super::growth_interval::{Likelihood, adult_length, at_least_as_long};
use super::growth_marginal::Marginal;

/// The share of such animals whose adult length lies in the interval.
pub const LEVEL: f64 = 0.9;

/// An interval this much as wide as the species' own, or wider, says no more than the species does.
const AS_WIDE: f64 = 0.85;

/// How many adult lengths, equally likely, the day of reaching a length is worked out for.
const SAMPLED_LENGTHS: u32 = 24;

/// What a projected adult length rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Basis {
    /// The species' range: the animal has not been measured.
    SpeciesRange,
    /// The species' range less what the animal has outgrown: one measurement shows no growth.
    AtLeastThisLong,
    /// As above: it has been measured more than once, but that does not tell its adult length yet.
    NotEnoughYet,
    /// The animal's own growth, with its species as a background.
    Measurements,
}

/// The adult length to expect of one animal, and what leads to it.
#[derive(Debug, Clone, PartialEq)]
pub struct Projection {
    /// The adult length that the animal will as likely exceed as not.
    pub estimate_cm: f64,
    /// The low end of the shortest interval that holds the adult lengths of [`LEVEL`] of such animals.
    pub low_cm: f64,
    /// The high end of that interval.
    pub high_cm: f64,
    /// What these figures rest on.
    pub basis: Basis,
    /// How many measurements there are.
    pub measurements: usize,
    /// By how much the measurements scatter more than their errors allow; 1 when they do not.
    pub error_scale: f64,
    data: Vec<Datum>,
    adult: AdultRange,
    rate: GrowthRate,
    marginal: Option<Marginal>,
}

/// The days on which an animal is expected to reach a length, counted as its measurements' days are.
///
/// A day is `None` when the animal may well never reach the length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reach {
    /// The day before which one such animal in twenty has reached it.
    pub earliest_day: Option<f64>,
    /// The day by which half have reached it; `None` when fewer ever do.
    pub expected_day: Option<f64>,
    /// The day after which one in twenty reaches it; `None` when more never do.
    pub latest_day: Option<f64>,
    /// The share of such animals that ever reach it.
    pub probability: f64,
}

/// Returns the adult length to expect of one animal.
///
/// The result does not depend on the order of the measurements, and scales with the unit of length.
/// Averaged over animals that come as the priors say, the interval holds the true adult length nine times
/// in ten; its width for one animal is the message.
///
/// # Errors
///
/// [`OutOfRange`] for a measurement, a day or a birth length that cannot be.
///
/// # Example
///
/// A young animal, measured twice in a year:
///
/// ```
/// use wardsheet::figures::formula::growth_data::*;
/// use wardsheet::figures::formula::growth_projection::{Basis, project};
///
/// let length = |day, length_cm| LengthMeasurement { day, length_cm, error_cm: None };
/// let record = GrowthRecord {
///     measurements: vec![length(0.0, 92.0), length(180.0, 104.0), length(365.0, 111.5)],
///     birth: None,
///     adult: AdultRange::new(110.0, 170.0)?,
///     rate: GrowthRate::from_years_to_maturity(2.5)?,
/// };
/// let adult = project(&record)?;
/// assert_eq!(adult.basis, Basis::Measurements);
/// assert_eq!(adult.estimate_cm.round(), 138.0);
/// assert!(adult.low_cm > 118.0 && adult.high_cm < 163.0, "narrower than its species");
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: von Bertalanffy 1938 in the increment form of Fabens 1965; the interval as in `growth_interval`.
pub fn project(record: &GrowthRecord) -> Result<Projection, OutOfRange> {
    let measured = record.measured()?;
    let measurements = measured.len();
    let longest = measured.iter().copied().max_by(|a, b| a.length_cm.total_cmp(&b.length_cm));
    let mut data: Vec<Datum> = record.birth_datum()?.into_iter().collect();
    data.extend(measured);
    let (adult, rate) = (record.adult, record.rate);
    let species = at_least_as_long(adult, longest);
    let (error_scale, own) = if data.len() > 1 {
        let (problem, solution) = PenalisedGrowth::solved(&data, adult, rate);
        (problem.error_scale, solution.and_then(|best| adult_length(&problem, &best)))
    } else {
        (1.0, None)
    };
    // Against the whole range, which no measurement changes: so one more cannot turn enough into too little.
    let (low_cm, high_cm) = adult.ninety_percent_cm();
    let species_width = libm::log(high_cm / low_cm);
    let telling = own.filter(|own| {
        let (low, high) = own.shortest_interval(LEVEL);
        high - low < AS_WIDE * species_width
    });
    let basis = match (telling.is_some(), measurements) {
        (true, _) => Basis::Measurements,
        (false, 0) => Basis::SpeciesRange,
        (false, 1) => Basis::AtLeastThisLong,
        (false, _) => Basis::NotEnoughYet,
    };
    let marginal = telling.or(species);
    let (low_cm, high_cm) = match (&marginal, basis) {
        (Some(marginal), Basis::AtLeastThisLong | Basis::NotEnoughYet | Basis::Measurements) => {
            let (low, high) = marginal.shortest_interval(LEVEL);
            (libm::exp(low), libm::exp(high))
        }
        _ => adult.ninety_percent_cm(),
    };
    let estimate_cm = match (&marginal, basis) {
        (_, Basis::SpeciesRange) | (None, _) => adult.median_cm(),
        (Some(marginal), _) => libm::exp(marginal.quantile(0.5)),
    };
    Ok(Projection {
        estimate_cm,
        low_cm,
        high_cm,
        basis,
        measurements,
        error_scale,
        data,
        adult,
        rate,
        marginal,
    })
}

impl Projection {
    /// The likeliest curves to the low end, the estimate and the high end of the adult length.
    ///
    /// `None` when nothing is known to start from: no measurement and no birth.
    #[must_use]
    pub fn curves(&self) -> Option<[GrowthCurve; 3]> {
        self.data.first()?;
        let problem = self.problem();
        let mut likelihood = Likelihood::new(&problem, self.rate.log_median);
        let ends_cm = [self.low_cm, self.estimate_cm, self.high_cm];
        Some(ends_cm.map(|adult_cm| likelihood.curve(libm::log(adult_cm))))
    }

    /// The sum of squared distances in cm² of the measurements from the middle curve.
    #[must_use]
    pub fn residual_sum_of_squares_cm2(&self) -> f64 {
        let Some([_, middle, _]) = self.curves() else {
            return 0.0;
        };
        let measured = &self.data[self.data.len() - self.measurements..];
        measured
            .iter()
            .map(|datum| {
                let missed_cm = datum.length_cm - middle.length_cm(datum.day);
                missed_cm * missed_cm
            })
            .sum()
    }

    /// When the animal will reach `length_cm`.
    ///
    /// Both the adult length and the rate are uncertain, and they lean against each other: a faster animal
    /// may be a smaller one. So the days come from all likely curves, not from the three of
    /// [`Projection::curves`]. A length that the animal had on its first day is reached on that day. `None`
    /// when nothing is known to start from.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the length is not positive.
    pub fn reach(&self, length_cm: f64) -> Result<Option<Reach>, OutOfRange> {
        within("length_cm", length_cm, f64::MIN_POSITIVE, f64::MAX)?;
        let (Some(first), Some(marginal)) = (self.data.first(), &self.marginal) else {
            return Ok(None);
        };
        let problem = self.problem();
        let mut likelihood = Likelihood::new(&problem, self.rate.log_median);
        let never = marginal.probability_below(libm::log(length_cm));
        let share = (1.0 - never) / f64::from(SAMPLED_LENGTHS);
        let mut days = Vec::with_capacity(SAMPLED_LENGTHS as usize * 7);
        for i in 0..SAMPLED_LENGTHS {
            let log_adult = marginal.quantile(never + share * (f64::from(i) + 0.5));
            let remaining_cm = libm::exp(log_adult) - length_cm;
            if share <= 0.0 || remaining_cm <= 0.0 {
                continue;
            }
            for rate in likelihood.rates(log_adult).1 {
                let from_cm = libm::exp(log_adult) - rate.first_cm;
                let years = libm::log(from_cm / remaining_cm) / libm::exp(rate.log_rate);
                days.push((first.day + years.max(0.0) * DAYS_PER_YEAR, share * rate.weight));
            }
        }
        days.sort_by(|a, b| a.0.total_cmp(&b.0));
        Ok(Some(Reach {
            earliest_day: day_by_which(&days, 1.0 - (1.0 + LEVEL) / 2.0),
            expected_day: day_by_which(&days, 0.5),
            latest_day: day_by_which(&days, f64::midpoint(1.0, LEVEL)),
            probability: 1.0 - never,
        }))
    }

    fn problem(&self) -> PenalisedGrowth<'_> {
        PenalisedGrowth {
            data: &self.data,
            adult: self.adult,
            rate: self.rate,
            error_scale: self.error_scale,
        }
    }
}

/// The day by which `share` of all animals have reached a length; `None` when that many never do.
///
/// Each weighted day stands for the stretch about it, so days in between are taken in proportion.
fn day_by_which(days: &[(f64, f64)], share: f64) -> Option<f64> {
    let mut before = (0.0, days.first()?.0);
    let mut total = 0.0;
    for &(day, weight) in days {
        let middle = total + weight / 2.0;
        if middle >= share {
            let part = (share - before.0) / (middle - before.0).max(f64::MIN_POSITIVE);
            return Some(before.1 + part.clamp(0.0, 1.0) * (day - before.1));
        }
        before = (middle, day);
        total += weight;
    }
    (total >= share).then_some(before.1)
}
