//! Day length: how long the sun stands above the horizon where a species lives.
//!
//! A day runs from sunrise to sunset, that is while the upper limb of the sun, lifted by refraction, is
//! above a level horizon at sea level. Twilight is left out: many species use it, but a lamp cannot.

use super::domain::{OutOfRange, within};

/// The altitude of the sun's centre at sunrise and sunset: 34' of refraction and 16' of radius below the horizon.
const HORIZON_DEGREES: f64 = -0.833;

/// The Julian date of noon on 1 January 2000, from which the sun's elements are counted.
const J2000_JULIAN_DAY: f64 = 2_451_545.0;

/// Returns whether `year` of the Gregorian calendar has 366 days.
#[must_use]
pub fn is_leap_year(year: i32) -> bool {
    year % 4 == 0 && (year % 100 != 0 || year % 400 == 0)
}

/// Returns the number of days in each month of `year`, January first.
#[must_use]
pub fn days_in_months(year: i32) -> [u32; 12] {
    let february = if is_leap_year(year) { 29 } else { 28 };
    [31, february, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
}

/// Returns the declination of the sun in degrees at noon, Greenwich, on a day of the year (1 January is 1).
///
/// Valid for the years 1900 to 2100, to within about 0.01 degree.
///
/// # Errors
///
/// [`OutOfRange`] for another year, or a day the year does not have.
///
/// Source: J. Meeus, Astronomical Algorithms, ch. 25 (low accuracy), as in the solar spreadsheets of the
/// United States National Oceanic and Atmospheric Administration.
pub fn solar_declination_degrees(year: i32, day_of_year: u32) -> Result<f64, OutOfRange> {
    let centuries = (julian_day_at_noon(year, day_of_year)? - J2000_JULIAN_DAY) / 36_525.0;
    let mean_longitude = 280.466_46 + centuries * (36_000.769_83 + 0.000_303_2 * centuries);
    let mean_anomaly = 357.529_11 + centuries * (35_999.050_29 - 0.000_153_7 * centuries);
    let centre = sin_degrees(mean_anomaly)
        * (1.914_602 - centuries * (0.004_817 + 0.000_014 * centuries))
        + sin_degrees(2.0 * mean_anomaly) * (0.019_993 - 0.000_101 * centuries)
        + sin_degrees(3.0 * mean_anomaly) * 0.000_289;
    let node = 125.04 - 1934.136 * centuries;
    let apparent_longitude = mean_longitude + centre - 0.005_69 - 0.004_78 * sin_degrees(node);
    let arc_seconds =
        21.448 - centuries * (46.815 + centuries * (0.000_59 - 0.001_813 * centuries));
    let obliquity = 23.0 + (26.0 + arc_seconds / 60.0) / 60.0 + 0.002_56 * cos_degrees(node);
    let sine = sin_degrees(obliquity) * sin_degrees(apparent_longitude);
    Ok(libm::asin(sine).to_degrees())
}

/// Returns the hours from sunrise to sunset at `latitude_degrees` (north positive) on a day of the year.
///
/// Valid for latitudes of -90 to 90 and the years 1900 to 2100. Against an almanac it is right to 0.3
/// minutes up to 50 degrees; nearer the poles the sun grazes the horizon and the error grows to minutes.
/// The sun is taken at noon in Greenwich: half a world away the day is up to half a day's change different,
/// which is two minutes at most at 50 degrees.
/// Polar night gives 0 and midnight sun gives 24.
///
/// # Errors
///
/// [`OutOfRange`] for a latitude, a year or a day outside those.
///
/// # Example
///
/// The longest and shortest days at 50 degrees north:
///
/// ```
/// use wardsheet::figures::formula::day_length::day_length_h;
///
/// assert_eq!((day_length_h(50.0, 2025, 172)? * 10.0).round() / 10.0, 16.4);
/// assert_eq!((day_length_h(50.0, 2025, 355)? * 10.0).round() / 10.0, 8.1);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: the sunrise equation at an altitude of -0.833 degrees with Meeus's declination, as above.
pub fn day_length_h(latitude_degrees: f64, year: i32, day_of_year: u32) -> Result<f64, OutOfRange> {
    within("latitude_degrees", latitude_degrees, -90.0, 90.0)?;
    let declination = solar_declination_degrees(year, day_of_year)?;
    let cos_both = cos_degrees(latitude_degrees) * cos_degrees(declination);
    let sin_both = sin_degrees(latitude_degrees) * sin_degrees(declination);
    let cos_half_day = (sin_degrees(HORIZON_DEGREES) - sin_both) / cos_both;
    // At a pole the cosine is nearly nothing and the quotient huge: the sun is up all day or not at all.
    Ok(libm::acos(cos_half_day.clamp(-1.0, 1.0)).to_degrees() * 2.0 / 15.0)
}

/// Returns the mean day length of each month in hours at `latitude_degrees`, January first.
///
/// The mean is over all days of the month in `year`; another year shifts it by less than a minute.
///
/// # Errors
///
/// [`OutOfRange`] for a latitude outside -90 to 90 or a year outside 1900 to 2100.
///
/// # Example
///
/// ```
/// use wardsheet::figures::formula::day_length::mean_day_length_by_month_h;
///
/// let months = mean_day_length_by_month_h(35.0, 2026)?;
/// assert!(months[5] > 14.0 && months[11] < 10.0);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: [`day_length_h`].
pub fn mean_day_length_by_month_h(
    latitude_degrees: f64,
    year: i32,
) -> Result<[f64; 12], OutOfRange> {
    let mut means_h = [0.0; 12];
    let mut day_of_year = 0;
    for (mean_h, days) in means_h.iter_mut().zip(days_in_months(year)) {
        for _ in 0..days {
            day_of_year += 1;
            *mean_h += day_length_h(latitude_degrees, year, day_of_year)?;
        }
        *mean_h /= f64::from(days);
    }
    Ok(means_h)
}

/// When the lamps go on and off, in hours of the clock.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LampHours {
    /// The hour at which they go on.
    pub on_h: f64,
    /// The hour at which they go off; never past midnight.
    pub off_h: f64,
}

/// Returns when lamps go on and off for a day of `day_length_h`, half of it on each side of `midday_h`.
///
/// `midday_h` is the hour of the clock that shall be the middle of the animal's day: 12 follows the sun on
/// standard time, 13 follows it on summer time, and later suits a keeper who is out by day. Where half a
/// day does not fit before or after it, the day is shifted so that it stays within the 24 hours.
///
/// # Errors
///
/// [`OutOfRange`] when either argument is outside 0 to 24.
///
/// # Example
///
/// ```
/// use wardsheet::figures::formula::day_length::{LampHours, lamp_hours};
///
/// assert_eq!(lamp_hours(13.0, 13.0)?, LampHours { on_h: 6.5, off_h: 19.5 });
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: symmetry of the day about solar noon; to a minute, as the declination changes little in a day.
pub fn lamp_hours(day_length_h: f64, midday_h: f64) -> Result<LampHours, OutOfRange> {
    within("day_length_h", day_length_h, 0.0, 24.0)?;
    within("midday_h", midday_h, 0.0, 24.0)?;
    let on_h = (midday_h - day_length_h / 2.0).clamp(0.0, 24.0 - day_length_h);
    Ok(LampHours { on_h, off_h: on_h + day_length_h })
}

/// The Julian date of noon on a day of a Gregorian year.
fn julian_day_at_noon(year: i32, day_of_year: u32) -> Result<f64, OutOfRange> {
    within("year", f64::from(year), 1900.0, 2100.0)?;
    let last_day = if is_leap_year(year) { 366.0 } else { 365.0 };
    let day = within("day_of_year", f64::from(day_of_year), 1.0, last_day)?;
    let past = year - 1;
    let leap_days = past / 4 - past / 100 + past / 400;
    // 1 January 2000 follows 1999 years with 484 leap days.
    let days = 365 * (past - 1999) + leap_days - 484;
    Ok(J2000_JULIAN_DAY + f64::from(days) + day - 1.0)
}

fn sin_degrees(degrees: f64) -> f64 {
    libm::sin(degrees.to_radians())
}

fn cos_degrees(degrees: f64) -> f64 {
    libm::cos(degrees.to_radians())
}

#[cfg(test)]
mod tests;
