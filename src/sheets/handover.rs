//! The handover sheet: everything that a new keeper, a vet or an inspector needs to know of one animal.
//!
//! Facts that are missing are shown as missing, not left out. It is private.

use serde::Serialize;

use crate::figures::owed::in_force;
use crate::figures::{AnimalFigures, Figures, SpeciesFigures};
use crate::model::site::Contact;
use crate::model::word::Word;
use crate::model::{Animal, Species};
use crate::quantity::{Rounding, print_one};

use super::blocks::{Caution, Chapter, Fact, Link, Shown};
use super::chart::Chart;
use super::edition::Edition;
use super::frame::Frame;
use super::picture::{self, Picture};
use super::record::OpenFinding;
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
    /// What stands between it and being handed on; filled in once its files have been checked.
    pub before: Vec<OpenFinding>,
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
    edition: &Edition<'_>,
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
        record::identity(edition, animal, species, as_of),
        record::origin(edition, animal),
        record::measurements(animal, species, own, edition, as_of, record::MEASUREMENTS),
        record::feeding_record(animal, edition, as_of, record::MEALS),
        record::sheds(edition, animal, as_of, record::SHEDS),
        record::health(edition, animal, as_of),
        needs::set_up(animal, own, edition),
        upkeep::upkeep(animal, own, general, edition),
        needs::now(animal, species, own, edition),
        needs::grown(species, own, general, edition),
        handover_weeks::first_weeks(animal, species, own, edition, as_of),
        needs::signs(edition, species),
        record::papers(animal, species, edition),
    ];
    let name = edition.name(species);
    let title = edition
        .tell("handover-title", [("name", animal.name.as_str().into()), ("species", name.into())]);
    // A sheet may be asked for in a language in which the site has no public pages.
    let has_own = edition.site.all_languages().contains(&edition.language());
    let folder = if has_own { edition.folder() } else { String::new() };
    HandoverSheet {
        frame: Frame::new(edition, &super::handover_path(key), true, &title, &title, as_of),
        name: animal.name.clone(),
        species: name.to_owned(),
        scientific: species.scientific.clone(),
        kind: species.kind.spelling().to_owned(),
        picture: picture::of_animal(edition, key, animal, species),
        care: Link {
            text: edition.tell("handover-care-sheet", [("species", name.into())]),
            href: format!("../public/{folder}{}", super::care_path(&animal.species.name)),
        },
        addressed_to: addressed_to.map(str::to_owned),
        contacts: contacts(edition),
        before: Vec::new(),
        cautions: cautions::of_species(edition, species),
        chapters,
        charts: super::record::charts(animal, species, own, as_of, edition),
        promise: edition.site.take_back.clone(),
        acknowledgement: acknowledgement(animal, edition),
    }
}

fn contacts(edition: &Edition<'_>) -> Vec<Fact> {
    let private = &edition.private;
    [
        ("handover-by", &private.keeper),
        ("handover-vet", &private.vet),
        ("handover-vet-hours", &private.vet_out_of_hours),
    ]
    .into_iter()
    .map(|(label, contact)| Fact::plain(edition.say(label), reach(edition, contact)))
    .collect()
}

/// A contact on one line.
pub fn reach(edition: &Edition<'_>, contact: &Contact) -> Shown {
    // A number that is cut in two is misread.
    let phone = contact.phone.as_ref().map(|number| number.replace(' ', "\u{a0}"));
    let parts = [&contact.name, &phone, &contact.address, &contact.email];
    let parts: Vec<&str> = parts.into_iter().flatten().map(String::as_str).collect();
    if parts.is_empty() { edition.missing() } else { Shown::plain(parts.join(" · ")) }
}

fn acknowledgement(animal: &Animal, edition: &Edition<'_>) -> Vec<String> {
    let mut all = vec![
        edition.tell("handover-read", [("name", animal.name.as_str().into())]),
        edition.say("handover-know-size"),
        edition.say("handover-know-law"),
        edition.say("handover-ring-vet"),
    ];
    all.extend(in_force(edition).iter().filter_map(|found| {
        let rule = found.law.buyer.as_ref()?;
        let age = edition.shown(print_one(rule.about, edition.units(), Rounding::Nearest)).first;
        let from_memory = rule.ground.from_memory;
        let label = if from_memory { "handover-buyer-age-memory" } else { "handover-buyer-age" };
        Some(edition.tell(label, [("age", age.into()), ("law", found.law.name.as_str().into())]))
    }));
    all
}
