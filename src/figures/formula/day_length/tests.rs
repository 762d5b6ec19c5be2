//! Laws of the day that hold whatever the latitude, and a second route to its length.

use super::*;
use proptest::prelude::*;

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

    #[test]
    fn a_day_in_the_north_is_as_long_as_the_night_in_the_south(
        latitude in 0.0..60.0_f64, day in 1..=365_u32,
    ) {
        // Refraction and the sun's radius lengthen the day on both sides, by three quarters of an hour in all at 60 degrees.
        let north = day_length_h(latitude, 2026, day).expect("in range");
        let south = day_length_h(-latitude, 2026, day).expect("in range");
        prop_assert!((24.0..24.8).contains(&(north + south)), "{north} h and {south} h");
    }

    #[test]
    fn lamps_burn_for_the_whole_day_and_never_past_midnight(
        day_h in 0.0..=24.0_f64, midday_h in 0.0..=24.0_f64,
    ) {
        let lamps = lamp_hours(day_h, midday_h).expect("in range");
        prop_assert!((lamps.off_h - lamps.on_h - day_h).abs() < 1e-12);
        prop_assert!(lamps.on_h >= 0.0 && lamps.off_h <= 24.0 + 1e-12);
    }
}

#[test]
fn the_cross_check_is_the_model_it_says_it_is() {
    // 21 March and 21 June 2025 at 30 degrees south, worked out with another program (computed).
    assert!((forsythe_day_length_h(-30.0, 172) - 10.2106).abs() < 1e-4);
    assert!((forsythe_day_length_h(-30.0, 80) - 12.1346).abs() < 1e-4);
}

#[test]
fn the_day_at_the_equator_is_always_a_little_over_twelve_hours() {
    for day in 1..=365 {
        let length_h = day_length_h(0.0, 2025, day).expect("in range");
        assert!((12.10..12.13).contains(&length_h), "day {day}: {length_h}");
    }
}

#[test]
fn the_sun_stays_up_or_down_near_the_pole() {
    assert_eq!(day_length_h(80.0, 2026, 172), Ok(24.0));
    assert_eq!(day_length_h(80.0, 2026, 355), Ok(0.0));
    assert_eq!(day_length_h(-90.0, 2026, 355), Ok(24.0));
}

#[test]
fn months_average_their_own_days() {
    let months = mean_day_length_by_month_h(45.0, 2024).expect("in range");
    let leap_day = day_length_h(45.0, 2024, 60).expect("in range");
    assert!(months[1] < leap_day && leap_day < months[2], "29 February lies between the two means");
    let longest = months.iter().copied().fold(0.0, f64::max);
    assert_eq!(longest, months[5], "June has the longest days in the north");
    assert_eq!(days_in_months(1900)[1], 28, "1900 was no leap year");
}

#[test]
fn days_that_do_not_exist_are_refused() {
    assert!(day_length_h(45.0, 2024, 366).is_ok());
    assert_eq!(day_length_h(45.0, 2025, 366).expect_err("365 days").argument, "day_of_year");
    assert_eq!(day_length_h(45.0, 2025, 0).expect_err("no day 0").argument, "day_of_year");
    assert_eq!(
        day_length_h(91.0, 2025, 1).expect_err("off the globe").argument,
        "latitude_degrees"
    );
    assert_eq!(day_length_h(45.0, 1600, 1).expect_err("long ago").argument, "year");
}
