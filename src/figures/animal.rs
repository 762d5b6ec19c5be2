//! Everything that is worked out for one animal.

use jiff::civil::Date;

use crate::model::housing::{Housing, Probe};
use crate::model::log::Event;
use crate::model::{Animal, Model, Species};

use super::calendar::days_after;
use super::feeding::{self, AnimalFeeding, Body};
use super::gradient;
use super::growth::{self, GrowthFigures, adult_range_cm};
use super::humidity::{self, HumidityFigures};
use super::space::{self, Need, Space, in_force};
use super::working::{Why, Working};

/// The derived figures of one animal.
#[derive(Debug, Clone, PartialEq)]
pub struct AnimalFigures {
    /// What is known of its body.
    pub body: Body,
    /// Its projected adult length.
    pub growth: GrowthFigures,
    /// The least enclosure now.
    pub now: Option<Space>,
    /// Whether its enclosure satisfies that, or by what it falls short.
    pub fits: Option<Result<(), Vec<String>>>,
    /// The least enclosure when it is grown.
    pub grown: Option<Space>,
    /// What its probes read.
    pub zones: Vec<ZoneReading>,
    /// Warmest minus coolest probe by day, K.
    pub span_c: Option<f64>,
    /// The ceiling at its own probes.
    pub humidity: HumidityFigures,
    /// Its stage and next meal.
    pub feeding: AnimalFeeding,
    /// The end of its quarantine.
    pub quarantine_until: Option<Date>,
    /// How many animals share the enclosure, itself among them.
    pub animals: u32,
    /// Why a figure is absent.
    pub why: Why,
}

/// What one probe reads, the log's latest reading before the typical one of the file.
#[derive(Debug, Clone, PartialEq)]
pub struct ZoneReading {
    /// The probe's name.
    pub zone: String,
    /// How far from the warm end, cm.
    pub at_cm: Option<f64>,
    /// By day, °C.
    pub day_c: Option<f64>,
    /// By night, °C.
    pub night_c: Option<f64>,
    /// The humidity, per cent.
    pub humidity_percent: Option<f64>,
    /// The day of the log's reading, where that was used.
    pub read_on: Option<Date>,
}

/// Works out everything for one animal.
pub fn animal(
    model: &Model,
    _name: &str,
    animal: &Animal,
    species: &Species,
    as_of: Date,
) -> AnimalFigures {
    let mut why = Why::new();
    let body = feeding::body(animal, as_of);
    let growth = growth::growth(animal, species, as_of, &mut why);
    let animals = 1 + u32::try_from(animal.company.len()).unwrap_or(u32::MAX - 1);
    let standards = in_force(model, species);
    let age_months = body.age_days.map(|days| days / (365.25 / 12.0));
    let needs = |length_cm: f64, adult: bool, age_months: Option<f64>| -> Vec<Need> {
        let for_whom = |standard| {
            space::need(species, standard, &animal.name, length_cm, adult, animals, age_months)
        };
        standards.iter().copied().map(for_whom).collect()
    };
    let form = animal.form.as_ref().map(|form| form.name.as_str());
    let is_adult = |length_cm: f64| {
        adult_range_cm(species, animal.sex, form).is_some_and(|(low, _)| length_cm >= low)
    };
    let now = body
        .length_cm
        .and_then(|length_cm| space::join(needs(length_cm, is_adult(length_cm), age_months)));
    let grown = growth.adult.and_then(|adult| space::join(needs(adult.estimate_cm, true, None)));
    if body.length_cm.is_none() {
        why.insert("enclosure.now".to_owned(), "no length has been measured".to_owned());
    } else if now.is_none() {
        why.insert(
            "enclosure.now".to_owned(),
            no_rule(&needs(body.length_cm.unwrap_or(0.0), false, age_months)),
        );
    }
    if grown.is_none() {
        let reason = growth.adult.map_or("no adult length is known".to_owned(), |adult| {
            no_rule(&needs(adult.estimate_cm, true, None))
        });
        why.insert("enclosure.adult".to_owned(), reason);
    }
    let housing = animal.housing.as_ref();
    let inside_cm = housing.and_then(inside_cm);
    let fits =
        now.as_ref().zip(inside_cm).map(|(space, inside_cm)| space::satisfied(inside_cm, space));
    if fits.is_none() {
        why.insert(
            "enclosure.fits".to_owned(),
            "the enclosure's inside measures or the animal's length are not given".to_owned(),
        );
    }
    let zones = housing.map(|housing| zones(housing, animal, as_of)).unwrap_or_default();
    let span_c = span(&zones);
    if span_c.is_none() {
        why.insert(
            "gradient.span_c".to_owned(),
            "fewer than two probes give a temperature by day".to_owned(),
        );
    }
    let humidity = own_humidity(species, &zones, &mut why);
    let feeding = feeding::of_animal(animal, species, &body, as_of, &mut why);
    let quarantine_until = quarantine_until(animal, as_of);
    if quarantine_until.is_none() {
        why.insert("quarantine.until".to_owned(), "it is not in quarantine".to_owned());
    }
    AnimalFigures {
        body,
        growth,
        now,
        fits,
        grown,
        zones,
        span_c,
        humidity,
        feeding,
        quarantine_until,
        animals,
        why,
    }
}

fn no_rule(needs: &[Need]) -> String {
    let reasons: Vec<String> = needs
        .iter()
        .filter_map(|need| need.least.as_ref().err().map(|why| format!("{}: {why}", need.standard)))
        .collect();
    if reasons.is_empty() {
        "no standard in force has a rule for this species".to_owned()
    } else {
        reasons.join("; ")
    }
}

/// The inside measures of an enclosure, cm.
pub fn inside_cm(housing: &Housing) -> Option<[f64; 3]> {
    housing.inside.map(|(inside, _)| [inside.length.cm(), inside.width.cm(), inside.height.cm()])
}

/// Reads every probe: the log's latest line for it wins over the typical reading in the file.
fn zones(housing: &Housing, animal: &Animal, as_of: Date) -> Vec<ZoneReading> {
    let latest = |probe: &Probe| {
        animal.log.iter().rev().filter(|entry| entry.date <= as_of).find_map(|entry| {
            match &entry.event {
                Event::Reading { probe: name, temperature, humidity } if *name == probe.name => {
                    Some((entry.date, *temperature, *humidity))
                }
                _ => None,
            }
        })
    };
    housing
        .probes
        .iter()
        .map(|probe| {
            let read = latest(probe);
            let logged_c = read.and_then(|(_, temperature, _)| temperature).map(|t| t.celsius());
            let logged_percent = read.and_then(|(.., humidity)| humidity).map(|h| h.percent());
            ZoneReading {
                zone: probe.name.clone(),
                at_cm: probe.at.map(|(at, _)| at.cm()),
                day_c: logged_c.or(probe.day.map(|(day, _)| day.celsius())),
                night_c: probe.night.map(|(night, _)| night.celsius()),
                humidity_percent: logged_percent
                    .or(probe.humidity.map(|(humidity, _)| humidity.percent())),
                read_on: read.map(|(date, ..)| date),
            }
        })
        .collect()
}

fn span(zones: &[ZoneReading]) -> Option<f64> {
    let days: Vec<f64> = zones.iter().filter_map(|zone| zone.day_c).collect();
    let warmest = days.iter().copied().fold(f64::MIN, f64::max);
    let coolest = days.iter().copied().fold(f64::MAX, f64::min);
    (days.len() >= 2).then_some(warmest - coolest)
}

/// The ceiling holds at the coolest probe by day; without probes the species' own zones stand in.
fn own_humidity(species: &Species, zones: &[ZoneReading], why: &mut Why) -> HumidityFigures {
    let places: Vec<(String, f64)> =
        zones.iter().filter_map(|zone| Some((zone.zone.clone(), zone.day_c?))).collect();
    if places.is_empty() {
        let gradient = gradient::gradient(&species.temperature, &mut Why::new());
        return humidity::of_species(&species.humidity, &gradient, why);
    }
    let coolest = places.iter().map(|(_, temperature_c)| *temperature_c).fold(f64::MAX, f64::min);
    let ceiling = species
        .humidity
        .ceiling
        .as_ref()
        .and_then(|cited| cited.value.high().or(cited.value.low()));
    let figures =
        humidity::ceiling_at(ceiling.map(|ceiling| ceiling.percent()), Some(coolest), &places, why);
    let range_percent =
        species.humidity.range.as_ref().map(|cited| super::working::ends(&cited.value));
    HumidityFigures { range_percent, ..figures }
}

/// A quarantine ends when its least time has passed since it began, since the last illness and since the last newcomer.
fn quarantine_until(animal: &Animal, as_of: Date) -> Option<Date> {
    let quarantine = animal.quarantine.as_ref()?;
    let restarts =
        animal.log.iter().filter(|entry| entry.date <= as_of && entry.date >= quarantine.started);
    let restarts =
        restarts.filter(|entry| matches!(entry.event, Event::Illness(_) | Event::Joined(_)));
    let from = restarts.map(|entry| entry.date).chain([quarantine.started]).max()?;
    days_after(from, quarantine.minimum.days().ceil())
}

impl AnimalFigures {
    /// How each of them was worked out.
    pub fn workings(&self) -> Vec<&Working> {
        [&self.growth.working, &self.feeding.working]
            .into_iter()
            .chain(&self.humidity.working)
            .collect()
    }
}
