//! A curve over time as geometry: where its points, its lines and the marks of its scales stand. How they look is the theme's.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::calendar::{days_after, days_between};
use crate::figures::working::number;

use super::blocks::Table;
use super::edition::Edition;

/// A chart. Whoever cannot see it reads `says` and the table under it, which holds every point. Places are shares of the chart's
/// width and height in per cent, so that it is as wide as there is room and its letters keep their size.
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
    /// What was measured.
    pub points: Vec<Mark>,
    /// Marks of the scale along the foot.
    pub across: Vec<Mark>,
    /// Marks of the scale up the side.
    pub upward: Vec<Mark>,
    /// A level that matters, named, and places along it.
    pub level: Option<Level>,
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
    /// What stands there; nothing at a point.
    pub label: String,
}

/// A level across a chart.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Level {
    /// From the top.
    pub y: String,
    /// What it is.
    pub label: String,
    /// Places along it, from the left.
    pub at: Vec<String>,
}

/// A series over days: the day and the value.
pub(super) type Series = Vec<(Date, f64)>;

/// What goes into a chart. Its foot is days, or a length where `along` is a unit.
pub(super) struct Plot<X = Date> {
    pub(super) id: String,
    pub(super) title: String,
    pub(super) says: String,
    pub(super) key: String,
    pub(super) unit: &'static str,
    pub(super) points: Vec<(X, f64)>,
    pub(super) lines: Vec<Vec<(X, f64)>>,
    pub(super) level: Option<(f64, String, Vec<X>)>,
    pub(super) table: Table,
}

impl<X: Copy> Plot<X> {
    /// Every place along the foot.
    fn places(&self) -> impl Iterator<Item = X> + '_ {
        let level = self.level.iter().flat_map(|(_, _, at)| at.iter().copied());
        self.points.iter().chain(self.lines.iter().flatten()).map(|(x, _)| *x).chain(level)
    }
}

/// A chart over days; none where there is nothing to show.
pub(super) fn chart(edition: &Edition<'_>, plot: Plot) -> Option<Chart> {
    let (first, last) = (plot.places().min()?, plot.places().max()?);
    let days = f64::from(days_between(first, last)).max(1.0);
    let share = |date: Date| f64::from(days_between(first, date)) / days;
    let marks =
        month_marks(edition, first, last).into_iter().map(|(date, label)| (share(date), label));
    drawn(edition, &plot, share, marks.collect())
}

/// A chart over distances in a unit, from none on; none where there is nothing to show.
pub(super) fn chart_over_distance(
    edition: &Edition<'_>,
    plot: Plot<f64>,
    unit: &str,
) -> Option<Chart> {
    let farthest = plot.places().fold(0.0, f64::max);
    let step = even_step(farthest);
    let end = (farthest / step).ceil().max(1.0) * step;
    let marks = (0..=40).map(|count| f64::from(count) * step).take_while(|at| *at <= end);
    let marks = marks.map(|at| (at / end, measure(edition, at, 1, unit)));
    drawn(edition, &plot, |at| at / end, marks.collect())
}

/// A number and its unit as they stand at a mark or in the sentence of a chart.
pub(super) fn measure(edition: &Edition<'_>, value: f64, places: usize, unit: &str) -> String {
    edition.catalogue().figure(format!("{} {unit}", number(value, places)))
}

fn drawn<X: Copy>(
    edition: &Edition<'_>,
    plot: &Plot<X>,
    share: impl Fn(X) -> f64,
    across: Vec<(f64, String)>,
) -> Option<Chart> {
    let values = || plot.points.iter().chain(plot.lines.iter().flatten()).map(|(_, value)| *value);
    values().next()?;
    let level = plot.level.as_ref().map_or(0.0, |(value, ..)| *value);
    let highest = values().fold(level, f64::max);
    let step = even_step(highest);
    let top = (highest / step).ceil().max(1.0) * step;
    let across_at = |x: X| number(share(x) * 100.0, 2);
    let up_at = |value: f64| number(100.0 - value.clamp(0.0, top) / top * 100.0, 2);
    let lines = plot.lines.iter().map(|line| {
        let at = line.iter().map(|(x, value)| format!("{},{}", across_at(*x), up_at(*value)));
        at.collect::<Vec<_>>().join(" ")
    });
    let mark = |x: String, y: String, label: String| Mark { x, y, label };
    let points = plot.points.iter();
    let marks = (0..=40).map(|count| f64::from(count) * step).take_while(|value| *value <= top);
    Some(Chart {
        lines: lines.collect(),
        points: points
            .map(|(x, value)| mark(across_at(*x), up_at(*value), String::new()))
            .collect(),
        across: across
            .into_iter()
            .map(|(share, label)| mark(number(share * 100.0, 2), "100".to_owned(), label))
            .collect(),
        upward: marks
            .map(|value| {
                let label = measure(edition, value, 1, plot.unit);
                mark("0".to_owned(), up_at(value), label)
            })
            .collect(),
        level: plot.level.as_ref().map(|(value, label, at)| Level {
            y: up_at(*value),
            label: label.clone(),
            at: at.iter().map(|x| across_at(*x)).collect(),
        }),
        id: plot.id.clone(),
        title: plot.title.clone(),
        says: plot.says.clone(),
        key: plot.key.clone(),
        table: plot.table.clone(),
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

/// The firsts of January, of quarters where the chart spans less than two years, or of months where it spans less than four: few
/// enough to stand side by side on the narrowest screen.
pub(super) fn month_marks(edition: &Edition<'_>, first: Date, last: Date) -> Vec<(Date, String)> {
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
                let short = edition.catalogue().short_month(month);
                let named = [("month", short.into()), ("year", year.to_string().into())];
                let label =
                    if every == 12 { year.to_string() } else { edition.tell("chart-month", named) };
                marks.push((date, label));
            }
        }
    }
    let room = if every == 12 { 7 } else { 4 };
    let keep = marks.len().div_ceil(room).max(1);
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
    use crate::model::Model;
    use crate::sheets::edition::Edition;
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
    fn a_long_life_has_few_marks() {
        let model = Model::default();
        let edition = Edition::of_site(&model);
        let marks = month_marks(&edition, date(1996, 5, 1), date(2026, 11, 25));
        assert!((4..=7).contains(&marks.len()), "{marks:?}");
        assert!(month_marks(&edition, date(2026, 1, 2), date(2026, 12, 1)).len() == 3);
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
