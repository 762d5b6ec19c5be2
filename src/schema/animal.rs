//! The fields of `animals/NAME.toml`.

use crate::model::word::{Basis, HeaterKind, Sex, Status, Thermostat, Zone};

use super::field::{Field, Form, may, must, spellings};
use super::quantities as q;

pub(super) const FIELDS: &[Field] = &[
    must("name", "What the animal is called", Form::Text(&["Pip"])),
    must("species", "The name of its species file", Form::Text(&["leopard-gecko"])),
    may("form", "A named form of the species", Form::Text(&["island"])),
    may("sex", "Its sex; without it, unknown", Form::Word(spellings::<Sex>)),
    may("sex_basis", "How the sex was told", Form::Text(&["pores before the vent, seen by a vet"])),
    may("hatched", "When it hatched or was born; leave it out where nobody knows", Form::Date),
    may("hatched_basis", "How sure that is", Form::Word(spellings::<Basis>)),
    may("arrived", "When it came", Form::Date),
    may("origin", "Where it came from", Form::Text(&["Captive bred"])),
    may(
        "status",
        "How it stands with its keeper; without it, resident",
        Form::Word(spellings::<Status>),
    ),
    may("publish", "Whether it has a public page; without it, no", Form::Flag),
    may("story", "Public words", Form::Text(&["Likes the warm stone."])),
    may("chip", "Chip or mark; private", Form::Text(&["none"])),
    may("with", "The animals that share its enclosure", Form::Texts(&["moss"])),
    may("turn", "Its turn in the daily round, counted from 1", Form::Whole),
    may("tools", "The sets of tools used for it", Form::Texts(&["red set"])),
    may("temperament", "How it behaves; private", Form::Text(&["Calm in the evening."])),
    may("photo", "A file in photos/: JPEG, PNG or WebP", Form::Text(&["pip.jpg"])),
    may(
        "photo_shows",
        "What the photo shows, for those who do not see it; public where the animal is",
        Form::Text(&["Pip on the warm stone, seen from above"]),
    ),
    may(
        "under_treatment",
        "Whether it is under treatment now; without it, the log of the last 30 days decides",
        Form::Flag,
    ),
    may("papers", "Papers that go with it; private", Form::Texts(&["The former keeper's card"])),
    may("enclosure", "Its enclosure", Form::Table(ENCLOSURE)),
    may("heater", "Its heaters, each with its thermostat", Form::Tables(HEATER)),
    may("lamp", "Its lamps", Form::Tables(LAMP)),
    may("probe", "Its thermometers and hygrometers", Form::Tables(PROBE)),
    may("hide", "Its hides", Form::Tables(HIDE)),
    may(
        "feeding",
        "Its feeding as practised; without it the species' table is used",
        Form::Table(FEEDING),
    ),
    may("logger", "Its data loggers", Form::Tables(LOGGER)),
    may("quarantine", "Its quarantine", Form::Table(QUARANTINE)),
    may("history", "Health and treatment in words, no doses", Form::Tables(HISTORY)),
    may("notes", "Private notes", Form::Table(NOTES)),
];

const ENCLOSURE: &[Field] = &[
    may("room", "The room that it stands in, a [[room]] of the site", Form::Text(&["back room"])),
    may("inside", "Inside measures: length, width, height", Form::One(&q::INSIDE)),
    may(
        "walls",
        "Material and thickness, or a list of layers from the inside out",
        Form::Texts(&["plywood, 18 mm", "XPS, 30 mm"]),
    ),
    may(
        "front",
        "The front, where it is made otherwise than the walls",
        Form::Texts(&["glass, 4 mm"]),
    ),
    may(
        "back",
        "The back, where it is made otherwise",
        Form::Texts(&["plywood, 18 mm", "XPS, 30 mm"]),
    ),
    may(
        "sides",
        "The sides, where they are made otherwise",
        Form::Texts(&["plywood, 18 mm", "XPS, 30 mm"]),
    ),
    may(
        "top",
        "The top, where it is made otherwise",
        Form::Texts(&["plywood, 18 mm", "XPS, 30 mm"]),
    ),
    may(
        "floor",
        "The floor, where it is made otherwise; `no loss` where it stands on something just as warm",
        Form::Texts(&["no loss", "plywood, 18 mm"]),
    ),
    may("vents", "Open area of the vents", Form::One(&q::AREA)),
    may("air_changes", "How often the air is exchanged", Form::Range(&q::RATE_PER_HOUR)),
    may("room_day", "The room by day", Form::Range(&q::TEMPERATURE)),
    may("room_night", "The room in the coldest night of the year", Form::Range(&q::TEMPERATURE)),
    may("room_humidity", "The room's own humidity", Form::Range(&q::HUMIDITY)),
    may("substrate", "Material and depth", Form::Text(&["aspen, 6 cm"])),
    may("water", "Water in bowls or a pool", Form::One(&q::VOLUME)),
    may("spray_every", "From spraying to spraying", Form::One(&q::SPAN)),
    may(
        "fallback",
        "What happens in a power cut",
        Form::Text(&["A blanket over the glass, vents free, no food."]),
    ),
];

const STRIP: Form = Form::Text(&["shelf, left"]);
const CLEARANCE: &str = "How far from it the nearest thing is that burns";

const HEATER: &[Field] = &[
    must("kind", "What it is", Form::Word(spellings::<HeaterKind>)),
    may("watts", "Its power", Form::One(&q::POWER)),
    may("at", "How far from the warm end", Form::One(&q::LENGTH)),
    may("thermostat", "Its own thermostat", Form::Word(spellings::<Thermostat>)),
    may("set_point", "What the thermostat is set to", Form::One(&q::TEMPERATURE)),
    may("set_night", "What it is set to by night", Form::One(&q::TEMPERATURE)),
    may("probe", "The probe that its thermostat goes by", Form::Text(&["warm"])),
    may("cut_out", "What a cut-out of its own is set to", Form::One(&q::TEMPERATURE)),
    may("strip", "The socket strip it is plugged into, a [[strip]] of the site", STRIP),
    may("clearance", CLEARANCE, Form::One(&q::LENGTH)),
    may("guard", "The animal cannot touch it", Form::Flag),
    may("below", "It heats from below; without it, only mats and cables do", Form::Flag),
];

const LAMP: &[Field] = &[
    may("kind", "What it is", Form::Text(&["UV tube"])),
    may("watts", "Its power", Form::One(&q::POWER)),
    may("at", "How far from the warm end", Form::One(&q::LENGTH)),
    may("distance", "From the lamp to the animal's back", Form::One(&q::LENGTH)),
    may("uvi", "Ultraviolet index measured there", Form::Range(&q::UV)),
    may("reading", "A meter's readings at several distances", Form::Tables(READING)),
    may("hours", "Hours a day", Form::Range(&q::SPAN)),
    may("fitted", "When it was put in", Form::Date),
    may("replace_after", "How long it serves", Form::One(&q::SPAN)),
    may("strip", "The socket strip it is plugged into, a [[strip]] of the site", STRIP),
    may("clearance", CLEARANCE, Form::One(&q::LENGTH)),
    may("guard", "The animal cannot touch it", Form::Flag),
];

const READING: &[Field] = &[
    must("distance", "The distance from the lamp", Form::One(&q::LENGTH)),
    must("uvi", "What the meter read", Form::One(&q::UV)),
];

const PROBE: &[Field] = &[
    must("name", "Its name, best the zone that it reads", Form::Text(&["basking", "warm", "cool"])),
    may(
        "zone",
        "The zone that it reads, where its name does not tell it",
        Form::Word(spellings::<Zone>),
    ),
    may("at", "How far from the warm end", Form::One(&q::LENGTH)),
    may("day", "What it usually reads by day", Form::One(&q::TEMPERATURE)),
    may("night", "What it usually reads by night", Form::One(&q::TEMPERATURE)),
    may("humidity", "What it usually reads", Form::One(&q::HUMIDITY)),
    may("accuracy", "The maker's accuracy, either way", Form::One(&q::TEMPERATURE_DIFFERENCE)),
    may("humidity_accuracy", "The maker's accuracy, either way", Form::One(&q::HUMIDITY)),
    may("ice_test", "What it read in melting ice", Form::One(&q::ICE)),
    may("salt_test", "What it read over damp table salt", Form::One(&q::HUMIDITY)),
    may("salt_test_at", "How warm that was", Form::One(&q::TEMPERATURE)),
];

const LOGGER: &[Field] = &[
    must("readings", "A table in readings/", Form::Text(&["juniper-2026"])),
    must("map", "The map in maps/ that says how it is read", Form::Text(&["hall-logger"])),
];

const HIDE: &[Field] = &[
    may("at", "How far from the warm end", Form::One(&q::LENGTH)),
    may("inside", "Inside: the floor, or all three measures", Form::One(&q::HIDE)),
];

const FEEDING: &[Field] = &[
    may("meal", "What a meal is", Form::Text(&["cricket, large"])),
    may("mass", "Mass of the whole meal", Form::Range(&q::MASS)),
    may("width", "How wide the prey is", Form::One(&q::LENGTH)),
    may("count", "How many", Form::Range(&q::COUNT)),
    may("every", "From meal to meal", Form::Range(&q::SPAN)),
    may("frozen", "It comes frozen and has to thaw", Form::Flag),
];

const QUARANTINE: &[Field] = &[
    must("started", "The first day", Form::Date),
    may("minimum", "How long at least; without it, 90 days", Form::One(&q::SPAN)),
    may("until", "The end as you have written it down", Form::Date),
];

const HISTORY: &[Field] = &[
    may("date", "The day", Form::Date),
    must("what", "What happened", Form::Text(&["First examination: well."])),
    may("by", "Who did it", Form::Text(&["vet"])),
];

const NOTES: &[Field] = &[
    may("sitter", "For a sitter", Form::Text(&["Leave the damp hide shut."])),
    may("vet", "For a vet", Form::Text(&["Eats readily after a journey."])),
    may("keeper", "For a new keeper", Form::Text(&["Takes food from long tongs."])),
];
