//! Which pages there are, and where each stands.

use crate::model::Model;

use super::{compare, sitter};

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
    /// A page in a further language of the site.
    In(String, Box<Wanted>),
}

pub(super) const REVIEW: &str = "review/index.html";
pub(super) const SOURCES: &str = "sources/index.html";
pub(super) const LAW: &str = "law/index.html";
pub(super) const BINDER: &str = "binder.html";
pub(super) const NOT_FOUND: &str = "404.html";
pub(super) const SITEMAP: &str = "sitemap.xml";
pub(super) const FEED: &str = "feed.xml";

pub(super) fn care_path(key: &str) -> String {
    format!("species/{key}/index.html")
}

pub(super) fn working_path(key: &str) -> String {
    format!("species/{key}/working.html")
}

pub(super) fn card_path(key: &str) -> String {
    format!("species/{key}/card.html")
}

pub(super) fn animal_path(key: &str) -> String {
    format!("animals/{key}/index.html")
}

pub(super) fn notice_path(key: &str) -> String {
    format!("law/{key}/notice.html")
}

pub(super) fn page_path(key: &str) -> String {
    format!("pages/{key}/index.html")
}

pub(super) fn handover_path(key: &str) -> String {
    format!("animals/{key}/handover.html")
}

pub(super) fn door_path(key: &str) -> String {
    format!("animals/{key}/door.html")
}

/// Where the calendar of an animal stands, below the output folder.
pub fn calendar_path(key: &str) -> String {
    format!("private/animals/{key}/care.ics")
}

pub(super) fn sitter_path(stay: &sitter::Stay) -> String {
    format!("sitter/{}_{}.html", stay.from, stay.until)
}

pub(super) fn round_path(monday: jiff::civil::Date) -> String {
    format!("round/{monday}.html")
}

pub(super) fn record_path(key: &str) -> String {
    format!("animals/{key}/record.html")
}

impl Wanted {
    /// The path of the page below the output folder.
    pub fn path(&self) -> String {
        let part = if self.is_private() { "private" } else { "public" };
        format!("{part}/{}", self.path_inside())
    }

    /// The path of the page inside its part of the output.
    pub(super) fn path_inside(&self) -> String {
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
            Wanted::In(language, wanted) => format!("{language}/{}", wanted.path_inside()),
        }
    }

    /// Whether it holds names, numbers and histories that nobody outside may see.
    pub fn is_private(&self) -> bool {
        matches!(
            self.page(),
            Wanted::Handover(_)
                | Wanted::Door(_)
                | Wanted::Record(_)
                | Wanted::Sitter(_)
                | Wanted::Round(_)
        )
    }

    /// Whether it stands in every language of the site: what visitors read. Private sheets are in the language of those who keep the
    /// animals, and what machines read is there once.
    pub fn is_in_every_language(&self) -> bool {
        !self.is_private()
            && !matches!(self, Wanted::NotFound | Wanted::Sitemap | Wanted::Feed | Wanted::In(..))
    }

    /// The page itself, whatever the language.
    pub fn page(&self) -> &Wanted {
        match self {
            Wanted::In(_, wanted) => wanted.page(),
            page => page,
        }
    }

    /// The language that it is in.
    pub fn language<'a>(&'a self, model: &'a Model) -> &'a str {
        match self {
            Wanted::In(language, _) => language,
            _ => &model.site.language,
        }
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
            Wanted::In(_, wanted) => wanted.template(),
        }
    }
}
