//! UV zones and lamps against published values and fits made with another program.

use crate::table::{assert_relative, rows};
use wardsheet::figures::formula::uv_distance::*;
use wardsheet::figures::formula::uv_zones::*;

#[test]
fn the_zones_are_those_of_the_publication() {
    for row in rows("uv_zones.csv") {
        let zone = uv_zone(row.text("zone").parse().expect("a number")).expect("a zone");
        assert_eq!(zone.behaviour, row.text("description"));
        assert_eq!(zone.mean_uvi, (row.number("mean_uvi_lo"), row.number("mean_uvi_hi")));
        assert_eq!(zone.greatest_uvi, (row.number("max_uvi_lo"), row.number("max_uvi_hi")));
    }
}

fn readings(lamp: &str) -> Vec<UvReading> {
    rows("uv_distance_readings.csv")
        .iter()
        .filter(|row| row.text("lamp") == lamp)
        .map(|row| UvReading { distance_cm: row.number("distance_cm"), uvi: row.number("value") })
        .collect()
}

#[test]
fn lamps_are_fitted_as_another_program_fits_them() {
    for row in rows("uv_distance_fits.csv") {
        let lamp = row.text("lamp");
        let fit = fit_lamp(&readings(lamp)).expect("a lamp");
        assert_eq!(fit.readings as f64, row.number("n_points"), "{lamp}");
        // The table's readings and results are printed to six digits.
        assert_relative(fit.exponent, row.number("n_exponent"), 4e-6, lamp);
        assert_relative(fit.constant(), row.number("A"), 4e-6, lamp);
        if row.number("rss_ln") > 1e-9 {
            assert_relative(fit.residual_sum_of_squares, row.number("rss_ln"), 1e-5, lamp);
        }
        let at_thirty = fit.uvi(30.0).expect("within reach").value;
        assert_relative(at_thirty, row.number("uvi_at_30cm"), 3e-6, lamp);
        match fit.distance_cm(2.0) {
            Ok(distance) => {
                assert_relative(distance.value, row.number("distance_cm_for_uvi2"), 4e-6, lamp);
            }
            Err(beyond) => assert!(row.number("distance_cm_for_uvi2") > beyond.high, "{lamp}"),
        }
    }
}

#[test]
fn a_lamp_that_is_a_point_falls_with_the_square_of_the_distance() {
    let fit = fit_lamp(&readings("lamp S1 exact r^-2")).expect("a lamp");
    assert_relative(fit.exponent, 2.0, 1e-8, "exponent");
    assert_relative(fit.constant(), 3600.0, 1e-8, "constant");
}

#[test]
fn the_square_of_the_distance_would_understate_a_published_lamp() {
    // The published pair reads 3.8 at 10 cm and 1.3 at 20 cm; an inverse square would leave 0.95.
    let fit = fit_lamp(&readings("lamp A")).expect("a lamp");
    assert_relative(fit.uvi(20.0).expect("within reach").value, 1.3, 1e-9, "as read");
    assert!(fit.exponent < 1.6);
}
