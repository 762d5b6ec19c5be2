//! An animal's enclosure as it stands: its box, its heaters, lamps, probes and hides.

use crate::finding::Place;
use crate::quantity::{
    Area, Dimensions, Humidity, Length, PerHour, Power, Range, Span, Temperature,
    TemperatureDifference, UvIndex,
};

use super::cited::Named;
use super::word::{HeaterKind, Thermostat, Zone};

/// The enclosure of one animal. Positions are measured from the warm end.
#[derive(Debug, Clone, PartialEq)]
pub struct Housing {
    /// Where it is written.
    pub place: Place,
    /// The room that it stands in.
    pub room: Option<Named>,
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
    /// From spraying to spraying.
    pub spray_every: Option<(Span, Place)>,
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
    /// The floor stands on something just as warm, and nothing gets through it.
    pub floor_keeps_all: bool,
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
    /// The probe that its thermostat goes by.
    pub probe: Option<Named>,
    /// What a cut-out of its own is set to.
    pub cut_out: Option<(Temperature, Place)>,
    /// The socket strip that it is plugged into.
    pub strip: Option<Named>,
    /// How far from it the nearest thing is that burns.
    pub clearance: Option<(Length, Place)>,
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
    /// A meter's readings at several distances.
    pub readings: Vec<UvReading>,
    /// Hours a day.
    pub hours: Option<(Range<Span>, Place)>,
    /// When it was fitted.
    pub fitted: Option<(jiff::civil::Date, Place)>,
    /// How long it serves.
    pub replace_after: Option<Span>,
    /// The socket strip that it is plugged into.
    pub strip: Option<Named>,
    /// How far from it the nearest thing is that burns.
    pub clearance: Option<(Length, Place)>,
    /// Whether the animal is kept off it.
    pub guard: Option<(bool, Place)>,
}

/// A probe or hygrometer.
#[derive(Debug, Clone, PartialEq)]
pub struct Probe {
    /// Its name.
    pub name: String,
    /// The zone that it reads, where its file or its name tells.
    pub zone: Option<Zone>,
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
    /// The instrument's own tests and accuracy.
    pub instrument: Instrument,
}

/// A meter's reading of a lamp.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UvReading {
    /// How far from the lamp.
    pub distance: Length,
    /// What it read.
    pub uvi: UvIndex,
}

/// What is known of an instrument: the maker's accuracy and the keeper's tests.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Instrument {
    /// Accuracy of its temperatures, either way.
    pub accuracy: Option<TemperatureDifference>,
    /// Accuracy of its humidities, either way.
    pub humidity_accuracy: Option<Humidity>,
    /// What it read in melting ice.
    pub ice_test: Option<Temperature>,
    /// What it read over damp table salt.
    pub salt_test: Option<Humidity>,
    /// How warm the salt test was.
    pub salt_test_at: Option<Temperature>,
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
