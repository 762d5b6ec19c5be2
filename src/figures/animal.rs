//! Everything that is worked out for one animal.

use jiff::civil::Date;

use crate::model::housing::{Housing, Probe};
use crate::model::log::Event;
use crate::model::word::Zone;
use crate::model::{Animal, Model, Species};

use super::absence::Absence;
use super::cost::{self, Consumption, RunningCost};
use super::feeding::{self, AnimalFeeding, Body};
use super::gradient;
use super::growth::{self, GrowthFigures};
use super::heat::{self, HeatFigures};
use super::humidity::{self, HumidityFigures};
use super::lamp::{self, LampDistance};
use super::lifetime::{self, Outgrown};
use super::light;
use super::logger::{self, LoggerFigures};
use super::moisture::{MoistureFigures, condenses_below_c, moisture};
use super::quarantine;
use super::space::{Fits, Space};
use super::upkeep::{self, Upkeep};
use super::working::{Why, Working, absent, middle};

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
    pub fits: Option<Fits>,
    /// The least enclosure when it is grown.
    pub grown: Option<Space>,
    /// The same at the top of the interval of its adult length.
    pub grown_at_most: Option<Space>,
    /// When its enclosure is outgrown.
    pub outgrown: Option<Outgrown>,
    /// Why no day can be told on which it is.
    pub not_outgrown: Option<Absence>,
    /// What its data loggers have recorded, probe by probe.
    pub loggers: Vec<LoggerFigures>,
    /// What its probes read.
    pub zones: Vec<ZoneReading>,
    /// Warmest minus coolest probe by day, K.
    pub span_c: Option<f64>,
    /// The ceiling at its own probes.
    pub humidity: HumidityFigures,
    /// Water settles on anything colder than this, °C.
    pub condenses_below_c: Option<f64>,
    /// Heat, power and what they cost.
    pub heat: Option<HeatFigures>,
    /// Why there is none.
    pub no_heat: Option<Absence>,
    /// Water carried off by the air.
    pub moisture: Option<MoistureFigures>,
    /// Its stage and next meal.
    pub feeding: AnimalFeeding,
    /// Food energy over resting energy, and how that was worked out.
    pub energy: Option<((f64, f64), Working)>,
    /// What it costs in a year.
    pub cost: Option<RunningCost>,
    /// Where its lamps give the species' ultraviolet band, or why that cannot be told.
    pub lamps: Vec<Result<LampDistance, Absence>>,
    /// Weight, fast, lights, hide and years.
    pub upkeep: Upkeep,
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
pub fn animal(model: &Model, animal: &Animal, species: &Species, as_of: Date) -> AnimalFigures {
    let mut why = Why::new();
    let body = feeding::body(animal, as_of);
    let growth = growth::growth(animal, species, as_of, &mut why);
    let housing = animal.housing.as_ref();
    let space = lifetime::enclosure(model, animal, species, (&body, &growth), as_of, &mut why);
    let zones = housing.map(|housing| zones(housing, animal, as_of)).unwrap_or_default();
    let span_c = span(&zones);
    if span_c.is_none() {
        absent(&mut why, "gradient.span_c", "fewer than two probes give a temperature by day");
    }
    let humidity = own_humidity(species, &zones, &mut why);
    let air: Vec<(f64, f64)> =
        zones.iter().filter_map(|zone| zone.day_c.zip(zone.humidity_percent)).collect();
    for (name, given) in [
        ("humidity.range_percent", humidity.range_percent.is_some()),
        ("humidity.ceiling_percent", humidity.ceiling_percent.is_some()),
    ] {
        if !given {
            absent(&mut why, name, "its species gives none");
        }
    }
    let condenses_below_c = condenses_below_c(&air);
    if condenses_below_c.is_none() {
        absent(
            &mut why,
            "humidity.condenses_below_c",
            "no probe gives both a temperature and a humidity",
        );
    }
    let (heat, no_heat) = halves(
        housing
            .ok_or(Absence::NoEnclosure)
            .and_then(|housing| heat::heat(housing, species, &model.site)),
    );
    if let Some(reason) = &no_heat {
        absent(&mut why, "heat", &reason.to_string());
    }
    if let Some(heat) = &heat {
        heat.why.iter().for_each(|(name, reason)| absent(&mut why, name, reason));
    }
    let moisture = housed(housing, |housing| moisture(housing, species), "moisture", &mut why);
    if moisture.as_ref().is_some_and(|moisture| moisture.spray_ml.is_none()) {
        absent(&mut why, "moisture.spray_ml", "no interval of spraying is given");
    }
    let feeding = feeding::of_animal(animal, species, &model.site, &body, as_of, &mut why);
    let energy = match feeding::energy_of_animal(species, &feeding, &body) {
        Ok(energy) => Some(energy),
        Err(reason) => {
            absent(&mut why, "feeding.energy_ratio", &reason);
            None
        }
    };
    let cost = cost_of(model, animal, heat.as_ref(), &feeding, &mut why);
    let grown_cm = growth.adult.map(|adult| adult.estimate_cm);
    let now = (body.length_cm, body.mass_g);
    let upkeep = upkeep::upkeep(animal, species, &model.site, now, grown_cm, as_of, &mut why);
    let band = light::band(species);
    let measured =
        housing.iter().flat_map(|housing| &housing.lamps).filter(|lamp| !lamp.readings.is_empty());
    let lamps = measured.map(|lamp| lamp::distance(lamp, band)).collect();
    let quarantine_until = quarantine::until(model, animal, as_of);
    if quarantine_until.is_none() {
        absent(&mut why, "quarantine.until", "it is not in quarantine");
    }
    let loggers = recorded(animal, species, &humidity, upkeep.lights_h);
    let (outgrown, not_outgrown) = halves(space.outgrown);
    AnimalFigures {
        loggers,
        body,
        growth,
        now: space.now,
        fits: space.fits,
        grown: space.grown,
        grown_at_most: space.grown_at_most,
        outgrown,
        not_outgrown,
        zones,
        span_c,
        humidity,
        condenses_below_c,
        heat,
        no_heat,
        moisture,
        feeding,
        energy,
        cost,
        lamps,
        upkeep,
        quarantine_until,
        animals: space.animals,
        why,
    }
}

/// A figure, or why there is none.
fn halves<T>(worked: Result<T, Absence>) -> (Option<T>, Option<Absence>) {
    worked.map_or_else(|reason| (None, Some(reason)), |figure| (Some(figure), None))
}

/// Works something out for an enclosure; where there is none, or something of it is not known, that is the reason.
fn housed<T>(
    housing: Option<&Housing>,
    work: impl Fn(&Housing) -> Result<T, String>,
    name: &str,
    why: &mut Why,
) -> Option<T> {
    match housing.ok_or_else(|| "no enclosure is given".to_owned()).and_then(work) {
        Ok(figures) => Some(figures),
        Err(reason) => {
            absent(why, name, &reason);
            None
        }
    }
}

fn cost_of(
    model: &Model,
    animal: &Animal,
    heat: Option<&HeatFigures>,
    feeding: &AnimalFeeding,
    why: &mut Why,
) -> Option<RunningCost> {
    let known = animal.housing.as_ref().zip(heat);
    let Some((housing, heat)) = known else {
        for name in cost::FIGURES {
            absent(why, name, "its heat could not be worked out");
        }
        return None;
    };
    let days = middle(feeding.interval_days);
    let mass_g = middle(feeding.mass_g);
    let count = animal
        .feeding
        .as_ref()
        .and_then(|practice| practice.count)
        .map_or(1.0, |((low, high), _)| f64::from(low + high) / 2.0);
    let meal = feeding.meal.as_deref().zip(days).map(|(meal, days)| (meal, mass_g, days));
    let consumption = Consumption { housing, heat_kwh_per_month: heat.kwh_per_month, meal, count };
    match cost::of_animal(&model.site, &consumption) {
        Ok(cost) => Some(cost),
        Err(reason) => {
            for name in cost::FIGURES {
                absent(why, name, &reason);
            }
            None
        }
    }
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

/// The ceiling holds at the coolest probe by day, and never at a place warmer than the species' cool side: an enclosure whose
/// only probe stands at the warm end has a cool end all the same. Without probes the species' own zones stand in.
fn own_humidity(species: &Species, zones: &[ZoneReading], why: &mut Why) -> HumidityFigures {
    let places: Vec<(String, f64)> =
        zones.iter().filter_map(|zone| Some((zone.zone.clone(), zone.day_c?))).collect();
    let gradient = gradient::gradient(&species.temperature, &mut Why::new());
    if places.is_empty() {
        return humidity::of_species(&species.humidity, &gradient, why);
    }
    let cool_top_c = gradient.cool_c.and_then(|(low, high)| high.or(low));
    let coolest = places.iter().map(|(_, temperature_c)| *temperature_c).fold(f64::MAX, f64::min);
    let holds_at_c = cool_top_c.map_or(coolest, |cool_top_c| cool_top_c.min(coolest));
    let ceiling = species.humidity.ceiling.as_ref();
    let ceiling = ceiling.and_then(|cited| cited.value.high().or(cited.value.low()));
    let ceiling = ceiling.map(|ceiling| ceiling.percent());
    let mut figures = humidity::ceiling_at(ceiling, Some(holds_at_c), &places, why);
    if holds_at_c < coolest
        && let Some(working) = &mut figures.working
    {
        working.assume("No probe stands as cool as the species' cool side; the ceiling is held at the top of that.");
    }
    let range_percent =
        species.humidity.range.as_ref().map(|cited| super::working::ends(&cited.value));
    let nights: Vec<(String, f64)> =
        zones.iter().filter_map(|zone| Some((zone.zone.clone(), zone.night_c?))).collect();
    let coolest_night = nights.iter().map(|(_, night_c)| *night_c).reduce(f64::min);
    let night = humidity::ceiling_at(ceiling, coolest_night, &nights, &mut Why::new());
    HumidityFigures { range_percent, night_readings: night.readings, ..figures }
}

/// Sums up what its data loggers have recorded.
///
/// The ceiling of a probe is the one that its door card shows; a cool probe that the enclosure does not list has the species'.
fn recorded(
    animal: &Animal,
    species: &Species,
    humidity: &HumidityFigures,
    lights_h: Option<(f64, f64)>,
) -> Vec<LoggerFigures> {
    let recordings = animal.loggers.iter().flat_map(|logger| logger.recordings.iter());
    let summed = recordings.filter_map(|recording| {
        let probe = &recording.probe;
        let here = humidity.readings.iter().filter(|reading| reading.zone == *probe);
        let here = here.map(|reading| reading.at_most_percent).reduce(f64::min);
        let mut probes = animal.housing.iter().flat_map(|housing| &housing.probes);
        let listed = probes.find(|listed| listed.name == *probe);
        let zone = listed.map_or_else(|| Zone::of_name(probe), |listed| listed.zone);
        let cool = humidity.ceiling_percent.filter(|_| zone == Some(Zone::Cool));
        let asked = logger::Asked {
            ceiling_percent: here.or(cool),
            lights_h,
            ..logger::Asked::of(species, zone)
        };
        logger::logger(recording, &asked)
    });
    summed.collect()
}

impl AnimalFigures {
    /// How each of them was worked out.
    pub fn workings(&self) -> Vec<&Working> {
        let always = [&self.growth.working, &self.feeding.working];
        let heat = self.heat.iter().map(|heat| &heat.working);
        let moisture = self.moisture.iter().map(|moisture| &moisture.working);
        let energy = self.energy.iter().map(|(_, working)| working);
        let cost = self.cost.iter().map(|cost| &cost.working);
        let lamps = self.lamps.iter().flatten().map(|lamp| &lamp.working);
        always
            .into_iter()
            .chain(&self.humidity.working)
            .chain(heat)
            .chain(moisture)
            .chain(energy)
            .chain(cost)
            .chain(lamps)
            .collect()
    }
}
