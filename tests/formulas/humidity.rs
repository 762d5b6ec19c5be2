//! Humidity against PsychroLib and the tables of the ASHRAE handbook.

use crate::table::{assert_near, assert_relative, rows};
use wardsheet::figures::formula::humidity::*;

#[test]
fn saturation_pressure_agrees_with_an_independent_library() {
    for row in rows("saturation_pressure.csv") {
        let t = row.number("t_C");
        let got = saturation_pressure_pa(t).expect("in range");
        assert_relative(got, row.number("es_ashrae_Pa"), 1e-6, &format!("{t} C"));
        assert_relative(got, row.number("es_iapws95_Pa"), 3e-4, &format!("{t} C, IAPWS-95"));
    }
}

#[test]
fn saturation_pressure_agrees_with_the_printed_table() {
    for row in rows("saturation_pressure_published.csv") {
        let t = row.number("t_C");
        let got = saturation_pressure_pa(t).expect("in range");
        let relative = row.number("tolerance_rel");
        assert_relative(got, row.number("es_published_Pa"), relative, &format!("{t} C"));
    }
}

#[test]
fn dew_point_and_water_content_agree_with_an_independent_library() {
    for row in rows("humidity_conversions.csv") {
        let (t, rh) = (row.number("t_C"), row.number("rh_pct"));
        let what = format!("{t} C at {rh} %");
        assert_relative(
            vapour_pressure_pa(t, rh).expect("in range"),
            row.number("e_Pa"),
            2e-6,
            &what,
        );
        assert_near(dew_point_c(t, rh).expect("in range"), row.number("td_ashrae_C"), 0.001, &what);
        let magnus = magnus_dew_point_c(t, rh);
        assert_near(magnus, row.number("td_aerk_C"), 1e-4, &format!("{what}, Magnus"));
        if magnus > 0.0 {
            // A second way to the dew point, over water; below freezing ours is over ice.
            assert_near(dew_point_c(t, rh).expect("in range"), magnus, 0.05, &what);
        }
        let absolute = absolute_humidity_g_per_m3(t, rh).expect("in range");
        assert_near(absolute, row.number("abs_humidity_g_m3"), 1e-4, &what);
        let ratio = humidity_ratio_g_per_kg(t, rh, 101_325.0).expect("in range");
        assert_relative(ratio, row.number("humidity_ratio_g_kg_101325Pa"), 1e-4, &what);
    }
}

#[test]
fn a_reading_carried_to_another_temperature_agrees_with_an_independent_library() {
    let mut condensing = 0;
    for row in rows("humidity_transfer.csv") {
        let (from, rh, to) = (row.number("t1_C"), row.number("rh1_pct"), row.number("t2_C"));
        let got = humidity_at(from, rh, to).expect("in range");
        let what = format!("{rh} % at {from} C, carried to {to} C");
        assert_near(got.relative_humidity_percent, row.number("rh2_ashrae_pct"), 0.001, &what);
        assert_eq!(got.condenses, row.text("condensation") == "yes", "{what}");
        condensing += usize::from(got.condenses);
    }
    assert!(condensing > 0, "the table holds at least one condensing case");
}

/// The dew point in closed form: O. A. Alduchov and R. E. Eskridge 1996, J. Appl. Meteor. 35:601-609.
fn magnus_dew_point_c(temperature_c: f64, relative_humidity_percent: f64) -> f64 {
    let (b, c) = (17.625, 243.04);
    let g = libm::log(relative_humidity_percent / 100.0) + b * temperature_c / (c + temperature_c);
    c * g / (b - g)
}
