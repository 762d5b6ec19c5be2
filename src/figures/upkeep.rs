//! What time brings to one animal: weight gained or lost, days without food, the hours of its lights, the years ahead.

use jiff::civil::Date;

use crate::model::{Animal, Site, Species};

use super::calendar::{days_after, days_between};
use super::formula::coil::{coil_width_cm, grown_mass_g};
use super::formula::day_length::{day_length_h, lamp_hours};
use super::formula::weight::{NoWeightChange, Weighing, weight_change};
use super::working::{Ends, Why, absent, ends, middle};

/// Weight, fast, lights, hide and years of one animal.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Upkeep {
    /// Change of weight over 30 and 90 days, per cent of the earlier weight.
    pub weight_percent: [Option<f64>; 2],
    /// Days since it last ate.
    pub fast_days: Option<i32>,
    /// The species' normal fast, days.
    pub fast_limit_days: Option<f64>,
    /// When the lights go on and off, hours after midnight.
    pub lights_h: Option<(f64, f64)>,
    /// The width of the coiled animal now and when grown, cm.
    pub coil_cm: [Option<f64>; 2],
    /// What a branch must bear now and when grown, kg: three times the animal's mass.
    pub branch_kg: [Option<f64>; 2],
    /// The calendar years in which its life may end, first and last.
    pub until: Option<(Option<i16>, Option<i16>)>,
}

/// The spans that a change of weight is worked out over, days.
const SPANS_DAYS: [f64; 2] = [30.0, 90.0];

/// Works all of it out for one animal.
pub fn upkeep(
    animal: &Animal,
    species: &Species,
    site: &Site,
    now: (Option<f64>, Option<f64>),
    grown_cm: Option<f64>,
    as_of: Date,
    why: &mut Why,
) -> Upkeep {
    let fast_days =
        animal.last_eaten().filter(|date| *date <= as_of).map(|date| days_between(date, as_of));
    if fast_days.is_none() {
        why.insert("fast.days".to_owned(), "the log holds no meal that was eaten".to_owned());
    }
    if species.fasting.is_none() {
        absent(why, "fast.limit_days", "the species gives no normal fast");
    }
    let branch_kg = branches(now, grown_cm);
    for (name, bears) in ["furniture.branch_load_kg.now", "furniture.branch_load_kg.adult"]
        .into_iter()
        .zip(branch_kg)
    {
        if bears.is_none() {
            absent(why, name, "a length, a weight and an adult length are needed");
        }
    }
    Upkeep {
        weight_percent: weights(animal, as_of, why),
        fast_days,
        fast_limit_days: species
            .fasting
            .as_ref()
            .and_then(|cited| cited.value.high().or(cited.value.low()))
            .map(|span| span.days()),
        lights_h: lights(animal, species, site, as_of, why),
        coil_cm: coils(species, now, grown_cm, why),
        branch_kg,
        until: until(animal, species, as_of, why),
    }
}

fn weights(animal: &Animal, as_of: Date, why: &mut Why) -> [Option<f64>; 2] {
    let log: Vec<Weighing> = animal
        .weights()
        .map(|(date, mass)| Weighing {
            day: f64::from(days_between(as_of, date)),
            mass_g: mass.grams(),
        })
        .collect();
    SPANS_DAYS.map(|span| match weight_change(&log, 0.0, span) {
        Ok(change) => Some(change.percent),
        Err(reason) => {
            let reason = match reason {
                NoWeightChange::NeverWeighed => "no weight has been written down".to_owned(),
                NoWeightChange::LastWeighedTooLongAgo { days } => {
                    format!("it was last weighed {days:.0} days ago")
                }
                NoWeightChange::NotWeighedEarlyEnough { days } => {
                    format!("the weights reach back {days:.0} days only")
                }
                NoWeightChange::Argument(reason) => reason.to_string(),
            };
            why.insert(format!("weight.change_percent.days_{span:.0}"), reason);
            None
        }
    })
}

/// The lamp's own hours where they are given, else the day's length at the species' latitudes; around the site's noon or from
/// its fixed start.
fn lights(
    animal: &Animal,
    species: &Species,
    site: &Site,
    as_of: Date,
    why: &mut Why,
) -> Option<(f64, f64)> {
    let lamps = animal.housing.iter().flat_map(|housing| &housing.lamps);
    let own = lamps.filter_map(|lamp| lamp.hours).map(|(hours, _)| ends(&hours)).next();
    let own = middle(own).map(|days| days * 24.0);
    let latitude = species.latitudes.as_ref().and_then(|cited| cited.value.middle());
    let natural = latitude.and_then(|latitude| {
        day_length_h(
            latitude.degrees_north(),
            i32::from(as_of.year()),
            u32::try_from(as_of.day_of_year()).ok()?,
        )
        .ok()
    });
    let Some(hours) = own.or(natural) else {
        for name in ["light.on", "light.off"] {
            absent(why, name, "neither a lamp's hours nor the species' latitudes are given");
        }
        return None;
    };
    let hours = hours.clamp(0.0, 24.0);
    match site.lights_on {
        Some(on) => Some((on, (on + hours).min(24.0))),
        None => lamp_hours(hours, site.lights_centre).ok().map(|lamp| (lamp.on_h, lamp.off_h)),
    }
}

fn coils(
    species: &Species,
    (length_cm, mass_g): (Option<f64>, Option<f64>),
    grown_cm: Option<f64>,
    why: &mut Why,
) -> [Option<f64>; 2] {
    if species.kind != crate::model::word::Kind::Snake {
        why.insert("hide.footprint_cm".to_owned(), "only a snake lies coiled".to_owned());
        return [None, None];
    }
    let Some((length_cm, mass_g)) = length_cm.zip(mass_g) else {
        why.insert("hide.footprint_cm".to_owned(), "a length and a weight are needed".to_owned());
        return [None, None];
    };
    let grown = grown_cm.map(|grown_cm| grown_cm.max(length_cm)).and_then(|grown_cm| {
        coil_width_cm(grown_cm, grown_mass_g(length_cm, mass_g, grown_cm).ok()?).ok()
    });
    [coil_width_cm(length_cm, mass_g).ok(), grown]
}

/// How many times its own mass a branch must bear when an animal drops onto it; common practice, no source.
const BRANCH_TIMES: f64 = 3.0;

/// A branch bears three times the animal: as it is, and grown in its present proportions.
fn branches(
    (length_cm, mass_g): (Option<f64>, Option<f64>),
    grown_cm: Option<f64>,
) -> [Option<f64>; 2] {
    let bear = |mass_g: f64| BRANCH_TIMES * mass_g / 1000.0;
    let grown = length_cm.zip(mass_g).zip(grown_cm).and_then(|((length_cm, mass_g), grown_cm)| {
        grown_mass_g(length_cm, mass_g, grown_cm.max(length_cm)).ok()
    });
    [mass_g.map(bear), grown.map(bear)]
}

/// The years in which its life may end: from its hatch date, or, where that is not known, at most a whole life from now.
fn until(
    animal: &Animal,
    species: &Species,
    as_of: Date,
    why: &mut Why,
) -> Option<(Option<i16>, Option<i16>)> {
    let Some(years) = &species.years else {
        why.insert("commitment.until".to_owned(), "the species gives no span of life".to_owned());
        return None;
    };
    let (low, high): Ends = ends(&years.value);
    let year = |from: Date, days: Option<f64>| days_after(from, days?).map(|date| date.year());
    match animal.hatched {
        Some((hatched, ..)) => Some((
            year(hatched, low).map(|year| year.max(as_of.year())),
            year(hatched, high).map(|year| year.max(as_of.year())),
        )),
        None => Some((None, year(as_of, high))),
    }
}

/// An hour of the day, `07:30`.
pub fn clock(hours: f64) -> String {
    let minutes = (hours * 60.0).round() as u32 % (24 * 60);
    format!("{:02}:{:02}", minutes / 60, minutes % 60)
}
