//! Laws of the heat balance that hold for any box.

use super::*;
use proptest::prelude::*;

const PLYWOOD: Layer = Layer { thickness_m: 0.018, conductivity_w_per_m_k: 0.13 };
const FOAM: Layer = Layer { thickness_m: 0.02, conductivity_w_per_m_k: 0.033 };

fn plywood_box<'a>(length_m: f64, floor: Face<'a>, layers: &'a [Layer], air: f64) -> HeatedBox<'a> {
    let face = Face::ToRoom(layers);
    HeatedBox {
        length_m,
        width_m: 0.6,
        height_m: 0.6,
        front: face,
        back: face,
        sides: [face; 2],
        top: face,
        floor,
        air_changes_per_h: air,
    }
}

fn layers() -> impl Strategy<Value = Vec<Layer>> {
    let layer =
        (0.001..0.1_f64, 0.02..2.0_f64).prop_map(|(thickness_m, conductivity_w_per_m_k)| Layer {
            thickness_m,
            conductivity_w_per_m_k,
        });
    proptest::collection::vec(layer, 1..5)
}

proptest! {
    #[test]
    fn another_layer_always_lowers_the_u_value(layers in layers(), further in layers()) {
        let before = u_value_w_per_m2_k(&layers, HeatFlow::Up).expect("layers");
        let both = [layers, further].concat();
        prop_assert!(u_value_w_per_m2_k(&both, HeatFlow::Up).expect("layers") < before);
    }

    #[test]
    fn the_order_of_layers_does_not_matter(mut layers in layers()) {
        let outwards = u_value_w_per_m2_k(&layers, HeatFlow::Down).expect("layers");
        layers.reverse();
        let inwards = u_value_w_per_m2_k(&layers, HeatFlow::Down).expect("layers");
        prop_assert!((outwards / inwards - 1.0).abs() < 1e-12);
    }

    #[test]
    fn twice_the_difference_needs_twice_the_power(
        layers in layers(), length in 0.3..3.0_f64, air in 0.0..10.0_f64, room in 10.0..25.0_f64, rise in 0.1..15.0_f64,
    ) {
        let loss = plywood_box(length, Face::ToRoom(&layers), &layers, air).heat_loss().expect("a box");
        let (once, twice) = (loss.power_w(room + rise, room), loss.power_w(room + 2.0 * rise, room));
        prop_assert!((twice / once - 2.0).abs() < 1e-9);
    }

    #[test]
    fn heat_in_equals_heat_out_where_the_temperature_settles(
        layers in layers(), length in 0.3..3.0_f64, air in 0.0..10.0_f64, room in 5.0..30.0_f64, power in 1.0..60.0_f64,
    ) {
        let loss = plywood_box(length, Face::ToRoom(&layers), &layers, air).heat_loss().expect("a box");
        let inside = room + loss.rise_at_k(power).expect("a rise");
        prop_assume!(inside < 100.0);
        prop_assert!((loss.power_w(inside, room) / power - 1.0).abs() < 1e-9);
        let limit = loss.all_off_above_room_c(inside, power).expect("a room");
        prop_assert!((limit - room).abs() < 1e-9);
    }
}

#[test]
fn a_room_as_warm_as_the_enclosure_needs_no_heat() {
    let loss = plywood_box(1.2, Face::Adiabatic, &[PLYWOOD], 1.0).heat_loss().expect("a box");
    assert_eq!(loss.power_w(28.0, 28.0), 0.0);
    assert_eq!(loss.power_w(28.0, 33.0), 0.0);
}

#[test]
fn an_enclosure_on_a_warm_floor_loses_what_its_other_faces_lose() {
    let open = plywood_box(1.2, Face::ToRoom(&[PLYWOOD]), &[PLYWOOD], 1.0);
    let warm = HeatedBox { floor: Face::Adiabatic, ..open };
    let (open, warm) = (open.heat_loss().expect("a box"), warm.heat_loss().expect("a box"));
    assert_eq!(warm.floor_w_per_k, 0.0);
    assert!((open.total_w_per_k() - warm.total_w_per_k() - open.floor_w_per_k).abs() < 1e-12);
}

#[test]
fn insulating_the_top_saves_heat_at_the_top_alone() {
    let insulated_top = [PLYWOOD, FOAM];
    let before = plywood_box(1.2, Face::ToRoom(&[PLYWOOD]), &[PLYWOOD], 1.0);
    let after = HeatedBox { top: Face::ToRoom(&insulated_top), ..before };
    let (before, after) = (before.heat_loss().expect("a box"), after.heat_loss().expect("a box"));
    assert!(after.top_w_per_k < 0.5 * before.top_w_per_k);
    assert_eq!(after.front_w_per_k, before.front_w_per_k);
}

#[test]
fn the_share_of_the_air_is_a_share() {
    let vented = plywood_box(1.2, Face::Adiabatic, &[PLYWOOD], 6.0).heat_loss().expect("a box");
    let share = vented.air_share().expect("it loses heat");
    assert!((share * vented.total_w_per_k() - vented.air_w_per_k).abs() < 1e-12);
}

#[test]
fn boxes_and_layers_that_cannot_be_are_refused() {
    let no_length = plywood_box(0.0, Face::Adiabatic, &[PLYWOOD], 1.0);
    assert_eq!(no_length.heat_loss().expect_err("no box").argument, "length_m");
    let solid_air = [Layer { thickness_m: 0.01, conductivity_w_per_m_k: 0.0 }];
    let walls = plywood_box(1.0, Face::Adiabatic, &solid_air, 1.0);
    assert_eq!(walls.heat_loss().expect_err("no layer").argument, "conductivity_w_per_m_k");
}
