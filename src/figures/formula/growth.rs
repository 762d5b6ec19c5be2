//! The von Bertalanffy curve: length against time for an animal that grows ever slower towards a limit.
//!
//! The curve is a model of growth, not a law: seasons, brumation, illness and feeding all bend it. Its
//! limit is taken as the adult length. L. von Bertalanffy 1938, Human Biology 10:181-213.

use super::domain::{OutOfRange, at_least};

/// The days in a year, by which a rate per year becomes one per day.
pub const DAYS_PER_YEAR: f64 = 365.25;

/// One growth curve, fixed by its limit, its rate and one point that it passes through.
///
/// No birth date is needed: any day on which the length is known will do.
///
/// # Example
///
/// An animal of 60 cm that will be 150 cm grows 90 cm in all, 33 of them in the first year at 0.45 a year:
///
/// ```
/// use wardsheet::figures::formula::growth::{DAYS_PER_YEAR, GrowthCurve};
///
/// let curve = GrowthCurve::new(150.0, 0.45, 0.0, 60.0)?;
/// assert_eq!(curve.length_cm(DAYS_PER_YEAR).round(), 93.0);
/// assert!(curve.day_of_length(150.0).is_none());
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: the form of A. J. Fabens 1965, Growth 29:265-289, for animals of unknown age (from memory).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GrowthCurve {
    /// The length that the curve approaches.
    pub adult_length_cm: f64,
    /// The rate at which the remaining growth shrinks; ln 2 over it is the time that halves it.
    pub k_per_year: f64,
    /// The day of the point that the curve passes through, counted from any day the caller likes.
    pub day: f64,
    /// The length on that day.
    pub length_cm: f64,
}

impl GrowthCurve {
    /// Makes the curve that passes through `length_cm` on `day`.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the adult length or the rate is not positive, or the length is negative or
    /// above the adult length.
    pub fn new(
        adult_length_cm: f64,
        k_per_year: f64,
        day: f64,
        length_cm: f64,
    ) -> Result<Self, OutOfRange> {
        at_least("adult_length_cm", adult_length_cm, f64::MIN_POSITIVE)?;
        at_least("k_per_year", k_per_year, f64::MIN_POSITIVE)?;
        super::domain::within("day", day, f64::MIN, f64::MAX)?;
        super::domain::within("length_cm", length_cm, 0.0, adult_length_cm)?;
        Ok(Self { adult_length_cm, k_per_year, day, length_cm })
    }

    /// Makes the curve from its textbook parameters, day 0 being the day of age 0.
    ///
    /// `t0_years` is the age at which the length would have been nothing; it is seldom above 0.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] as for [`GrowthCurve::new`]; a `t0_years` above 0 has no length at age 0.
    pub fn from_age(
        adult_length_cm: f64,
        k_per_year: f64,
        t0_years: f64,
    ) -> Result<Self, OutOfRange> {
        let length_cm = adult_length_cm * -libm::expm1(k_per_year * t0_years);
        Self::new(adult_length_cm, k_per_year, 0.0, length_cm)
    }

    /// Returns the length in cm on `day`, which may lie before or after the known point.
    ///
    /// Long before the known point the curve goes below nothing; that is no length of an animal.
    #[must_use]
    pub fn length_cm(&self, day: f64) -> f64 {
        let years = (day - self.day) / DAYS_PER_YEAR;
        self.adult_length_cm - self.remaining_cm() * libm::exp(-self.k_per_year * years)
    }

    /// Returns the growth rate in cm a year on `day`.
    #[must_use]
    pub fn rate_cm_per_year(&self, day: f64) -> f64 {
        self.k_per_year * (self.adult_length_cm - self.length_cm(day))
    }

    /// Returns the day on which the curve passes `length_cm`; `None` when it never does.
    ///
    /// A length at or above the adult length is never passed, and a full-grown animal passes none.
    #[must_use]
    pub fn day_of_length(&self, length_cm: f64) -> Option<f64> {
        let then_remaining_cm = self.adult_length_cm - length_cm;
        if then_remaining_cm <= 0.0 || self.remaining_cm() <= 0.0 {
            return None;
        }
        let years = libm::log(self.remaining_cm() / then_remaining_cm) / self.k_per_year;
        Some(self.day + years * DAYS_PER_YEAR)
    }

    /// What is left to grow at the known point.
    fn remaining_cm(&self) -> f64 {
        self.adult_length_cm - self.length_cm
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn the_day_of_a_length_has_that_length(
            adult in 20.0..900.0_f64, k in 0.05..2.0_f64, now in 0.05..0.95_f64, then in 0.05..0.95_f64,
        ) {
            let curve = GrowthCurve::new(adult, k, 100.0, now * adult).expect("a curve");
            let day = curve.day_of_length(then * adult).expect("reached");
            prop_assert!((curve.length_cm(day) / (then * adult) - 1.0).abs() < 1e-9);
        }

        #[test]
        fn any_point_of_a_curve_gives_the_same_curve(
            adult in 20.0..900.0_f64, k in 0.05..2.0_f64, now in 0.05..0.95_f64, day in -300.0..3000.0_f64,
        ) {
            let curve = GrowthCurve::new(adult, k, 0.0, now * adult).expect("a curve");
            prop_assume!(curve.length_cm(day) > 0.0);
            let again = GrowthCurve::new(adult, k, day, curve.length_cm(day)).expect("a curve");
            prop_assert!((again.length_cm(777.0) / curve.length_cm(777.0) - 1.0).abs() < 1e-9);
        }

        #[test]
        fn an_animal_grows_ever_slower_and_never_past_its_adult_length(
            adult in 20.0..900.0_f64, k in 0.05..2.0_f64, now in 0.05..0.95_f64, day in 1.0..9000.0_f64,
        ) {
            let curve = GrowthCurve::new(adult, k, 0.0, now * adult).expect("a curve");
            prop_assert!(curve.length_cm(day) > curve.length_cm(0.0));
            prop_assert!(curve.length_cm(day) <= adult);
            prop_assert!(curve.rate_cm_per_year(day) < curve.rate_cm_per_year(0.0));
        }
    }

    #[test]
    fn half_of_the_remaining_growth_is_done_after_ln_2_over_k() {
        let curve = GrowthCurve::new(200.0, 0.5, 0.0, 50.0).expect("a curve");
        let day = std::f64::consts::LN_2 / 0.5 * DAYS_PER_YEAR;
        assert!((curve.length_cm(day) - 125.0).abs() < 1e-9);
    }

    #[test]
    fn a_full_grown_animal_passes_no_further_length() {
        let curve = GrowthCurve::new(120.0, 0.3, 0.0, 120.0).expect("a curve");
        assert_eq!(curve.day_of_length(119.0), None);
        assert_eq!(curve.length_cm(5000.0), 120.0);
    }

    #[test]
    fn a_curve_needs_a_limit_and_a_rate() {
        assert_eq!(
            GrowthCurve::new(0.0, 0.5, 0.0, 0.0).expect_err("no limit").argument,
            "adult_length_cm"
        );
        assert_eq!(
            GrowthCurve::new(100.0, -0.5, 0.0, 20.0).expect_err("shrinks").argument,
            "k_per_year"
        );
        assert_eq!(
            GrowthCurve::new(100.0, 0.5, 0.0, 130.0).expect_err("too long").argument,
            "length_cm"
        );
    }
}
