//! Water: what ventilation carries off, as spray per interval, and the temperature below which water settles.

use crate::model::Species;
use crate::model::housing::Housing;
use crate::model::species::Figure;
use crate::quantity::{Humidity, Range};

use super::formula::humidity::dew_point_c;
use super::formula::moisture::{Air, drying_time_h, spray_ml, water_g_per_day};
use super::heat::{air_changes_per_h, asked_c, middle_c};
use super::working::{self, Working, ends, number};

/// The water of one enclosure.
#[derive(Debug, Clone, PartialEq)]
pub struct MoistureFigures {
    /// What has to evaporate in a day to hold the range against the air exchange, ml.
    pub water_ml_per_day: f64,
    /// From spraying to spraying, hours, as the keeper does it.
    pub spray_every_h: Option<f64>,
    /// What each spraying has to bring if bowl and substrate give nothing, ml.
    pub spray_ml: Option<f64>,
    /// How they were worked out.
    pub working: Working,
}

/// The middle of a range of humidity, per cent; of a bound, the bound.
fn middle_percent(range: &Range<Humidity>) -> Option<f64> {
    working::middle(Some(ends(range)))
}

fn middle(figure: &Figure<Humidity>) -> Option<f64> {
    figure.as_ref().and_then(|cited| middle_percent(&cited.value))
}

/// Works out the water that an enclosure needs in a day.
///
/// Per cent relative humidity, °C, ml. Held at the middle of the species' range, at the mean of its warm and cool sides.
/// Source: conservation of water with the ideal gas law; see [`water_g_per_day`].
///
/// # Errors
/// Which of the things that must be known is not.
pub fn moisture(housing: &Housing, species: &Species) -> Result<MoistureFigures, String> {
    let inside = housing
        .inside
        .map(|(inside, _)| inside)
        .ok_or("the enclosure's inside measures are not given")?;
    let changes = air_changes_per_h(housing)?;
    let room_c = housing
        .room_day
        .as_ref()
        .and_then(middle_c)
        .ok_or("the room's temperature by day is not given")?;
    let room_percent = housing
        .room_humidity
        .as_ref()
        .and_then(middle_percent)
        .ok_or("the room's own humidity is not given")?;
    let inside_c = asked_c(species).ok_or("the species gives no warm and cool side of the air")?;
    let aim_percent =
        middle(&species.humidity.range).ok_or("the species gives no humidity range")?;
    let volume_m3 = inside.volume().litres() / 1000.0;
    let within = Air { temperature_c: inside_c, relative_humidity_percent: aim_percent };
    let room = Air { temperature_c: room_c, relative_humidity_percent: room_percent };
    let water =
        water_g_per_day(volume_m3, changes, within, room).map_err(|reason| reason.to_string())?;
    let mut working = Working::new(
        "Water carried off by the air",
        "m = 24 n V (e inside − e room) / (461.5 T inside)",
        "conservation of water with the ideal gas law; vapour pressures by ASHRAE 2017, ch. 1 eq. 6",
    );
    let n = |value| number(value, 2);
    working.step(format!(
        "{} m³, {} changes an hour, {} °C and {} % inside, {} °C and {} % in the room: {} ml a day",
        n(volume_m3),
        n(changes),
        n(inside_c),
        n(aim_percent),
        n(room_c),
        n(room_percent),
        number(water, 0)
    ));
    let spray_every_h = housing.spray_every.map(|(span, _)| span.hours());
    let each = spray_every_h.and_then(|hours| spray_ml(water, 0.0, 24.0 / hours).ok());
    if let (Some(hours), Some(each)) = (spray_every_h, each) {
        working.step(format!(
            "sprayed every {} hours: {} ml each time",
            number(hours, 1),
            number(each, 0)
        ));
    }
    working.assume("All of it evaporates; what bowl and damp substrate give need not be sprayed. Air exchange is a guess in most homes.");
    Ok(MoistureFigures { water_ml_per_day: water, spray_every_h, spray_ml: each, working })
}

/// How long the air of an enclosure takes to come back into its species' range once it has been sprayed, hours; nothing where
/// the air of its room is too damp for that.
///
/// The least time: only the air dries, at the mean of the species' warm and cool sides. See [`drying_time_h`].
///
/// # Errors
/// Which of the things that must be known is not.
pub fn drying_h(housing: &Housing, species: &Species) -> Result<Option<f64>, String> {
    let changes = air_changes_per_h(housing)?;
    let room_c = housing.room_day.as_ref().and_then(middle_c);
    let room_percent = housing.room_humidity.as_ref().and_then(middle_percent);
    let top = species.humidity.range.as_ref().and_then(|range| range.value.high());
    let room = Air {
        temperature_c: room_c.ok_or("the room's temperature by day is not given")?,
        relative_humidity_percent: room_percent.ok_or("the room's own humidity is not given")?,
    };
    let inside = Air {
        temperature_c: asked_c(species)
            .ok_or("the species gives no warm and cool side of the air")?,
        relative_humidity_percent: top.ok_or("the species gives no humidity range")?.percent(),
    };
    drying_time_h(changes, inside, room).map_err(|reason| reason.to_string())
}

/// The temperature below which water settles on a surface, °C: the dew point of the dampest probe's air.
pub fn condenses_below_c(readings: &[(f64, f64)]) -> Option<f64> {
    let dew = readings
        .iter()
        .filter_map(|(temperature_c, percent)| dew_point_c(*temperature_c, *percent).ok());
    dew.fold(None, |highest: Option<f64>, dew| {
        Some(highest.map_or(dew, |highest| highest.max(dew)))
    })
}
