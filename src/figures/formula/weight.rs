//! How an animal's weight has changed.

use super::domain::{OutOfRange, at_least, within};

/// One weighing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weighing {
    /// The day, counted from any day that all are counted from.
    pub day: f64,
    /// The mass.
    pub mass_g: f64,
}

/// A change of weight between two days.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WeightChange {
    /// The change as a percentage of the earlier mass; a loss is negative.
    pub percent: f64,
    /// The mass at the start, between two weighings if none fell on that day.
    pub from_g: f64,
    /// The mass last weighed.
    pub to_g: f64,
    /// The day it was last weighed, from which the span is counted back.
    pub last_day: f64,
}

/// Why no change of weight can be given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoWeightChange {
    /// It was never weighed up to that day.
    NeverWeighed,
    /// It was last weighed longer ago than the span itself.
    LastWeighedTooLongAgo {
        /// The days since.
        days: f64,
    },
    /// The weighings do not reach back over the span.
    NotWeighedEarlyEnough {
        /// The days from the first weighing to the last.
        days: f64,
    },
    /// An argument is not one.
    Argument(OutOfRange),
}

/// Returns the change of weight over `span_days` up to the last weighing on or before `today`.
///
/// Between two weighings the mass is taken on the straight line. An animal weighed with a full gut is
/// heavier by its meal: a change of a few per cent in an animal that eats large meals is no news. The order
/// of the weighings does not matter; of several on one day the mean counts.
///
/// # Errors
///
/// [`NoWeightChange`] with the reason.
///
/// # Example
///
/// ```
/// use wardsheet::figures::formula::weight::{Weighing, weight_change};
///
/// let weighing = |day, mass_g| Weighing { day, mass_g };
/// let log = [weighing(0.0, 400.0), weighing(40.0, 420.0), weighing(60.0, 399.0)];
/// let change = weight_change(&log, 65.0, 30.0).expect("weighed often enough");
/// assert_eq!((change.from_g, change.percent), (415.0, -100.0 * 16.0 / 415.0));
/// ```
pub fn weight_change(
    weighings: &[Weighing],
    today: f64,
    span_days: f64,
) -> Result<WeightChange, NoWeightChange> {
    at_least("span_days", span_days, 1.0).map_err(NoWeightChange::Argument)?;
    let daily = by_day(weighings, today).map_err(NoWeightChange::Argument)?;
    let (Some(first), Some(last)) = (daily.first(), daily.last()) else {
        return Err(NoWeightChange::NeverWeighed);
    };
    if today - last.day > span_days {
        return Err(NoWeightChange::LastWeighedTooLongAgo { days: today - last.day });
    }
    let start = last.day - span_days;
    if first.day > start {
        return Err(NoWeightChange::NotWeighedEarlyEnough { days: last.day - first.day });
    }
    let from_g = mass_on(&daily, start);
    Ok(WeightChange {
        percent: 100.0 * (last.mass_g - from_g) / from_g,
        from_g,
        to_g: last.mass_g,
        last_day: last.day,
    })
}

/// One mass for each day on which the animal was weighed, in order, up to `today`.
fn by_day(weighings: &[Weighing], today: f64) -> Result<Vec<Weighing>, OutOfRange> {
    within("today", today, -1e7, 1e7)?;
    let mut known = Vec::with_capacity(weighings.len());
    for &weighing in weighings {
        within("day", weighing.day, -1e7, 1e7)?;
        at_least("mass_g", weighing.mass_g, 0.001)?;
        if weighing.day <= today {
            known.push(weighing);
        }
    }
    known.sort_by(|a, b| a.day.total_cmp(&b.day).then(a.mass_g.total_cmp(&b.mass_g)));
    let mean = |same_day: &[Weighing]| Weighing {
        day: same_day[0].day,
        mass_g: same_day.iter().map(|weighing| weighing.mass_g).sum::<f64>()
            / same_day.len() as f64,
    };
    Ok(known.chunk_by(|a, b| a.day == b.day).map(mean).collect())
}

/// The mass on a day between the first and the last of `daily`.
fn mass_on(daily: &[Weighing], day: f64) -> f64 {
    let after = daily.partition_point(|weighing| weighing.day <= day);
    let Some(next) = daily.get(after) else {
        return daily[daily.len() - 1].mass_g;
    };
    let before = daily[after - 1];
    let share = (day - before.day) / (next.day - before.day);
    before.mass_g + share * (next.mass_g - before.mass_g)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn log(rows: &[(f64, f64)]) -> Vec<Weighing> {
        rows.iter().map(|&(day, mass_g)| Weighing { day, mass_g }).collect()
    }

    proptest! {
        #[test]
        fn an_animal_on_a_straight_line_changes_by_its_slope(
            start in 50.0..5000.0_f64, per_day in 0.0..2.0_f64, days in proptest::collection::vec(0.0..120.0_f64, 0..8),
        ) {
            let mut rows: Vec<_> = days.iter().map(|&day| (day, start + per_day * day)).collect();
            rows.extend([(120.0, start + per_day * 120.0), (0.0, start)]);
            let change = weight_change(&log(&rows), 120.0, 90.0).expect("weighed");
            let from = start + per_day * 30.0;
            prop_assert!((change.percent - 100.0 * 90.0 * per_day / from).abs() < 1e-6);
        }
    }

    #[test]
    fn an_animal_that_weighs_the_same_has_not_changed() {
        let change =
            weight_change(&log(&[(0.0, 300.0), (50.0, 300.0)]), 50.0, 30.0).expect("weighed");
        assert_eq!(change.percent, 0.0);
    }

    #[test]
    fn each_reason_for_no_answer_is_said() {
        assert_eq!(weight_change(&[], 10.0, 30.0), Err(NoWeightChange::NeverWeighed));
        let future = log(&[(20.0, 100.0)]);
        assert_eq!(weight_change(&future, 10.0, 30.0), Err(NoWeightChange::NeverWeighed));
        let old = log(&[(0.0, 100.0), (10.0, 100.0)]);
        let long_ago = NoWeightChange::LastWeighedTooLongAgo { days: 70.0 };
        assert_eq!(weight_change(&old, 80.0, 30.0), Err(long_ago));
        let short = NoWeightChange::NotWeighedEarlyEnough { days: 10.0 };
        assert_eq!(weight_change(&old, 12.0, 30.0), Err(short));
        let weightless = log(&[(0.0, 0.0)]);
        assert!(matches!(weight_change(&weightless, 0.0, 30.0), Err(NoWeightChange::Argument(_))));
    }

    #[test]
    fn weighed_twice_on_one_day_the_mean_counts() {
        let twice = log(&[(30.0, 110.0), (0.0, 100.0), (30.0, 120.0)]);
        let change = weight_change(&twice, 30.0, 30.0).expect("weighed");
        assert_eq!((change.percent, change.to_g), (15.0, 115.0));
    }
}
