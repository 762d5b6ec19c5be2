//! Whether an animal is heavy or light for its length, where a fit was published for its species.
//!
//! A ratio of one is the animal of the sample, no better and no worse: the sample's animals were wild or
//! somebody's. It shows a change in one animal better than a fault in another. Eyes and hands on the animal
//! come first, and a vet after them.

use super::domain::{OutOfRange, at_least, within};

/// A fit of mass on length: mass in g is the constant times the length in cm to the exponent.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MassLengthFit {
    /// The species it was made from.
    pub species: &'static str,
    /// The length it takes.
    pub measure: &'static str,
    /// The constant, in g.
    pub constant: f64,
    /// The exponent of the length in cm.
    pub exponent: f64,
    /// The exponent of the major axis and the length in cm that the scaled mass index refers to, if known.
    pub major_axis: Option<(f64, f64)>,
    /// The publication, and how far it was followed.
    pub source: &'static str,
}

/// The fits known.
pub const MASS_LENGTH_FITS: [MassLengthFit; 3] = [
    MassLengthFit {
        species: "Pantherophis guttatus",
        measure: "total length",
        constant: 0.000_206_118_67,
        exponent: 3.029_086_99,
        major_axis: Some((3.043_689_14, 78.984_858_4)),
        source: "our fit of 146 animals, Barnard et al. 1979 as digitised (r 0.995)",
    },
    MassLengthFit {
        species: "Lampropeltis nigra",
        measure: "snout-vent length",
        constant: 0.0004,
        exponent: 2.98,
        major_axis: None,
        source: "kingsnake study of 2011 (abstract; constant printed to one digit)",
    },
    // Carapace in mm = 16.63 mass^0.34, turned round.
    MassLengthFit {
        species: "Testudo graeca",
        measure: "carapace length",
        constant: 0.224_035_54,
        exponent: 1.0 / 0.34,
        major_axis: None,
        source: "Lambert 1982, J. Zool. (abstract)",
    },
];

/// Returns the fit for a species, with or without a subspecies after its name.
#[must_use]
pub fn mass_length_fit(scientific_name: &str) -> Option<&'static MassLengthFit> {
    let mut words = scientific_name.split_whitespace();
    let (genus, species) = (words.next()?, words.next()?);
    MASS_LENGTH_FITS.iter().find(|fit| {
        fit.species.split_once(' ').is_some_and(|(own_genus, own_species)| {
            own_genus.eq_ignore_ascii_case(genus) && own_species.eq_ignore_ascii_case(species)
        })
    })
}

impl MassLengthFit {
    /// The mass in g of an animal of `length_cm` on the fit.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the length is not within 3 to 300 cm.
    ///
    /// # Example
    ///
    /// ```
    /// use wardsheet::figures::formula::condition::mass_length_fit;
    ///
    /// let corn_snake = mass_length_fit("Pantherophis guttatus").expect("published");
    /// assert_eq!(corn_snake.mass_g(120.0)?.round(), 409.0);
    /// # Ok::<(), wardsheet::figures::formula::domain::OutOfRange>(())
    /// ```
    pub fn mass_g(&self, length_cm: f64) -> Result<f64, OutOfRange> {
        within("length_cm", length_cm, 3.0, 300.0)?;
        Ok(self.constant * libm::pow(length_cm, self.exponent))
    }

    /// The relative condition: the mass over that of the fit at the same length.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the mass is not positive or the length not within 3 to 300 cm.
    ///
    /// Source: relative condition factor, E. D. Le Cren 1951, J. Anim. Ecol. 20:201-219 (from memory).
    pub fn relative_condition(&self, mass_g: f64, length_cm: f64) -> Result<f64, OutOfRange> {
        at_least("mass_g", mass_g, 0.01)?;
        Ok(mass_g / self.mass_g(length_cm)?)
    }

    /// The scaled mass index in g: what the animal would weigh at the fit's middle length.
    ///
    /// `None` where the fit's major axis is not known.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the mass is not positive or the length not within 3 to 300 cm.
    ///
    /// Source: J. Peig and A. J. Green 2009, Oikos 118:1883-1891 (abstract; formula from memory).
    pub fn scaled_mass_g(&self, mass_g: f64, length_cm: f64) -> Result<Option<f64>, OutOfRange> {
        at_least("mass_g", mass_g, 0.01)?;
        within("length_cm", length_cm, 3.0, 300.0)?;
        Ok(self
            .major_axis
            .map(|(exponent, middle_cm)| mass_g * libm::pow(middle_cm / length_cm, exponent)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn an_animal_on_the_fit_has_a_condition_of_one(fit in 0..3_usize, length in 10.0..150.0_f64) {
            let fit = &MASS_LENGTH_FITS[fit];
            let mass = fit.mass_g(length).expect("in range");
            let condition = fit.relative_condition(mass, length).expect("in range");
            prop_assert!((condition - 1.0).abs() < 1e-12);
            let heavier = fit.relative_condition(1.2 * mass, length).expect("in range");
            prop_assert!((heavier - 1.2).abs() < 1e-9);
        }
    }

    #[test]
    fn the_scaled_mass_of_an_animal_of_middle_length_is_its_own() {
        let fit = mass_length_fit("Pantherophis guttatus").expect("published");
        let scaled = fit.scaled_mass_g(120.0, 78.984_858_4).expect("in range").expect("known");
        assert!((scaled - 120.0).abs() < 1e-9);
        let tortoise = mass_length_fit("Testudo graeca ibera").expect("published");
        assert_eq!(tortoise.scaled_mass_g(900.0, 16.0), Ok(None));
    }

    #[test]
    fn a_species_without_a_fit_has_none() {
        assert_eq!(mass_length_fit("Boa constrictor"), None);
        assert_eq!(mass_length_fit("Testudo"), None);
    }
}
