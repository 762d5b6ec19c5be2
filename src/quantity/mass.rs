//! Masses.

use super::scale::Scale;
use super::unit::{Quantity, Unit};

/// Grams per pound avoirdupois, exact by definition (International yard and pound agreement, 1959).
const GRAMS_PER_POUND: f64 = 453.592_37;
/// Grams per ounce avoirdupois.
const GRAMS_PER_OUNCE: f64 = GRAMS_PER_POUND / 16.0;

/// A mass, in grams.
///
/// Written in mg, g, kg, oz or lb, also "6 lb 4 oz". Bearable from 0 to 1000 kg.
///
/// ```
/// use wardsheet::quantity::{Mass, Rounding, System, parse_one, print_one};
/// let mass: Mass = parse_one("6 lb 4 oz").unwrap();
/// let printed = print_one(mass, System::Imperial, Rounding::Nearest).to_string();
/// assert_eq!(printed.replace('\u{a0}', " "), "6 lb 4 oz (2.85 kg)");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Mass(f64);

impl Mass {
    /// The mass of this many grams.
    pub const fn from_grams(grams: f64) -> Self {
        Mass(grams)
    }

    /// Grams.
    pub const fn grams(self) -> f64 {
        self.0
    }
}

impl Quantity for Mass {
    const NAME: &'static str = "mass";
    const EXAMPLE: &'static str = "700-1000 g";
    const UNITS: &'static [Unit] = &[
        Unit::metric("g", 1.0, &["g", "gram", "grams", "gramme", "grammes"]).usual(),
        Unit::imperial("oz", GRAMS_PER_OUNCE, &["oz", "ounce", "ounces"]).usual(),
        Unit::metric("kg", 1000.0, &["kg", "kilogram", "kilograms", "kilo", "kilos"]),
        Unit::imperial("lb", GRAMS_PER_POUND, &["lb", "lbs", "pound", "pounds"]),
        Unit::metric("mg", 0.001, &["mg", "milligram", "milligrams"]),
    ];
    const BEARABLE: (f64, f64) = (0.0, 1e6);
    const METRIC: &'static [Scale] = &[
        Scale::new(1.0, "g", 1.0, &[0.05, 0.01, 0.001]),
        Scale::new(20.0, "g", 1.0, &[0.1, 0.05, 0.01]),
        Scale::new(1000.0, "g", 1.0, &[1.0, 0.5, 0.1]),
        Scale::new(3000.0, "kg", 1000.0, &[0.05, 0.01, 0.001]),
        Scale::new(10_000.0, "kg", 1000.0, &[0.1, 0.05, 0.01, 0.001]),
        Scale::new(f64::INFINITY, "kg", 1000.0, &[1.0, 0.5, 0.1, 0.01]),
    ];
    const IMPERIAL: &'static [Scale] = &[
        Scale::new(GRAMS_PER_OUNCE / 4.0, "oz", GRAMS_PER_OUNCE, &[0.01, 0.001, 0.000_1]),
        Scale::new(GRAMS_PER_OUNCE, "oz", GRAMS_PER_OUNCE, &[0.05, 0.01, 0.001]),
        Scale::new(GRAMS_PER_OUNCE * 4.0, "oz", GRAMS_PER_OUNCE, &[0.1, 0.05, 0.01]),
        Scale::new(GRAMS_PER_POUND, "oz", GRAMS_PER_OUNCE, &[0.5, 0.25, 0.1, 0.01]),
        Scale::new(GRAMS_PER_POUND * 20.0, "oz", GRAMS_PER_OUNCE, &[1.0, 0.5, 0.1])
            .larger("lb", 16.0),
        Scale::new(f64::INFINITY, "oz", GRAMS_PER_OUNCE, &[16.0, 1.0, 0.5, 0.1]).larger("lb", 16.0),
    ];

    fn from_base(value: f64) -> Self {
        Mass(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}
