//! An enclosure without power, and one whose heaters stick on: how long it lasts, and from which room on they must be off.

use crate::model::Species;
use crate::model::species::Figure;
use crate::quantity::Temperature;

use super::absence::Absence;
use super::formula::cooling::{
    TimeWithoutPower, WATER_SPECIFIC_HEAT, furnishing_named, store_j_per_k, time_constant_h,
    time_without_power, wall_store_j_per_k,
};
use super::formula::materials::material;
use super::heat::{HeatFigures, Known};
use super::working::number;

/// What is stored in the walls, the substrate, the water and the air, J/K.
fn stored_j_per_k(known: &Known<'_>) -> f64 {
    let [length_m, width_m, height_m] = known.inside_m;
    let walls = &known.housing.walls;
    let (long, end, flat) = (length_m * height_m, width_m * height_m, length_m * width_m);
    let faces = [
        (&walls.front, long),
        (&walls.back, long),
        (&walls.sides, 2.0 * end),
        (&walls.top, flat),
        (&walls.floor, flat),
    ];
    let mut stored = 0.0;
    for (own, area) in faces {
        for layer in if own.is_empty() { &walls.walls } else { own } {
            let Some(known) = material(&layer.material) else { continue };
            let volume = area * layer.thickness.cm() / 100.0;
            stored += wall_store_j_per_k(
                volume,
                known.usual_density_kg_per_m3,
                known.specific_heat_j_per_kg_k,
            )
            .unwrap_or(0.0);
        }
    }
    if let Some(substrate) = &known.housing.substrate
        && let Some(furnishing) = furnishing_named(&substrate.material)
    {
        let volume = flat * substrate.thickness.cm() / 100.0;
        stored += store_j_per_k(
            volume,
            furnishing.density_kg_per_m3,
            furnishing.specific_heat_j_per_kg_k,
        )
        .unwrap_or(0.0);
    }
    if let Some(litres) = known.housing.water_l {
        stored += store_j_per_k(litres / 1000.0, 1000.0, WATER_SPECIFIC_HEAT).unwrap_or(0.0);
    }
    stored + flat * height_m * 1.2041 * 1006.0
}

/// Works out the hours that are left without power in the coldest night.
pub(super) fn without_power(figures: &mut HeatFigures, known: &Known<'_>, species: &Species) {
    let Some(critical_c) = species
        .temperature
        .critical_low
        .as_ref()
        .and_then(|cited| cited.value.high().or(cited.value.low()))
    else {
        no_hours(figures, Absence::NoCriticalLow);
        return;
    };
    let critical_c = critical_c.celsius();
    let Ok(constant_h) = time_constant_h(stored_j_per_k(known), figures.loss.total_w_per_k())
    else {
        return;
    };
    let n = |value| number(value, 1);
    match time_without_power(known.inside_c, known.coldest_c, critical_c, constant_h) {
        Ok(TimeWithoutPower::Hours { low_h, expected_h, high_h }) => {
            figures.hours_without_power = Some(expected_h);
            figures.working.step(format!(
                "power cut: time constant {} h; from {} to {} °C in a room at {} °C: {} h, between {} and {}",
                n(constant_h),
                n(known.inside_c),
                n(critical_c),
                n(known.coldest_c),
                n(expected_h),
                n(low_h),
                n(high_h)
            ));
            figures.working.assume("Walls give back half of what they store; substrate, water and air all of it; furniture is left out.");
        }
        Ok(TimeWithoutPower::Never) => no_hours(figures, Absence::RoomStaysAbove(critical_c)),
        Ok(TimeWithoutPower::BelowAlready) => no_hours(figures, Absence::ColderAlready),
        Err(reason) => no_hours(figures, Absence::Formula(reason.to_string())),
    }
}

fn no_hours(figures: &mut HeatFigures, reason: Absence) {
    figures.why.push(("heat.hours_without_power", reason.to_string()));
    figures.no_hours = Some(reason);
}

/// Works out the room temperature above which a heater that sticks on would be too much.
pub(super) fn all_off(figures: &mut HeatFigures, species: &Species) {
    let highest = |figure: &Figure<Temperature>| {
        figure.as_ref().and_then(|cited| cited.value.high().or(cited.value.low()))
    };
    let limit = highest(&species.temperature.never_above).or(highest(&species.temperature.warm));
    let Some(limit_c) = limit.map(|limit| limit.celsius()) else {
        figures.why.push((
            "heat.all_off_above_room_c",
            "the species gives no temperature that it may never pass".to_owned(),
        ));
        return;
    };
    match figures.loss.all_off_above_room_c(limit_c, figures.installed_w) {
        Ok(room_c) => {
            figures.all_off_above_room_c = Some(room_c);
            figures.working.step(format!(
                "all off: {} − {} W / {} W/K = {} °C in the room",
                number(limit_c, 1),
                number(figures.installed_w, 0),
                number(figures.loss.total_w_per_k(), 2),
                number(room_c, 1)
            ));
            figures.working.assume("All off: with every heater stuck on, a warmer room would take the mean inside past what the species may never pass.");
        }
        Err(reason) => figures.why.push(("heat.all_off_above_room_c", reason.to_string())),
    }
}
