//! Temperatures, and differences between them.

use super::scale::Scale;
use super::unit::{Quantity, Unit};

/// Kelvin per degree Fahrenheit.
const KELVIN_PER_FAHRENHEIT: f64 = 5.0 / 9.0;
/// 0 °F in degrees Celsius.
const ZERO_FAHRENHEIT: f64 = -160.0 / 9.0;

/// A temperature, in degrees Celsius.
///
/// Written in C or F. Bearable from −40 °C (a prey freezer) to 65 °C (a stone under a strong lamp).
///
/// ```
/// use wardsheet::quantity::Temperature;
/// assert_eq!(Temperature::from_celsius(25.0).fahrenheit(), 77.0);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Temperature(f64);

impl Temperature {
    /// The temperature of this many degrees Celsius.
    pub const fn from_celsius(celsius: f64) -> Self {
        Temperature(celsius)
    }

    /// The temperature of this many degrees Fahrenheit.
    pub fn from_fahrenheit(fahrenheit: f64) -> Self {
        Temperature((fahrenheit - 32.0) / 1.8)
    }

    /// Degrees Celsius.
    pub const fn celsius(self) -> f64 {
        self.0
    }

    /// Degrees Fahrenheit.
    pub fn fahrenheit(self) -> f64 {
        self.0 * 1.8 + 32.0
    }
}

impl std::ops::Sub for Temperature {
    type Output = TemperatureDifference;
    fn sub(self, other: Temperature) -> TemperatureDifference {
        TemperatureDifference(self.0 - other.0)
    }
}

impl std::ops::Add<TemperatureDifference> for Temperature {
    type Output = Temperature;
    fn add(self, difference: TemperatureDifference) -> Temperature {
        Temperature(self.0 + difference.0)
    }
}

impl std::ops::Sub<TemperatureDifference> for Temperature {
    type Output = Temperature;
    fn sub(self, difference: TemperatureDifference) -> Temperature {
        Temperature(self.0 - difference.0)
    }
}

impl Quantity for Temperature {
    const NAME: &'static str = "temperature";
    const EXAMPLE: &'static str = "26-28 C";
    const UNITS: &'static [Unit] = &[
        Unit::metric(
            "°C",
            1.0,
            &[
                "C",
                "°C",
                "Celsius",
                "deg C",
                "degree C",
                "degrees C",
                "degrees Celsius",
                "centigrade",
            ],
        )
        .usual(),
        Unit::imperial(
            "°F",
            KELVIN_PER_FAHRENHEIT,
            &["F", "°F", "Fahrenheit", "deg F", "degree F", "degrees F", "degrees Fahrenheit"],
        )
        .offset(ZERO_FAHRENHEIT)
        .usual(),
    ];
    const BEARABLE: (f64, f64) = (-40.0, 65.0);
    const METRIC: &'static [Scale] = &[Scale::new(f64::INFINITY, "°C", 1.0, &[1.0, 0.5, 0.1])];
    const IMPERIAL: &'static [Scale] =
        &[Scale::new(f64::INFINITY, "°F", KELVIN_PER_FAHRENHEIT, &[1.0, 0.5, 0.1])
            .offset(ZERO_FAHRENHEIT)];

    fn from_base(value: f64) -> Self {
        Temperature(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}

/// A difference between two temperatures, in kelvin.
///
/// Written in K, or in C or F, which here have no zero of their own. Bearable from 0 to 60 K.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct TemperatureDifference(f64);

impl TemperatureDifference {
    /// The difference of this many kelvin, which are degrees Celsius.
    pub const fn from_kelvin(kelvin: f64) -> Self {
        TemperatureDifference(kelvin)
    }

    /// Kelvin, which are degrees Celsius.
    pub const fn kelvin(self) -> f64 {
        self.0
    }
}

impl Quantity for TemperatureDifference {
    const NAME: &'static str = "temperature difference";
    const EXAMPLE: &'static str = "6-10 K";
    const UNITS: &'static [Unit] = &[
        Unit::metric("K", 1.0, &["K", "kelvin", "C", "°C", "Celsius", "deg C", "degrees C"])
            .usual(),
        Unit::imperial(
            "°F",
            KELVIN_PER_FAHRENHEIT,
            &["F", "°F", "Fahrenheit", "deg F", "degrees F"],
        )
        .usual(),
    ];
    const BEARABLE: (f64, f64) = (0.0, 60.0);
    const METRIC: &'static [Scale] = &[Scale::new(f64::INFINITY, "°C", 1.0, &[1.0, 0.5, 0.1])];
    const IMPERIAL: &'static [Scale] =
        &[Scale::new(f64::INFINITY, "°F", KELVIN_PER_FAHRENHEIT, &[1.0, 0.5, 0.1])];

    fn from_base(value: f64) -> Self {
        TemperatureDifference(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}
