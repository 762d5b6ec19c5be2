//! Water vapour in air: what a humidity reading in one place means in another.
//!
//! Vapour spreads through one enclosure and temperature does not, so the vapour pressure is common to
//! the warm side and the cool side while the relative humidity is not. Everything here follows from the
//! saturation vapour pressure, one equation of temperature alone.

use super::domain::{OutOfRange, at_least, within};

/// The zero of the Celsius scale, in kelvin (exact, by definition).
pub(crate) const CELSIUS_ZERO_K: f64 = 273.15;

/// The triple point of water in degrees Celsius (exact until 2019, and within 0.0001 since): ice below, water above.
const TRIPLE_POINT_C: f64 = 0.01;

/// The gas constant of water vapour in J/(kg K): R = 8.314 46 J/(mol K) over 0.018 015 3 kg/mol.
pub(crate) const VAPOUR_GAS_CONSTANT: f64 = 461.523;

/// The ratio of the molar masses of water and dry air (ASHRAE Fundamentals 2017, ch. 1, eq. 20).
const MOLAR_MASS_RATIO: f64 = 0.621_945;

/// Returns the saturation vapour pressure in Pa at `temperature_c`.
///
/// Over water from 0.01 °C up, over ice below it. Valid from -100 to 200 °C. Against the IAPWS-95
/// formulation of the properties of water it lies 0.01 to 0.02 % low between 5 and 45 °C, which is far
/// below what a hygrometer resolves.
///
/// # Errors
///
/// [`OutOfRange`] when the temperature is outside that range.
///
/// # Example
///
/// ```
/// use wardsheet::figures::formula::humidity::saturation_pressure_pa;
///
/// assert_eq!(saturation_pressure_pa(25.0)?.round(), 3169.0);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: R. W. Hyland and A. Wexler 1983, ASHRAE Transactions 89(2A):500-519; printed as ASHRAE
/// Handbook Fundamentals 2017, ch. 1, eq. 5 (ice) and eq. 6 (water).
pub fn saturation_pressure_pa(temperature_c: f64) -> Result<f64, OutOfRange> {
    within("temperature_c", temperature_c, -100.0, 200.0)?;
    Ok(libm::exp(ln_saturation_pressure(temperature_c)))
}

/// The natural logarithm of the saturation pressure in Pa: eq. 5 below the triple point, eq. 6 above.
fn ln_saturation_pressure(temperature_c: f64) -> f64 {
    let t = temperature_c + CELSIUS_ZERO_K;
    if temperature_c < TRIPLE_POINT_C {
        -5674.5359 / t
            + 6.392_524_7
            + t * (-9.677_843e-3 + t * (6.221_570_1e-7 + t * (2.074_782_5e-9 + t * -9.484_024e-13)))
            + 4.163_501_9 * libm::log(t)
    } else {
        -5800.2206 / t
            + 1.391_499_3
            + t * (-0.048_640_239 + t * (4.176_476_8e-5 + t * -1.445_209_3e-8))
            + 6.545_967_3 * libm::log(t)
    }
}

/// The slope of [`ln_saturation_pressure`] per kelvin, differentiated term by term.
fn ln_saturation_pressure_slope(temperature_c: f64) -> f64 {
    let t = temperature_c + CELSIUS_ZERO_K;
    if temperature_c < TRIPLE_POINT_C {
        5674.5359 / (t * t) - 9.677_843e-3
            + t * (2.0 * 6.221_570_1e-7 + t * (3.0 * 2.074_782_5e-9 + t * 4.0 * -9.484_024e-13))
            + 4.163_501_9 / t
    } else {
        5800.2206 / (t * t) - 0.048_640_239
            + t * (2.0 * 4.176_476_8e-5 + t * 3.0 * -1.445_209_3e-8)
            + 6.545_967_3 / t
    }
}

/// Returns the vapour pressure in Pa of air at `temperature_c` and `relative_humidity_percent`.
///
/// Valid from -100 to 200 °C and 0 to 100 %.
///
/// # Errors
///
/// [`OutOfRange`] when either argument is outside its range.
///
/// Source: the definition of relative humidity (ASHRAE Fundamentals 2017, ch. 1, eq. 12).
pub fn vapour_pressure_pa(
    temperature_c: f64,
    relative_humidity_percent: f64,
) -> Result<f64, OutOfRange> {
    within("relative_humidity_percent", relative_humidity_percent, 0.0, 100.0)?;
    Ok(relative_humidity_percent / 100.0 * saturation_pressure_pa(temperature_c)?)
}

/// Returns the dew point in °C: the temperature of a surface on which water settles.
///
/// Below freezing it is the frost point, over ice. Valid from -40 to 100 °C and 1 to 100 %. Newton's
/// method on the saturation equation, from the Magnus form as a start; it settles to a millionth of a
/// kelvin in three or four steps.
///
/// # Errors
///
/// [`OutOfRange`] when either argument is outside its range; dry air has no dew point.
///
/// # Example
///
/// A wall colder than 16.7 °C sweats in a room at 25 °C and 60 %:
///
/// ```
/// use wardsheet::figures::formula::humidity::dew_point_c;
///
/// let wall_c = dew_point_c(25.0, 60.0)?;
/// assert_eq!((wall_c * 10.0).round() / 10.0, 16.7);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: inverse of Hyland and Wexler 1983, as above; start from A. L. Buck 1981, J. Appl. Meteor.
/// 20:1527-1532, pair e_w1 (17.502, 240.97, from memory), which does not affect the result.
pub fn dew_point_c(temperature_c: f64, relative_humidity_percent: f64) -> Result<f64, OutOfRange> {
    within("temperature_c", temperature_c, -40.0, 100.0)?;
    within("relative_humidity_percent", relative_humidity_percent, 1.0, 100.0)?;
    let ln_ratio = libm::log(relative_humidity_percent / 100.0);
    let target = ln_ratio + ln_saturation_pressure(temperature_c);
    let magnus = ln_ratio + 17.502 * temperature_c / (240.97 + temperature_c);
    let mut dew_c = 240.97 * magnus / (17.502 - magnus);
    for _ in 0..20 {
        let step = (ln_saturation_pressure(dew_c) - target) / ln_saturation_pressure_slope(dew_c);
        dew_c -= step;
        if step.abs() < 1e-9 {
            break;
        }
    }
    Ok(dew_c)
}

/// A relative humidity carried over to another temperature at the same vapour pressure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CarriedHumidity {
    /// The humidity there; a figure above 100 says how far past saturation, and is kept.
    pub relative_humidity_percent: f64,
    /// Whether water condenses there.
    pub condenses: bool,
}

/// Returns the relative humidity at `to_temperature_c` of air that reads `relative_humidity_percent` at
/// `from_temperature_c`.
///
/// Both places share one vapour pressure, as the two ends of one enclosure do. A result above 100 % is
/// kept, not cut off, and marked as condensing. Valid from -100 to 200 °C and 0 to 100 %. Steady state:
/// it leaves out a wet surface, a spray or a plant that gives off water in one of the two places.
///
/// # Errors
///
/// [`OutOfRange`] when an argument is outside its range.
///
/// # Example
///
/// 60 % at the warm side is close to saturation at the cool side:
///
/// ```
/// use wardsheet::figures::formula::humidity::humidity_at;
///
/// let cool = humidity_at(32.0, 60.0, 24.0)?;
/// assert_eq!(cool.relative_humidity_percent.round(), 96.0);
/// assert!(!cool.condenses);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: the definition of relative humidity at equal vapour pressure (ASHRAE Fundamentals 2017, ch. 1).
pub fn humidity_at(
    from_temperature_c: f64,
    relative_humidity_percent: f64,
    to_temperature_c: f64,
) -> Result<CarriedHumidity, OutOfRange> {
    within("from_temperature_c", from_temperature_c, -100.0, 200.0)?;
    within("relative_humidity_percent", relative_humidity_percent, 0.0, 100.0)?;
    within("to_temperature_c", to_temperature_c, -100.0, 200.0)?;
    let ln_ratio =
        ln_saturation_pressure(from_temperature_c) - ln_saturation_pressure(to_temperature_c);
    let carried_percent = relative_humidity_percent * libm::exp(ln_ratio);
    Ok(CarriedHumidity {
        relative_humidity_percent: carried_percent,
        condenses: carried_percent > 100.0,
    })
}

/// Returns the absolute humidity: grams of water in a cubic metre of the air.
///
/// Valid from -100 to 200 °C and 0 to 100 %.
///
/// # Errors
///
/// [`OutOfRange`] when either argument is outside its range.
///
/// Source: the ideal gas law for water vapour (ASHRAE Fundamentals 2017, ch. 1).
pub fn absolute_humidity_g_per_m3(
    temperature_c: f64,
    relative_humidity_percent: f64,
) -> Result<f64, OutOfRange> {
    let vapour_pa = vapour_pressure_pa(temperature_c, relative_humidity_percent)?;
    Ok(1000.0 * vapour_pa / (VAPOUR_GAS_CONSTANT * (temperature_c + CELSIUS_ZERO_K)))
}

/// Returns the humidity ratio: grams of water carried by a kilogram of dry air at `pressure_pa`.
///
/// Valid while the vapour pressure stays below the air's; standard sea-level pressure is 101 325 Pa.
///
/// # Errors
///
/// [`OutOfRange`] when an argument is outside its range or the air would be vapour alone.
///
/// Source: ASHRAE Fundamentals 2017, ch. 1, eq. 20.
pub fn humidity_ratio_g_per_kg(
    temperature_c: f64,
    relative_humidity_percent: f64,
    pressure_pa: f64,
) -> Result<f64, OutOfRange> {
    let vapour_pa = vapour_pressure_pa(temperature_c, relative_humidity_percent)?;
    at_least("pressure_pa", pressure_pa, 1.01 * vapour_pa)?;
    Ok(1000.0 * MOLAR_MASS_RATIO * vapour_pa / (pressure_pa - vapour_pa))
}

#[cfg(test)]
mod tests;
