//! An animal's projected adult length: the species' range for its sex and form, and never less than it is already.

use jiff::civil::Date;

use crate::model::word::{Sex, Word};
use crate::model::{Animal, Species};

use super::working::{Why, Working, number};

/// The level of the interval.
pub const LEVEL: f64 = 0.9;

/// What is known of an animal's growth.
#[derive(Debug, Clone, PartialEq)]
pub struct GrowthFigures {
    /// What the projection rests on.
    pub basis: &'static str,
    /// How many lengths have been measured.
    pub measurements: usize,
    /// The projected adult length by the species' measure.
    pub adult: Option<AdultLength>,
    /// How it was worked out.
    pub working: Working,
}

/// A projected adult length in cm with its interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AdultLength {
    /// The best single figure.
    pub estimate_cm: f64,
    /// The low end of the interval.
    pub low_cm: f64,
    /// The high end of the interval.
    pub high_cm: f64,
    /// The share of animals whose adult length lies within, 0 to 1.
    pub level: f64,
}

/// The range of adult lengths that a species gives for a sex and form, in cm, lowest and highest over all that fit.
///
/// For an animal of unknown sex both sexes count.
pub fn adult_range_cm(species: &Species, sex: Sex, form: Option<&str>) -> Option<(f64, f64)> {
    let sexes: &[Sex] = match sex {
        Sex::Unknown => &[Sex::Unknown, Sex::Female, Sex::Male],
        Sex::Female => &[Sex::Female],
        Sex::Male => &[Sex::Male],
    };
    let mut range: Option<(f64, f64)> = None;
    for sex in sexes {
        let Some(cited) = species.size.adult_of(*sex, form) else { continue };
        let high = cited.value.high().or(cited.value.low()).map(|length| length.cm());
        let low = cited.value.low().or(cited.value.high()).map(|length| length.cm());
        let (Some(low), Some(high)) = (low, high) else { continue };
        range = Some(
            range.map_or((low, high), |(lowest, highest)| (lowest.min(low), highest.max(high))),
        );
    }
    range
}

/// Projects an animal's adult length from the species' range.
///
/// Lengths in cm. The range is read as the middle nine tenths of adults; the estimate is the geometric middle, since
/// lengths vary by factors. An animal that is already longer moves the low end and the estimate up to its own length.
pub fn growth(animal: &Animal, species: &Species, as_of: Date, why: &mut Why) -> GrowthFigures {
    let measured: Vec<f64> = animal
        .lengths()
        .filter(|(date, _)| *date <= as_of)
        .map(|(_, length)| length.cm())
        .collect();
    let longest = measured.iter().copied().fold(0.0, f64::max);
    let mut working = Working::new(
        "Projected adult length",
        "estimate = √(low × high) of the species' adult range for the sex and form, never less than the animal is already",
        "the species' own sources; the reading of the range as nine tenths of adults is common practice",
    );
    let form = animal.form.as_ref().map(|form| form.name.as_str());
    let range = adult_range_cm(species, animal.sex, form);
    let adult = range.map(|(low, high)| {
        let sex = if animal.sex == Sex::Unknown { "either sex" } else { animal.sex.spelling() };
        let middle = (low * high).sqrt();
        working.step(format!(
            "{sex}: {}–{} cm; √({} × {}) = {} cm",
            number(low, 1),
            number(high, 1),
            number(low, 1),
            number(high, 1),
            number(middle, 1)
        ));
        if longest > middle {
            working.step(format!("it already measures {} cm", number(longest, 1)));
        }
        let (low_cm, high_cm) = (low.max(longest), high.max(longest));
        AdultLength { estimate_cm: middle.max(longest), low_cm, high_cm, level: LEVEL }
    });
    if adult.is_none() {
        why.insert(
            "growth.adult_length_cm".to_owned(),
            "the species gives no adult length for this sex".to_owned(),
        );
    }
    GrowthFigures { basis: "species range", measurements: measured.len(), adult, working }
}
