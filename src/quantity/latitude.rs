//! Geographical latitudes.

use super::range::Range;
use super::scale::{Rounding, Scale, Side, System, number, steps_of};
use super::unit::{Quantity, Unit};

/// A geographical latitude, in degrees; north is positive, south negative.
///
/// Written "25-40 N" or "12 S - 8 N", the two ends in either order. Bearable from −90 to 90.
///
/// ```
/// use wardsheet::quantity::{Latitude, Rounding, System, parse_range};
/// let range = parse_range::<Latitude>("12 S - 8 N").unwrap();
/// assert_eq!(range.low().unwrap().degrees_north(), -12.0);
/// assert_eq!(range.print(System::Metric, Rounding::Nearest).first, "12°\u{a0}S – 8°\u{a0}N");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Latitude(f64);

impl Latitude {
    /// The latitude of this many degrees north of the equator.
    pub const fn from_degrees_north(degrees: f64) -> Self {
        Latitude(degrees)
    }

    /// Degrees north of the equator; negative south of it.
    pub const fn degrees_north(self) -> f64 {
        self.0
    }
}

const SCALES: &[Scale] = &[Scale::new(f64::INFINITY, "°", 1.0, &[1.0, 0.5, 0.1])];

impl Quantity for Latitude {
    const NAME: &'static str = "latitude";
    const EXAMPLE: &'static str = "25-40 N";
    const UNITS: &'static [Unit] = &[
        Unit::common("° N", 1.0, &["N", "°N", "north", "degrees north", "deg N"]).usual(),
        Unit::common("° S", -1.0, &["S", "°S", "south", "degrees south", "deg S"]).usual(),
    ];
    const BEARABLE: (f64, f64) = (-90.0, 90.0);
    const EITHER_ORDER: bool = true;
    const METRIC: &'static [Scale] = SCALES;

    fn from_base(value: f64) -> Self {
        Latitude(value)
    }

    fn base(self) -> f64 {
        self.0
    }

    /// Latitudes name their hemisphere and read away from the equator, so they are not set like other ranges.
    fn printed(range: &Range<Self>, system: System, _: Rounding) -> Option<String> {
        if system == System::Imperial {
            return None;
        }
        let scale = &SCALES[0];
        let step = scale.steps[scale.exact_step(&range.bases()).unwrap_or(0)];
        let degrees =
            |latitude: Latitude| number(steps_of(latitude.0.abs(), step, Side::Nearest), step);
        let side = |latitude: Latitude| if latitude.0 < 0.0 { "S" } else { "N" };
        let one = |latitude: Latitude| format!("{}°\u{a0}{}", degrees(latitude), side(latitude));
        Some(match (range.low(), range.high()) {
            (Some(low), Some(high)) if degrees(low) == degrees(high) && side(low) == side(high) => {
                one(low)
            }
            (Some(low), Some(high)) if low.0 < 0.0 && high.0 <= 0.0 => {
                format!("{}–{}°\u{a0}S", degrees(high), degrees(low))
            }
            (Some(low), Some(high)) if low.0 >= 0.0 => {
                format!("{}–{}°\u{a0}N", degrees(low), degrees(high))
            }
            (Some(low), Some(high)) => format!("{} – {}", one(low), one(high)),
            (Some(low), None) => format!("north of {}", one(low)),
            (None, Some(high)) => format!("south of {}", one(high)),
            (None, None) => String::new(),
        })
    }
}
