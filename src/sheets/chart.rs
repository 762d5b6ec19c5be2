//! A curve over time as geometry: where its points, its lines and the marks of its scales stand. How they look is the theme's.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::calendar::{days_after, days_between};
use crate::figures::working::number;

use super::blocks::Table;
use super::frame::long_date;

/// The sides of every chart and the room for its scales, in its own units.
const WIDTH: f64 = 640.0;
const HEIGHT: f64 = 260.0;
const LEFT: f64 = 52.0;
const RIGHT: f64 = 14.0;
const ABOVE: f64 = 14.0;
const BELOW: f64 = 30.0;

/// A chart. Whoever cannot see it reads `says` and the table under it, which holds every point.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Chart {
    /// Its anchor.
    pub id: String,
    /// What it shows.
    pub title: String,
    /// The same in a sentence with its figures.
    pub says: String,
    /// How its lines are told apart, in words.
    pub key: String,
    /// Its lines: the first of them whole, the others broken.
    pub lines: Vec<String>,
    /// What was measured: from the left, from the top.
    pub points: Vec<[String; 2]>,
    /// Marks of the scale along the foot.
    pub across: Vec<Mark>,
    /// Marks of the scale up the side.
    pub upward: Vec<Mark>,
    /// Where the scales run: left, right, top, foot.
    pub frame: [String; 4],
    /// Every point in a table.
    pub table: Table,
}

/// A place on a chart and what stands there.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Mark {
    /// From the left.
    pub x: String,
    /// From the top.
    pub y: String,
    /// What stands there.
    pub label: String,
}

/// A series over days: the day and the value.
pub(super) type Series = Vec<(Date, f64)>;

/// What goes into a chart.
pub(super) struct Plot {
    pub(super) id: String,
    pub(super) title: String,
    pub(super) says: String,
    pub(super) key: String,
    pub(super) unit: &'static str,
    pub(super) points: Series,
    pub(super) lines: Vec<Series>,
    pub(super) table: Table,
}

/// Works out where everything stands; none where there is nothing to show.
pub(super) fn chart(plot: Plot) -> Option<Chart> {
    let all = || plot.points.iter().chain(plot.lines.iter().flatten());
    let first = all().map(|(date, _)| *date).min()?;
    let last = all().map(|(date, _)| *date).max()?;
    let days = f64::from(days_between(first, last)).max(1.0);
    let highest = all().map(|(_, value)| *value).fold(0.0, f64::max);
    let step = even_step(highest);
    let top = (highest / step).ceil().max(1.0) * step;
    let x =
        |date: Date| LEFT + (WIDTH - LEFT - RIGHT) * f64::from(days_between(first, date)) / days;
    let y = |value: f64| HEIGHT - BELOW - (HEIGHT - ABOVE - BELOW) * value.max(0.0) / top;
    let place = |date: Date, value: f64| (number(x(date), 1), number(y(value), 1));
    let lines = plot.lines.iter().map(|line| {
        let at = line.iter().map(|(date, value)| {
            let (x, y) = place(*date, *value);
            format!("{x},{y}")
        });
        at.collect::<Vec<_>>().join(" ")
    });
    let points = plot.points.iter().map(|(date, value)| <[String; 2]>::from(place(*date, *value)));
    let marks = (0..=40).map(|count| f64::from(count) * step).take_while(|value| *value <= top);
    let upward = marks.map(|value| Mark {
        x: number(LEFT, 1),
        y: number(y(value), 1),
        label: format!("{} {}", number(value, 1), plot.unit),
    });
    let across = month_marks(first, last).into_iter().map(|(date, label)| Mark {
        x: number(x(date), 1),
        y: number(HEIGHT - BELOW, 1),
        label,
    });
    Some(Chart {
        lines: lines.collect(),
        points: points.collect(),
        across: across.collect(),
        upward: upward.collect(),
        frame: [LEFT, WIDTH - RIGHT, ABOVE, HEIGHT - BELOW].map(|side| number(side, 1)),
        id: plot.id,
        title: plot.title,
        says: plot.says,
        key: plot.key,
        table: plot.table,
    })
}

/// A step of 1, 2 or 5 times a power of ten that makes four to ten marks.
fn even_step(highest: f64) -> f64 {
    let mut ten = 0.1;
    loop {
        for step in [ten, 2.0 * ten, 5.0 * ten] {
            if highest / step <= 8.0 {
                return step;
            }
        }
        ten *= 10.0;
    }
}

/// The firsts of January, of quarters where the chart spans less than two years, or of months where it spans less than
/// four; at most eight of them.
fn month_marks(first: Date, last: Date) -> Vec<(Date, String)> {
    let days = days_between(first, last);
    let every = match days {
        ..120 => 1,
        120..730 => 3,
        _ => 12,
    };
    let mut marks = Vec::new();
    for year in first.year()..=last.year() {
        for month in (1..=12).step_by(every) {
            let Ok(date) = Date::new(year, month, 1) else { continue };
            if date >= first && date <= last {
                let name: String =
                    long_date(date).chars().filter(|c| c.is_alphabetic()).take(3).collect();
                marks.push((
                    date,
                    if every == 12 { year.to_string() } else { format!("{name} {year}") },
                ));
            }
        }
    }
    let keep = marks.len().div_ceil(8).max(1);
    marks.into_iter().step_by(keep).collect()
}

/// Days from one to another in so many steps, both ends among them.
pub(super) fn days_through(from: Date, until: Date, steps: u32) -> Vec<Date> {
    let days = f64::from(days_between(from, until));
    let at = (0..=steps).map(|step| days * f64::from(step) / f64::from(steps.max(1)));
    at.filter_map(|day| days_after(from, day)).collect()
}

#[cfg(test)]
mod tests {
    use super::{days_through, even_step, month_marks};
    use jiff::civil::date;

    #[test]
    fn a_scale_has_few_even_steps() {
        for highest in [0.3, 7.0, 48.0, 121.0, 446.0, 6200.0] {
            let step = even_step(highest);
            let marks = (highest / step).ceil();
            assert!((3.0..=8.0).contains(&marks), "{highest}: {marks} marks of {step}");
        }
    }

    #[test]
    fn a_long_life_has_at_most_eight_marks() {
        let marks = month_marks(date(1996, 5, 1), date(2026, 11, 25));
        assert!((4..=8).contains(&marks.len()), "{marks:?}");
        assert!(month_marks(date(2026, 1, 2), date(2026, 12, 1)).len() == 3);
    }

    #[test]
    fn a_line_reaches_both_ends() {
        let days = days_through(date(2026, 1, 1), date(2026, 12, 31), 7);
        assert_eq!(
            (days.first(), days.last()),
            (Some(&date(2026, 1, 1)), Some(&date(2026, 12, 31)))
        );
    }
}
