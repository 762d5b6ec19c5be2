//! Day length against an ephemeris and against printed tables.

use proptest::prelude::*;

use crate::table::{assert_near, rows};
use wardsheet::figures::formula::day_length::*;

#[test]
fn day_length_agrees_with_an_ephemeris_to_a_third_of_a_minute() {
    for row in rows("day_length.csv") {
        let (latitude, day) = (row.number("lat_deg"), row.text("doy").parse().expect("a day"));
        let got = day_length_h(latitude, 2025, day).expect("in range");
        let what = format!("{latitude} degrees, {}", row.text("date"));
        assert_near(got, row.number("noaa_meeus_h"), 1e-4, &format!("{what}, same equations"));
        assert_near(got, row.number("skyfield_h"), 0.3 / 60.0, &format!("{what}, DE421"));
        assert_near(got, row.number("astral_h"), 0.8 / 60.0, &format!("{what}, another library"));
        assert_near(forsythe_day_length_h(latitude, day), row.number("cbm_h"), 1e-4, &what);
        let declination = solar_declination_degrees(2025, day).expect("in range");
        assert_near(declination, row.number("declination_deg_noon"), 0.01, &what);
    }
}

#[test]
fn day_length_agrees_with_printed_tables() {
    for row in rows("day_length_published.csv") {
        let (year, month, day) = calendar_day(row.text("date"));
        let past: u32 = days_in_months(year)[..month - 1].iter().sum();
        let latitude = row.number("lat_deg");
        let of_day = |day_of_year| day_length_h(latitude, year, day_of_year).expect("in range");
        // Our days are those of Greenwich; noon comes later on site, by the longitude over 360 degrees.
        let source = row.text("source");
        let longitude_west = if source.contains("San Francisco") { 122.4 } else { 91.8 };
        let on_site = |day_of_year| {
            let (this, next) = (of_day(day_of_year), of_day(day_of_year + 1));
            this + longitude_west / 360.0 * (next - this)
        };
        let got = on_site(past + day);
        assert_near(got, row.number("noaa_meeus_h"), 4e-4, row.text("date"));
        // One source gives the extremes of a year; the other a day, rounded to the minute, for a town
        // whose latitude its page does not state.
        let minutes = if source.starts_with("USNO") { 0.4 } else { 1.2 };
        assert_near(got, row.number("published_h"), minutes / 60.0, row.text("date"));
    }
}

/// Reads "2007-06-18", or "September 1 (year not stated; 2025 used)".
fn calendar_day(text: &str) -> (i32, usize, u32) {
    if let Some(rest) = text.strip_prefix("September ") {
        let day = rest.split_whitespace().next().expect("a day").parse().expect("a number");
        return (2025, 9, day);
    }
    let parts: Vec<u32> = text.split('-').map(|part| part.parse().expect("a number")).collect();
    (parts[0] as i32, parts[1] as usize, parts[2])
}

/// Day length by the CBM model: W. C. Forsythe et al. 1995, Ecological Modelling 80:87-95, eq. 1-3, with
/// the sun's centre 0.8333 degrees below the horizon. The equations were read in public implementations
/// that cite the paper. It drifts by minutes over the decades, so it serves as a cross check only.
fn forsythe_day_length_h(latitude_degrees: f64, day_of_year: u32) -> f64 {
    let angle = 0.008_60 * (f64::from(day_of_year) - 186.0);
    let revolution = 0.216_310_8 + 2.0 * libm::atan(0.967_139_6 * libm::tan(angle));
    let declination = libm::asin(0.397_95 * libm::cos(revolution));
    let latitude = latitude_degrees.to_radians();
    let cosine = (libm::sin(0.8333_f64.to_radians())
        + libm::sin(latitude) * libm::sin(declination))
        / (libm::cos(latitude) * libm::cos(declination));
    24.0 - 24.0 / std::f64::consts::PI * libm::acos(cosine.clamp(-1.0, 1.0))
}

proptest! {
    #[test]
    fn two_ways_to_work_out_the_day_agree_to_six_minutes(
        latitude in -50.0..50.0_f64, year in 1990..2040_i32, day in 1..=365_u32,
    ) {
        let meeus = day_length_h(latitude, year, day).expect("in range");
        let forsythe = forsythe_day_length_h(latitude, day);
        prop_assert!((meeus - forsythe).abs() < 0.1, "{meeus} h and {forsythe} h");
    }
}
