//! Lengths, areas and volumes.

use super::scale::Scale;
use super::unit::{Quantity, Unit};

/// Centimetres per inch, exact by definition (International yard and pound agreement, 1959).
const CM_PER_INCH: f64 = 2.54;
/// Square metres per square inch.
const SQUARE_METRES_PER_SQUARE_INCH: f64 = CM_PER_INCH * CM_PER_INCH / 1e4;
/// Square metres per square foot.
const SQUARE_METRES_PER_SQUARE_FOOT: f64 = 144.0 * SQUARE_METRES_PER_SQUARE_INCH;
/// Litres per US gallon, which is 231 cubic inches by definition.
const LITRES_PER_US_GALLON: f64 = 231.0 * CM_PER_INCH * CM_PER_INCH * CM_PER_INCH / 1000.0;
/// Litres per imperial gallon, exact by definition (Units of Measurement Regulations 1995, United Kingdom).
const LITRES_PER_UK_GALLON: f64 = 4.546_09;

/// A length, in centimetres.
///
/// Written in mm, cm, m, in or ft, also "4 ft 6 in". Bearable from 0 to 100 m.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Length(f64);

impl Length {
    /// The length of this many centimetres.
    pub const fn from_cm(cm: f64) -> Self {
        Length(cm)
    }

    /// Centimetres.
    pub const fn cm(self) -> f64 {
        self.0
    }
}

impl Quantity for Length {
    const NAME: &'static str = "length";
    const EXAMPLE: &'static str = "90-150 cm";
    const UNITS: &'static [Unit] = &[
        Unit::metric("cm", 1.0, &["cm", "centimetre", "centimetres", "centimeter", "centimeters"])
            .usual(),
        Unit::imperial("in", CM_PER_INCH, &["in", "inch", "inches", "\""]).usual(),
        Unit::metric("mm", 0.1, &["mm", "millimetre", "millimetres", "millimeter", "millimeters"]),
        Unit::metric("m", 100.0, &["m", "metre", "metres", "meter", "meters"]),
        Unit::imperial("ft", 12.0 * CM_PER_INCH, &["ft", "foot", "feet", "'"]),
    ];
    const BEARABLE: (f64, f64) = (0.0, 10_000.0);
    const METRIC: &'static [Scale] = &[
        Scale::new(1.0, "mm", 0.1, &[1.0, 0.5, 0.1]),
        Scale::new(10.0, "cm", 1.0, &[0.5, 0.1, 0.01]),
        Scale::new(300.0, "cm", 1.0, &[1.0, 0.5, 0.1]),
        Scale::new(f64::INFINITY, "m", 100.0, &[0.1, 0.05, 0.01]),
    ];
    const IMPERIAL: &'static [Scale] = &[
        Scale::new(0.25 * CM_PER_INCH, "in", CM_PER_INCH, &[0.05, 0.01, 0.001]),
        Scale::new(CM_PER_INCH, "in", CM_PER_INCH, &[0.1, 0.05, 0.01]),
        Scale::new(4.0 * CM_PER_INCH, "in", CM_PER_INCH, &[0.25, 0.125, 0.1, 0.01]),
        Scale::new(12.0 * CM_PER_INCH, "in", CM_PER_INCH, &[0.5, 0.25, 0.1, 0.01]),
        Scale::new(24.0 * CM_PER_INCH, "in", CM_PER_INCH, &[1.0, 0.5, 0.25, 0.1]),
        Scale::new(f64::INFINITY, "in", CM_PER_INCH, &[1.0, 0.5, 0.25, 0.1]).larger("ft", 12.0),
    ];

    fn from_base(value: f64) -> Self {
        Length(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}

/// An area, in square metres.
///
/// Written in cm2, m2, in2 or ft2. Bearable from 0 to 10 000 m².
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Area(f64);

impl Area {
    /// The area of this many square metres.
    pub const fn from_square_metres(square_metres: f64) -> Self {
        Area(square_metres)
    }

    /// Square metres.
    pub const fn square_metres(self) -> f64 {
        self.0
    }
}

impl Quantity for Area {
    const NAME: &'static str = "area";
    const EXAMPLE: &'static str = "0.5 m2";
    const UNITS: &'static [Unit] = &[
        Unit::metric(
            "m²",
            1.0,
            &["m2", "m²", "m^2", "sq m", "square metres", "square metre", "square meters"],
        )
        .usual(),
        Unit::imperial(
            "sq ft",
            SQUARE_METRES_PER_SQUARE_FOOT,
            &["ft2", "ft²", "ft^2", "sq ft", "square feet", "square foot"],
        )
        .usual(),
        Unit::metric(
            "cm²",
            1e-4,
            &["cm2", "cm²", "cm^2", "sq cm", "square centimetres", "square centimeters"],
        ),
        Unit::imperial(
            "sq in",
            SQUARE_METRES_PER_SQUARE_INCH,
            &["in2", "in²", "in^2", "sq in", "square inches", "square inch"],
        ),
    ];
    const BEARABLE: (f64, f64) = (0.0, 10_000.0);
    const METRIC: &'static [Scale] = &[
        Scale::new(0.01, "cm²", 1e-4, &[1.0, 0.1]),
        Scale::new(0.1, "m²", 1.0, &[0.005, 0.001, 0.000_1]),
        Scale::new(1.0, "m²", 1.0, &[0.01, 0.001]),
        Scale::new(10.0, "m²", 1.0, &[0.1, 0.05, 0.01]),
        Scale::new(f64::INFINITY, "m²", 1.0, &[1.0, 0.5, 0.1, 0.01]),
    ];
    const IMPERIAL: &'static [Scale] = &[
        Scale::new(0.01, "sq in", SQUARE_METRES_PER_SQUARE_INCH, &[0.5, 0.1, 0.01]),
        Scale::new(
            SQUARE_METRES_PER_SQUARE_FOOT,
            "sq ft",
            SQUARE_METRES_PER_SQUARE_FOOT,
            &[0.05, 0.01],
        ),
        Scale::new(1.0, "sq ft", SQUARE_METRES_PER_SQUARE_FOOT, &[0.1, 0.05, 0.01]),
        Scale::new(10.0, "sq ft", SQUARE_METRES_PER_SQUARE_FOOT, &[0.5, 0.1, 0.01]),
        Scale::new(f64::INFINITY, "sq ft", SQUARE_METRES_PER_SQUARE_FOOT, &[1.0, 0.5, 0.1]),
    ];

    fn from_base(value: f64) -> Self {
        Area(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}

/// A volume, in litres.
///
/// Written in ml, l, or gal, which is the US gallon; the imperial gallon is "UK gal". Bearable from 0 to 1 000 000 litres.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Volume(f64);

impl Volume {
    /// The volume of this many litres.
    pub const fn from_litres(litres: f64) -> Self {
        Volume(litres)
    }

    /// Litres.
    pub const fn litres(self) -> f64 {
        self.0
    }
}

impl Quantity for Volume {
    const NAME: &'static str = "volume";
    const EXAMPLE: &'static str = "80 l";
    const UNITS: &'static [Unit] = &[
        Unit::metric("l", 1.0, &["l", "litre", "litres", "liter", "liters"]).usual(),
        Unit::imperial(
            "US gal",
            LITRES_PER_US_GALLON,
            &["gal", "US gal", "gallon", "gallons", "US gallon", "US gallons"],
        )
        .usual(),
        Unit::metric("ml", 0.001, &["ml", "millilitre", "millilitres", "milliliters"]),
        Unit::imperial(
            "UK gal",
            LITRES_PER_UK_GALLON,
            &["UK gal", "imp gal", "UK gallons", "imperial gallons"],
        ),
    ];
    const BEARABLE: (f64, f64) = (0.0, 1e6);
    const METRIC: &'static [Scale] = &[
        Scale::new(1.0, "ml", 0.001, &[5.0, 1.0, 0.1]),
        Scale::new(10.0, "litres", 1.0, &[0.1, 0.05, 0.01]).singular("litre"),
        Scale::new(1000.0, "litres", 1.0, &[1.0, 0.5, 0.1]),
        Scale::new(f64::INFINITY, "litres", 1.0, &[10.0, 5.0, 1.0, 0.1]),
    ];
    const IMPERIAL: &'static [Scale] = &[
        Scale::new(2.0, "US gal", LITRES_PER_US_GALLON, &[0.01, 0.001, 0.000_1]),
        Scale::new(10.0, "US gal", LITRES_PER_US_GALLON, &[0.1, 0.05, 0.01]),
        Scale::new(40.0, "US gal", LITRES_PER_US_GALLON, &[0.5, 0.1]),
        Scale::new(f64::INFINITY, "US gal", LITRES_PER_US_GALLON, &[1.0, 0.5, 0.1]),
    ];

    fn from_base(value: f64) -> Self {
        Volume(value)
    }

    fn base(self) -> f64 {
        self.0
    }
}
