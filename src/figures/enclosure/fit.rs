//! Whether a given enclosure is enough.

use std::fmt;

use super::{Minimum, Shape, wording::number};

/// Keeps the last bit of a sum from failing an enclosure that is exactly enough.
const GUARD: f64 = 1e-9;

/// The verdict on an enclosure.
#[derive(Debug, Clone, PartialEq)]
pub enum Fit {
    /// It satisfies at least one layout, and the water.
    Enough,
    /// It satisfies none; these are the shortfalls against the layout it comes nearest to.
    Short(Vec<Shortfall>),
}

/// One figure that falls short.
#[derive(Debug, Clone, Copy, PartialEq)]
#[expect(missing_docs, reason = "each variant is a figure asked for and the figure found inside")]
pub enum Shortfall {
    /// The longer side of the floor.
    Length { needed_cm: f64, inside_cm: f64 },
    /// The shorter side of the floor.
    Width { needed_cm: f64, inside_cm: f64 },
    /// The shorter side of the floor, where only that is asked for.
    ShortestSide { needed_cm: f64, inside_cm: f64 },
    /// The area of the floor.
    Floor { needed_m2: f64, inside_m2: f64 },
    /// The height.
    Height { needed_cm: f64, inside_cm: f64 },
    /// The height, against the depth of the water.
    WaterDepth { needed_cm: f64, inside_cm: f64 },
    /// The volume, against the volume of water.
    Water { needed_l: f64, inside_l: f64 },
}

impl Shortfall {
    /// Returns which figure it is, what is needed, what there is, the unit, and the decimals to write.
    pub fn parts(self) -> (&'static str, f64, f64, &'static str, usize) {
        match self {
            Shortfall::Length { needed_cm, inside_cm } => ("length", needed_cm, inside_cm, "cm", 1),
            Shortfall::Width { needed_cm, inside_cm } => ("width", needed_cm, inside_cm, "cm", 1),
            Shortfall::ShortestSide { needed_cm, inside_cm } => {
                ("shortest side", needed_cm, inside_cm, "cm", 1)
            }
            Shortfall::Floor { needed_m2, inside_m2 } => ("floor", needed_m2, inside_m2, "m²", 4),
            Shortfall::Height { needed_cm, inside_cm } => ("height", needed_cm, inside_cm, "cm", 1),
            Shortfall::WaterDepth { needed_cm, inside_cm } => {
                ("room for the depth of the water", needed_cm, inside_cm, "cm", 1)
            }
            Shortfall::Water { needed_l, inside_l } => {
                ("room for the water", needed_l, inside_l, "l", 1)
            }
        }
    }

    /// Returns by how much it falls short, in the unit of the figure.
    pub fn by(self) -> f64 {
        let (_, needed, inside, ..) = self.parts();
        needed - inside
    }

    fn share(self) -> f64 {
        let (_, needed, ..) = self.parts();
        self.by() / needed
    }
}

impl fmt::Display for Shortfall {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (what, needed, inside, unit, places) = self.parts();
        write!(
            f,
            "{what} {} {unit}, short of {} {unit} by {} {unit}",
            number(inside, places),
            number(needed, places),
            number(needed - inside, places)
        )
    }
}

/// Compares an enclosure's inside length, width and height, cm, with a minimum.
///
/// Length and width are interchangeable: the longer side is held against the longer. Any one layout suffices. Water is
/// held against the whole inside volume and its depth against the height; that much is needed, whether it is there
/// depends on how the inside is divided. Figures the minimum lists as missing are not compared.
pub fn fits(inside_cm: [f64; 3], minimum: &Minimum) -> Fit {
    let inside = [inside_cm[0].max(inside_cm[1]), inside_cm[0].min(inside_cm[1]), inside_cm[2]];
    let mut shared = Vec::new();
    let [length, width, height] = inside;
    note(&mut shared, minimum.least_side_cm, width, |needed_cm, inside_cm| {
        Shortfall::ShortestSide { needed_cm, inside_cm }
    });
    note(&mut shared, minimum.water_depth_cm, height, |needed_cm, inside_cm| {
        Shortfall::WaterDepth { needed_cm, inside_cm }
    });
    note(&mut shared, minimum.water_l, length * width * height / 1000.0, |needed_l, inside_l| {
        Shortfall::Water { needed_l, inside_l }
    });
    let nearest = minimum
        .shapes()
        .map(|shape| of_shape(inside, shape))
        .min_by(|a, b| total(a).total_cmp(&total(b)))
        .unwrap_or_default();
    let all: Vec<Shortfall> = nearest.into_iter().chain(shared).collect();
    if all.is_empty() { Fit::Enough } else { Fit::Short(all) }
}

fn of_shape([length, width, height]: [f64; 3], shape: &Shape) -> Vec<Shortfall> {
    let mut short = Vec::new();
    let sides = shape.length_width_cm;
    note(&mut short, sides.map(|sides| sides[0]), length, |needed_cm, inside_cm| {
        Shortfall::Length { needed_cm, inside_cm }
    });
    note(&mut short, sides.map(|sides| sides[1]), width, |needed_cm, inside_cm| Shortfall::Width {
        needed_cm,
        inside_cm,
    });
    // A side that is too short already says that the floor is.
    if short.is_empty() {
        note(&mut short, shape.floor_m2, length * width / 10_000.0, |needed_m2, inside_m2| {
            Shortfall::Floor { needed_m2, inside_m2 }
        });
    }
    note(&mut short, shape.height_cm, height, |needed_cm, inside_cm| Shortfall::Height {
        needed_cm,
        inside_cm,
    });
    short
}

fn note(
    short: &mut Vec<Shortfall>,
    needed: Option<f64>,
    inside: f64,
    shortfall: impl Fn(f64, f64) -> Shortfall,
) {
    if let Some(needed) = needed.filter(|&needed| inside < needed * (1.0 - GUARD)) {
        short.push(shortfall(needed, inside));
    }
}

fn total(short: &[Shortfall]) -> f64 {
    short.iter().map(|shortfall| shortfall.share()).sum()
}
