//! Laws of the day that hold whatever the latitude.

use super::*;
use proptest::prelude::*;

proptest! {
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
