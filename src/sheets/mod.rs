//! What each page says: figures and words put in the order in which people need them, in both systems of units.
//!
//! [`plan`] lists the pages of a site, [`build`] makes one of them. Nothing here knows how a page looks. A public sheet is
//! built from types that cannot hold anything private.

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
pub mod fits;
pub mod frame;
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
pub mod web;
pub mod words;
pub mod working;

use serde::Serialize;

use crate::figures::{AnimalFigures, Figures, SpeciesFigures};
use crate::model::{Animal, Model, Species};

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

/// Which page is meant.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum Wanted {
    /// The index.
    Index,
    /// The care sheet of a species.
    Care(String),
    /// How the figures of a species' care sheet were worked out.
    Working(String),
    /// The wall card of a species.
    Card(String),
    /// The page of an animal.
    Animal(String),
    /// Every care sheet in one document.
    Binder,
    /// The species side by side, in an order.
    Compare(compare::Order),
    /// What is due for review.
    Review,
    /// What fits in a space.
    Fits,
    /// What a host shows where there is no page.
    NotFound,
    /// The list of pages for search engines.
    Sitemap,
    /// The feed of reviewed sheets.
    Feed,
    /// The bibliography.
    Sources,
    /// What the law asks.
    Law,
    /// The public-health notice of a jurisdiction.
    Notice(String),
    /// A further page.
    Page(String),
    /// The handover sheet of an animal.
    Handover(String),
    /// The card on an animal's door.
    Door(String),
    /// The record of an animal.
    Record(String),
    /// The sheet for somebody who looks after the animals.
    Sitter(sitter::Stay),
    /// The work of the week that begins on that Monday.
    Round(jiff::civil::Date),
}

const REVIEW: &str = "review/index.html";
const SOURCES: &str = "sources/index.html";
const LAW: &str = "law/index.html";
const BINDER: &str = "binder.html";
const NOT_FOUND: &str = "404.html";
const SITEMAP: &str = "sitemap.xml";
const FEED: &str = "feed.xml";

fn care_path(key: &str) -> String {
    format!("species/{key}/index.html")
}

fn working_path(key: &str) -> String {
    format!("species/{key}/working.html")
}

fn card_path(key: &str) -> String {
    format!("species/{key}/card.html")
}

fn animal_path(key: &str) -> String {
    format!("animals/{key}/index.html")
}

fn notice_path(key: &str) -> String {
    format!("law/{key}/notice.html")
}

fn page_path(key: &str) -> String {
    format!("pages/{key}/index.html")
}

fn handover_path(key: &str) -> String {
    format!("animals/{key}/handover.html")
}

fn door_path(key: &str) -> String {
    format!("animals/{key}/door.html")
}

/// Where the calendar of an animal stands, below the output folder.
pub fn calendar_path(key: &str) -> String {
    format!("private/animals/{key}/care.ics")
}

fn sitter_path(stay: &sitter::Stay) -> String {
    format!("sitter/{}_{}.html", stay.from, stay.until)
}

fn round_path(monday: jiff::civil::Date) -> String {
    format!("round/{monday}.html")
}

fn record_path(key: &str) -> String {
    format!("animals/{key}/record.html")
}

impl Wanted {
    /// The path of the page below the output folder.
    pub fn path(&self) -> String {
        let part = if self.is_private() { "private" } else { "public" };
        format!("{part}/{}", self.path_inside())
    }

    /// The path of the page inside its part of the output.
    fn path_inside(&self) -> String {
        match self {
            Wanted::Index => "index.html".to_owned(),
            Wanted::Care(key) => care_path(key),
            Wanted::Working(key) => working_path(key),
            Wanted::Card(key) => card_path(key),
            Wanted::Animal(key) => animal_path(key),
            Wanted::Binder => BINDER.to_owned(),
            Wanted::Compare(order) => order.path().to_owned(),
            Wanted::Review => REVIEW.to_owned(),
            Wanted::Fits => compare::FITS.to_owned(),
            Wanted::NotFound => NOT_FOUND.to_owned(),
            Wanted::Sitemap => SITEMAP.to_owned(),
            Wanted::Feed => FEED.to_owned(),
            Wanted::Sources => SOURCES.to_owned(),
            Wanted::Law => LAW.to_owned(),
            Wanted::Notice(key) => notice_path(key),
            Wanted::Page(key) => page_path(key),
            Wanted::Handover(key) => handover_path(key),
            Wanted::Door(key) => door_path(key),
            Wanted::Record(key) => record_path(key),
            Wanted::Sitter(stay) => sitter_path(stay),
            Wanted::Round(monday) => round_path(*monday),
        }
    }

    /// Whether it holds names, numbers and histories that nobody outside may see.
    pub fn is_private(&self) -> bool {
        matches!(
            self,
            Wanted::Handover(_)
                | Wanted::Door(_)
                | Wanted::Record(_)
                | Wanted::Sitter(_)
                | Wanted::Round(_)
        )
    }

    /// The template that it is set in.
    pub fn template(&self) -> &'static str {
        match self {
            Wanted::Index => "index.html",
            Wanted::Care(_) => "care.html",
            Wanted::Working(_) => "working.html",
            Wanted::Card(_) => "card.html",
            Wanted::Animal(_) => "animal.html",
            Wanted::Binder => "binder.html",
            Wanted::Compare(_) => "compare.html",
            Wanted::Review => "review.html",
            Wanted::Fits => "fits.html",
            Wanted::NotFound => "404.html",
            Wanted::Sitemap => "sitemap.xml",
            Wanted::Feed => "feed.xml",
            Wanted::Sources => "sources.html",
            Wanted::Law => "law.html",
            Wanted::Notice(_) => "notice.html",
            Wanted::Page(_) => "page.html",
            Wanted::Handover(_) => "handover.html",
            Wanted::Door(_) => "door.html",
            Wanted::Record(_) => "record.html",
            Wanted::Sitter(_) => "sitter.html",
            Wanted::Round(_) => "round.html",
        }
    }
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
        let notices = notices::all(model).into_iter();
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
    wanted.sort_by_cached_key(Wanted::path);
    wanted
}

/// Builds one page; none if the model does not hold what it is about.
pub fn build(model: &Model, figures: &Figures, wanted: &Wanted) -> Option<Sheet> {
    Some(match wanted {
        Wanted::Index => Sheet::Index(Box::new(index::index(model, figures))),
        Wanted::Binder => Sheet::Binder(Box::new(binder::binder(model, figures))),
        Wanted::Compare(order) => {
            Sheet::Compare(Box::new(compare::compare(model, figures, *order)))
        }
        Wanted::Review => Sheet::Review(Box::new(review::review(model, figures))),
        Wanted::Fits => Sheet::Fits(Box::new(fits::fits(model, figures))),
        Wanted::NotFound => Sheet::NotFound(Box::new(not_found::not_found(model, figures))),
        Wanted::Sitemap => Sheet::Sitemap(Box::new(web::sitemap(model)?)),
        Wanted::Feed => Sheet::Feed(Box::new(web::feed(model, figures)?)),
        Wanted::Sources => Sheet::Sources(Box::new(sources::sources(model, figures))),
        Wanted::Care(key) => {
            let (species, of) = (model.species.get(key)?, figures.species.get(key)?);
            Sheet::Care(Box::new(care::care(model, figures, key, species, of)))
        }
        Wanted::Working(key) => {
            let (species, of) = (model.species.get(key)?, figures.species.get(key)?);
            Sheet::Working(Box::new(working::working(model, figures, key, species, of)))
        }
        Wanted::Card(key) => {
            let (species, of) = (model.species.get(key)?, figures.species.get(key)?);
            Sheet::Card(Box::new(card::card(model, figures, key, species, of)))
        }
        Wanted::Animal(key) => {
            Sheet::Animal(Box::new(animal::animal(model, figures, key, figures.animals.get(key)?)?))
        }
        Wanted::Law => Sheet::Law(Box::new(laws::laws(model, figures)?)),
        Wanted::Notice(key) => Sheet::Notice(Box::new(notices::notice(model, figures, key)?)),
        Wanted::Page(key) => {
            Sheet::Page(Box::new(page::page(model, figures, key, model.pages.get(key)?)))
        }
        Wanted::Handover(key) => {
            Sheet::Handover(Box::new(handover_sheet(model, figures, key, None)?))
        }
        Wanted::Door(key) => {
            let (animal, species, of) = of_animal(model, figures, key)?;
            Sheet::Door(Box::new(door::door(model, figures, key, animal, species, of)))
        }
        Wanted::Record(key) => {
            let (animal, species, of) = of_animal(model, figures, key)?;
            Sheet::Record(Box::new(record::record(model, figures, key, animal, species, of)))
        }
        Wanted::Sitter(stay) => Sheet::Sitter(Box::new(sitter::sitter(model, figures, stay))),
        Wanted::Round(monday) => Sheet::Round(Box::new(round::round(model, figures, *monday))),
    })
}

/// Builds the handover sheet of an animal, addressed to somebody where a name is given.
pub fn handover_sheet(
    model: &Model,
    figures: &Figures,
    key: &str,
    addressed_to: Option<&str>,
) -> Option<handover::HandoverSheet> {
    let (animal, species, of) = of_animal(model, figures, key)?;
    Some(handover::handover(model, figures, key, animal, species, of, addressed_to))
}

/// An animal, its species, and what was worked out for both.
type Known<'a> = (&'a Animal, &'a Species, (&'a AnimalFigures, &'a SpeciesFigures));

fn of_animal<'a>(model: &'a Model, figures: &'a Figures, key: &str) -> Option<Known<'a>> {
    let animal = model.animals.get(key)?;
    let name = &animal.species.name;
    let of = (figures.animals.get(key)?, figures.species.get(name)?);
    Some((animal, model.species.get(name)?, of))
}
