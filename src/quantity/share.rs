//! Humidities, shares, multiples, counts and the UV index: numbers with no second system.

use super::scale::Scale;
use super::unit::{Quantity, Unit};

/// A relative humidity, in percent.
///
/// Written "%" or "% RH". Bearable from 0 to 100 %.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Humidity(f64);

impl Humidity {
    /// The humidity of this many percent.
    pub const fn from_percent(percent: f64) -> Self {
        Humidity(percent)
    }

    /// Percent.
    pub const fn percent(self) -> f64 {
        self.0
    }
}

impl Quantity for Humidity {
    const NAME: &'static str = "humidity";
    const EXAMPLE: &'static str = "40-60 %";
    const UNITS: &'static [Unit] =
        &[Unit::common("%", 1.0, &["%", "% RH", "RH", "percent", "per cent", "percent RH"])
            .usual()];
    const BEARABLE: (f64, f64) = (0.0, 100.0);
    const METRIC: &'static [Scale] = &[Scale::new(f64::INFINITY, "%", 1.0, &[1.0, 0.5, 0.1])];

    fn from_base(value: f64) -> Self {
        Humidity(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}

/// A share of something, in percent of it.
///
/// Written "%". Bearable from 0 to 100 %.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Share(f64);

impl Share {
    /// The share of this many percent.
    pub const fn from_percent(percent: f64) -> Self {
        Share(percent)
    }

    /// Percent.
    pub const fn percent(self) -> f64 {
        self.0
    }

    /// The share as a factor: 0.1 for 10 %.
    pub fn fraction(self) -> f64 {
        self.0 / 100.0
    }
}

impl Quantity for Share {
    const NAME: &'static str = "share";
    const EXAMPLE: &'static str = "10-15 %";
    const UNITS: &'static [Unit] = &[Unit::common("%", 1.0, &["%", "percent", "per cent"]).usual()];
    const BEARABLE: (f64, f64) = (0.0, 100.0);
    const METRIC: &'static [Scale] = &[
        Scale::new(5.0, "%", 1.0, &[0.1, 0.05, 0.01, 0.001]),
        Scale::new(f64::INFINITY, "%", 1.0, &[1.0, 0.5, 0.1]),
    ];

    fn from_base(value: f64) -> Self {
        Share(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}

/// A multiple of something, such as of a body length.
///
/// Written "0.75 x". Bearable from 0 to 100.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Multiple(f64);

impl Multiple {
    /// This many times.
    pub const fn from_times(times: f64) -> Self {
        Multiple(times)
    }

    /// How many times.
    pub const fn times(self) -> f64 {
        self.0
    }
}

impl Quantity for Multiple {
    const NAME: &'static str = "multiple";
    const EXAMPLE: &'static str = "0.75 x";
    const UNITS: &'static [Unit] = &[Unit::common("×", 1.0, &["x", "×", "times"]).usual()];
    const BEARABLE: (f64, f64) = (0.0, 100.0);
    const METRIC: &'static [Scale] = &[Scale::new(f64::INFINITY, "×", 1.0, &[0.05, 0.01, 0.001])];

    fn from_base(value: f64) -> Self {
        Multiple(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}

/// A UV index: erythemally weighted irradiance in units of 25 mW/m².
///
/// Written "2.6 UVI". Bearable from 0 to 25. Source of the unit: WHO, Global Solar UV Index: A Practical Guide, 2002.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct UvIndex(f64);

impl UvIndex {
    /// The UV index of this value.
    pub const fn from_uvi(uvi: f64) -> Self {
        UvIndex(uvi)
    }

    /// Its value.
    pub const fn uvi(self) -> f64 {
        self.0
    }
}

impl Quantity for UvIndex {
    const NAME: &'static str = "UV index";
    const EXAMPLE: &'static str = "2.6-3.5 UVI";
    const UNITS: &'static [Unit] = &[Unit::common("UVI", 1.0, &["UVI", "UV index"]).usual()];
    const BEARABLE: (f64, f64) = (0.0, 25.0);
    const METRIC: &'static [Scale] = &[Scale::new(f64::INFINITY, "UVI", 1.0, &[0.1, 0.05, 0.01])];

    fn from_base(value: f64) -> Self {
        UvIndex(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}

/// A count of things.
///
/// Written as a bare whole number. Bearable from 0 to 1 000 000.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Count(f64);

impl Count {
    /// The count of this many.
    pub const fn from_number(number: f64) -> Self {
        Count(number)
    }

    /// How many; whole if it was typed, not always if it was calculated.
    pub const fn number(self) -> f64 {
        self.0
    }
}

impl Quantity for Count {
    const NAME: &'static str = "count";
    const EXAMPLE: &'static str = "5-10";
    const UNITS: &'static [Unit] = &[Unit::common("", 1.0, &[""])];
    const BEARABLE: (f64, f64) = (0.0, 1e6);
    const BARE: bool = true;
    const WHOLE: bool = true;
    const METRIC: &'static [Scale] = &[Scale::new(f64::INFINITY, "", 1.0, &[1.0])];

    fn from_base(value: f64) -> Self {
        Count(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}
