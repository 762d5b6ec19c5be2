//! Sizes that can be bought or built.

use super::{Minimum, wording::number};
use crate::model::standard::Measure;

/// Enclosures are sold and boards are cut in steps of this.
const STEP_CM: f64 = 10.0;
/// Keeps a side that is a whole step but for the last bit from being rounded up to the next.
const GUARD: f64 = 1e-9;
/// How many times as long as wide a floor may be that was only lengthened; common practice, no source.
const SLIMMEST: f64 = 2.5;
/// Depth of water taken where a volume is asked for and no depth; common practice, no source.
const ASSUMED_DEPTH_CM: f64 = 40.0;
/// Room above the water to bask, and to keep the animal from climbing out; common practice, no source.
const ABOVE_WATER_CM: f64 = 30.0;

/// An enclosure to build.
#[derive(Debug, Clone, PartialEq)]
pub struct Build {
    /// Length, width and height, inside, whole tens of centimetres.
    pub inside_cm: [f64; 3],
    /// What the standard leaves open, and what was taken for it.
    pub assumptions: Vec<String>,
}

/// Rounds the first layout of a minimum up to a size that can be bought or built.
///
/// Each side goes up to the next 10 cm. A floor given only as an area is laid out twice as long as wide, both sides
/// rounded up, so that the area is still met. A height the standard leaves open is taken as half the width for
/// tortoises and turtles, as the width for others, and as 30 cm above the water where there is water; these three are
/// common practice without a source. None if the standard gives neither a floor nor water.
pub fn build_cm(minimum: &Minimum) -> Option<Build> {
    let mut assumptions = Vec::new();
    let depth_cm = match (minimum.water_depth_cm, minimum.water_l) {
        (Some(depth_cm), _) => Some(depth_cm),
        (None, Some(_)) => {
            assumptions.push(format!(
                "The standard gives no depth for the water; {} cm is taken.",
                number(ASSUMED_DEPTH_CM, 0)
            ));
            Some(ASSUMED_DEPTH_CM)
        }
        (None, None) => None,
    };
    let floor_m2 = match (minimum.floor_m2(), minimum.water_l, depth_cm) {
        // A volume asks for a floor too: for a wider one, not for a tower.
        (floor_m2, Some(water_l), Some(depth_cm)) => {
            assumptions
                .push("Land is taken to lie beside the water, on the same floor.".to_owned());
            let of_water = water_l / (depth_cm * 10.0) + minimum.land_m2.unwrap_or(0.0);
            floor_m2.unwrap_or(0.0).max(of_water)
        }
        (Some(floor_m2), ..) => floor_m2,
        _ => return None,
    };

    let [length, width] = minimum.shape.length_width_cm.unwrap_or_else(|| {
        assumptions.push("The floor is laid out twice as long as wide.".to_owned());
        let width_cm = (floor_m2 * 10_000.0 / 2.0).sqrt();
        [width_cm * 2.0, width_cm]
    });
    let least_side = minimum.least_side_cm.unwrap_or(0.0);
    let stretched = |length: f64, width: f64| {
        let width = up(width.max(least_side));
        [up(length.max(floor_m2 * 10_000.0 / width)).max(width), width]
    };
    // Where one standard gives sides and another a larger floor, the length grows; but a long thin box serves nobody, and
    // past a point both sides grow alike.
    let [mut long, mut wide] = stretched(length, width);
    if long > SLIMMEST * wide && long > up(length) {
        let times = (floor_m2 * 10_000.0 / (length * width)).max(1.0).sqrt();
        [long, wide] = stretched(length * times, width * times);
    }
    let (length, width) = (long, wide);

    let height = match (minimum.height_cm(), depth_cm) {
        (Some(height_cm), depth_cm) => height_cm.max(depth_cm.unwrap_or(0.0)),
        (None, Some(depth_cm)) => {
            assumptions.push(format!(
                "The standard gives no height; {} cm above the water is taken.",
                number(ABOVE_WATER_CM, 0)
            ));
            depth_cm + ABOVE_WATER_CM
        }
        (None, None) if minimum.water_floor_m2.is_some() => {
            assumptions.push(format!(
                "The standard gives no height and no depth for the water; {} cm of water and {} cm above it are taken.",
                number(ASSUMED_DEPTH_CM, 0),
                number(ABOVE_WATER_CM, 0)
            ));
            ASSUMED_DEPTH_CM + ABOVE_WATER_CM
        }
        (None, None) => match minimum.measure {
            Measure::CarapaceLength | Measure::CarapaceWidth => {
                assumptions
                    .push("The standard gives no height; half the width is taken.".to_owned());
                width / 2.0
            }
            Measure::TotalLength | Measure::SnoutVentLength => {
                assumptions.push("The standard gives no height; the width is taken.".to_owned());
                width
            }
        },
    };
    Some(Build { inside_cm: [length, width, up(height)], assumptions })
}

/// Rounds up to the next step, never to nothing.
fn up(length_cm: f64) -> f64 {
    ((length_cm / STEP_CM - GUARD).ceil() * STEP_CM).max(STEP_CM)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_whole_step_stays() {
        assert_eq!(up(120.0), 120.0);
        assert_eq!(up(120.000_000_001), 120.0);
        assert_eq!(up(120.1), 130.0);
        assert_eq!(up(0.0), 10.0);
    }
}
