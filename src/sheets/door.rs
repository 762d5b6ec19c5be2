//! The card on the door of an enclosure: one page that can be read from a metre away. It is private.

use serde::Serialize;

use crate::figures::working::Ends;
use crate::figures::{AnimalFigures, Figures, SpeciesFigures};
use crate::model::housing::Probe;
use crate::model::site::Contact;
use crate::model::word::{Caution, Sex, Word};
use crate::model::{Animal, Species};
use crate::quantity::{Humidity, Mass, Rounding, Span, Temperature};

use super::animal::{capital, sex};
use super::blocks::{Fact, Link, Shown};
use super::edition::Edition;
use super::frame::{Frame, full_address};
use super::{print, upkeep};

/// A door card.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct DoorCard {
    /// The frame.
    pub frame: Frame,
    /// The animal's name.
    pub name: String,
    /// Its species' common name.
    pub species: String,
    /// The scientific name.
    pub scientific: String,
    /// What kind of animal it is.
    pub kind: String,
    /// Its sex.
    pub sex: String,
    /// What must be known before the door is opened.
    pub warnings: Vec<String>,
    /// What each probe should read.
    pub readings: Vec<Fact>,
    /// Meals.
    pub feeding: Vec<Fact>,
    /// Whom to ring.
    pub emergency: Vec<Fact>,
    /// The care sheet beside it.
    pub care: Link,
    /// Where the care sheet stands for everybody.
    pub address: Option<String>,
}

/// Builds the door card of an animal.
pub fn door(
    edition: &Edition<'_>,
    figures: &Figures,
    key: &str,
    animal: &Animal,
    species: &Species,
    of: (&AnimalFigures, &SpeciesFigures),
) -> DoorCard {
    let (own, general) = of;
    let title = edition.tell("door-title", [("name", animal.name.as_str().into())]);
    let named = edition.name(species);
    let care = super::care_path(&animal.species.name);
    DoorCard {
        frame: Frame::new(edition, &super::door_path(key), true, &title, &title, figures.as_of),
        name: animal.name.clone(),
        species: named.to_owned(),
        scientific: species.scientific.clone(),
        kind: species.kind.spelling().to_owned(),
        sex: if animal.sex == Sex::Unknown {
            edition.say("door-sex-not-known")
        } else {
            sex(edition, animal.sex)
        },
        warnings: warnings(edition, animal, species, own),
        readings: readings(animal, own, general, edition),
        feeding: feeding(own, edition),
        emergency: emergency(edition),
        address: full_address(&edition.site, &care),
        care: Link {
            text: edition.tell("door-care-sheet", [("species", named.into())]),
            href: format!("../public/{care}"),
        },
    }
}

/// What must be known before the door is opened.
pub(super) fn warnings(
    edition: &Edition<'_>,
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
) -> Vec<String> {
    let mut lines = Vec::new();
    if let Some(until) = own.quarantine_until {
        let date = edition.long_date(until);
        lines.push(edition.tell("door-quarantine", [("date", date.into())]));
    }
    for danger in &species.cautions {
        lines.push(edition.say(match danger {
            Caution::LargeConstrictor => "door-large-constrictor",
            Caution::Venom => "door-venom",
            Caution::StrongBite => "door-strong-bite",
            Caution::SkinSecretion => "door-skin-secretion",
            Caution::StrongTail => "door-strong-tail",
        }));
    }
    let company: Vec<&str> = animal
        .company
        .iter()
        .map(|named| edition.animals.get(&named.name).map_or(&*named.name, |other| &*other.name))
        .collect();
    if !company.is_empty() {
        lines.push(edition.tell("door-company", [("names", company.join(", ").into())]));
    }
    lines
}

/// What each probe should read by day, and the night; of an animal without probes, what its species needs.
fn readings(
    animal: &Animal,
    own: &AnimalFigures,
    general: &SpeciesFigures,
    edition: &Edition<'_>,
) -> Vec<Fact> {
    let mut facts = Vec::new();
    let probes = animal.housing.iter().flat_map(|housing| &housing.probes);
    for probe in probes {
        let temperature = upkeep::wanted_c(probe, general)
            .map(|(low, high)| inward::<Temperature>((Some(low), Some(high)), edition));
        let parts: Vec<Shown> =
            temperature.into_iter().chain(humidity(probe, own, edition)).collect();
        if !parts.is_empty() {
            facts.push(Fact::plain(capital(&probe.name), print::join(&parts, " · ")));
        }
    }
    if facts.is_empty() {
        let gradient = &general.gradient;
        let zones = [
            ("door-basking", gradient.basking_c),
            ("door-warm", gradient.warm_c),
            ("door-cool", gradient.cool_c),
            ("door-water", gradient.water_c),
        ];
        for (label, ends) in zones {
            facts.extend(
                ends.map(|ends| {
                    Fact::plain(edition.say(label), inward::<Temperature>(ends, edition))
                }),
            );
        }
    }
    if let Some(night) = general.gradient.night_c {
        facts.push(Fact::plain(edition.say("door-night"), inward::<Temperature>(night, edition)));
    }
    facts
}

/// What the hygrometer beside a probe may read: its range carried to that place, or the ceiling there alone.
pub(super) fn humidity(probe: &Probe, own: &AnimalFigures, edition: &Edition<'_>) -> Option<Shown> {
    let ceiling = own.humidity.readings.iter().find(|reading| reading.zone == probe.name)?;
    probe.humidity?;
    let at_most = ceiling.at_most_percent;
    let carried = at_most / own.humidity.ceiling_percent.unwrap_or(at_most);
    let floor = own.humidity.range_percent.and_then(|(low, _)| low).map(|low| low * carried);
    Some(inward::<Humidity>((floor.filter(|floor| *floor < at_most), Some(at_most)), edition))
}

fn inward<Q: crate::quantity::Quantity>(ends: Ends, edition: &Edition<'_>) -> Shown {
    print::shown::<Q>(Some(ends), edition, Rounding::Inward)
}

fn feeding(own: &AnimalFigures, edition: &Edition<'_>) -> Vec<Fact> {
    let feeding = &own.feeding;
    let mass = feeding
        .mass_g
        .and_then(print::range::<Mass>)
        .map(|range| edition.shown(range.print(edition.units(), Rounding::Nearest)));
    let meal: Vec<Shown> = feeding.meal.clone().map(Shown::plain).into_iter().chain(mass).collect();
    let date = |date: Option<jiff::civil::Date>| {
        date.map_or_else(|| edition.missing(), |date| Shown::plain(edition.long_date(date)))
    };
    vec![
        Fact::plain(
            edition.say("door-meal"),
            if meal.is_empty() { edition.missing() } else { print::join(&meal, ", ") },
        ),
        Fact::plain(
            edition.say("door-from-meal-to-meal"),
            print::shown::<Span>(feeding.interval_days, edition, Rounding::Nearest),
        ),
        Fact::plain(edition.say("door-last-ate"), date(feeding.last_eaten)),
        Fact::plain(edition.say("door-next-due"), date(feeding.next_due)),
    ]
}

/// Somebody to ring.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Whom {
    /// The vet.
    Vet,
    /// The vet out of hours.
    OutOfHours,
    /// The keeper.
    Keeper,
    /// Somebody who stands in for the keeper.
    Second,
}

/// Whom to ring, with the number.
pub(super) fn emergency(edition: &Edition<'_>) -> Vec<Fact> {
    let fact = |(whom, number)| {
        let label = match whom {
            Whom::Vet => "door-vet",
            Whom::OutOfHours => "door-vet-out-of-hours",
            Whom::Keeper => "door-keeper",
            Whom::Second => "door-second",
        };
        Fact::plain(edition.say(label), number)
    };
    numbers(edition).into_iter().map(fact).collect()
}

/// The telephone numbers, each with the name behind it.
pub(super) fn numbers(edition: &Edition<'_>) -> Vec<(Whom, Shown)> {
    let private = &edition.private;
    let line = |contact: &Contact| {
        let parts: Vec<&str> =
            [&contact.phone, &contact.name].into_iter().flatten().map(String::as_str).collect();
        if parts.is_empty() { edition.missing() } else { Shown::plain(parts.join(" · ")) }
    };
    [
        (Whom::Vet, &private.vet),
        (Whom::OutOfHours, &private.vet_out_of_hours),
        (Whom::Keeper, &private.keeper),
        (Whom::Second, &private.second),
    ]
    .into_iter()
    .filter(|(whom, contact)| *whom != Whom::Second || !contact.is_empty())
    .map(|(whom, contact)| (whom, line(contact)))
    .collect()
}
