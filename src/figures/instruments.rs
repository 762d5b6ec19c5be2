//! What a probe really says: its reading corrected by its own tests, and how far the truth may lie from it.

use crate::model::housing::Instrument;

use super::formula::instruments::{humidity_offset_percent, temperature_offset_k};

/// The temperature at which a salt test is taken to have been made where none is given, °C; common practice, no source.
const TEST_C: f64 = 21.0;

/// What has to be added to an instrument's temperature, from its ice test, K. None without a test that can be believed.
pub fn temperature_offset(instrument: &Instrument) -> Option<f64> {
    temperature_offset_k(instrument.ice_test?.celsius()).ok()
}

/// What has to be added to an instrument's humidity, from its salt test, per cent. None without a test that can be believed.
pub fn humidity_offset(instrument: &Instrument) -> Option<f64> {
    let at_c = instrument.salt_test_at.map_or(TEST_C, |at| at.celsius());
    humidity_offset_percent(instrument.salt_test?.percent(), at_c).ok()
}

/// The band in which a reading, on the instrument's own display, is surely right.
///
/// `low` and `high` are what is wanted, `offset` is added to a reading to get the truth, `accuracy` is how far it may still be off
/// either way; all in one unit. Absent where the instrument is too rough to be sure of anything.
///
/// # Examples
/// ```
/// use wardsheet::figures::instruments::sure_band;
/// assert_eq!(sure_band(24.0, 28.0, 1.0, 0.5), Some((23.5, 26.5)));
/// assert_eq!(sure_band(24.0, 25.0, 0.0, 1.0), None);
/// ```
pub fn sure_band(low: f64, high: f64, offset: f64, accuracy: f64) -> Option<(f64, f64)> {
    let sure = (low + accuracy - offset, high - accuracy - offset);
    (sure.0 <= sure.1).then_some(sure)
}
