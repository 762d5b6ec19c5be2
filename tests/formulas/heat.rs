//! Heat loss, materials and electricity against published examples and cases worked by hand.

use crate::table::{Row, assert_near, assert_relative, rows};
use wardsheet::figures::formula::electricity::*;
use wardsheet::figures::formula::heat::*;
use wardsheet::figures::formula::materials::material;

/// Reads "10 mm @ 0.17 | 20 mm @ 0.033".
fn layers(text: &str) -> Vec<Layer> {
    text.split('|')
        .map(|layer| {
            let (thickness, conductivity) = layer.split_once(" mm @ ").expect("a layer");
            Layer {
                thickness_m: thickness.trim().parse::<f64>().expect("a number") / 1000.0,
                conductivity_w_per_m_k: conductivity.trim().parse().expect("a number"),
            }
        })
        .collect()
}

#[test]
fn u_values_agree_with_the_cases_worked_by_hand() {
    for row in rows("heat_loss_faces.csv") {
        let flow = match row.text("heat_flow") {
            "horizontal" => HeatFlow::Horizontal,
            "up" => HeatFlow::Up,
            "down" => HeatFlow::Down,
            other => panic!("heat flows {other}"),
        };
        let what = format!("{}, {}", row.text("case"), row.text("face"));
        let u = u_value_w_per_m2_k(&layers(row.text("layers")), flow).expect("layers");
        assert_relative(u, row.number("U_W_m2K"), 1e-5, &what);
        assert_relative(u * row.number("area_m2"), row.number("UA_W_K"), 1e-5, &what);
    }
}

#[test]
fn boxes_lose_what_the_cases_worked_by_hand_lose() {
    let faces = rows("heat_loss_faces.csv");
    for row in rows("heat_loss_boxes.csv") {
        let case = row.text("case");
        let of_face = |names: &[&str]| {
            let found = faces
                .iter()
                .find(|face| face.text("case") == case && names.contains(&face.text("face")));
            found.map(|face| layers(face.text("layers")))
        };
        let all = [
            &["front", "front glass"][..],
            &["back"],
            &["left"],
            &["right"],
            &["top", "lid"],
            &["floor"],
        ]
        .map(of_face);
        let [front, back, left, right, top, floor] =
            all.each_ref().map(|layers| layers.as_deref().map_or(Face::Adiabatic, Face::ToRoom));
        assert_eq!(floor == Face::Adiabatic, case.ends_with("floor adiabatic"), "{case}");
        let enclosure = HeatedBox {
            length_m: row.number("L_m"),
            width_m: row.number("D_m"),
            height_m: row.number("H_m"),
            front,
            back,
            sides: [left, right],
            top,
            floor,
            air_changes_per_h: row.number("n_per_h"),
        };
        let loss = enclosure.heat_loss().expect("a box");
        let conducted = loss.total_w_per_k() - loss.air_w_per_k;
        assert_relative(conducted, row.number("UA_W_K"), 1e-5, case);
        assert_relative(loss.air_w_per_k, row.number("Hv_W_K"), 1e-5, case);
        let power = loss.power_w(row.number("Ti_C"), row.number("Ta_C"));
        assert_relative(power, row.number("Q_total_W"), 1e-5, case);
        // The building trade's rounded 0.33 Wh/(m³ K) for air makes no difference that matters here.
        assert_relative(power, row.number("Q_total_with_0.33_W"), 5e-3, case);
    }
}

#[test]
fn published_walls_have_the_published_u_value() {
    for row in rows("u_value_published.csv") {
        let resistances: Vec<f64> = row
            .text("layer_resistances_m2K_W")
            .split(" + ")
            .map(|resistance| resistance.parse().expect("a number"))
            .collect();
        // The first and the last are the surfaces'; each layer is given as one of 0.1 W/(m K).
        let [inner, between @ .., outer] = &resistances[..] else {
            panic!("{} has no layers", row.text("case"));
        };
        let layer =
            |resistance: &f64| Layer { thickness_m: 0.1 * resistance, conductivity_w_per_m_k: 0.1 };
        let layers: Vec<Layer> = between.iter().map(layer).collect();
        let u = u_value_between_w_per_m2_k(*inner, &layers, *outer).expect("layers");
        assert_near(u, row.number("U_computed"), 3e-4, row.text("case"));
        assert_near(u, row.number("U_published"), 0.02, row.text("case"));
    }
}

#[test]
fn both_sides_of_a_face_have_a_rooms_surface_resistance() {
    for row in rows("surface_resistances.csv") {
        let flow = match row.text("heat_flow") {
            "horizontal" => HeatFlow::Horizontal,
            "up" => HeatFlow::Up,
            _ => HeatFlow::Down,
        };
        assert_eq!(flow.surface_resistance_m2_k_per_w(), row.number("Rsi_m2K_W"));
        assert_eq!(row.number("Rse_indoor_use_Rsi_m2K_W"), row.number("Rsi_m2K_W"));
    }
}

#[test]
fn conductivities_and_specific_heats_are_those_of_the_table() {
    let ours = |row: &Row| match row.text("material") {
        "particleboard" => Some("chipboard"),
        "fibreboard incl. MDF" => Some("MDF"),
        "timber (softwood)" => Some("softwood"),
        "timber (hardwood)" => Some("hardwood"),
        "glass soda-lime" => Some("glass"),
        "PVC solid" | "uPVC/PVC cladding" => Some("PVC"),
        "polycarbonate solid" => Some("polycarbonate"),
        "PMMA" => Some("acrylic"),
        "polystyrene solid" => Some("solid polystyrene"),
        "cork tiles" => Some("cork tile"),
        "EPS board" => Some("EPS"),
        "XPS board" => Some("XPS"),
        "PUR rigid" => Some("PUR"),
        "mineral wool board" => Some("mineral wool"),
        "cork board expanded" => Some("expanded cork"),
        "cellulose blown" => Some("cellulose"),
        // Not built into enclosures, or rounded over all densities by the second list.
        "acrylic (other)" | "concrete reinforced 1%" | "cork underlay" | "air (still gas)" => None,
        "plywood (all grades)" | "MDF" => None,
        other => material(other).map(|material| material.name),
    };
    let mut compared = 0;
    for row in rows("material_conductivity.csv") {
        let Some(name) = ours(&row) else {
            continue;
        };
        let (name, source) = (material(name).expect("listed"), row.text("source"));
        if row.text("density_kg_m3").is_empty()
            && source.starts_with("BR")
            && !name.heat_from_memory
        {
            // The second list rounds what the first gives by density.
            let usual = name.conductivity_w_per_m_k(None).expect("usual");
            assert_near(usual, row.number("lambda_W_mK"), 0.011, name.name);
            continue;
        }
        let density = row.text("density_kg_m3").parse().ok();
        let got = name.conductivity_w_per_m_k(density).expect("in the table");
        assert_relative(got, row.number("lambda_W_mK"), 1e-12, name.name);
        if let Ok(specific_heat) = row.text("cp_J_kgK").parse::<f64>() {
            assert_eq!(name.specific_heat_j_per_kg_k, specific_heat, "{}", name.name);
        }
        compared += 1;
    }
    assert!(compared >= 30, "{compared} rows compared");
}

#[test]
fn duty_energy_and_cost_agree_with_the_table() {
    for row in rows("electricity.csv") {
        let (power, hours, days) =
            (row.number("P_W"), row.number("hours_per_day"), row.number("days"));
        let share = if row.text("Q_W") == "lamp" {
            1.0
        } else {
            let duty = heater_duty(row.number("Q_W"), power).expect("a heater");
            assert_eq!(duty.too_small, row.text("undersized") == "yes");
            duty.share
        };
        assert_near(share, row.number("duty"), 1e-6, row.text("Q_W"));
        let energy = energy_kwh(share * power, hours, days).expect("energy");
        assert_near(energy, row.number("kWh_period"), 1e-4, row.text("Q_W"));
        let cost = energy_cost(energy, row.number("price_per_kWh")).expect("a cost");
        assert_near(cost, row.number("cost"), 1e-4, row.text("Q_W"));
    }
}
