//! The humidity ceiling, carried from the cool side to every zone at equal vapour pressure, and its dew point.
//!
//! Vapour spreads through one enclosure and temperature does not: the same air reads drier where it is warmer. A ceiling
//! that is meant for the cool side is therefore a lower number at every warmer hygrometer.

use crate::model::species::Humidities;

use super::formula::humidity::{dew_point_c, humidity_at, saturation_pressure_pa};
use super::gradient::Gradient;
use super::working::{Ends, Why, Working, ends, number};

/// The humidity of a species or an animal's enclosure.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct HumidityFigures {
    /// The range it is kept at, per cent.
    pub range_percent: Option<Ends>,
    /// Never above this at the cool side, per cent.
    pub ceiling_percent: Option<f64>,
    /// The dew point at the ceiling, °C: a surface colder than this gets wet.
    pub dew_point_c: Option<f64>,
    /// The ceiling at each zone or probe.
    pub readings: Vec<Reading>,
    /// The ceiling at each probe by night, where its temperature by night is known.
    pub night_readings: Vec<Reading>,
    /// How they were worked out.
    pub working: Option<Working>,
}

/// What a hygrometer may read at one place.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// The zone, or the probe's name.
    pub zone: String,
    /// The temperature there, °C.
    pub temperature_c: f64,
    /// It may read this at most, per cent; never more than 100.
    pub at_most_percent: f64,
}

/// Works out the ceiling at the cool and warm sides of a species, at the top of each zone's range.
///
/// Per cent relative humidity and °C. Absent, with the reason, where the ceiling or the cool side is not given.
/// Source: Hyland & Wexler 1983, as ASHRAE Handbook Fundamentals 2017 ch. 1 eq. 6, at equal vapour pressure.
pub fn of_species(humidity: &Humidities, gradient: &Gradient, why: &mut Why) -> HumidityFigures {
    let ceiling =
        humidity.ceiling.as_ref().and_then(|cited| cited.value.high().or(cited.value.low()));
    let range_percent = humidity.range.as_ref().map(|cited| ends(&cited.value));
    let top = |zone: Option<Ends>| zone.and_then(|(low, high)| high.or(low));
    let places: Vec<(String, f64)> =
        [("cool", top(gradient.cool_c)), ("warm", top(gradient.warm_c))]
            .into_iter()
            .filter_map(|(zone, temperature_c)| Some((zone.to_owned(), temperature_c?)))
            .collect();
    let figures =
        ceiling_at(ceiling.map(|ceiling| ceiling.percent()), top(gradient.cool_c), &places, why);
    HumidityFigures { range_percent, ..figures }
}

/// Carries a ceiling that holds at the cool side to a list of places with their temperatures.
///
/// Ceiling in per cent, temperatures in °C within −40 to 100. A place that is colder than the cool side is held to the
/// ceiling itself, since that is meant for the coolest spot.
pub fn ceiling_at(
    ceiling_percent: Option<f64>,
    cool_c: Option<f64>,
    places: &[(String, f64)],
    why: &mut Why,
) -> HumidityFigures {
    let mut missing = |reason: &str| {
        for figure in ["humidity.readings", "humidity.dew_point_c"] {
            why.insert(figure.to_owned(), reason.to_owned());
        }
        HumidityFigures { ceiling_percent, ..HumidityFigures::default() }
    };
    let Some(ceiling) = ceiling_percent else { return missing("no humidity ceiling is given") };
    let Some(cool_c) = cool_c else {
        return missing("no cool side is given to hold the ceiling at");
    };
    let (Ok(dew), Ok(pressure)) = (dew_point_c(cool_c, ceiling), saturation_pressure_pa(cool_c))
    else {
        return missing("the cool side is outside the range of the formula");
    };
    let mut working = Working::new(
        "Humidity ceiling at each place",
        "e = ceiling/100 × es(cool); reading = 100 × e/es(place); the dew point is where es = e",
        "Hyland & Wexler 1983, as ASHRAE Handbook Fundamentals 2017, ch. 1 eq. 6",
    );
    let vapour = ceiling / 100.0 * pressure;
    working.step(format!(
        "e = {}/100 × {} Pa at {} °C = {} Pa; dew point {} °C",
        number(ceiling, 1),
        number(pressure, 0),
        number(cool_c, 1),
        number(vapour, 0),
        number(dew, 1)
    ));
    let mut readings = Vec::new();
    for (zone, temperature_c) in places {
        let Ok(carried) = humidity_at(cool_c, ceiling, *temperature_c) else { continue };
        let at_most_percent = carried.relative_humidity_percent.min(ceiling);
        let there = saturation_pressure_pa(*temperature_c).unwrap_or(f64::NAN);
        working.step(format!(
            "{zone}, {} °C: 100 × {}/{} = {} %",
            number(*temperature_c, 1),
            number(vapour, 0),
            number(there, 0),
            number(carried.relative_humidity_percent, 1)
        ));
        readings.push(Reading {
            zone: zone.clone(),
            temperature_c: *temperature_c,
            at_most_percent,
        });
    }
    working.assume("Vapour is spread evenly through the enclosure; each place stands at the temperature given for it.");
    HumidityFigures {
        range_percent: None,
        ceiling_percent: Some(ceiling),
        dew_point_c: Some(dew),
        readings,
        night_readings: Vec::new(),
        working: Some(working),
    }
}
