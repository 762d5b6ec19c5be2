//! Rates per time.

use super::scale::Scale;
use super::unit::{Quantity, Unit};

/// A rate per year, such as the coefficient of a growth curve.
///
/// Written "0.6 per year". Bearable from 0 to 100 per year.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct PerYear(f64);

impl PerYear {
    /// This much per year.
    pub const fn from_per_year(per_year: f64) -> Self {
        PerYear(per_year)
    }

    /// How much per year.
    pub const fn per_year(self) -> f64 {
        self.0
    }
}

impl Quantity for PerYear {
    const NAME: &'static str = "rate per year";
    const EXAMPLE: &'static str = "0.6 per year";
    const UNITS: &'static [Unit] =
        &[Unit::common("per year", 1.0, &["per year", "/year", "/yr", "/y", "per yr", "a year"])
            .usual()];
    const BEARABLE: (f64, f64) = (0.0, 100.0);
    const METRIC: &'static [Scale] =
        &[Scale::new(f64::INFINITY, "per\u{a0}year", 1.0, &[0.1, 0.05, 0.01, 0.001])];

    fn from_base(value: f64) -> Self {
        PerYear(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}

/// A rate per hour, such as changes of the air.
///
/// Written "1 per hour". Bearable from 0 to 1000 per hour.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct PerHour(f64);

impl PerHour {
    /// This much per hour.
    pub const fn from_per_hour(per_hour: f64) -> Self {
        PerHour(per_hour)
    }

    /// How much per hour.
    pub const fn per_hour(self) -> f64 {
        self.0
    }
}

impl Quantity for PerHour {
    const NAME: &'static str = "rate per hour";
    const EXAMPLE: &'static str = "1 per hour";
    const UNITS: &'static [Unit] = &[Unit::common(
        "per hour",
        1.0,
        &[
            "per hour",
            "/hour",
            "/h",
            "per h",
            "an hour",
            "air changes per hour",
            "air change per hour",
        ],
    )
    .usual()];
    const BEARABLE: (f64, f64) = (0.0, 1000.0);
    const METRIC: &'static [Scale] =
        &[Scale::new(f64::INFINITY, "per\u{a0}hour", 1.0, &[0.1, 0.05, 0.01])];

    fn from_base(value: f64) -> Self {
        PerHour(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}
