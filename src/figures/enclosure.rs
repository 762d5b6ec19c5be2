//! The enclosure a published standard asks for, what to build, and whether a given one is enough.
//!
//! Each standard is its own source: the row carries the figures, this file the arithmetic that its words describe.
//! What the words leave open is decided on the side of more room and said in [`Minimum::assumptions`].

mod amounts;
mod build;
mod class;
mod fit;
mod strictest;
mod wording;

use std::fmt;

use crate::model::standard::{Measure, Row};

pub use build::{Build, build_cm};
pub use fit::{Fit, Shortfall, fits};
pub use strictest::strictest;

/// The animal's measurements; what is not known is left out.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct BodyLengths {
    /// From the snout to the tip of the tail. A broken or regrown tail counts at its estimated original length.
    pub total_cm: Option<f64>,
    /// From the snout to the vent.
    pub snout_vent_cm: Option<f64>,
    /// The carapace along the midline, straight.
    pub carapace_cm: Option<f64>,
    /// The carapace across, straight.
    pub carapace_width_cm: Option<f64>,
    /// The age in months, for the standards that go by age.
    pub age_months: Option<f64>,
}

impl BodyLengths {
    /// Returns the length that `measure` means, if it is known.
    pub fn of(&self, measure: Measure) -> Option<f64> {
        match measure {
            Measure::TotalLength => self.total_cm,
            Measure::SnoutVentLength => self.snout_vent_cm,
            Measure::CarapaceLength => self.carapace_cm,
            Measure::CarapaceWidth => self.carapace_width_cm,
        }
    }

    fn required(&self, measure: Measure) -> Result<f64, Reason> {
        self.of(measure).ok_or(Reason::LengthNotGiven(measure))
    }
}

/// The outer figures of an enclosure, inside measure.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Shape {
    /// Length and width of the floor, the longer first, where the standard gives sides.
    pub length_width_cm: Option<[f64; 2]>,
    /// The area of the floor.
    pub floor_m2: Option<f64>,
    /// The height.
    pub height_cm: Option<f64>,
}

/// The least enclosure that satisfies a standard.
#[derive(Debug, Clone, PartialEq)]
pub struct Minimum {
    /// The first layout the standard names, or the smallest of a combination.
    pub shape: Shape,
    /// Other layouts, any one of which also satisfies.
    pub alternatives: Vec<Shape>,
    /// The least length of the shortest side of the floor.
    pub least_side_cm: Option<f64>,
    /// The volume of water.
    pub water_l: Option<f64>,
    /// The surface of the water.
    pub water_floor_m2: Option<f64>,
    /// The depth of the water, at least.
    pub water_depth_cm: Option<f64>,
    /// The depth of the water, at most.
    pub water_depth_at_most_cm: Option<f64>,
    /// The area of land.
    pub land_m2: Option<f64>,
    /// The length that the standard measures by.
    pub measure: Measure,
    /// The classes used, as places in the row; two exactly at a shared edge, none in a combination.
    pub classes: Vec<usize>,
    /// Each undefined point, and how it was decided.
    pub assumptions: Vec<String>,
    /// Figures the standard asks for that could not be worked out, each with its reason.
    pub missing: Vec<String>,
    /// The working with the numbers put in.
    pub steps: Vec<String>,
}

impl Minimum {
    /// Returns length, width and height, where the standard gives all three.
    pub fn sides_cm(&self) -> Option<[f64; 3]> {
        let [length, width] = self.shape.length_width_cm?;
        Some([length, width, self.shape.height_cm?])
    }

    /// Returns the area of the floor.
    pub fn floor_m2(&self) -> Option<f64> {
        self.shape.floor_m2
    }

    /// Returns the height.
    pub fn height_cm(&self) -> Option<f64> {
        self.shape.height_cm
    }

    /// Iterates over every layout that satisfies, the first one first.
    pub fn shapes(&self) -> impl Iterator<Item = &Shape> {
        std::iter::once(&self.shape).chain(&self.alternatives)
    }
}

/// Why no enclosure can be worked out.
#[derive(Debug, Clone, PartialEq)]
pub enum Reason {
    /// No animal is kept.
    NoAnimals,
    /// A length or an age is not a positive number.
    NotALength,
    /// The standard asks for a length that is not given.
    LengthNotGiven(Measure),
    /// The animal is longer than the last class reaches.
    NoClass {
        /// The length that the classes mean.
        measure: Measure,
        /// The animal's.
        length_cm: f64,
        /// The end of the last class.
        up_to_cm: f64,
    },
    /// The standard has no figure for so many animals.
    NoFurther {
        /// The most animals it has a figure for.
        animals: u32,
        /// Whether it says to keep one animal alone.
        singly: bool,
    },
    /// The row has no class at all.
    NoClasses,
}

impl fmt::Display for Reason {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Reason::NoAnimals => f.write_str("An enclosure is worked out for at least one animal."),
            Reason::NotALength => f.write_str("A length or an age must be a number above 0."),
            Reason::LengthNotGiven(measure) => {
                write!(f, "The rule asks for the {measure}, which is not given.")
            }
            Reason::NoClass { measure, length_cm, up_to_cm } => write!(
                f,
                "No class covers a {measure} of {} cm; the last one ends at {} cm.",
                wording::number(*length_cm, 1),
                wording::number(*up_to_cm, 1)
            ),
            Reason::NoFurther { singly: true, .. } => f.write_str(
                "The standard says to keep this animal singly and gives no figure for more than one.",
            ),
            Reason::NoFurther { animals: 1, .. } => {
                f.write_str("The standard gives no figure for more than one animal.")
            }
            Reason::NoFurther { animals, .. } => {
                write!(f, "The standard gives no figure for more than {animals} animals.")
            }
            Reason::NoClasses => f.write_str("The row of the standard has no class."),
        }
    }
}

impl std::error::Error for Reason {}

/// Works out the least enclosure that `row` asks for.
///
/// Lengths in cm, above 0; `animals` at least 1; in a mixed group the lengths are those of the largest animal.
/// An adult is given the class for adults, however short, where the row has one; everything else goes by length.
///
/// # Errors
/// Says why, when the row asks for a length that is not given, covers no animal so long, or has no figure for so many.
///
/// # Examples
/// A corn snake of 120 cm under the German expert report (BML, 10 January 1997: 1.0, 0.5 and 1.0 times the total
/// length, for two animals) needs 120 x 60 x 120 cm.
pub fn minimum(
    row: &Row,
    lengths: &BodyLengths,
    adult: bool,
    animals: u32,
) -> Result<Minimum, Reason> {
    if animals == 0 {
        return Err(Reason::NoAnimals);
    }
    let choice = class::choose(row, lengths, adult)?;
    let mut each = Vec::with_capacity(choice.classes.len());
    for &place in &choice.classes {
        let mut one = amounts::of_class(row, &row.classes[place], lengths, animals)?;
        if !each.is_empty() {
            one.steps.insert(0, "By the class above:".to_owned());
        }
        each.push(one);
    }
    let mut minimum = strictest(&each).ok_or(Reason::NoClasses)?;
    minimum.assumptions.splice(0..0, choice.assumptions);
    minimum.steps.splice(0..0, choice.steps);
    minimum.classes = choice.classes;
    Ok(minimum)
}
