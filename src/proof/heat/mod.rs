//! Heaters, their thermostats and guards.

pub(super) mod cut_out_out_of_range;
pub(super) mod heat_from_below;
pub(super) mod heater_at_cool_end;
pub(super) mod heater_missing;
pub(super) mod heater_too_small;
pub(super) mod heater_unguarded;
pub(super) mod heater_without_power;
pub(super) mod heater_without_thermostat;
pub(super) mod lamp_without_thermostat;
pub(super) mod mat_under_deep_substrate;
pub(super) mod material_unknown;
pub(super) mod mercury_vapour_on_thermostat;
pub(super) mod power_cut_unplanned;
pub(super) mod probe_drives_two_heaters;
pub(super) mod probe_out_of_sight;
pub(super) mod set_night_above_day;
pub(super) mod set_night_missing;
pub(super) mod set_point_above_basking;
pub(super) mod set_point_missing;
pub(super) mod set_point_too_high;
pub(super) mod thermostat_probe_far;
pub(super) mod thermostat_unsuitable;
pub(super) mod water_heater_unguarded;

use crate::model::housing::Housing;
use crate::model::word::HeaterKind;

/// A probe nearer than this sees what the heater does, cm; in a long enclosure, nearer than a quarter of its length.
const NEAR_CM: f64 = 30.0;

/// How near a probe has to be to see what a heater does, cm.
fn near_cm(housing: &Housing) -> f64 {
    NEAR_CM.max(housing.inside.map_or(0.0, |(inside, _)| inside.length.cm()) / 4.0)
}

/// The trade's name of a heater.
fn noun(kind: HeaterKind) -> &'static str {
    match kind {
        HeaterKind::Ceramic => "ceramic heater",
        HeaterKind::Halogen => "halogen lamp",
        HeaterKind::BaskingLamp => "basking lamp",
        HeaterKind::MercuryVapour => "mercury vapour lamp",
        HeaterKind::DeepHeat => "deep heat projector",
        HeaterKind::RadiantPanel => "radiant panel",
        HeaterKind::Mat => "heat mat",
        HeaterKind::Cable => "heating cable",
        HeaterKind::WaterHeater => "water heater",
        HeaterKind::RoomHeater => "room heater",
    }
}

/// Whether it gives light as well as heat.
fn shines(kind: HeaterKind) -> bool {
    matches!(kind, HeaterKind::Halogen | HeaterKind::BaskingLamp | HeaterKind::MercuryVapour)
}

/// Whether it stands in the enclosure's air or on its walls, so that its place from the warm end means something.
fn has_a_place(kind: HeaterKind) -> bool {
    !matches!(kind, HeaterKind::WaterHeater | HeaterKind::RoomHeater)
}
