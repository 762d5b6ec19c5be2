//! The measured things that a field may hold, with examples in both systems.

use serde_json::{Value, json};

/// A kind of measured thing.
#[derive(Debug)]
pub(super) struct Kind {
    /// Its name.
    name: &'static str,
    /// How one value is written.
    one: &'static [&'static str],
    /// How a range is written.
    range: &'static [&'static str],
    /// Whether a number alone is enough.
    bare: bool,
}

impl Kind {
    const fn new(
        name: &'static str,
        one: &'static [&'static str],
        range: &'static [&'static str],
    ) -> Kind {
        Kind { name, one, range, bare: false }
    }

    fn text(&self, examples: &[&str]) -> Value {
        // A digit, then somewhere a unit: what remains is for the program to judge.
        let pattern = if self.bare { "[0-9]" } else { "[0-9].*[^0-9 .,–-]" };
        let unit = if self.bare { "without a unit" } else { "with its unit" };
        let shown = examples.iter().map(|example| format!("\"{example}\"")).collect::<Vec<_>>();
        json!({
            "type": "string",
            "pattern": pattern,
            "examples": examples,
            "description": format!("A {} {unit}: {}", self.name, shown.join(", ")),
        })
    }

    /// The name of its definition: a reference holds no spaces.
    pub(super) fn key(&self) -> String {
        self.name.replace(' ', "-")
    }

    /// One value.
    pub(super) fn one(&self) -> Value {
        self.text(self.one)
    }

    /// A range, or one value.
    pub(super) fn range(&self) -> Value {
        self.text(self.range)
    }
}

pub(super) static TEMPERATURE: Kind =
    Kind::new("temperature", &["24 C", "75 F"], &["26-28 C", "79-82 F", "at least 20 C"]);
pub(super) static TEMPERATURE_DIFFERENCE: Kind =
    Kind::new("temperature difference", &["0.5 C", "1 F"], &["0.5-1 C"]);
pub(super) static LENGTH: Kind =
    Kind::new("length", &["120 cm", "4 ft 6 in"], &["90-150 cm", "3-5 ft"]);
pub(super) static MASS: Kind = Kind::new("mass", &["40 g", "6 lb 4 oz"], &["45-80 g", "2-3 oz"]);
pub(super) static HUMIDITY: Kind = Kind::new("humidity", &["75 %"], &["40-60 %", "at most 80 %"]);
pub(super) static SPAN: Kind =
    Kind::new("span of time", &["12 months", "90 days"], &["15-20 years", "5-7 days"]);
pub(super) static POWER: Kind = Kind::new("power", &["75 W", "1.2 kW"], &["50-75 W"]);
pub(super) static RATING: Kind =
    Kind::new("rating of a socket strip", &["3000 W", "13 A x 230 V"], &["3000 W"]);
pub(super) static AREA: Kind = Kind::new("area", &["80 cm2", "5 sq ft"], &["0.4-0.5 m2"]);
pub(super) static VOLUME: Kind = Kind::new("volume", &["2 l", "500 ml", "10 gal"], &["10-20 l"]);
pub(super) static SHARE: Kind = Kind::new("share", &["10 %"], &["10-15 %"]);
pub(super) static MULTIPLE: Kind = Kind::new("multiple", &["0.75 x"], &["2 x", "1.5-2 x"]);
pub(super) static UV: Kind = Kind::new("ultraviolet index", &["0.6 UVI"], &["2.6-3.5 UVI"]);
pub(super) static LATITUDES: Kind = Kind::new("latitude", &["25 N"], &["25-40 N", "12 S - 8 N"]);
pub(super) static RATE_PER_YEAR: Kind =
    Kind::new("yearly rate", &["0.6 per year"], &["0.4-0.6 per year"]);
pub(super) static RATE_PER_HOUR: Kind =
    Kind::new("hourly rate", &["1 per hour"], &["1 per hour", "1-2 per hour"]);
pub(super) static PRICE: Kind =
    Kind::new("price", &["0.34 EUR per kWh", "4 EUR per kg", "2.20 EUR each"], &["4 EUR per kg"]);
pub(super) static INSIDE: Kind = Kind::new(
    "length, width and height inside",
    &["120 x 60 x 60 cm", "48 x 24 x 24 in"],
    &["120 x 60 x 60 cm"],
);
pub(super) static HIDE: Kind =
    Kind::new("floor inside, or all three measures", &["35 x 25 cm", "35 x 25 x 15 cm"], &[]);
pub(super) static EXTENT: Kind =
    Kind::new("length, or multiple of the animal's length", &["120 cm", "0.75 x", "1/3 x"], &[]);
pub(super) static ANY_AREA: Kind =
    Kind::new("area, or multiple of the square of the animal's length", &["0.3 m2", "50 x2"], &[]);
pub(super) static INCREMENT: Kind =
    Kind::new("share of the base floor, or an area", &["10 %", "0.1 m2"], &[]);
pub(super) static COUNT: Kind = Kind { bare: true, ..Kind::new("count", &["5"], &["4-8"]) };
pub(super) static ICE: Kind = Kind::new("temperature", &["0.4 C", "33 F"], &[]);
