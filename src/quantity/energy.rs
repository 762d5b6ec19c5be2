//! Power and energy.

use super::scale::Scale;
use super::span::Span;
use super::unit::{Quantity, Unit};

/// Kilojoules per kilowatt-hour.
const KILOJOULES_PER_KILOWATT_HOUR: f64 = 3600.0;
/// Kilojoules per kilocalorie, the thermochemical calorie, exact by definition.
const KILOJOULES_PER_KILOCALORIE: f64 = 4.184;

/// A power, in watts.
///
/// Written in W or kW. Bearable from 0 to 20 kW, which is more than a house circuit gives.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Power(f64);

impl Power {
    /// The power of this many watts.
    pub const fn from_watts(watts: f64) -> Self {
        Power(watts)
    }

    /// Watts.
    pub const fn watts(self) -> f64 {
        self.0
    }

    /// The energy that this power gives over `span`.
    ///
    /// ```
    /// use wardsheet::quantity::{Power, Span};
    /// assert_eq!(Power::from_watts(100.0).over(Span::from_days(1.0)).kilowatt_hours(), 2.4);
    /// ```
    pub fn over(self, span: Span) -> Energy {
        Energy(self.0 * span.hours() * (KILOJOULES_PER_KILOWATT_HOUR / 1000.0))
    }
}

impl Quantity for Power {
    const NAME: &'static str = "power";
    const EXAMPLE: &'static str = "75 W";
    const UNITS: &'static [Unit] = &[
        Unit::common("W", 1.0, &["W", "watt", "watts"]).usual(),
        Unit::common("kW", 1000.0, &["kW", "kilowatt", "kilowatts"]),
    ];
    const BEARABLE: (f64, f64) = (0.0, 20_000.0);
    const METRIC: &'static [Scale] = &[
        Scale::new(10.0, "W", 1.0, &[0.1, 0.01, 0.001]),
        Scale::new(f64::INFINITY, "W", 1.0, &[1.0, 0.5, 0.1]),
    ];

    fn from_base(value: f64) -> Self {
        Power(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}

/// An energy, in kilojoules.
///
/// Written in J, kJ, kcal, Wh or kWh. Bearable from 0 to 100 GJ. Printed in kJ below 1 kWh and in kWh from there.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Energy(f64);

impl Energy {
    /// The energy of this many kilojoules.
    pub const fn from_kilojoules(kilojoules: f64) -> Self {
        Energy(kilojoules)
    }

    /// Kilojoules.
    pub const fn kilojoules(self) -> f64 {
        self.0
    }

    /// Kilowatt-hours.
    pub fn kilowatt_hours(self) -> f64 {
        self.0 / KILOJOULES_PER_KILOWATT_HOUR
    }

    /// Kilocalories.
    pub fn kilocalories(self) -> f64 {
        self.0 / KILOJOULES_PER_KILOCALORIE
    }
}

impl Quantity for Energy {
    const NAME: &'static str = "energy";
    const EXAMPLE: &'static str = "20-30 kJ";
    const UNITS: &'static [Unit] = &[
        Unit::common("kJ", 1.0, &["kJ", "kilojoule", "kilojoules"]).usual(),
        Unit::common(
            "kWh",
            KILOJOULES_PER_KILOWATT_HOUR,
            &["kWh", "kilowatt hour", "kilowatt hours"],
        )
        .usual(),
        Unit::common("kcal", KILOJOULES_PER_KILOCALORIE, &["kcal", "kilocalorie", "kilocalories"]),
        Unit::common(
            "Wh",
            KILOJOULES_PER_KILOWATT_HOUR / 1000.0,
            &["Wh", "watt hour", "watt hours"],
        ),
        Unit::common("J", 0.001, &["J", "joule", "joules"]),
    ];
    const BEARABLE: (f64, f64) = (0.0, 1e8);
    const METRIC: &'static [Scale] = &[
        Scale::new(10.0, "kJ", 1.0, &[0.1, 0.01, 0.001]),
        Scale::new(KILOJOULES_PER_KILOWATT_HOUR, "kJ", 1.0, &[1.0, 0.5, 0.1]),
        Scale::new(
            10.0 * KILOJOULES_PER_KILOWATT_HOUR,
            "kWh",
            KILOJOULES_PER_KILOWATT_HOUR,
            &[0.1, 0.01],
        ),
        Scale::new(f64::INFINITY, "kWh", KILOJOULES_PER_KILOWATT_HOUR, &[1.0, 0.5, 0.1]),
    ];

    fn from_base(value: f64) -> Self {
        Energy(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}
