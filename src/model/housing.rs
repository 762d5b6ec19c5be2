//! An animal's enclosure as it stands: its box, its heaters, lamps, probes and hides.

use crate::finding::Place;
use crate::quantity::{
    Area, Dimensions, Humidity, Length, PerHour, Power, Range, Span, Temperature, UvIndex,
};

use super::word::{HeaterKind, Thermostat};

/// The enclosure of one animal. Positions are measured from the warm end.
#[derive(Debug, Clone, PartialEq)]
pub struct Housing {
    /// Where it is written.
    pub place: Place,
    /// Inside: length, width, height.
    pub inside: Option<(Dimensions, Place)>,
    /// Its walls by face; a face without its own is made like `walls`.
    pub walls: Walls,
    /// The open area of its vents.
    pub vents: Option<Area>,
    /// How often its air is exchanged.
    pub air_changes: Option<(Range<PerHour>, Place)>,
    /// The room by day.
    pub room_day: Option<Range<Temperature>>,
    /// The room in the coldest night.
    pub room_night: Option<Range<Temperature>>,
    /// The room's own humidity.
    pub room_humidity: Option<Range<Humidity>>,
    /// Material and depth of the substrate.
    pub substrate: Option<Layer>,
    /// Water held in bowls or a pool.
    pub water_l: Option<f64>,
    /// What happens in a power cut.
    pub fallback: Option<String>,
    /// Heaters.
    pub heaters: Vec<Heater>,
    /// Lamps.
    pub lamps: Vec<Lamp>,
    /// Probes.
    pub probes: Vec<Probe>,
    /// Hides.
    pub hides: Vec<Hide>,
}

/// The walls of an enclosure.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Walls {
    /// Whatever has no entry of its own.
    pub walls: Vec<Layer>,
    /// The front.
    pub front: Vec<Layer>,
    /// The back.
    pub back: Vec<Layer>,
    /// Both sides.
    pub sides: Vec<Layer>,
    /// The top.
    pub top: Vec<Layer>,
    /// The floor.
    pub floor: Vec<Layer>,
}

/// A sheet of a material.
#[derive(Debug, Clone, PartialEq)]
pub struct Layer {
    /// What it is made of.
    pub material: String,
    /// How thick it is.
    pub thickness: Length,
    /// Where it is written.
    pub place: Place,
}

/// A heater.
#[derive(Debug, Clone, PartialEq)]
pub struct Heater {
    /// What it is.
    pub kind: HeaterKind,
    /// Where it is written.
    pub place: Place,
    /// Its power.
    pub power: Option<(Power, Place)>,
    /// How far from the warm end.
    pub at: Option<(Length, Place)>,
    /// Its own thermostat.
    pub thermostat: Option<(Thermostat, Place)>,
    /// What the thermostat is set to.
    pub set_point: Option<(Temperature, Place)>,
    /// What it is set to by night.
    pub set_night: Option<(Temperature, Place)>,
    /// Whether the animal is kept off it.
    pub guard: Option<(bool, Place)>,
    /// Whether it heats from below.
    pub below: bool,
}

/// A lamp for light or ultraviolet.
#[derive(Debug, Clone, PartialEq)]
pub struct Lamp {
    /// What it is.
    pub kind: String,
    /// Where it is written.
    pub place: Place,
    /// Its power.
    pub power: Option<Power>,
    /// How far from the warm end.
    pub at: Option<(Length, Place)>,
    /// How far above the basking spot.
    pub distance: Option<Length>,
    /// The ultraviolet index measured there.
    pub uvi: Option<(Range<UvIndex>, Place)>,
    /// Hours a day.
    pub hours: Option<(Range<Span>, Place)>,
    /// When it was fitted.
    pub fitted: Option<(jiff::civil::Date, Place)>,
    /// How long it serves.
    pub replace_after: Option<Span>,
    /// Whether the animal is kept off it.
    pub guard: Option<(bool, Place)>,
}

/// A probe or hygrometer.
#[derive(Debug, Clone, PartialEq)]
pub struct Probe {
    /// Its name: the zone that it reads.
    pub name: String,
    /// Where it is written.
    pub place: Place,
    /// How far from the warm end.
    pub at: Option<(Length, Place)>,
    /// What it reads by day.
    pub day: Option<(Temperature, Place)>,
    /// What it reads by night.
    pub night: Option<(Temperature, Place)>,
    /// The humidity it reads.
    pub humidity: Option<(Humidity, Place)>,
}

/// A hide.
#[derive(Debug, Clone, PartialEq)]
pub struct Hide {
    /// Where it is written.
    pub place: Place,
    /// How far from the warm end.
    pub at: Option<(Length, Place)>,
    /// Inside: length, width and, where given, height, in centimetres.
    pub inside: Option<(Dimensions, Place)>,
}
