//! What is known of one animal's growth before a curve is fitted: its measurements, and its species.
//!
//! The species speaks through two priors, so that an animal with no measurement has an answer, two
//! measurements move it, and twenty overrule it.

use super::domain::{OutOfRange, at_least, within};
#[cfg(test)]
use super::growth::{DAYS_PER_YEAR, GrowthCurve};

/// The standard normal quantile of 95 %.
pub(crate) const NORMAL_95: f64 = 1.644_853_626_951_472_2;

/// The standard error taken for a length whose own error is not given, as a share of the length.
///
/// A snake drawn along a string or traced on glass is repeated to about 1 % (common practice, no source).
pub const DEFAULT_ERROR_SHARE: f64 = 0.01;

/// The narrowest adult range in which one is believed: 5 % to either side of its middle.
///
/// A species given as one number, or nearly so, still has animals longer and shorter than that.
const NARROWEST_LOG_HALF_WIDTH: f64 = 0.05;

/// One length of one animal.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LengthMeasurement {
    /// The day, counted from any day that all the animal's days are counted from.
    pub day: f64,
    /// The length.
    pub length_cm: f64,
    /// The standard error of measuring it; `None` takes [`DEFAULT_ERROR_SHARE`] of the length.
    pub error_cm: Option<f64>,
}

/// The day an animal hatched or was born, where that is known, with the lengths usual at birth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Birth {
    /// The day, counted as the measurements' days are.
    pub day: f64,
    /// The lengths between which nine in ten hatchlings lie.
    pub length_cm: (f64, f64),
}

/// The adult length of a species, for the animal's sex and form: a lognormal prior.
///
/// The two ends of a published adult range are taken as its 5 % and 95 % quantiles. Books give the sizes
/// of ordinary adults and leave out the runt and the record, so one animal in ten may well lie outside;
/// and since sizes vary in proportion, the range is spread on the logarithm of length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AdultRange {
    pub(crate) log_middle: f64,
    pub(crate) log_sd: f64,
}

impl AdultRange {
    /// Makes the prior from the low and the high end of an adult range.
    ///
    /// A range narrower than 5 % to either side is widened to that.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the low end is not positive or the high end is below it.
    pub fn new(low_cm: f64, high_cm: f64) -> Result<Self, OutOfRange> {
        within("low_cm", low_cm, f64::MIN_POSITIVE, f64::MAX)?;
        within("high_cm", high_cm, low_cm, f64::MAX)?;
        let (low, high) = (libm::log(low_cm), libm::log(high_cm));
        let half_width = ((high - low) / 2.0).max(NARROWEST_LOG_HALF_WIDTH);
        Ok(Self { log_middle: (low + high) / 2.0, log_sd: half_width / NORMAL_95 })
    }

    /// The length that half of the adults exceed.
    #[must_use]
    pub fn median_cm(&self) -> f64 {
        libm::exp(self.log_middle)
    }

    /// The lengths between which nine in ten adults lie.
    #[must_use]
    pub fn ninety_percent_cm(&self) -> (f64, f64) {
        let half_width = NORMAL_95 * self.log_sd;
        (libm::exp(self.log_middle - half_width), libm::exp(self.log_middle + half_width))
    }
}

/// How fast a species grows: a lognormal prior on the rate of the von Bertalanffy curve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GrowthRate {
    pub(crate) log_median: f64,
    pub(crate) log_sd: f64,
}

impl GrowthRate {
    /// Makes the prior from a median rate and the standard deviation of its logarithm.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the median is not within 0.001 to 20 a year or the deviation not within 0.05 to 2.
    pub fn new(median_per_year: f64, log_sd: f64) -> Result<Self, OutOfRange> {
        within("median_per_year", median_per_year, 0.001, 20.0)?;
        within("log_sd", log_sd, 0.05, 2.0)?;
        Ok(Self { log_median: libm::log(median_per_year), log_sd })
    }

    /// Makes a broad prior from the usual time to sexual maturity: a median of ln 3 over that time.
    ///
    /// A curve that starts at a quarter of its limit and matures at three quarters of it has two thirds of
    /// its growth left to do a third of: `k = ln(0.75 / 0.25) / years`. Maturity at three quarters follows
    /// from the mean adult, 1.19 times as long as at first breeding in 99 species of lizards (E. L. Charnov
    /// and R. Warne 2011, Evol. Ecol. Res. 13:753-757, abstract), and about nine tenths of the limit;
    /// that share and birth at a quarter are assumptions. A deviation of 0.6 lets birth lie between 0.15 and
    /// 0.4 of the limit and maturity between 0.6 and 0.8, within one standard deviation.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the time is not within 0.1 to 100 years.
    pub fn from_years_to_maturity(years: f64) -> Result<Self, OutOfRange> {
        within("years", years, 0.1, 100.0)?;
        Self::new(libm::log(3.0) / years, 0.6)
    }

    /// Makes a prior for a species of which nothing is known: a median of 0.4 a year, log deviation 1.
    ///
    /// Two thirds of it lie between 0.15 and 1.1 a year, from a tortoise that takes seven years to mature
    /// to a lizard that takes one (an assumption, no source).
    #[must_use]
    pub fn unknown() -> Self {
        Self { log_median: libm::log(0.4), log_sd: 1.0 }
    }

    /// The rate that half of the animals exceed.
    #[must_use]
    pub fn median_per_year(&self) -> f64 {
        libm::exp(self.log_median)
    }
}

/// All that is known of one animal's growth.
#[derive(Debug, Clone, PartialEq)]
pub struct GrowthRecord {
    /// Its lengths, in any order.
    pub measurements: Vec<LengthMeasurement>,
    /// Its birth, where known.
    pub birth: Option<Birth>,
    /// The adult length of its kind.
    pub adult: AdultRange,
    /// The growth rate of its kind.
    pub rate: GrowthRate,
}

/// A length with its error, on the way into a fit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Datum {
    pub(crate) day: f64,
    pub(crate) length_cm: f64,
    pub(crate) error_cm: f64,
}

impl GrowthRecord {
    /// The measured lengths in order of day, each with its error.
    ///
    /// They are sorted so that the order in which they were written down cannot change a digit.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] for a length that is not positive, an error that is not, or a day that is no number.
    pub(crate) fn measured(&self) -> Result<Vec<Datum>, OutOfRange> {
        let mut data = Vec::with_capacity(self.measurements.len() + 1);
        for measurement in &self.measurements {
            let length_cm = at_least("length_cm", measurement.length_cm, f64::MIN_POSITIVE)?;
            let day = within("day", measurement.day, -1e6, 1e7)?;
            let error_cm = match measurement.error_cm {
                // Nobody measures a live animal to better than a thousandth.
                Some(given) => at_least("error_cm", given, 0.0)?.max(0.001 * length_cm),
                None => DEFAULT_ERROR_SHARE * length_cm,
            };
            data.push(Datum { day, length_cm, error_cm });
        }
        data.sort_by(|a, b| {
            (a.day.total_cmp(&b.day))
                .then(a.length_cm.total_cmp(&b.length_cm))
                .then(a.error_cm.total_cmp(&b.error_cm))
        });
        Ok(data)
    }

    /// The length at birth as one more datum, where the day is known.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the range at birth is not one, or a measurement is older than the animal.
    pub(crate) fn birth_datum(&self) -> Result<Option<Datum>, OutOfRange> {
        let Some(Birth { day, length_cm: (low_cm, high_cm) }) = self.birth else {
            return Ok(None);
        };
        within("birth_length_cm", low_cm, f64::MIN_POSITIVE, high_cm)?;
        let first = self.measurements.iter().map(|m| m.day).fold(f64::INFINITY, f64::min);
        within("birth_day", day, -1e6, first.min(1e7))?;
        let length_cm = (low_cm + high_cm) / 2.0;
        let spread_cm = (high_cm - low_cm) / (2.0 * NORMAL_95);
        Ok(Some(Datum { day, length_cm, error_cm: spread_cm.max(0.01 * length_cm) }))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ends_of_a_published_range_hold_nine_adults_in_ten() {
        let (low, high) = AdultRange::new(110.0, 170.0).expect("a range").ninety_percent_cm();
        assert!((low - 110.0).abs() < 1e-9 && (high - 170.0).abs() < 1e-9);
    }

    #[test]
    fn a_single_number_still_leaves_room_for_variation() {
        let (low, high) = AdultRange::new(100.0, 100.0).expect("a range").ninety_percent_cm();
        assert!((low - 95.12).abs() < 0.01 && (high - 105.13).abs() < 0.01, "{low} to {high}");
    }

    #[test]
    fn an_animal_of_middling_size_matures_when_its_species_does() {
        let rate = GrowthRate::from_years_to_maturity(3.0).expect("a time");
        let from_birth = GrowthCurve::new(100.0, rate.median_per_year(), 0.0, 25.0);
        let days = from_birth.expect("a curve").day_of_length(75.0).expect("reached");
        assert!((days / DAYS_PER_YEAR - 3.0).abs() < 1e-9);
    }

    #[test]
    fn an_animal_is_not_measured_before_it_is_born() {
        let record = GrowthRecord {
            measurements: vec![LengthMeasurement { day: 3.0, length_cm: 30.0, error_cm: None }],
            birth: Some(Birth { day: 10.0, length_cm: (25.0, 35.0) }),
            adult: AdultRange::new(110.0, 170.0).expect("a range"),
            rate: GrowthRate::unknown(),
        };
        assert_eq!(record.birth_datum().expect_err("too early").argument, "birth_day");
    }

    #[test]
    fn ranges_the_wrong_way_round_are_refused() {
        assert_eq!(AdultRange::new(170.0, 110.0).expect_err("reversed").argument, "high_cm");
        assert_eq!(GrowthRate::new(0.0, 0.5).expect_err("no growth").argument, "median_per_year");
    }
}
