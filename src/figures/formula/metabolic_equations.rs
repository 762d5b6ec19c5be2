//! Published equations of resting metabolism: oxygen used by an animal of a mass at a temperature.
//!
//! An equation fits a group of animals and one scale of temperature; none is asked far beyond what it was
//! made from.

use super::boid_metabolism::BoidSpecies;
use super::domain::{OutOfRange, within};
use super::humidity::CELSIUS_ZERO_K;

/// The energy of oxygen in J/ml; another package takes 20.16 (both read).
pub(crate) const OXYGEN_J_PER_ML: f64 = 20.1;

/// Q10 of boas and pythons below and above 30 °C (M. A. Chappell and T. M. Ellis 1987, J. Comp. Physiol. B
/// 157:227-235, abstract), for 20 to 30 and 30 to 34 °C.
const BOID_Q10: (f64, f64) = (2.61, 2.65);

/// An equation of resting metabolism.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Equation {
    /// Squamates, fasted and in their inactive hours.
    SquamatesStandard,
    /// Squamates, fasted, at rest in their active hours.
    SquamatesResting,
    /// Boas and pythons: the published exponent and Q10, with an intercept fitted to 14 species.
    BoidsPooled,
    /// Boas and pythons: a regression on 42 points of the same 14 species, which is ours and unpublished.
    BoidsRegression,
    /// Pythons of Australia: a regression on the means of eight species.
    AustralianPythons,
    /// One species of boa or python.
    Boid(&'static BoidSpecies),
    /// The green iguana, taken for lizards of its size.
    GreenIguana,
    /// All reptiles.
    Reptiles,
    /// All amphibians.
    Amphibians,
    /// All invertebrates.
    Invertebrates,
}

impl Equation {
    /// The publication, and how far it was followed.
    #[must_use]
    pub fn source(self) -> &'static str {
        match self {
            Self::SquamatesStandard => {
                "Andrews and Pough 1985, Physiol. Zool. 58:214-231, eq. 2 (read in two packages that cite it)"
            }
            Self::SquamatesResting => {
                "Andrews and Pough 1985, eq. 2, resting state: 10^0.14 times the standard (factor from memory)"
            }
            Self::BoidsPooled => {
                "Chappell and Ellis 1987, J. Comp. Physiol. B 157:227-235: exponent and Q10; intercept ours from 14 species"
            }
            Self::BoidsRegression | Self::Boid(_) => {
                "Chappell and Ellis 1987 as compiled by Garcia-Gomez 2024; 1.429 mg O2 to the ml and the regression are ours"
            }
            Self::AustralianPythons => {
                "Our regression on eight species means of Bedford and Christian 1998; Q10 of Chappell and Ellis 1987"
            }
            Self::GreenIguana => {
                "Comp. Biochem. Physiol. A 136:301-310 (2003), green iguana at 30 C (abstract); temperature as Andrews and Pough 1985"
            }
            Self::Reptiles | Self::Amphibians | Self::Invertebrates => {
                "Gillooly et al. 2001, Science 293:2248-2251 (coefficients read in a package that cites it)"
            }
        }
    }

    /// The masses in g and the temperatures in °C that the equation is used for.
    ///
    /// For boas, pythons and the iguana the masses are those measured. Those of the others were not read;
    /// theirs are the limits of what is kept. Temperatures run a little past those measured.
    #[must_use]
    pub fn range(self) -> ((f64, f64), (f64, f64)) {
        match self {
            Self::SquamatesStandard | Self::SquamatesResting => ((0.2, 100_000.0), (10.0, 40.0)),
            Self::BoidsPooled | Self::BoidsRegression => ((9.7, 67_800.0), (18.0, 36.0)),
            Self::AustralianPythons => ((50.0, 20_000.0), (18.0, 36.0)),
            Self::Boid(species) => (species.masses_g, (18.0, 36.0)),
            Self::GreenIguana => ((16.0, 3627.0), (20.0, 38.0)),
            Self::Reptiles => ((0.2, 300_000.0), (5.0, 40.0)),
            Self::Amphibians => ((0.05, 2000.0), (0.0, 35.0)),
            Self::Invertebrates => ((0.001, 500.0), (5.0, 40.0)),
        }
    }

    /// The oxygen used in ml/h by an animal of `mass_g` at `temperature_c`.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] outside [`Equation::range`].
    pub fn oxygen_ml_per_h(self, mass_g: f64, temperature_c: f64) -> Result<f64, OutOfRange> {
        let ((least_g, most_g), (coldest_c, hottest_c)) = self.range();
        within("mass_g", mass_g, least_g, most_g)?;
        within("temperature_c", temperature_c, coldest_c, hottest_c)?;
        let power = |exponent| libm::pow(mass_g, exponent);
        let ten_to = |exponent| libm::pow(10.0, exponent);
        Ok(match self {
            Self::SquamatesStandard => 0.013 * power(0.80) * ten_to(0.038 * temperature_c),
            Self::SquamatesResting => {
                0.013 * power(0.80) * ten_to(0.038 * temperature_c) * ten_to(0.14)
            }
            Self::BoidsPooled => 0.105_915 * power(0.806) * boid_warmth(temperature_c),
            Self::BoidsRegression => {
                ten_to(-2.347_242 + 0.041_784_15 * temperature_c) * power(0.849_546_8)
            }
            Self::AustralianPythons => 0.163_872 * power(0.805_74) * boid_warmth(temperature_c),
            Self::Boid(species) => {
                species.constant_ml_per_h * power(species.exponent) * boid_warmth(temperature_c)
            }
            Self::GreenIguana => 0.478 * power(0.734) * ten_to(0.038 * (temperature_c - 30.0)),
            Self::Reptiles => oxygen_of_w(boltzmann_w(mass_g, temperature_c, 8780.0, 26.85)),
            Self::Amphibians => oxygen_of_w(boltzmann_w(mass_g, temperature_c, 5760.0, 16.68)),
            Self::Invertebrates => oxygen_of_w(boltzmann_w(mass_g, temperature_c, 9150.0, 27.62)),
        })
    }

    /// The energy in kJ a day that the oxygen stands for.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] outside [`Equation::range`].
    pub fn kj_per_day(self, mass_g: f64, temperature_c: f64) -> Result<f64, OutOfRange> {
        Ok(self.oxygen_ml_per_h(mass_g, temperature_c)? * 24.0 * OXYGEN_J_PER_ML / 1000.0)
    }
}

/// How much faster a boa or python burns at `temperature_c` than at 30 °C.
fn boid_warmth(temperature_c: f64) -> f64 {
    let q10 = if temperature_c < 30.0 { BOID_Q10.0 } else { BOID_Q10.1 };
    libm::pow(q10, (temperature_c - 30.0) / 10.0)
}

/// Metabolism in W with three quarters of the mass's power and a Boltzmann factor of temperature.
fn boltzmann_w(mass_g: f64, temperature_c: f64, activation_k: f64, intercept: f64) -> f64 {
    libm::exp(intercept - activation_k / (temperature_c + CELSIUS_ZERO_K)) * libm::pow(mass_g, 0.75)
        / 60.0
}

fn oxygen_of_w(power_w: f64) -> f64 {
    power_w * 3600.0 / OXYGEN_J_PER_ML
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_equations_of_all_reptiles_and_amphibians_are_as_published() {
        // Worked values in the tests of the package the coefficients were read in, at 303 K and 288 K.
        let reptile_w = boltzmann_w(100.0, 303.0 - CELSIUS_ZERO_K, 8780.0, 26.85);
        let amphibian_w = boltzmann_w(50.0, 288.0 - CELSIUS_ZERO_K, 5760.0, 16.68);
        let invertebrate_w = boltzmann_w(1.0, 290.0 - CELSIUS_ZERO_K, 9150.0, 27.62);
        assert!((reptile_w / 0.062_827_36 - 1.0).abs() < 1e-6, "{reptile_w}");
        assert!((amphibian_w / 0.011_329_7 - 1.0).abs() < 1e-5, "{amphibian_w}");
        assert!((invertebrate_w / 0.000_326_830_6 - 1.0).abs() < 1e-6, "{invertebrate_w}");
        let energy = Equation::Reptiles.kj_per_day(100.0, 29.85).expect("in range");
        assert!((energy / (reptile_w * 86.4) - 1.0).abs() < 1e-12, "a watt is 86.4 kJ a day");
    }

    #[test]
    fn boas_and_pythons_burn_at_the_published_q10() {
        let at =
            |temperature| Equation::BoidsPooled.kj_per_day(2000.0, temperature).expect("in range");
        assert!((at(30.0) / at(20.0) - 2.61).abs() < 1e-9);
        assert!((at(34.0) / at(30.0) - libm::pow(2.65, 0.4)).abs() < 1e-9);
    }

    #[test]
    fn an_equation_is_not_asked_beyond_its_animals() {
        assert_eq!(
            Equation::GreenIguana.kj_per_day(5000.0, 30.0).expect_err("too heavy").argument,
            "mass_g"
        );
        assert_eq!(
            Equation::Reptiles.kj_per_day(50.0, 50.0).expect_err("too hot").argument,
            "temperature_c"
        );
    }
}
