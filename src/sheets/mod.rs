//! What each page says: figures and words put in the order in which people need them, in both systems of units.
//!
//! [`plan`] lists the pages of a site, [`build`] makes one of them. Nothing here knows how a page looks. A public sheet is
//! built from types that cannot hold anything private.

mod absent;
pub mod animal;
pub mod binder;
pub mod blocks;
pub mod card;
pub mod care;
pub mod cautions;
pub mod chart;
pub mod citing;
pub mod compare;
mod compare_cells;
pub mod door;
pub mod drawing;
pub mod due;
pub mod edition;
pub mod fits;
pub mod frame;
mod glance;
pub mod handover;
mod handover_needs;
mod handover_record;
mod handover_weeks;
pub mod index;
mod law;
pub mod laws;
mod loggers;
pub mod meal_strip;
pub mod not_found;
pub mod notices;
pub mod order;
pub mod page;
mod phrases;
pub mod picture;
pub mod print;
pub mod public;
pub mod record;
pub mod review;
pub mod round;
pub mod sitter;
pub mod sitter_cards;
pub mod sitter_days;
pub mod sources;
pub mod tables;
mod upkeep;
mod wanted;
pub mod web;
pub mod words;
pub mod working;

use serde::Serialize;

use self::edition::Edition;
use crate::figures::{AnimalFigures, Figures, SpeciesFigures};
use crate::model::{Animal, Model, Species};

use wanted::*;
pub use wanted::{Wanted, calendar_path};

/// One page, by what it says.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(untagged)]
pub enum Sheet {
    /// The index.
    Index(Box<index::IndexSheet>),
    /// A care sheet.
    Care(Box<care::CareSheet>),
    /// How the figures of a care sheet were worked out.
    Working(Box<working::WorkingSheet>),
    /// A wall card.
    Card(Box<card::WallCard>),
    /// A published animal.
    Animal(Box<animal::AnimalSheet>),
    /// Every care sheet in one document.
    Binder(Box<binder::BinderSheet>),
    /// The species side by side.
    Compare(Box<compare::CompareSheet>),
    /// What is due for review.
    Review(Box<review::ReviewSheet>),
    /// What fits in a space.
    Fits(Box<fits::FitsSheet>),
    /// What a host shows where there is no page.
    NotFound(Box<not_found::NotFoundSheet>),
    /// The list of pages for search engines.
    Sitemap(Box<web::Sitemap>),
    /// The feed of reviewed sheets.
    Feed(Box<web::Feed>),
    /// The bibliography.
    Sources(Box<sources::SourcesSheet>),
    /// What the law asks.
    Law(Box<laws::LawSheet>),
    /// A public-health notice.
    Notice(Box<notices::NoticeSheet>),
    /// A further page.
    Page(Box<page::PageSheet>),
    /// A handover sheet.
    Handover(Box<handover::HandoverSheet>),
    /// A door card.
    Door(Box<door::DoorCard>),
    /// A record.
    Record(Box<record::RecordSheet>),
    /// A sitter's sheet.
    Sitter(Box<sitter::SitterSheet>),
    /// The work of a week.
    Round(Box<round::RoundSheet>),
}

/// Lists every page of a site, in the order of their paths.
pub fn plan(model: &Model) -> Vec<Wanted> {
    let mut wanted = vec![Wanted::Index, Wanted::Sources, Wanted::NotFound];
    if !model.species.is_empty() {
        wanted.extend([Wanted::Binder, Wanted::Fits, Wanted::Review]);
        wanted.extend(compare::Order::ALL.map(Wanted::Compare));
    }
    // Both are lists of full addresses; a site that does not know its own has neither.
    if model.site.address.is_some() {
        wanted.extend([Wanted::Sitemap, Wanted::Feed]);
    }
    if !crate::figures::owed::in_force(model).is_empty() {
        wanted.push(Wanted::Law);
        let notices = notices::all(&Edition::of_site(model)).into_iter();
        wanted.extend(notices.map(|(found, _)| Wanted::Notice(found.key.to_owned())));
    }
    for key in model.species.keys() {
        wanted.push(Wanted::Care(key.clone()));
        wanted.push(Wanted::Working(key.clone()));
        wanted.push(Wanted::Card(key.clone()));
    }
    for (key, animal) in &model.animals {
        if animal.publish && animal.is_kept() {
            wanted.push(Wanted::Animal(key.clone()));
        }
        if animal.is_kept() {
            wanted.push(Wanted::Door(key.clone()));
        }
        wanted.push(Wanted::Handover(key.clone()));
        wanted.push(Wanted::Record(key.clone()));
    }
    wanted.extend(model.pages.keys().cloned().map(Wanted::Page));
    let further = model.site.all_languages().into_iter().skip(1);
    let further = further.flat_map(|language| {
        let public = wanted.iter().filter(|wanted| wanted.is_in_every_language());
        public.map(|wanted| Wanted::In(language.to_owned(), Box::new(wanted.clone())))
    });
    wanted.extend(further.collect::<Vec<_>>());
    wanted.sort_by_cached_key(Wanted::path);
    wanted
}

/// Builds one page; none if the model does not hold what it is about.
pub fn build(model: &Model, figures: &Figures, wanted: &Wanted) -> Option<Sheet> {
    of(&Edition::further(model, wanted.language(model)), figures, wanted.page())
}

fn of(edition: &Edition<'_>, figures: &Figures, wanted: &Wanted) -> Option<Sheet> {
    Some(match wanted {
        Wanted::Index => Sheet::Index(Box::new(index::index(edition, figures))),
        Wanted::Binder => Sheet::Binder(Box::new(binder::binder(edition, figures))),
        Wanted::Compare(order) => {
            Sheet::Compare(Box::new(compare::compare(edition, figures, *order)))
        }
        Wanted::Review => Sheet::Review(Box::new(review::review(edition, figures))),
        Wanted::Fits => Sheet::Fits(Box::new(fits::fits(edition, figures))),
        Wanted::NotFound => Sheet::NotFound(Box::new(not_found::not_found(edition, figures))),
        Wanted::Sitemap => Sheet::Sitemap(Box::new(web::sitemap(edition)?)),
        Wanted::Feed => Sheet::Feed(Box::new(web::feed(edition, figures)?)),
        Wanted::Sources => Sheet::Sources(Box::new(sources::sources(edition, figures))),
        Wanted::Care(key) => {
            let (species, of) = (edition.species.get(key)?, figures.species.get(key)?);
            Sheet::Care(Box::new(care::care(edition, figures, key, species, of)))
        }
        Wanted::Working(key) => {
            let (species, of) = (edition.species.get(key)?, figures.species.get(key)?);
            Sheet::Working(Box::new(working::working(edition, figures, key, species, of)))
        }
        Wanted::Card(key) => {
            let (species, of) = (edition.species.get(key)?, figures.species.get(key)?);
            Sheet::Card(Box::new(card::card(edition, figures, key, species, of)))
        }
        Wanted::Animal(key) => Sheet::Animal(Box::new(animal::animal(
            edition,
            figures,
            key,
            figures.animals.get(key)?,
        )?)),
        Wanted::Law => Sheet::Law(Box::new(laws::laws(edition, figures)?)),
        Wanted::Notice(key) => Sheet::Notice(Box::new(notices::notice(edition, figures, key)?)),
        Wanted::Page(key) => {
            Sheet::Page(Box::new(page::page(edition, figures, key, edition.pages.get(key)?)))
        }
        Wanted::Handover(key) => {
            Sheet::Handover(Box::new(handover_sheet(edition, figures, key, None)?))
        }
        Wanted::Door(key) => {
            let (animal, species, of) = of_animal(edition, figures, key)?;
            Sheet::Door(Box::new(door::door(edition, figures, key, animal, species, of)))
        }
        Wanted::Record(key) => {
            let (animal, species, of) = of_animal(edition, figures, key)?;
            Sheet::Record(Box::new(record::record(edition, figures, key, animal, species, of)))
        }
        Wanted::Sitter(stay) => Sheet::Sitter(Box::new(sitter::sitter(edition, figures, stay))),
        Wanted::Round(monday) => Sheet::Round(Box::new(round::round(edition, figures, *monday))),
        // A page is in one language.
        Wanted::In(..) => return None,
    })
}

/// Builds the handover sheet of an animal, addressed to somebody where a name is given.
pub fn handover_sheet(
    edition: &Edition<'_>,
    figures: &Figures,
    key: &str,
    addressed_to: Option<&str>,
) -> Option<handover::HandoverSheet> {
    let (animal, species, of) = of_animal(edition, figures, key)?;
    Some(handover::handover(edition, figures, key, animal, species, of, addressed_to))
}

/// An animal, its species, and what was worked out for both.
type Known<'a> = (&'a Animal, &'a Species, (&'a AnimalFigures, &'a SpeciesFigures));

fn of_animal<'a>(edition: &'a Edition<'a>, figures: &'a Figures, key: &str) -> Option<Known<'a>> {
    let animal = edition.animals.get(key)?;
    let name = &animal.species.name;
    let of = (figures.animals.get(key)?, figures.species.get(name)?);
    Some((animal, edition.species.get(name)?, of))
}
