//! An animal's projected adult length, and when it reaches a given one.
//!
//! The species' adult range for the sex and form is what is expected before anything is measured; every length in the log
//! moves that. The curve and its interval stand in [`super::formula::growth_projection`].

use jiff::civil::Date;

use crate::model::word::{Sex, Word};
use crate::model::{Animal, Species};

use super::calendar::{days_after, days_between};
use super::formula::domain::OutOfRange;
use super::formula::growth_data::{AdultRange, Birth, GrowthRate, GrowthRecord, LengthMeasurement};
use super::formula::growth_projection::{self, Basis, Projection};
use super::working::{Ends, Why, Working, absent, number};

/// What is known of an animal's growth.
#[derive(Debug, Clone, PartialEq)]
pub struct GrowthFigures {
    /// What the projection rests on: `log` or `species range`.
    pub basis: &'static str,
    /// Whether there are measurements that do not tell the adult length yet.
    pub not_enough_yet: bool,
    /// How many lengths have been measured.
    pub measurements: usize,
    /// The projected adult length by the species' measure.
    pub adult: Option<AdultLength>,
    /// The growth still to come, cm.
    pub still_to_come_cm: Option<f64>,
    /// The projection itself, with its curves.
    pub projection: Option<Projection>,
    /// How it was worked out.
    pub working: Working,
}

/// A projected adult length in cm with its interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AdultLength {
    /// The length that the animal will as likely exceed as not.
    pub estimate_cm: f64,
    /// The low end of the interval.
    pub low_cm: f64,
    /// The high end of the interval.
    pub high_cm: f64,
    /// The share of such animals whose adult length lies within, 0 to 1.
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

/// Projects an animal's adult length from its log, with its species as the background.
///
/// Lengths in cm by the species' own measure, days counted from `as_of`. Lines dated later are left out. Absent, with the
/// reason, where the species gives no adult length for the sex. Source: see [`growth_projection::project`].
pub fn growth(animal: &Animal, species: &Species, as_of: Date, why: &mut Why) -> GrowthFigures {
    let measurements: Vec<LengthMeasurement> = animal
        .lengths()
        .filter(|(date, _)| *date <= as_of)
        .map(|(date, length)| LengthMeasurement {
            day: day(as_of, date),
            length_cm: length.cm(),
            error_cm: None,
        })
        .collect();
    let form = animal.form.as_ref().map(|form| form.name.as_str());
    let mut figures = GrowthFigures {
        basis: "species range",
        not_enough_yet: false,
        measurements: measurements.len(),
        adult: None,
        still_to_come_cm: None,
        projection: None,
        working: Working::new(
            "Projected adult length",
            "L(t) = L∞ − (L∞ − L₁) e^(−k (t − t₁)), fitted by least squares with the species' adult range as the background",
            "von Bertalanffy 1938, in the increment form of Fabens 1965",
        ),
    };
    let Some((low, high)) = adult_range_cm(species, animal.sex, form) else {
        for name in ["growth.adult_length_cm", "growth.still_to_come_cm"] {
            absent(why, name, "the species gives no adult length for this sex");
        }
        return figures;
    };
    let latest = measurements.last().map(|measured| measured.length_cm);
    match project(animal, species, as_of, measurements, (low, high)) {
        Ok(projection) => {
            describe(&mut figures, &projection, animal, (low, high));
            figures.still_to_come_cm =
                latest.map(|latest| (projection.estimate_cm - latest).max(0.0));
            figures.projection = Some(projection);
        }
        Err(reason) => drop(why.insert("growth.adult_length_cm".to_owned(), reason.to_string())),
    }
    if figures.still_to_come_cm.is_none() {
        absent(why, "growth.still_to_come_cm", "no length has been measured");
    }
    figures
}

fn day(as_of: Date, date: Date) -> f64 {
    f64::from(days_between(as_of, date))
}

fn project(
    animal: &Animal,
    species: &Species,
    as_of: Date,
    measurements: Vec<LengthMeasurement>,
    (low, high): (f64, f64),
) -> Result<Projection, OutOfRange> {
    let birth_cm =
        species.size.birth.as_ref().and_then(|cited| cited.value.low().zip(cited.value.high()));
    let hatched = animal.hatched.map(|(date, ..)| date).filter(|date| *date <= as_of);
    // A hatch date alone shows no growth; it counts once there is a length to set beside it.
    let birth =
        hatched.zip(birth_cm).filter(|_| !measurements.is_empty()).map(|(date, (low, high))| {
            Birth { day: day(as_of, date), length_cm: (low.cm(), high.cm()) }
        });
    growth_projection::project(&GrowthRecord {
        measurements,
        birth,
        adult: AdultRange::new(low, high)?,
        rate: rate(species)?,
    })
}

/// The rate of growth of a species: as published, else from its age at maturity, else as wide as can be.
fn rate(species: &Species) -> Result<GrowthRate, OutOfRange> {
    let middle = |low: Option<f64>, high: Option<f64>| match (low, high) {
        (Some(low), Some(high)) => Some((low * high).sqrt()),
        (one, other) => one.or(other),
    };
    if let Some(k) = &species.growth.k
        && let Some(k) =
            middle(k.value.low().map(|k| k.per_year()), k.value.high().map(|k| k.per_year()))
    {
        return GrowthRate::new(k, 0.4);
    }
    let matures = species.growth.matures.as_ref();
    let years = matures.and_then(|span| {
        middle(span.value.low().map(|s| s.years()), span.value.high().map(|s| s.years()))
    });
    years.map_or(Ok(GrowthRate::unknown()), |years| {
        GrowthRate::from_years_to_maturity(years.clamp(0.1, 100.0))
    })
}

fn describe(
    figures: &mut GrowthFigures,
    projection: &Projection,
    animal: &Animal,
    (low, high): (f64, f64),
) {
    let working = &mut figures.working;
    let n = |value| number(value, 1);
    let sex = if animal.sex == Sex::Unknown { "of either sex" } else { animal.sex.spelling() };
    working.step(format!(
        "the species, {sex}: {}–{} cm, read as the middle nine tenths of adults",
        n(low),
        n(high)
    ));
    match projection.basis {
        Basis::SpeciesRange => working.step("no length has been measured: it is the species' own range"),
        Basis::AtLeastThisLong => working.step("one length shows no growth; it only rules out smaller adults"),
        Basis::NotEnoughYet => working.step("not enough to tell yet: the lengths leave the adult length as open as the species does"),
        Basis::Measurements => {
            working.step(format!("{} lengths in the log", projection.measurements));
            if let Some([_, middle, _]) = projection.curves() {
                working.step(format!("the middle curve: L∞ = {} cm, growing {} cm a year now", n(projection.estimate_cm), n(middle.rate_cm_per_year(0.0))));
            }
        }
    }
    working.step(format!(
        "as likely above as below: {} cm; nine such animals in ten end between {} and {} cm",
        n(projection.estimate_cm),
        n(projection.low_cm),
        n(projection.high_cm)
    ));
    working.assume("A length is repeated to about 1 % (common practice, no source). The curve is a model, not a promise.");
    figures.basis = if projection.basis == Basis::Measurements { "log" } else { "species range" };
    figures.not_enough_yet = projection.basis == Basis::NotEnoughYet;
    figures.adult = Some(AdultLength {
        estimate_cm: projection.estimate_cm,
        low_cm: projection.low_cm,
        high_cm: projection.high_cm,
        level: growth_projection::LEVEL,
    });
}

/// When an animal reaches a length: the day that one in twenty such animals has reached it by, the day that half have, and
/// the day after which one in twenty still does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct ReachDates {
    /// Earliest.
    pub earliest: Option<Date>,
    /// Expected; absent when fewer than half ever reach it.
    pub expected: Option<Date>,
    /// Latest; absent when more than one in twenty never reach it.
    pub latest: Option<Date>,
}

/// Works out when an animal reaches `length_cm`. None where there is nothing to start a curve from.
pub fn reach(figures: &GrowthFigures, length_cm: f64, as_of: Date) -> Option<ReachDates> {
    let reach = figures.projection.as_ref()?.reach(length_cm).ok()??;
    let date = |day: Option<f64>| days_after(as_of, day?.max(0.0));
    Some(ReachDates {
        earliest: date(reach.earliest_day),
        expected: date(reach.expected_day),
        latest: date(reach.latest_day),
    })
}

/// The interval of the adult length as ends, for printing.
pub fn interval(adult: Option<AdultLength>) -> Option<Ends> {
    adult.map(|adult| (Some(adult.low_cm), Some(adult.high_cm)))
}
