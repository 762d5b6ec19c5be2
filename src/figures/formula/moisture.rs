//! Water that has to be put into an enclosure because ventilation carries it off, and where it settles.
//!
//! Only the exchange of air is counted. Water that soaks into substrate, or that an open bowl and the
//! animal give off, is not: so a figure is what must evaporate in all, from bowl, substrate and spray.

use super::domain::{OutOfRange, at_least, within};
use super::humidity::{CELSIUS_ZERO_K, VAPOUR_GAS_CONSTANT};
use super::humidity::{humidity_at, saturation_pressure_pa, vapour_pressure_pa};

/// Air at a place: its temperature and relative humidity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    /// The temperature.
    pub temperature_c: f64,
    /// The relative humidity.
    pub relative_humidity_percent: f64,
}

/// Returns the water in g (which is ml) that ventilation carries off in a day.
///
/// Each air change takes out the vapour inside and lets in that of the room, which spreads out as it warms.
/// Nought where the room's air holds as much vapour or more. Valid for up to 50 m³ and 100 air changes an
/// hour; as good as the air changes are known, which is seldom better than half to double.
///
/// # Errors
///
/// [`OutOfRange`] when an argument is outside its range.
///
/// # Example
///
/// A box of 120 by 60 by 60 cm held at 26 °C and 70 % in a room of 20 °C and 45 %, aired once an hour:
///
/// ```
/// use wardsheet::figures::formula::moisture::{Air, water_g_per_day};
///
/// let inside = Air { temperature_c: 26.0, relative_humidity_percent: 70.0 };
/// let room = Air { temperature_c: 20.0, relative_humidity_percent: 45.0 };
/// assert_eq!(water_g_per_day(0.432, 1.0, inside, room)?.round(), 98.0);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: conservation of water with the ideal gas law: m = n V (e_in - e_room) / (R_v T_in).
pub fn water_g_per_day(
    volume_m3: f64,
    air_changes_per_h: f64,
    inside: Air,
    room: Air,
) -> Result<f64, OutOfRange> {
    within("volume_m3", volume_m3, 0.0, 50.0)?;
    within("air_changes_per_h", air_changes_per_h, 0.0, 100.0)?;
    let inside_pa = vapour_pressure_pa(inside.temperature_c, inside.relative_humidity_percent)?;
    let room_pa = vapour_pressure_pa(room.temperature_c, room.relative_humidity_percent)?;
    let gas = VAPOUR_GAS_CONSTANT * (inside.temperature_c + CELSIUS_ZERO_K);
    let grams_per_m3 = 1000.0 * (inside_pa - room_pa).max(0.0) / gas;
    Ok(24.0 * air_changes_per_h * volume_m3 * grams_per_m3)
}

/// Returns the hours that saturated air needs to come down to a humidity by the exchange of air alone; nothing where the
/// room's air holds so much vapour that it never does.
///
/// The air is taken as well mixed, and nothing but the air as wet: a bound from below.
///
/// # Errors
///
/// [`OutOfRange`] when an argument is outside its range.
///
/// # Example
///
/// Air of 26 °C, aired once an hour from a room of 21 °C and 50 %, is back at 60 % after an hour:
///
/// ```
/// use wardsheet::figures::formula::moisture::{Air, drying_time_h};
///
/// let wanted = Air { temperature_c: 26.0, relative_humidity_percent: 60.0 };
/// let room = Air { temperature_c: 21.0, relative_humidity_percent: 50.0 };
/// let hours = drying_time_h(1.0, wanted, room)?.expect("the room is dry enough");
/// assert_eq!((hours * 10.0).round(), 10.0);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: conservation of water in well-mixed air: e(t) = e_room + (e_sat - e_room) exp(-n t), solved for t.
pub fn drying_time_h(
    air_changes_per_h: f64,
    wanted: Air,
    room: Air,
) -> Result<Option<f64>, OutOfRange> {
    within("air_changes_per_h", air_changes_per_h, 0.0, 100.0)?;
    let wanted_pa = vapour_pressure_pa(wanted.temperature_c, wanted.relative_humidity_percent)?;
    let saturated_pa = saturation_pressure_pa(wanted.temperature_c)?;
    let room_pa = vapour_pressure_pa(room.temperature_c, room.relative_humidity_percent)?;
    if wanted_pa <= room_pa || air_changes_per_h == 0.0 {
        return Ok(None);
    }
    Ok(Some(libm::log((saturated_pa - room_pa) / (wanted_pa - room_pa)) / air_changes_per_h))
}

/// Returns the water in ml of each spraying, where `bowl_g_per_day` evaporates from bowl and substrate.
///
/// Nought when the bowl gives off enough by itself.
///
/// # Errors
///
/// [`OutOfRange`] when an amount is negative or there is less than one spraying in a week.
pub fn spray_ml(
    water_g_per_day: f64,
    bowl_g_per_day: f64,
    sprayings_per_day: f64,
) -> Result<f64, OutOfRange> {
    at_least("water_g_per_day", water_g_per_day, 0.0)?;
    at_least("bowl_g_per_day", bowl_g_per_day, 0.0)?;
    within("sprayings_per_day", sprayings_per_day, 1.0 / 7.0, 48.0)?;
    Ok((water_g_per_day - bowl_g_per_day).max(0.0) / sprayings_per_day)
}

/// Returns the temperature in °C of the inner surface of a face.
///
/// `surface_resistance_m2_k_per_w` is that of the inside, as in the U-value.
///
/// # Errors
///
/// [`OutOfRange`] when the resistance is more than the face's whole, or an argument is no number.
///
/// Source: the same heat flows through the inner film of air as through the whole face (ISO 6946).
pub fn inner_surface_c(
    inside_c: f64,
    room_c: f64,
    u_value_w_per_m2_k: f64,
    surface_resistance_m2_k_per_w: f64,
) -> Result<f64, OutOfRange> {
    within("inside_c", inside_c, -50.0, 100.0)?;
    within("room_c", room_c, -50.0, 100.0)?;
    within("u_value_w_per_m2_k", u_value_w_per_m2_k, 0.0, 1.0 / surface_resistance_m2_k_per_w)?;
    Ok(inside_c - u_value_w_per_m2_k * surface_resistance_m2_k_per_w * (inside_c - room_c))
}

/// Returns the relative humidity in % of the air inside at which water begins to settle on a surface.
///
/// 100 when the surface is no colder than the air.
///
/// # Errors
///
/// [`OutOfRange`] when a temperature is not within -100 to 200 °C.
///
/// # Example
///
/// A pane at 22 °C in an enclosure at 27 °C runs with water from 74 % on:
///
/// ```
/// use wardsheet::figures::formula::moisture::humidity_that_settles_percent;
///
/// assert_eq!(humidity_that_settles_percent(27.0, 22.0)?.round(), 74.0);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: saturation at the surface, carried over at equal vapour pressure (see `humidity`).
pub fn humidity_that_settles_percent(inside_c: f64, surface_c: f64) -> Result<f64, OutOfRange> {
    saturation_pressure_pa(inside_c)?;
    let at_air = humidity_at(surface_c, 100.0, inside_c)?;
    Ok(at_air.relative_humidity_percent.min(100.0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn air(temperature_c: f64, relative_humidity_percent: f64) -> Air {
        Air { temperature_c, relative_humidity_percent }
    }

    proptest! {
        #[test]
        fn twice_the_air_carries_off_twice_the_water(
            volume in 0.05..5.0_f64, changes in 0.1..20.0_f64, humidity in 50.0..95.0_f64,
        ) {
            let (inside, room) = (air(27.0, humidity), air(20.0, 40.0));
            let once = water_g_per_day(volume, changes, inside, room).expect("in range");
            let twice = water_g_per_day(2.0 * volume, changes, inside, room).expect("in range");
            prop_assert!(once > 0.0 && (twice / once - 2.0).abs() < 1e-12);
        }

        #[test]
        fn a_damper_enclosure_needs_more_water(humidity in 40.0..94.0_f64) {
            let room = air(19.0, 50.0);
            let drier = water_g_per_day(0.4, 2.0, air(26.0, humidity), room).expect("in range");
            let damper = water_g_per_day(0.4, 2.0, air(26.0, humidity + 5.0), room).expect("in range");
            prop_assert!(damper > drier);
        }

        #[test]
        fn a_surface_lies_between_the_inside_and_the_room(
            inside in 20.0..35.0_f64, room in 5.0..20.0_f64, u in 0.2..4.0_f64,
        ) {
            let surface = inner_surface_c(inside, room, u, 0.13).expect("in range");
            prop_assert!(room <= surface && surface <= inside);
            let limit = humidity_that_settles_percent(inside, surface).expect("in range");
            prop_assert!((0.0..=100.0).contains(&limit));
        }
    }

    #[test]
    fn air_that_only_warms_up_carries_nothing_off() {
        // The room's own vapour, carried to the temperature inside: 50 % at 20 °C reads 31 % at 28 °C.
        let carried = humidity_at(20.0, 50.0, 28.0).expect("in range").relative_humidity_percent;
        let water =
            water_g_per_day(0.5, 3.0, air(28.0, carried), air(20.0, 50.0)).expect("in range");
        assert!(water < 1e-9, "{water} g");
    }

    #[test]
    fn a_damp_room_asks_for_no_spraying() {
        assert_eq!(water_g_per_day(0.5, 3.0, air(24.0, 40.0), air(24.0, 80.0)), Ok(0.0));
        assert_eq!(spray_ml(20.0, 30.0, 2.0), Ok(0.0));
    }

    #[test]
    fn a_day_of_water_is_shared_by_its_sprayings() {
        assert_eq!(spray_ml(100.0, 40.0, 3.0), Ok(20.0));
        assert!(spray_ml(100.0, 0.0, 0.0).is_err());
    }

    #[test]
    fn a_wall_as_warm_as_the_air_stays_dry() {
        assert_eq!(humidity_that_settles_percent(25.0, 25.0), Ok(100.0));
        assert_eq!(humidity_that_settles_percent(25.0, 30.0), Ok(100.0));
    }
}
