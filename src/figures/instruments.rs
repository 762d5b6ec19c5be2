//! What a probe really says: its reading corrected by its own tests, and how far the truth may lie from it.

use crate::model::housing::Instrument;

use super::formula::instruments::{
    Corrected, corrected_humidity_percent, corrected_temperature_c, humidity_offset_percent,
    temperature_offset_k,
};

/// The temperature at which a salt test is taken to have been made where none is given, °C; common practice, no source.
const TEST_C: f64 = 21.0;

/// A temperature corrected by the ice test, with the bounds of the accuracy, °C. None without either.
pub fn temperature(instrument: &Instrument, reading_c: f64) -> Option<Corrected> {
    let offset = match instrument.ice_test {
        Some(test) => temperature_offset_k(test.celsius()).ok()?,
        None => 0.0,
    };
    let accuracy = instrument.accuracy.map_or(0.0, |accuracy| accuracy.kelvin());
    (instrument.ice_test.is_some() || accuracy > 0.0).then_some(())?;
    corrected_temperature_c(reading_c, offset, accuracy).ok()
}

/// What has to be added to an instrument's humidity, from its salt test, per cent. None without a test that can be believed.
pub fn humidity_offset(instrument: &Instrument) -> Option<f64> {
    let at_c = instrument.salt_test_at.map_or(TEST_C, |at| at.celsius());
    humidity_offset_percent(instrument.salt_test?.percent(), at_c).ok()
}

/// A humidity corrected by the salt test, with the bounds of the accuracy, per cent. None without either.
pub fn humidity(instrument: &Instrument, reading_percent: f64) -> Option<Corrected> {
    let accuracy = instrument.humidity_accuracy.map_or(0.0, |accuracy| accuracy.percent());
    let offset = humidity_offset(instrument);
    (offset.is_some() || accuracy > 0.0).then_some(())?;
    corrected_humidity_percent(reading_percent, offset.unwrap_or(0.0), accuracy).ok()
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
