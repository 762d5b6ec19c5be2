//! A published standard for the size of an enclosure, as its tables print it.
//!
//! Nothing here is worked out. Whatever a standard leaves open (which length it means, how many animals, what holds
//! exactly at a class edge) is a field, so that the figure made from it can say how the gap was closed.

use std::{collections::BTreeMap, fmt};

/// One publication with its rows.
#[derive(Debug, Clone, PartialEq)]
pub struct Standard {
    /// The name of its file.
    pub name: String,
    /// The title as published.
    pub title: String,
    /// Who issued it.
    pub issuer: String,
    /// The year, or "n.d.".
    pub year: String,
    /// Where it holds.
    pub where_: String,
    /// Its strength: binding, advice, superseded.
    pub status: String,
    /// The key of its source.
    pub source: String,
    /// What the text leaves undefined, and how that is decided.
    pub note: Option<String>,
    /// The rows by name.
    pub rows: BTreeMap<String, Row>,
}

/// The figures for one species or group, with the standard's own defaults filled in.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// The modern name of the species or group.
    pub taxon: String,
    /// The name as printed, where that differs.
    pub printed: Option<String>,
    /// What this row leaves undefined, and how that is decided.
    pub note: Option<String>,
    /// How many animals a class's figure serves, at least 1.
    pub animals: u32,
    /// The length that classes and multiples mean.
    pub measure: Measure,
    /// Whether that length is an assumption because the text does not say.
    pub measure_assumed: bool,
    /// To which class a class edge belongs.
    pub edges: Edges,
    /// The height that need not be exceeded.
    pub height_cap: Option<HeightCap>,
    /// Whether the text says to keep one animal alone.
    pub singly: bool,
    /// The shortfall the text tolerates in special cases, as a share of 1.
    pub tolerance_share: Option<f64>,
    /// The classes in rising order, at least one.
    pub classes: Vec<SizeClass>,
}

/// A length of the animal that a standard may mean.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Measure {
    /// From the snout to the tip of the tail.
    TotalLength,
    /// From the snout to the vent.
    SnoutVentLength,
    /// The carapace along the midline, measured straight.
    CarapaceLength,
    /// The carapace across, measured straight.
    CarapaceWidth,
}

impl fmt::Display for Measure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Measure::TotalLength => "total length",
            Measure::SnoutVentLength => "snout-vent length",
            Measure::CarapaceLength => "carapace length",
            Measure::CarapaceWidth => "carapace width",
        })
    }
}

/// To which class a length belongs that lies exactly on a class edge.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Edges {
    /// To both neighbours, because both print it.
    Shared,
    /// To the lower class.
    UpTo,
}

/// A height that need not be exceeded.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeightCap {
    /// The cap.
    pub height_cm: f64,
    /// Whether the floor then grows so that the volume stays.
    pub floor_grows: bool,
}

/// One line of a row: the animals it holds for, and what they need.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SizeClass {
    /// The lower end, where the first class prints one.
    pub from_cm: Option<f64>,
    /// The upper end; none if the class has no upper end.
    pub up_to_cm: Option<f64>,
    /// The upper end in age, for classes that go by age.
    pub up_to_months: Option<f64>,
    /// Whether the class also holds for any adult, however short.
    pub adult: bool,
    /// Whether the class prints "over" its lower end, so that the edge itself belongs to the class below.
    pub over: bool,
    /// What the row's number of animals needs.
    pub space: Space,
    /// What each animal beyond them adds; empty if the standard says nothing.
    pub further: Vec<Further>,
}

/// What the row's number of animals needs.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Space {
    /// The layouts; any one of them satisfies.
    pub layouts: Vec<Layout>,
    /// The least length of the shortest side of the floor.
    pub least_side: Option<Extent>,
    /// The volume of water.
    pub water_l: Option<f64>,
    /// The surface of the water.
    pub water_floor: Option<Area>,
    /// The depth of the water.
    pub water_depth: Option<WaterDepth>,
    /// The area of land.
    pub land: Option<Area>,
    /// The floor of each animal once two or more are kept.
    pub group_floor_m2: Option<f64>,
}

/// The outer figures of one layout, inside measure; each is given or left open.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Layout {
    /// The length of the floor.
    pub length: Option<Extent>,
    /// The width of the floor.
    pub width: Option<Extent>,
    /// The height.
    pub height: Option<Extent>,
    /// The area of the floor, where it is printed in place of sides.
    pub floor: Option<Area>,
}

/// The depth of the water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WaterDepth {
    /// At least.
    pub least: Extent,
    /// At most.
    pub most: Option<Extent>,
    /// The length its multiples mean, if not the row's.
    pub of: Option<Measure>,
}

/// A length of the enclosure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Extent {
    /// A multiple of the measured length.
    Multiple(f64),
    /// A fixed length, cm.
    Centimetres(f64),
}

/// An area of the enclosure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Area {
    /// A fixed area, m².
    SquareMetres(f64),
    /// So many times the square of the measured length.
    SquaredMultiple(f64),
}

/// What each further animal adds.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Further {
    /// The first animal it holds for, counted in the whole group; none for the first beyond the row's number.
    pub from: Option<u32>,
    /// The last animal it holds for; none if there is no last.
    pub to: Option<u32>,
    /// Added floor.
    pub floor: Option<Increment>,
    /// Added volume as a share of the base volume, proportions kept.
    pub volume_share: Option<f64>,
    /// Added height.
    pub height_cm: Option<f64>,
    /// Added water.
    pub water_l: Option<f64>,
    /// Added land.
    pub land: Option<Area>,
    /// Added surface of water.
    pub water_floor: Option<Area>,
    /// Whether a share of the floor grows on itself rather than on the base.
    pub compounding: bool,
}

/// An added floor area.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Increment {
    /// A share of the base floor, as a part of 1.
    Share(f64),
    /// An area.
    Area(Area),
}
