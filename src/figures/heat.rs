//! An enclosure's heat: what it loses, whether its heaters make up for that, what it costs, and how long it lasts without.

use crate::model::housing::{self, Housing};
use crate::model::species::Figure;
use crate::model::{Site, Species};
use crate::quantity::{PriceUnit, Range, Temperature};

use super::absence::Absence;
use super::formula::electricity::{DAYS_PER_MONTH, energy_kwh, heater_duty};
use super::formula::heat::{Face, HeatLoss, HeatedBox, Layer, UNCERTAINTY};
use super::formula::materials::material;
use super::power_cut;
use super::working::{self, Working, ends, number};

/// The heat of one enclosure.
#[derive(Debug, Clone, PartialEq)]
pub struct HeatFigures {
    /// Lost at the room's usual temperature, W.
    pub typical_w: f64,
    /// Lost at the room's coldest, for the gradient asked of it by day, W.
    pub worst_w: f64,
    /// Lost in the coldest night at the temperatures that the night may fall to, W.
    pub night_w: f64,
    /// The power of all heaters, W.
    pub installed_w: f64,
    /// The share of the time that the heaters run, per cent; absent without heaters.
    pub duty_percent: Option<f64>,
    /// Energy in a month, kWh.
    pub kwh_per_month: f64,
    /// What that costs, with its currency.
    pub cost_per_month: Option<(f64, String)>,
    /// Hours without power until the critical minimum in the coldest night, expected.
    pub hours_without_power: Option<f64>,
    /// The room temperature above which every heater must be off already, °C.
    pub all_off_above_room_c: Option<f64>,
    /// What a second layer of insulation on every wall but the front would save, W at the usual temperature.
    pub insulated_typical_w: Option<f64>,
    /// What half the air exchange would leave of the loss, W at the usual temperature.
    pub half_air_typical_w: f64,
    /// The mean temperature inside that is asked for, °C.
    pub inside_c: f64,
    /// The loss by part, per kelvin.
    pub loss: HeatLoss,
    /// How they were worked out.
    pub working: Working,
    /// Why no hours without power can be told.
    pub no_hours: Option<Absence>,
    /// Why some of them are absent.
    pub why: Vec<(&'static str, String)>,
}

/// What must be known of an enclosure, or which of it is not.
pub(super) struct Known<'a> {
    pub(super) housing: &'a Housing,
    pub(super) inside_m: [f64; 3],
    pub(super) inside_c: f64,
    pub(super) night_c: f64,
    pub(super) usual_c: f64,
    pub(super) coldest_c: f64,
    pub(super) changes_per_h: f64,
}

/// The middle of a range of temperatures, °C; of a bound, the bound.
pub fn middle_c(range: &Range<Temperature>) -> Option<f64> {
    working::middle(Some(ends(range)))
}

fn middle(figure: &Figure<Temperature>) -> Option<f64> {
    figure.as_ref().and_then(|cited| middle_c(&cited.value))
}

/// The mean air temperature that a species asks for by day, °C: half way between the middles of its warm and cool sides.
pub fn asked_c(species: &Species) -> Option<f64> {
    let (warm, cool) = (middle(&species.temperature.warm), middle(&species.temperature.cool));
    warm.zip(cool).map(|(warm, cool)| (warm + cool) / 2.0)
}

/// How often an hour the air of an enclosure is exchanged: the middle of what its keeper gives.
///
/// # Errors
/// When nothing is given.
pub fn air_changes_per_h(housing: &Housing) -> Result<f64, Absence> {
    let given = housing.air_changes.as_ref().map(|(changes, _)| ends(changes));
    working::middle(given).ok_or(Absence::NoAirExchange)
}

fn known<'a>(housing: &'a Housing, species: &Species) -> Result<Known<'a>, Absence> {
    let inside = housing.inside.map(|(inside, _)| inside).ok_or(Absence::NoInside)?;
    let inside_c = asked_c(species).ok_or(Absence::NoWarmAndCool)?;
    let usual_c = housing.room_day.as_ref().and_then(middle_c).ok_or(Absence::NoRoomByDay)?;
    let coldest = housing
        .room_night
        .and_then(|range| range.low().or(range.high()))
        .ok_or(Absence::NoColdestNight)?;
    let changes_per_h = air_changes_per_h(housing)?;
    let night_c = species
        .temperature
        .night
        .as_ref()
        .and_then(|night| night.value.low().or(night.value.high()));
    Ok(Known {
        housing,
        inside_m: [
            inside.length.cm() / 100.0,
            inside.width.cm() / 100.0,
            inside.height.cm() / 100.0,
        ],
        inside_c,
        night_c: night_c.map_or(inside_c, |night| night.celsius()),
        usual_c,
        coldest_c: coldest.celsius(),
        changes_per_h,
    })
}

/// The layers of every face, from the inside out.
struct Faces {
    front: Vec<Layer>,
    back: Vec<Layer>,
    sides: Vec<Layer>,
    top: Vec<Layer>,
    floor: Vec<Layer>,
}

/// A sheet of a material that the table knows.
///
/// # Errors
/// When the table does not know it, or the thickness is none.
pub(super) fn sheet(name: &str, thickness_m: f64) -> Result<Layer, Absence> {
    let known = material(name).ok_or_else(|| Absence::Material(name.to_owned()))?;
    let conductivity = known
        .conductivity_w_per_m_k(None)
        .map_err(|reason| Absence::Formula(reason.to_string()))?;
    Ok(Layer { thickness_m, conductivity_w_per_m_k: conductivity })
}

fn layers(own: &[housing::Layer], walls: &[housing::Layer]) -> Result<Vec<Layer>, Absence> {
    let used = if own.is_empty() { walls } else { own };
    if used.is_empty() {
        return Err(Absence::NoWalls);
    }
    used.iter().map(|layer| sheet(&layer.material, layer.thickness.cm() / 100.0)).collect()
}

fn loss(known: &Known<'_>, faces: &Faces) -> Result<HeatLoss, Absence> {
    let [length_m, width_m, height_m] = known.inside_m;
    let floor = if known.housing.walls.floor_keeps_all {
        Face::Adiabatic
    } else {
        Face::ToRoom(&faces.floor)
    };
    let enclosure = HeatedBox {
        length_m,
        width_m,
        height_m,
        front: Face::ToRoom(&faces.front),
        back: Face::ToRoom(&faces.back),
        sides: [Face::ToRoom(&faces.sides); 2],
        top: Face::ToRoom(&faces.top),
        floor,
        air_changes_per_h: known.changes_per_h,
    };
    enclosure.heat_loss().map_err(|reason| Absence::Formula(reason.to_string()))
}

/// Works out the heat of an enclosure.
///
/// Temperatures in °C, power in W, energy in kWh. It is a steady estimate that may be off by a quarter either way. Source:
/// U-values after ISO 6946 with conductivities of EN 12524:2000; the balance of EN ISO 13789; Newton's law of cooling.
///
/// # Errors
/// Which of the things that must be known is not.
pub fn heat(housing: &Housing, species: &Species, site: &Site) -> Result<HeatFigures, Absence> {
    let known = known(housing, species)?;
    let walls = &housing.walls;
    let floor =
        if walls.floor_keeps_all { Vec::new() } else { layers(&walls.floor, &walls.walls)? };
    let faces = Faces {
        front: layers(&walls.front, &walls.walls)?,
        back: layers(&walls.back, &walls.walls)?,
        sides: layers(&walls.sides, &walls.walls)?,
        top: layers(&walls.top, &walls.walls)?,
        floor,
    };
    let loss = loss(&known, &faces)?;
    let typical_w = loss.power_w(known.inside_c, known.usual_c);
    let installed_w: f64 = housing
        .heaters
        .iter()
        .filter_map(|heater| heater.power)
        .map(|(power, _)| power.watts())
        .sum();
    let duty = if installed_w > 0.0 { heater_duty(typical_w, installed_w).ok() } else { None };
    let used_w = duty.map_or(0.0, |duty| duty.share * installed_w);
    let kwh_per_month = energy_kwh(used_w, 24.0, DAYS_PER_MONTH).unwrap_or(0.0);
    let price = site
        .electricity
        .as_ref()
        .map(|(price, _)| price)
        .filter(|price| price.per == PriceUnit::KilowattHour);
    let mut figures = HeatFigures {
        typical_w,
        worst_w: loss.power_w(known.inside_c, known.coldest_c),
        night_w: loss.power_w(known.night_c, known.coldest_c),
        installed_w,
        duty_percent: duty.map(|duty| duty.share * 100.0),
        kwh_per_month,
        cost_per_month: price.map(|price| (kwh_per_month * price.amount, price.currency.clone())),
        hours_without_power: None,
        all_off_above_room_c: None,
        insulated_typical_w: insulated_w(&known, &faces),
        half_air_typical_w: typical_w
            - loss.air_w_per_k / 2.0 * (known.inside_c - known.usual_c).max(0.0),
        inside_c: known.inside_c,
        working: working(&known, &loss, typical_w, installed_w),
        loss,
        no_hours: None,
        why: Vec::new(),
    };
    if duty.is_none() {
        figures.why.push(("heat.duty_percent", "no heater's power is given".to_owned()));
    }
    if price.is_none() {
        figures.why.push(("heat.cost_per_month", "the site gives no price of a kWh".to_owned()));
    }
    power_cut::without_power(&mut figures, &known, species);
    power_cut::all_off(&mut figures, species);
    Ok(figures)
}

/// Two centimetres of extruded polystyrene outside every wall but the front, the commonest remedy.
fn insulated_w(known: &Known<'_>, faces: &Faces) -> Option<f64> {
    let foam = sheet("XPS", 0.02).ok()?;
    let with = |layers: &[Layer]| layers.iter().copied().chain([foam]).collect();
    let better = Faces {
        front: faces.front.clone(),
        back: with(&faces.back),
        sides: with(&faces.sides),
        top: with(&faces.top),
        floor: with(&faces.floor),
    };
    Some(loss(known, &better).ok()?.power_w(known.inside_c, known.usual_c))
}

fn working(known: &Known<'_>, loss: &HeatLoss, typical_w: f64, installed_w: f64) -> Working {
    let n = |value| number(value, 2);
    let mut working = Working::new(
        "Heat loss",
        "Q = (Σ U A + 0.336 n V) × (inside − room); U = 1 / (Rs + Σ d/λ + Rs)",
        "ISO 6946 (surface resistances of an inside face: 0.13, 0.10 up, 0.17 down) and EN ISO 13789; conductivities EN 12524:2000",
    );
    working.step(format!(
        "front {} + back {} + sides {} + top {} + floor {} + air {} = {} W/K",
        n(loss.front_w_per_k),
        n(loss.back_w_per_k),
        n(loss.sides_w_per_k),
        n(loss.top_w_per_k),
        n(loss.floor_w_per_k),
        n(loss.air_w_per_k),
        n(loss.total_w_per_k())
    ));
    working.step(format!(
        "usual: {} × ({} − {}) = {} W",
        n(loss.total_w_per_k()),
        n(known.inside_c),
        n(known.usual_c),
        number(typical_w, 1)
    ));
    working.step(format!(
        "coldest night: {} × ({} − {}) = {} W",
        n(loss.total_w_per_k()),
        n(known.inside_c),
        n(known.coldest_c),
        number(loss.power_w(known.inside_c, known.coldest_c), 1)
    ));
    working.step(format!("installed: {} W", number(installed_w, 0)));
    working.assume("Inside stands at the mean of the species' warm and cool sides.");
    working.assume(format!(
        "A steady estimate: it may be off by {} % either way. Wiring is an electrician's work.",
        number(UNCERTAINTY * 100.0, 0)
    ));
    working
}
