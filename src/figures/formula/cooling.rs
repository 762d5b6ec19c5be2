//! How fast an enclosure cools when the power fails.
//!
//! The enclosure is taken as one lump that gives its stored heat to the room: the difference in temperature
//! shrinks by the same share each hour. The air itself stores next to nothing and drops within minutes to
//! the temperature of what surrounds it, so the lump is the substrate, the water, the furnishings and half
//! of the walls, whose outer side is at room temperature already. Both the store and the loss are rough, and
//! so a time comes as a range.

use super::domain::{OutOfRange, at_least, within};
use super::heat::UNCERTAINTY;

/// Specific heat of water in J/(kg K) at 25 °C.
pub const WATER_SPECIFIC_HEAT: f64 = 4180.0;

/// The share by which the stored heat may be wrong either way (an estimate, no source).
pub const STORE_UNCERTAINTY: f64 = 0.3;

/// What lies or stands in an enclosure and stores heat.
///
/// All densities and specific heats are from memory, of dry material as it is poured; damp material stores
/// more, which makes the real cooling slower.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Furnishing {
    /// Its usual name.
    pub name: &'static str,
    /// Bulk density in kg/m³.
    pub density_kg_per_m3: f64,
    /// Specific heat in J/(kg K).
    pub specific_heat_j_per_kg_k: f64,
}

const fn furnishing(
    name: &'static str,
    density_kg_per_m3: f64,
    specific_heat_j_per_kg_k: f64,
) -> Furnishing {
    Furnishing { name, density_kg_per_m3, specific_heat_j_per_kg_k }
}

/// Substrates and furnishings, all from memory.
pub const FURNISHINGS: &[Furnishing] = &[
    furnishing("aspen", 120.0, 1600.0),
    furnishing("bark", 250.0, 1600.0),
    furnishing("beech chips", 250.0, 1600.0),
    furnishing("coir", 150.0, 1800.0),
    furnishing("leaf litter", 80.0, 1600.0),
    furnishing("moss", 60.0, 1800.0),
    furnishing("paper", 100.0, 1340.0),
    furnishing("sand", 1600.0, 800.0),
    furnishing("soil", 1200.0, 1000.0),
    furnishing("clay", 1400.0, 900.0),
    furnishing("gravel", 1700.0, 840.0),
    furnishing("stone", 2600.0, 800.0),
    furnishing("wood", 500.0, 1600.0),
    furnishing("ceramic", 2300.0, 840.0),
];

/// Returns the furnishing of that name, in capitals or not.
#[must_use]
pub fn furnishing_named(name: &str) -> Option<&'static Furnishing> {
    FURNISHINGS.iter().find(|furnishing| furnishing.name.eq_ignore_ascii_case(name.trim()))
}

/// Returns the heat in J/K stored by `volume_m3` of a material.
///
/// # Errors
///
/// [`OutOfRange`] when the volume, the density or the specific heat is negative.
///
/// # Example
///
/// Four centimetres of sand on a floor of 120 by 60 cm store as much as eleven litres of water:
///
/// ```
/// use wardsheet::figures::formula::cooling::*;
///
/// let sand = furnishing_named("sand").expect("listed");
/// let stored = store_j_per_k(1.2 * 0.6 * 0.04, sand.density_kg_per_m3, sand.specific_heat_j_per_kg_k)?;
/// assert!(stored < store_j_per_k(0.011, 1000.0, WATER_SPECIFIC_HEAT)?);
/// assert!(stored > store_j_per_k(0.008, 1000.0, WATER_SPECIFIC_HEAT)?);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
pub fn store_j_per_k(
    volume_m3: f64,
    density_kg_per_m3: f64,
    specific_heat_j_per_kg_k: f64,
) -> Result<f64, OutOfRange> {
    at_least("volume_m3", volume_m3, 0.0)?;
    at_least("density_kg_per_m3", density_kg_per_m3, 0.0)?;
    at_least("specific_heat_j_per_kg_k", specific_heat_j_per_kg_k, 0.0)?;
    Ok(volume_m3 * density_kg_per_m3 * specific_heat_j_per_kg_k)
}

/// Returns the heat in J/K that a wall gives back: half of what it stores.
///
/// Its mean temperature lies half way between the inside and the room, so it has half the difference to
/// lose. Arguments and errors as for [`store_j_per_k`].
///
/// # Errors
///
/// [`OutOfRange`] when an argument is negative.
pub fn wall_store_j_per_k(
    volume_m3: f64,
    density_kg_per_m3: f64,
    specific_heat_j_per_kg_k: f64,
) -> Result<f64, OutOfRange> {
    store_j_per_k(volume_m3, density_kg_per_m3, specific_heat_j_per_kg_k).map(|stored| stored / 2.0)
}

/// Returns the time constant in hours of a store of `stored_j_per_k` that loses `loss_w_per_k`.
///
/// After one time constant 37 % of the difference to the room is left, after two 14 %, after three 5 %.
///
/// # Errors
///
/// [`OutOfRange`] when the store is negative or nothing is lost.
///
/// Source: Newton's law of cooling.
pub fn time_constant_h(stored_j_per_k: f64, loss_w_per_k: f64) -> Result<f64, OutOfRange> {
    at_least("stored_j_per_k", stored_j_per_k, 0.0)?;
    at_least("loss_w_per_k", loss_w_per_k, f64::MIN_POSITIVE)?;
    Ok(stored_j_per_k / loss_w_per_k / 3600.0)
}

/// Returns the temperature inside after `hours` without heat.
///
/// # Errors
///
/// [`OutOfRange`] when the hours are negative or the time constant is not positive.
///
/// Source: Newton's law of cooling.
pub fn temperature_after_c(
    inside_c: f64,
    room_c: f64,
    time_constant_h: f64,
    hours: f64,
) -> Result<f64, OutOfRange> {
    within("inside_c", inside_c, -50.0, 100.0)?;
    within("room_c", room_c, -50.0, 100.0)?;
    at_least("time_constant_h", time_constant_h, f64::MIN_POSITIVE)?;
    at_least("hours", hours, 0.0)?;
    Ok(room_c + (inside_c - room_c) * libm::exp(-hours / time_constant_h))
}

/// How long an enclosure stays above a temperature without heat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TimeWithoutPower {
    /// It is below already.
    BelowAlready,
    /// It cools to the temperature in a time between these hours.
    Hours {
        /// With less stored and more lost than worked out.
        low_h: f64,
        /// As worked out.
        expected_h: f64,
        /// With more stored and less lost than worked out.
        high_h: f64,
    },
    /// The room itself is no colder than the temperature.
    Never,
}

/// Returns how long an enclosure at `inside_c` in a room at `room_c` stays above `critical_c`.
///
/// The range takes the store as wrong by 30 % and the loss by 25 %, both the same way for the animal. A
/// room that cools down too makes it shorter: give the temperature that the room will fall to.
///
/// # Errors
///
/// [`OutOfRange`] when a temperature is not within -50 to 100 °C or the time constant is not positive.
///
/// # Example
///
/// ```
/// use wardsheet::figures::formula::cooling::{TimeWithoutPower, time_without_power};
///
/// let TimeWithoutPower::Hours { low_h, expected_h, high_h } = time_without_power(28.0, 16.0, 20.0, 3.0)? else {
///     panic!("it cools below 20 in a room at 16");
/// };
/// assert_eq!(expected_h.round(), 3.0);
/// assert!(low_h < 2.0 && high_h > 5.0);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: Newton's law of cooling, solved for the time.
pub fn time_without_power(
    inside_c: f64,
    room_c: f64,
    critical_c: f64,
    time_constant_h: f64,
) -> Result<TimeWithoutPower, OutOfRange> {
    within("inside_c", inside_c, -50.0, 100.0)?;
    within("room_c", room_c, -50.0, 100.0)?;
    within("critical_c", critical_c, -50.0, 100.0)?;
    at_least("time_constant_h", time_constant_h, f64::MIN_POSITIVE)?;
    if inside_c <= critical_c {
        return Ok(TimeWithoutPower::BelowAlready);
    }
    if room_c >= critical_c {
        return Ok(TimeWithoutPower::Never);
    }
    let constants = libm::log((inside_c - room_c) / (critical_c - room_c));
    let expected_h = constants * time_constant_h;
    Ok(TimeWithoutPower::Hours {
        low_h: expected_h * (1.0 - STORE_UNCERTAINTY) / (1.0 + UNCERTAINTY),
        expected_h,
        high_h: expected_h * (1.0 + STORE_UNCERTAINTY) / (1.0 - UNCERTAINTY),
    })
}

#[cfg(test)]
mod tests;
