//! The enclosure of an animal file: its box, heaters, lamps, probes and hides.

use crate::finding::{Finding, Place};
use crate::model::housing::{
    Heater, Hide, Housing, Instrument, Lamp, Layer, Probe, UvReading, Walls,
};
use crate::model::word::{HeaterKind, Zone};
use crate::quantity::{self, Area, Dimensions, Fault, Length, Volume};

use super::animal::Equipment;
use super::codes;
use super::figure::figure_fault;
use super::table::Table;

pub(super) fn housing(
    table: Option<&Table<'_, '_>>,
    equipment: &Equipment<'_, '_>,
    place: Place,
) -> Housing {
    let housing = Housing {
        place,
        room: table.and_then(|table| table.named("room")),
        inside: table.and_then(|table| table.parsed("inside", quantity::parse_dimensions)),
        walls: table.map(walls).unwrap_or_default(),
        vents: table.and_then(|table| table.one::<Area>("vents")).map(|(area, _)| area),
        air_changes: table.and_then(|table| table.range("air_changes")),
        room_day: table.and_then(|table| table.range("room_day")).map(|(range, _)| range),
        room_night: table.and_then(|table| table.range("room_night")).map(|(range, _)| range),
        room_humidity: table.and_then(|table| table.range("room_humidity")).map(|(range, _)| range),
        substrate: table.and_then(|table| layers(table, "substrate").into_iter().next()),
        water_l: table
            .and_then(|table| table.one::<Volume>("water"))
            .map(|(volume, _)| volume.litres()),
        spray_every: table.and_then(|table| table.one("spray_every")),
        fallback: table.and_then(|table| table.text("fallback")),
        heaters: equipment.heaters.iter().filter_map(heater).collect(),
        lamps: equipment.lamps.iter().map(lamp).collect(),
        probes: equipment.probes.iter().filter_map(probe).collect(),
        hides: equipment.hides.iter().map(hide).collect(),
    };
    if let Some(table) = table {
        table.close();
    }
    housing
}

fn walls(table: &Table<'_, '_>) -> Walls {
    // A floor on something just as warm, such as another enclosure, lets nothing through.
    let floor_keeps_all = table.list("floor").iter().any(|floor| floor.name == "no loss");
    Walls {
        walls: layers(table, "walls"),
        front: layers(table, "front"),
        back: layers(table, "back"),
        sides: layers(table, "sides"),
        top: layers(table, "top"),
        floor: if floor_keeps_all { Vec::new() } else { layers(table, "floor") },
        floor_keeps_all,
    }
}

/// Takes the layers of a face: `"plywood, 18 mm"`, or a list of such texts from the inside out.
fn layers(table: &Table<'_, '_>, key: &str) -> Vec<Layer> {
    let mut layers = Vec::new();
    for text in table.list(key) {
        let Some((material, thickness)) = text.name.rsplit_once(',') else {
            let message = format!("`{}` does not say how thick it is", table.full_name(key));
            table.report(
                Finding::new(&codes::FIGURE_UNREADABLE, text.place, message)
                    .help("write \"plywood, 18 mm\""),
            );
            continue;
        };
        let thickness_at = material.len() + 1;
        match quantity::parse_one::<Length>(thickness) {
            Ok(thickness) => layers.push(Layer {
                material: material.trim().to_owned(),
                thickness,
                place: text.place,
            }),
            Err(fault) => table.report(figure_fault(
                &table.full_name(key),
                text.place,
                thickness_at + 1,
                fault,
            )),
        }
    }
    layers
}

fn heater(table: &Table<'_, '_>) -> Option<Heater> {
    let kind = table.word::<HeaterKind>("kind");
    if kind.is_none() {
        table.missing("kind", "what it is: kind = \"ceramic\"");
    }
    let below = table.flag("below").map(|(below, _)| below);
    let heater = Heater {
        kind: kind.map_or(HeaterKind::Ceramic, |(kind, _)| kind),
        place: table.place(),
        power: table.one("watts"),
        at: table.one("at"),
        thermostat: table.word("thermostat"),
        set_point: table.one("set_point"),
        set_night: table.one("set_night"),
        probe: table.named("probe"),
        cut_out: table.one("cut_out"),
        strip: table.named("strip"),
        clearance: table.one("clearance"),
        guard: table.flag("guard"),
        below: below.unwrap_or(
            kind.is_some_and(|(kind, _)| matches!(kind, HeaterKind::Mat | HeaterKind::Cable)),
        ),
    };
    table.close();
    kind.map(|_| heater)
}

fn lamp(table: &Table<'_, '_>) -> Lamp {
    let lamp = Lamp {
        kind: table.text("kind").unwrap_or_else(|| "lamp".to_owned()),
        place: table.place(),
        power: table.one("watts").map(|(power, _)| power),
        at: table.one("at"),
        distance: table.one("distance").map(|(distance, _)| distance),
        uvi: table.range("uvi"),
        readings: table.tables("reading").iter().filter_map(uv_reading).collect(),
        hours: table.range("hours"),
        fitted: table.date("fitted"),
        replace_after: table.one("replace_after").map(|(span, _)| span),
        strip: table.named("strip"),
        clearance: table.one("clearance"),
        guard: table.flag("guard"),
    };
    table.close();
    lamp
}

fn uv_reading(table: &Table<'_, '_>) -> Option<UvReading> {
    let (distance, uvi) = (table.one("distance"), table.one("uvi"));
    if distance.is_none() || uvi.is_none() {
        table.missing("distance", "the distance from the lamp: distance = \"25 cm\"");
        table.missing("uvi", "what the meter read: uvi = \"3.1 UVI\"");
    }
    table.close();
    Some(UvReading { distance: distance?.0, uvi: uvi?.0 })
}

fn probe(table: &Table<'_, '_>) -> Option<Probe> {
    let name = table.text("name");
    if name.is_none() {
        table.missing("name", "its name, best the zone that it reads: name = \"warm\"");
    }
    let told = table.word("zone").map(|(zone, _)| zone);
    let probe = Probe {
        name: name.clone().unwrap_or_default(),
        zone: told.or_else(|| name.as_deref().and_then(Zone::of_name)),
        place: table.place(),
        at: table.one("at"),
        day: table.one("day"),
        night: table.one("night"),
        humidity: table.one("humidity"),
        instrument: Instrument {
            accuracy: table.one("accuracy").map(|(accuracy, _)| accuracy),
            humidity_accuracy: table.one("humidity_accuracy").map(|(accuracy, _)| accuracy),
            ice_test: table.one("ice_test").map(|(test, _)| test),
            salt_test: table.one("salt_test").map(|(test, _)| test),
            salt_test_at: table.one("salt_test_at").map(|(at, _)| at),
        },
    };
    table.close();
    name.map(|_| probe)
}

fn hide(table: &Table<'_, '_>) -> Hide {
    let hide = Hide {
        place: table.place(),
        at: table.one("at"),
        inside: table.parsed("inside", hide_size),
    };
    table.close();
    hide
}

/// A hide may be given by its floor alone, `"35 x 25 cm"`; it is then taken to be as high as it is wide.
fn hide_size(text: &str) -> Result<Dimensions, Fault> {
    let sides = text.matches(['x', '×', 'X']).count();
    if sides != 1 {
        return quantity::parse_dimensions(text);
    }
    let (length, width) = text.split_once(['x', '×', 'X']).unwrap_or((text, ""));
    quantity::parse_dimensions(&format!("{length} x {width} x {width}"))
}
