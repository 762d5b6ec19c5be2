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

/// A humidity corrected by the salt test, with the bounds of the accuracy, per cent. None without either.
pub fn humidity(instrument: &Instrument, reading_percent: f64) -> Option<Corrected> {
    let offset = match instrument.salt_test {
        Some(test) => humidity_offset_percent(
            test.percent(),
            instrument.salt_test_at.map_or(TEST_C, |at| at.celsius()),
        )
        .ok()?,
        None => 0.0,
    };
    let accuracy = instrument.humidity_accuracy.map_or(0.0, |accuracy| accuracy.percent());
    (instrument.salt_test.is_some() || accuracy > 0.0).then_some(())?;
    corrected_humidity_percent(reading_percent, offset, accuracy).ok()
}

/// The band in which a reading is surely right, and the band outside which it is surely wrong, on the instrument's own display.
///
/// `low` and `high` are what is wanted; `offset` is added to a reading, `accuracy` is how far it may be off either way. A reading
/// between the two bands wants a second look. The sure band is absent where the instrument is too rough to be sure of anything.
pub fn bands(low: f64, high: f64, offset: f64, accuracy: f64) -> (Option<(f64, f64)>, (f64, f64)) {
    let sure = (low + accuracy - offset, high - accuracy - offset);
    ((sure.0 <= sure.1).then_some(sure), (low - accuracy - offset, high + accuracy - offset))
}
