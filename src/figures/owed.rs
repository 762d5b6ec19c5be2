//! What the law owes a reader and where a sheet answers it: which jurisdictions are in force, and for each item that a law
//! may name the chapters that hold it, or the fields and headings that would.

use std::collections::BTreeSet;

use jiff::civil::Date;

use crate::model::law::{Item, Jurisdiction};
use crate::model::log::Event;
use crate::model::word::{Habit, Sex};
use crate::model::{Animal, Model, Named, Species};

use super::SpeciesFigures;
use super::calendar::days_after;

/// How long after the last line on illness or treatment an animal counts as under treatment, days, unless its file says
/// otherwise. Common practice, no source: a course of treatment and the visit that ends it fit into it.
pub const TREATMENT_DAYS: f64 = 30.0;

/// A jurisdiction that is in force.
#[derive(Debug, Clone, Copy)]
pub struct InForce<'a> {
    /// The name of its file.
    pub key: &'a str,
    /// What it asks.
    pub law: &'a Jurisdiction,
    /// The name in the site's list that brought it in: its own, or that of a place inside it.
    pub named: &'a Named,
}

/// The jurisdictions in force: those that the site names, each followed by the larger ones that it lies within.
///
/// None stands twice. A name that no file has is left out; that it is missing is a finding.
pub fn in_force(model: &Model) -> Vec<InForce<'_>> {
    let mut seen = BTreeSet::new();
    let mut found = Vec::new();
    for named in &model.site.jurisdictions {
        let mut next = vec![named.name.as_str()];
        while let Some(name) = next.pop() {
            let Some((key, law)) = model.laws.get_key_value(name) else { continue };
            if seen.insert(key.as_str()) {
                found.push(InForce { key, law, named });
                next.extend(law.within.iter().rev().map(|named| named.name.as_str()));
            }
        }
    }
    found
}

/// The chapters in which a sheet answers an item, by their anchors: of the care sheet, or of the handover sheet for what is told of
/// one animal.
pub fn chapters(item: Item) -> &'static [&'static str] {
    match item {
        Item::Names => &["head"],
        Item::LifeExpectancy | Item::YearlyCost => &["seconds", "suits"],
        Item::AdultSize => &["seconds", "growth"],
        Item::Housing | Item::Movement | Item::Enrichment => &["enclosure"],
        Item::Environment => &["heat", "humidity"],
        Item::Feeding | Item::DailyRation => &["feeding"],
        Item::Watering => &["enclosure", "humidity"],
        Item::GeneralCare => &["suits"],
        Item::Handling | Item::SocialLife => &["company"],
        Item::Cleaning => &["cleaning"],
        Item::Equipment => &["enclosure", "heat"],
        Item::Behaviour => &["suits", "company"],
        Item::Danger => &["cautions"],
        Item::Reproduction => &["growth"],
        Item::SignsOfIllness | Item::VeterinaryCare => &["health"],
        Item::ProtectionStatus | Item::LegalBasis | Item::NoRelease => &["law"],
        Item::HealthOnTheDay => &["measurements", "health"],
        Item::Particulars => &["identity", "origin", "health"],
    }
}

/// What a care sheet lacks for an item that a law names: the fields, or headings of the words, that would answer it. Empty where
/// the sheet answers it.
///
/// An item that is told of one animal stands on its handover sheet: see [`of_animal`]. A wording that the law sets is lacking until
/// the site has taken it from the law.
///
/// `said` are the headings, by their English names, under which the words of the species say anything.
pub fn of_species(
    item: Item,
    law: &Jurisdiction,
    species: &Species,
    of: &SpeciesFigures,
    said: &[&str],
) -> Vec<&'static str> {
    let words = |heading: &str| said.contains(&heading);
    let fittings = &species.fittings;
    let room = [&fittings.climbing, &fittings.digging, &fittings.bathing];
    let room = room.iter().any(|place| place.is_some());
    let (told, fields): (bool, &[&'static str]) = match item {
        // Names must be there; the standing cautions and the company it keeps stand on every sheet.
        Item::Names | Item::Danger | Item::SocialLife => (true, &[]),
        Item::HealthOnTheDay | Item::Particulars => (true, &[]),
        Item::LifeExpectancy => (species.years.is_some(), &["life.years"]),
        Item::AdultSize => {
            let size = &species.size;
            let told = size.adult.is_some() || size.female.is_some() || size.male.is_some();
            (told, &["size.adult"])
        }
        Item::Housing => {
            let space = of.enclosure.iter().any(|need| need.least.is_ok());
            let told = (space && fittings.substrate.is_some()) || words("Enclosure");
            (told, &["enclosure.STANDARD", "## Enclosure"])
        }
        Item::Environment => return environment(species),
        Item::Feeding => {
            let told = species.feeding.iter().any(|stage| stage.meal.is_some());
            (told || words("Feeding"), &["feeding", "## Feeding"])
        }
        Item::DailyRation => {
            (has_ration(species, of), &["feeding.every", "feeding.mass or share or count"])
        }
        Item::Watering => {
            let told = fittings.water.is_some() || words("Humidity and water");
            (told, &["fittings.water"])
        }
        Item::GeneralCare => {
            let told = words("Is this animal for you") || words("At a glance");
            (told, &["## Is this animal for you"])
        }
        Item::Handling => (words("Handling and company"), &["## Handling and company"]),
        Item::Cleaning => (words("Cleaning"), &["## Cleaning"]),
        Item::Equipment => {
            let told = fittings.substrate.is_some() && words("Heat and light");
            (told, &["fittings.substrate", "## Heat and light"])
        }
        Item::Movement => {
            let told = room || words("Enclosure");
            (told, &["fittings.climbing, digging or bathing"])
        }
        Item::Enrichment => {
            let told = fittings.hides.is_some() && room;
            (told, &["fittings.hides", "fittings.climbing, digging or bathing"])
        }
        Item::Behaviour => {
            let told = words("Handling and company") || words("Is this animal for you");
            (told, &["## Handling and company"])
        }
        Item::Reproduction => (words("Breeding and growth"), &["## Breeding and growth"]),
        Item::SignsOfIllness => (!species.signs.is_empty(), &["sign"]),
        Item::VeterinaryCare => (words("Health"), &["## Health"]),
        Item::YearlyCost => (of.cost.is_some(), &["prices in wardsheet.toml"]),
        Item::ProtectionStatus => (species.legal.cites.is_some(), &["legal.cites"]),
        Item::LegalBasis => {
            let mut rules = species.legal.rules.iter();
            (rules.any(|rule| law.is_place(&rule.jurisdiction)), &["legal.rule"])
        }
        Item::NoRelease => {
            let ask = law.items.get(&item);
            let open = ask.is_some_and(|ask| ask.wording_set && ask.wording.is_none());
            (!open, &["wording"])
        }
    };
    if told { Vec::new() } else { fields.to_vec() }
}

fn environment(species: &Species) -> Vec<&'static str> {
    let (heat, damp, light) = (&species.temperature, &species.humidity, &species.light);
    let warm = heat.basking.is_some() || heat.warm.is_some() || heat.water.is_some();
    let wet = damp.range.is_some() || species.habit == Habit::Aquatic;
    let lit = light.hours.is_some() || light.zone.is_some() || species.latitudes.is_some();
    lacking(&[(warm, "temperature.warm"), (wet, "humidity.range"), (lit, "light.hours")])
}

fn lacking(all: &[(bool, &'static str)]) -> Vec<&'static str> {
    all.iter().filter(|(told, _)| !told).map(|(_, field)| *field).collect()
}

/// Whether every stage says how often and how much: a mass, a share of the animal's own or a count.
fn has_ration(species: &Species, of: &SpeciesFigures) -> bool {
    let told = species.feeding.iter().zip(&of.feeding).all(|(stage, row)| {
        let much = row.mass_g.is_some() || stage.share.is_some() || stage.count.is_some();
        row.interval_days.is_some() && much
    });
    told && !species.feeding.is_empty()
}

/// What a handover sheet lacks for an item that is told of one animal: the fields that would answer it.
pub fn of_animal(item: Item, animal: &Animal) -> Vec<&'static str> {
    let seen = |event: &Event| matches!(event, Event::Illness(_) | Event::Treatment(_));
    let examined = !animal.history.is_empty() || animal.log.iter().any(|line| seen(&line.event));
    match item {
        Item::HealthOnTheDay => {
            lacking(&[(examined || animal.weights().next().is_some(), "history")])
        }
        Item::Particulars => lacking(&[
            (animal.origin.is_some(), "origin"),
            (animal.hatched.is_some(), "hatched"),
            (animal.sex != Sex::Unknown || animal.sex_basis.is_some(), "sex"),
            (examined, "history"),
        ]),
        _ => Vec::new(),
    }
}

/// Whether an animal is under treatment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Treatment {
    /// It is not, by its file or because nothing points to it.
    None,
    /// Its file says so.
    Stated,
    /// Its log has a line on illness or treatment of that day, and nobody has written that it is over.
    Logged(Date),
}

/// Tells whether an animal is under treatment on a day: by its file, else by the last line on illness or treatment.
pub fn treatment(animal: &Animal, as_of: Date) -> Treatment {
    match animal.under_treatment {
        Some((true, _)) => return Treatment::Stated,
        Some((false, _)) => return Treatment::None,
        None => {}
    }
    let lines = animal.log.iter().filter(|line| {
        line.date <= as_of && matches!(line.event, Event::Illness(_) | Event::Treatment(_))
    });
    let last = lines.map(|line| line.date).max();
    let recent =
        last.filter(|date| days_after(*date, TREATMENT_DAYS).is_some_and(|until| as_of <= until));
    recent.map_or(Treatment::None, Treatment::Logged)
}
