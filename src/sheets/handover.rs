//! The handover sheet: everything that a new keeper, a vet or an inspector needs to know of one animal.
//!
//! Facts that are missing are shown as missing, not left out. It is private.

use serde::Serialize;

use crate::figures::{AnimalFigures, Figures, SpeciesFigures};
use crate::model::site::Contact;
use crate::model::word::Word;
use crate::model::{Animal, Model, Species};

use super::blocks::{Caution, Chapter, Fact, Link, Shown};
use super::chart::Chart;
use super::frame::Frame;
use super::picture::{self, Picture};
use super::{cautions, handover_needs as needs, handover_record as record, handover_weeks, upkeep};

/// A handover sheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct HandoverSheet {
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
    /// Its picture.
    pub picture: Picture,
    /// The care sheet that goes with it.
    pub care: Link,
    /// Whom it is addressed to.
    pub addressed_to: Option<String>,
    /// Who hands it over, and the vet.
    pub contacts: Vec<Fact>,
    /// What can hurt.
    pub cautions: Vec<Caution>,
    /// The chapters.
    pub chapters: Vec<Chapter>,
    /// Growth and weight, drawn.
    pub charts: Vec<Chart>,
    /// What the new keeper signs for.
    pub acknowledgement: Vec<String>,
    /// The promise to take it back, where the site gives one.
    pub promise: Option<String>,
}

/// Builds the handover sheet of an animal.
pub fn handover(
    model: &Model,
    figures: &Figures,
    key: &str,
    animal: &Animal,
    species: &Species,
    of: (&AnimalFigures, &SpeciesFigures),
    addressed_to: Option<&str>,
) -> HandoverSheet {
    let (own, general) = of;
    let as_of = figures.as_of;
    let chapters = vec![
        record::identity(animal, species, as_of),
        record::origin(animal),
        record::measurements(animal, species, own, model, as_of, record::MEASUREMENTS),
        record::feeding_record(animal, model, as_of, record::MEALS),
        record::sheds(animal, as_of, record::SHEDS),
        record::health(animal, as_of),
        needs::set_up(animal, own, model),
        upkeep::upkeep(animal, own, general, model),
        needs::now(animal, species, own, model),
        needs::grown(species, own, general, model),
        handover_weeks::first_weeks(animal, species, own, model, as_of),
        needs::signs(species),
        record::papers(animal, species),
    ];
    let title = format!("Handover of {}, {}", animal.name, species.name);
    HandoverSheet {
        frame: Frame::new(model, &super::handover_path(key), true, &title, &title, as_of),
        name: animal.name.clone(),
        species: species.name.clone(),
        scientific: species.scientific.clone(),
        kind: species.kind.spelling().to_owned(),
        picture: picture::of_animal(model, key, animal, species),
        care: Link {
            text: format!("{} care sheet", species.name),
            href: format!("../public/{}", super::care_path(&animal.species.name)),
        },
        addressed_to: addressed_to.map(str::to_owned),
        contacts: contacts(model),
        cautions: cautions::of_species(species),
        chapters,
        charts: super::record::charts(animal, species, own, as_of, model.site.units),
        promise: model.site.take_back.clone(),
        acknowledgement: acknowledgement(animal),
    }
}

fn contacts(model: &Model) -> Vec<Fact> {
    let private = &model.private;
    [
        ("Handed over by", &private.keeper),
        ("Vet", &private.vet),
        ("Vet out of hours", &private.vet_out_of_hours),
    ]
    .into_iter()
    .map(|(label, contact)| Fact::plain(label, reach(contact)))
    .collect()
}

/// A contact on one line.
pub fn reach(contact: &Contact) -> Shown {
    let parts = [&contact.name, &contact.phone, &contact.address, &contact.email];
    let parts: Vec<&str> = parts.into_iter().flatten().map(String::as_str).collect();
    if parts.is_empty() { Shown::missing() } else { Shown::plain(parts.join(" · ")) }
}

fn acknowledgement(animal: &Animal) -> Vec<String> {
    vec![
        format!("I have read this sheet and the care sheet that goes with it, and have been shown how {} is kept.", animal.name),
        "I know how large it may grow, how long it may live, and what it will cost to keep.".to_owned(),
        "I know that local law decides whether and how I may keep it, and that the papers named here have been handed to me.".to_owned(),
        "I will ring a vet who treats reptiles and amphibians when a sign in this sheet says so.".to_owned(),
    ]
}
