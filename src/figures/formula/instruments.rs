//! What a hygrometer or thermometer reads once it has been tested, and how far it may still be wrong.
//!
//! Humidity is tested over a saturated solution of table salt, which keeps the air above it at 75 %;
//! temperature in a slush of ice and water, at 0 °C. A test finds the offset at that one point. A slush
//! tests the cold end only: compare near the working temperature as well, with a clinical thermometer.

use super::domain::{OutOfRange, within};

/// The humidity over saturated table salt, in °C and %, as it falls a little with temperature.
///
/// Source: L. Greenspan 1977, J. Res. Natl. Bur. Stand. 81A:89-96; 25 °C read in secondary texts, the others
/// from memory.
const SALT: [(f64, f64); 5] =
    [(15.0, 75.6), (20.0, 75.5), (25.0, 75.3), (30.0, 75.1), (35.0, 74.9)];

/// The greatest offset that is corrected; an instrument further off is broken (common practice, no source).
const GREATEST_HUMIDITY_OFFSET: f64 = 15.0;
const GREATEST_TEMPERATURE_OFFSET: f64 = 5.0;

/// Returns the relative humidity in % over saturated table salt at `temperature_c`.
///
/// # Errors
///
/// [`OutOfRange`] when the temperature is not within 15 to 35 °C.
///
/// # Example
///
/// ```
/// use wardsheet::figures::formula::instruments::salt_humidity_percent;
///
/// assert_eq!(salt_humidity_percent(25.0), Ok(75.3));
/// ```
pub fn salt_humidity_percent(temperature_c: f64) -> Result<f64, OutOfRange> {
    within("temperature_c", temperature_c, 15.0, 35.0)?;
    let above = SALT.iter().position(|&(known, _)| known >= temperature_c).unwrap_or(0).max(1);
    let ((low_c, low), (high_c, high)) = (SALT[above - 1], SALT[above]);
    Ok(low + (high - low) * (temperature_c - low_c) / (high_c - low_c))
}

/// Returns what has to be added to a hygrometer's readings, from its reading over salt at `temperature_c`.
///
/// # Errors
///
/// [`OutOfRange`] when the temperature is not within 15 to 35 °C, or the reading so far off that the
/// instrument has to be replaced.
///
/// # Example
///
/// A hygrometer that reads 71 % over salt is 4.3 short:
///
/// ```
/// use wardsheet::figures::formula::instruments::humidity_offset_percent;
///
/// let offset = humidity_offset_percent(71.0, 25.0)?;
/// assert!((offset - 4.3).abs() < 1e-9);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
pub fn humidity_offset_percent(
    reading_percent: f64,
    temperature_c: f64,
) -> Result<f64, OutOfRange> {
    let salt = salt_humidity_percent(temperature_c)?;
    let (low, high) = (salt - GREATEST_HUMIDITY_OFFSET, salt + GREATEST_HUMIDITY_OFFSET);
    Ok(salt - within("reading_percent", reading_percent, low, high)?)
}

/// Returns what has to be added to a thermometer's readings, from its reading in a slush of ice and water.
///
/// # Errors
///
/// [`OutOfRange`] when the reading is so far off that the instrument has to be replaced.
pub fn temperature_offset_k(reading_in_ice_c: f64) -> Result<f64, OutOfRange> {
    let bound = GREATEST_TEMPERATURE_OFFSET;
    Ok(-within("reading_in_ice_c", reading_in_ice_c, -bound, bound)?)
}

/// A corrected reading, and the bounds within which the truth lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corrected {
    /// The least it may be.
    pub low: f64,
    /// The reading with the offset added.
    pub value: f64,
    /// The most it may be.
    pub high: f64,
}

impl Corrected {
    /// Whether the truth is surely within `low` to `high`, both included.
    #[must_use]
    pub fn surely_within(&self, low: f64, high: f64) -> bool {
        low <= self.low && self.high <= high
    }

    /// Whether the truth is surely outside `low` to `high`.
    #[must_use]
    pub fn surely_outside(&self, low: f64, high: f64) -> bool {
        self.high < low || high < self.low
    }
}

/// Returns a humidity reading corrected by an offset, with bounds by the instrument's accuracy.
///
/// The accuracy is the maker's plus or minus; nothing reads below 0 or above 100 %.
///
/// # Errors
///
/// [`OutOfRange`] when the reading is not within 0 to 100 %, the offset beyond 15, or the accuracy not within
/// 0 to 20.
pub fn corrected_humidity_percent(
    reading_percent: f64,
    offset_percent: f64,
    accuracy_percent: f64,
) -> Result<Corrected, OutOfRange> {
    within("reading_percent", reading_percent, 0.0, 100.0)?;
    let bound = GREATEST_HUMIDITY_OFFSET;
    within("offset_percent", offset_percent, -bound, bound)?;
    within("accuracy_percent", accuracy_percent, 0.0, 20.0)?;
    let value = reading_percent + offset_percent;
    let bounded = |humidity: f64| humidity.clamp(0.0, 100.0);
    Ok(Corrected {
        low: bounded(value - accuracy_percent),
        value: bounded(value),
        high: bounded(value + accuracy_percent),
    })
}

/// Returns a temperature reading corrected by an offset, with bounds by the instrument's accuracy.
///
/// # Errors
///
/// [`OutOfRange`] when the reading is not within -40 to 150 °C, the offset beyond 5 K, or the accuracy not
/// within 0 to 10 K.
pub fn corrected_temperature_c(
    reading_c: f64,
    offset_k: f64,
    accuracy_k: f64,
) -> Result<Corrected, OutOfRange> {
    within("reading_c", reading_c, -40.0, 150.0)?;
    let bound = GREATEST_TEMPERATURE_OFFSET;
    within("offset_k", offset_k, -bound, bound)?;
    within("accuracy_k", accuracy_k, 0.0, 10.0)?;
    let value = reading_c + offset_k;
    Ok(Corrected { low: value - accuracy_k, value, high: value + accuracy_k })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_tested_hygrometer_reads_the_salt_right(reading in 61.0..89.0_f64, temperature in 15.0..35.0_f64) {
            let offset = humidity_offset_percent(reading, temperature).expect("near enough");
            let corrected = corrected_humidity_percent(reading, offset, 2.0).expect("in range");
            let salt = salt_humidity_percent(temperature).expect("in range");
            prop_assert!((corrected.value - salt).abs() < 1e-9);
        }

        #[test]
        fn a_less_accurate_instrument_has_wider_bounds(
            reading in 0.0..100.0_f64, offset in -10.0..10.0_f64, accuracy in 0.5..10.0_f64,
        ) {
            let near = corrected_humidity_percent(reading, offset, accuracy).expect("in range");
            let rough = corrected_humidity_percent(reading, offset, 2.0 * accuracy).expect("in range");
            prop_assert!(rough.low <= near.low && near.high <= rough.high);
            prop_assert!(rough.low <= rough.value && rough.value <= rough.high);
            prop_assert!(rough.low >= 0.0 && rough.high <= 100.0);
        }
    }

    #[test]
    fn a_thermometer_that_reads_one_in_ice_is_one_too_warm() {
        let offset = temperature_offset_k(1.0).expect("near enough");
        let corrected = corrected_temperature_c(32.0, offset, 0.5).expect("in range");
        assert_eq!(corrected, Corrected { low: 30.5, value: 31.0, high: 31.5 });
        assert!(corrected.surely_within(30.0, 32.0) && !corrected.surely_within(31.0, 32.0));
        assert!(corrected.surely_outside(32.0, 34.0) && !corrected.surely_outside(31.2, 34.0));
    }

    #[test]
    fn an_instrument_too_far_off_is_not_corrected() {
        assert_eq!(
            humidity_offset_percent(50.0, 25.0).expect_err("broken").argument,
            "reading_percent"
        );
        assert_eq!(temperature_offset_k(9.0).expect_err("broken").argument, "reading_in_ice_c");
    }

    #[test]
    fn salt_air_is_a_little_drier_when_warm() {
        assert_eq!(salt_humidity_percent(15.0), Ok(75.6));
        assert_eq!(salt_humidity_percent(35.0), Ok(74.9));
        assert!((salt_humidity_percent(22.5).expect("in range") - 75.4).abs() < 1e-9);
    }
}
