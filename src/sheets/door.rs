//! The card on the door of an enclosure: one page that can be read from a metre away. It is private.

use serde::Serialize;

use crate::figures::working::Ends;
use crate::figures::{AnimalFigures, Figures, SpeciesFigures};
use crate::model::housing::Probe;
use crate::model::site::Contact;
use crate::model::word::{Caution, Word};
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
    let title = format!("Door card of {}", animal.name);
    let care = super::care_path(&animal.species.name);
    DoorCard {
        frame: Frame::new(edition, &super::door_path(key), true, &title, &title, figures.as_of),
        name: animal.name.clone(),
        species: species.name.clone(),
        scientific: species.scientific.clone(),
        kind: species.kind.spelling().to_owned(),
        sex: if animal.sex == crate::model::word::Sex::Unknown {
            "sex not known".to_owned()
        } else {
            sex(edition, animal.sex)
        },
        warnings: warnings(edition, animal, species, own),
        readings: readings(animal, own, general, edition),
        feeding: feeding(own, edition),
        emergency: emergency(edition),
        address: full_address(&edition.site, &care),
        care: Link {
            text: format!("{} care sheet", species.name),
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
        lines.push(format!(
            "Quarantine until {}. Last in the round, its own tools, hands washed after it.",
            edition.long_date(until)
        ));
    }
    for danger in &species.cautions {
        lines.push(
            match danger {
                Caution::LargeConstrictor => {
                    "Two adults: never open, handle or feed this snake alone."
                }
                Caution::Venom => "Its bite may carry venom. Hands out; use tongs.",
                Caution::StrongBite => "It bites hard. Feed with long tongs, move slowly.",
                Caution::SkinSecretion => "Its skin irritates. Wet, powder-free gloves.",
                Caution::StrongTail => "Its tail strikes. Keep your face away.",
            }
            .to_owned(),
        );
    }
    let company: Vec<&str> = animal
        .company
        .iter()
        .map(|named| edition.animals.get(&named.name).map_or(&*named.name, |other| &*other.name))
        .collect();
    if !company.is_empty() {
        lines.push(format!("Lives with {}: count them before you close.", company.join(", ")));
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
            ("Basking spot", gradient.basking_c),
            ("Warm side", gradient.warm_c),
            ("Cool side", gradient.cool_c),
            ("Water", gradient.water_c),
        ];
        for (label, ends) in zones {
            facts.extend(ends.map(|ends| Fact::plain(label, inward::<Temperature>(ends, edition))));
        }
    }
    if let Some(night) = general.gradient.night_c {
        facts.push(Fact::plain("By night", inward::<Temperature>(night, edition)));
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
            "Meal",
            if meal.is_empty() { edition.missing() } else { print::join(&meal, ", ") },
        ),
        Fact::plain(
            "From meal to meal",
            print::shown::<Span>(feeding.interval_days, edition, Rounding::Nearest),
        ),
        Fact::plain("Last ate", date(feeding.last_eaten)),
        Fact::plain("Next due from", date(feeding.next_due)),
    ]
}

/// Whom to ring, with the number.
pub(super) fn emergency(edition: &Edition<'_>) -> Vec<Fact> {
    let private = &edition.private;
    let line = |contact: &Contact| {
        let parts: Vec<&str> =
            [&contact.phone, &contact.name].into_iter().flatten().map(String::as_str).collect();
        if parts.is_empty() { edition.missing() } else { Shown::plain(parts.join(" · ")) }
    };
    [
        ("Vet", &private.vet),
        ("Out of hours", &private.vet_out_of_hours),
        ("Keeper", &private.keeper),
        ("Second", &private.second),
    ]
    .into_iter()
    .filter(|(label, contact)| *label != "Second" || !contact.is_empty())
    .map(|(label, contact)| Fact::plain(label, line(contact)))
    .collect()
}
