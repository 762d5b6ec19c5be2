//! Recordings whose sums can be told by hand.

use super::{Asked, LoggerFigures, logger};
use crate::model::recording::{Recording, Sample};
use jiff::civil::date;

const MIDNIGHT: i64 = 20_000 * 86_400; // 2024-10-04

/// A reading every hour from midnight on.
fn hourly(values: &[(f32, f32)]) -> Recording {
    let sample = |(place, (celsius, percent)): (usize, &(f32, f32))| Sample {
        at: MIDNIGHT + place as i64 * 3600,
        celsius: Some(*celsius),
        percent: Some(*percent),
    };
    Recording { probe: "cool".to_owned(), samples: values.iter().enumerate().map(sample).collect() }
}

fn asked() -> Asked {
    Asked {
        day_c: Some((Some(22.0), Some(24.0))),
        night_c: Some((Some(19.0), Some(22.0))),
        percent: Some((Some(40.0), Some(60.0))),
        ceiling_percent: Some(70.0),
        never_above_c: Some(35.0),
        bears_h: Some(6.0),
        lights_h: Some((8.0, 20.0)),
    }
}

fn summed(values: &[(f32, f32)]) -> LoggerFigures {
    logger(&hourly(values), &asked()).expect("there are readings")
}

#[test]
fn shares_are_of_time_by_day_and_by_night() {
    // By night 20 °C but for 3 hours at 18; by day 23 °C but for 6 hours at 25.
    let values: Vec<(f32, f32)> = (0..24)
        .map(|hour| match hour {
            0..3 => (18.0, 50.0),
            3..8 | 20..24 => (20.0, 50.0),
            8..14 => (23.0, 50.0),
            _ => (25.0, 65.0),
        })
        .collect();
    let figures = summed(&values);
    assert_eq!(figures.day.expect("a range").1.percent(), Some([0.0, 50.0, 50.0]));
    assert_eq!(figures.night.expect("a range").1.percent(), Some([25.0, 75.0, 0.0]));
    assert_eq!(figures.humidity.expect("a range").1.percent(), Some([0.0, 75.0, 25.0]));
    assert_eq!(figures.step_min, 60.0);
    assert_eq!(
        figures.coldest_night,
        Some((date(2024, 10, 3), 18.0)),
        "the small hours belong to the evening before"
    );
    assert_eq!(figures.widest_swing, Some((date(2024, 10, 4), 7.0)));
    assert_eq!(figures.gaps, (0, 0.0));
}

#[test]
fn the_longest_time_above_the_ceiling_is_found_and_a_dry_hour_ends_it() {
    let mut values = [(20.0, 50.0); 30];
    (2..6).for_each(|hour| values[hour].1 = 75.0);
    (10..17).for_each(|hour| values[hour].1 = 80.0);
    let figures = summed(&values);
    let spell = figures.too_damp().expect("seven hours are more than six");
    assert_eq!((spell.hours, spell.highest), (7.0, 80.0));
    assert_eq!(spell.from, date(2024, 10, 4).at(10, 0, 0, 0));
    values[13].1 = 60.0;
    assert_eq!(summed(&values).too_damp(), None, "four hours, then three");
    // The ceiling itself is not passed.
    assert_eq!(summed(&[(20.0, 70.0); 30]).above_ceiling, None);
}

#[test]
fn a_gap_is_told_and_counts_for_nothing() {
    let mut recording = hourly(&[(20.0, 75.0); 12]);
    recording.samples.drain(3..9);
    let figures = logger(&recording, &asked()).expect("there are readings");
    assert_eq!(figures.gaps, (1, 6.0));
    let gap = figures.longest_gap.expect("there is one");
    assert_eq!((gap.from, gap.hours), (date(2024, 10, 4).at(3, 0, 0, 0), 6.0));
    assert_eq!(
        figures.above_ceiling.expect("a time").hours,
        3.0,
        "what was in the gap is not known"
    );
    let night = figures.night.expect("a range").1;
    assert_eq!(night.within_h, 3.0, "three readings before the gap, at 20 °C");
}

#[test]
fn an_hour_above_what_is_never_passed_is_told() {
    let mut values = [(23.0, 50.0); 24];
    values[12].0 = 36.5;
    let spell = summed(&values).too_hot().expect("an hour is no flicker");
    assert_eq!((spell.hours, spell.highest), (1.0, 36.5));
    assert_eq!(summed(&[(23.0, 50.0); 24]).too_hot(), None);
}

#[test]
fn a_probe_without_a_hygrometer_says_nothing_of_the_ceiling() {
    let mut recording = hourly(&[(20.0, 50.0); 5]);
    recording.samples.iter_mut().for_each(|sample| sample.percent = None);
    let figures = logger(&recording, &asked()).expect("there are readings");
    assert_eq!((figures.ceiling_percent, figures.never_above_c), (None, Some(35.0)));
    assert_eq!(figures.humidity.expect("a range").1.percent(), None);
}

#[test]
fn nothing_recorded_comes_to_nothing() {
    assert_eq!(logger(&hourly(&[]), &asked()), None);
    assert_eq!(summed(&[(20.0, 50.0)]).readings, 1);
}
