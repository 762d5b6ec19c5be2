//! Spans of time, which are not dates.

use super::scale::{Scale, lies_on};
use super::unit::{Quantity, Unit};

/// Days in a year, of the Julian calendar's mean length.
const DAYS_PER_YEAR: f64 = 365.25;
/// Days in a twelfth of a year.
const DAYS_PER_MONTH: f64 = DAYS_PER_YEAR / 12.0;

/// Up to which number each scale of a span is used because the ends are whole: an age of 1000 days is not told in days.
const MOST_WHOLE: [f64; 7] = [120.0, 96.0, 180.0, 60.0, 60.0, f64::INFINITY, f64::INFINITY];

/// A span of time, in days.
///
/// Written in hours, days, weeks, months (365.25/12 days) or years (365.25 days). Bearable from 0 to 250 years. Printed
/// in the largest unit in which its ends are whole, an odd number of days from half a year on in months or years.
///
/// ```
/// use wardsheet::quantity::{Rounding, Span, System, parse_range};
/// let every = parse_range::<Span>("5-7 days").unwrap().print(System::Metric, Rounding::Nearest);
/// assert_eq!(every.first, "5–7\u{a0}days");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Span(f64);

impl Span {
    /// The span of this many days.
    pub const fn from_days(days: f64) -> Self {
        Span(days)
    }

    /// Days.
    pub const fn days(self) -> f64 {
        self.0
    }

    /// Hours.
    pub fn hours(self) -> f64 {
        self.0 * 24.0
    }

    /// Years of 365.25 days.
    pub fn years(self) -> f64 {
        self.0 / DAYS_PER_YEAR
    }
}

impl Quantity for Span {
    const NAME: &'static str = "span of time";
    const EXAMPLE: &'static str = "5-7 days";
    const UNITS: &'static [Unit] = &[
        Unit::common("days", 1.0, &["days", "day", "d"]).usual(),
        Unit::common("weeks", 7.0, &["weeks", "week", "wk", "wks", "w"]).usual(),
        Unit::common("months", DAYS_PER_MONTH, &["months", "month", "mo", "mos"]).usual(),
        Unit::common("years", DAYS_PER_YEAR, &["years", "year", "yr", "yrs", "y"]),
        Unit::common("hours", 1.0 / 24.0, &["hours", "hour", "h", "hr", "hrs"]),
        Unit::common("minutes", 1.0 / 1440.0, &["minutes", "minute", "min", "mins"]),
    ];
    const BEARABLE: (f64, f64) = (0.0, 250.0 * DAYS_PER_YEAR);
    const METRIC: &'static [Scale] = &[
        Scale::new(1.0 / 24.0, "minutes", 1.0 / 1440.0, &[1.0, 0.5, 0.1]).singular("minute"),
        Scale::new(2.0, "hours", 1.0 / 24.0, &[1.0, 0.5, 0.1]).singular("hour"),
        Scale::new(14.0, "days", 1.0, &[1.0, 0.5, 0.1]).singular("day"),
        Scale::new(2.0 * DAYS_PER_MONTH, "weeks", 7.0, &[0.5, 0.1]).singular("week"),
        Scale::new(2.0 * DAYS_PER_YEAR, "months", DAYS_PER_MONTH, &[1.0, 0.5, 0.1])
            .singular("month"),
        Scale::new(10.0 * DAYS_PER_YEAR, "years", DAYS_PER_YEAR, &[0.5, 0.1]).singular("year"),
        Scale::new(f64::INFINITY, "years", DAYS_PER_YEAR, &[1.0, 0.5, 0.1]).singular("year"),
    ];

    fn from_base(value: f64) -> Self {
        Span(value)
    }

    fn base(self) -> f64 {
        self.0
    }

    /// The largest unit in which the ends are whole, in numbers one still grasps; else the usual unit for the size.
    fn scale(scales: &'static [Scale], ends: &[f64]) -> Option<&'static Scale> {
        let whole = |(scale, most): &(&Scale, f64)| {
            let fits = |end: &f64| lies_on(scale.of(*end), 1.0) && scale.of(*end) <= *most;
            ends.iter().all(fits)
        };
        if ends.iter().all(|end| *end == 0.0) {
            return scales.iter().find(|scale| scale.factor == 1.0);
        }
        let below = |scale: &&Scale| ends.iter().all(|end| *end < scale.below - 1e-9);
        let largest = scales.iter().zip(MOST_WHOLE).rev().find(whole).map(|(scale, _)| scale);
        largest.or_else(|| scales.iter().find(below)).or(scales.last())
    }
}
