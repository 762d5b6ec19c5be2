//! Light: the ultraviolet zone and its band, and the length of the day at the latitudes a species comes from.

use jiff::civil::Date;

use crate::model::Species;

use super::formula::day_length::mean_day_length_by_month_h;
use super::formula::uv_zones::uv_zone;
use super::working::{Ends, Why, Working, ends, number};

/// The light of a species.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct LightFigures {
    /// The mean ultraviolet index where it basks.
    pub uvi: Option<Ends>,
    /// Its ultraviolet zone.
    pub zone: Option<u8>,
    /// The mean length of the day by month, hours, January first.
    pub day_hours: Option<[f64; 12]>,
    /// The latitude that the days are worked out for, degrees north.
    pub latitude_degrees: Option<f64>,
    /// How the days were worked out.
    pub working: Option<Working>,
}

/// The ultraviolet index where a species basks: its own figure, else the mean band of its zone.
pub fn band(species: &Species) -> Option<Ends> {
    let own = species.light.uvi.as_ref().map(|cited| ends(&cited.value));
    own.or_else(|| {
        let (low, high) = uv_zone(species.light.zone.as_ref()?.value)?.mean_uvi;
        Some((Some(low), Some(high)))
    })
}

/// Works out the light of a species for the year of `as_of`.
///
/// Hours from sunrise to sunset at the middle of the latitudes, the mean of each month. Source: NOAA's form of Meeus,
/// Astronomical Algorithms, ch. 25. Absent, with the reason, where no latitudes are given.
pub fn light(species: &Species, as_of: Date, why: &mut Why) -> LightFigures {
    let zone = species.light.zone.as_ref().map(|zone| zone.value);
    let uvi = band(species);
    if uvi.is_none() {
        why.insert("light.uvi".to_owned(), "no ultraviolet zone or index is given".to_owned());
        why.insert("light.zone".to_owned(), "no ultraviolet zone is given".to_owned());
    }
    let middle = species.latitudes.as_ref().and_then(|cited| cited.value.middle());
    let Some(middle) = middle.map(|latitude| latitude.degrees_north()) else {
        why.insert("light.day_hours".to_owned(), "no latitudes are given".to_owned());
        return LightFigures { uvi, zone, ..LightFigures::default() };
    };
    let year = as_of.year();
    let day_hours = mean_day_length_by_month_h(middle, i32::from(year)).ok();
    let working = day_hours.map(|hours| {
        let mut working = Working::new(
            "Length of the day",
            "from sunrise to sunset, the sun's centre 0.833° below the horizon; the mean of every day of the month",
            "NOAA solar calculations after Meeus, Astronomical Algorithms, ch. 25",
        );
        working.step(format!("latitude {} degrees north, {year}", number(middle, 1)));
        let shortest = hours.iter().copied().fold(24.0, f64::min);
        let longest = hours.iter().copied().fold(0.0, f64::max);
        working.step(format!("shortest month {} h, longest {} h", number(shortest, 1), number(longest, 1)));
        working.assume("The middle of the latitudes stands for the whole range.");
        working
    });
    LightFigures { uvi, zone, day_hours, latitude_degrees: Some(middle), working }
}
