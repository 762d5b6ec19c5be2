//! The room a resting snake takes up: how wide a hide has to be for it.
//!
//! A snake at rest lies as a flat coil, its body turned about itself in one layer. The width follows from
//! the length and the mass alone, if the body is taken as an even cylinder of the density of flesh and the
//! coil as a disc with gaps. These are assumptions of geometry and no measurement of snakes; that a hide
//! should fit the coiled animal closely is common practice, without a source.

use super::domain::{OutOfRange, within};

/// The density of a snake in g/ml: a little above water's (from memory).
const BODY_DENSITY: f64 = 1.05;

/// The share of the coil's disc that the body covers (an assumption).
const COVERED: f64 = 0.85;

/// The body's width at rest, over that of an even cylinder: the middle is thicker than head and tail (an
/// assumption).
const WIDEST: f64 = 1.2;

/// Returns the width in cm of a snake's body at its widest, from its total length and its mass.
///
/// # Errors
///
/// [`OutOfRange`] when the length is not within 5 to 1000 cm, or the mass so small or great for it that the
/// body would be thinner than 1/200 of its length or thicker than 1/8.
///
/// Source: the volume of a cylinder; see the head of this file for what is assumed.
pub fn body_width_cm(length_cm: f64, mass_g: f64) -> Result<f64, OutOfRange> {
    let width_cm = mean_width_cm(length_cm, mass_g)?;
    Ok(WIDEST * width_cm)
}

/// Returns the width in cm of the coiled snake, as a disc.
///
/// # Errors
///
/// [`OutOfRange`] as for [`body_width_cm`].
///
/// # Example
///
/// A snake of 130 cm and 600 g:
///
/// ```
/// use wardsheet::figures::formula::coil::coil_width_cm;
///
/// assert_eq!(coil_width_cm(130.0, 600.0)?.round(), 21.0);
/// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
/// ```
///
/// Source: the area of the body seen from above, spread over a disc; see the head of this file.
pub fn coil_width_cm(length_cm: f64, mass_g: f64) -> Result<f64, OutOfRange> {
    let seen_from_above_cm2 = length_cm * mean_width_cm(length_cm, mass_g)?;
    Ok((4.0 * seen_from_above_cm2 / COVERED / std::f64::consts::PI).sqrt())
}

/// Returns the mass in g of an animal grown from `length_cm` to `grown_cm` in its present proportions.
///
/// Adults are often stouter than that, so it is on the low side for a young animal.
///
/// # Errors
///
/// [`OutOfRange`] when a length is not within 1 to 1000 cm or the mass not within 0.1 g to 500 kg.
///
/// Source: similar bodies have masses as the cubes of their lengths.
pub fn grown_mass_g(length_cm: f64, mass_g: f64, grown_cm: f64) -> Result<f64, OutOfRange> {
    within("length_cm", length_cm, 1.0, 1000.0)?;
    within("grown_cm", grown_cm, 1.0, 1000.0)?;
    within("mass_g", mass_g, 0.1, 500_000.0)?;
    let times = grown_cm / length_cm;
    Ok(mass_g * times * times * times)
}

/// The width of an even cylinder of the snake's length and mass.
fn mean_width_cm(length_cm: f64, mass_g: f64) -> Result<f64, OutOfRange> {
    within("length_cm", length_cm, 5.0, 1000.0)?;
    // The mass at which a cylinder of this length has a width of that share of it.
    let mass_of = |share: f64| {
        let width_cm = share * length_cm;
        BODY_DENSITY * std::f64::consts::PI / 4.0 * width_cm * width_cm * length_cm
    };
    within("mass_g", mass_g, mass_of(1.0 / 200.0), mass_of(1.0 / 8.0))?;
    Ok((4.0 * mass_g / (BODY_DENSITY * std::f64::consts::PI * length_cm)).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_snake_twice_as_long_in_the_same_proportions_coils_twice_as_wide(
            length in 20.0..300.0_f64, share in 0.01..0.1_f64,
        ) {
            let width = share * length;
            let mass = BODY_DENSITY * std::f64::consts::PI / 4.0 * width * width * length;
            let grown = grown_mass_g(length, mass, 2.0 * length).expect("in range");
            let (now, then) = (coil_width_cm(length, mass), coil_width_cm(2.0 * length, grown));
            prop_assert!((then.expect("in range") / now.expect("in range") - 2.0).abs() < 1e-9);
            prop_assert!((body_width_cm(length, mass).expect("in range") / width - WIDEST).abs() < 1e-9);
        }

        #[test]
        fn a_heavier_snake_of_one_length_takes_more_room(mass in 300.0..900.0_f64) {
            let lean = coil_width_cm(130.0, mass).expect("in range");
            prop_assert!(coil_width_cm(130.0, mass + 50.0).expect("in range") > lean);
            prop_assert!(lean < 130.0 / 3.0, "a coil is less than a circle of one turn");
        }
    }

    #[test]
    fn a_mass_that_no_snake_of_that_length_has_is_refused() {
        assert_eq!(coil_width_cm(150.0, 5.0).expect_err("a thread").argument, "mass_g");
        assert_eq!(coil_width_cm(30.0, 2000.0).expect_err("a ball").argument, "mass_g");
    }
}
