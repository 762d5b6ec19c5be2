//! The site's own settings, the private file and further pages.

use std::collections::BTreeMap;

use crate::finding::{FileId, Place, Severity};
use crate::quantity::{Price, Span, System};

use super::cited::Named;
use super::species::Words;

/// The site's settings.
#[derive(Debug, Clone, PartialEq)]
pub struct Site {
    /// The file they are written in.
    pub file: FileId,
    /// The site's name.
    pub title: String,
    /// Text for the foot of every page.
    pub footer: Option<String>,
    /// The language of its pages, a BCP 47 tag.
    pub language: String,
    /// The units printed first.
    pub units: System,
    /// The paper it prints on.
    pub paper: Paper,
    /// Where it will stand.
    pub address: Option<String>,
    /// The standards in force; none means every one that a species names.
    pub standards: Vec<Named>,
    /// Further species folders, nearest first.
    pub libraries: Vec<String>,
    /// How long a review holds.
    pub review_every: Span,
    /// The public sentence about the vet.
    pub vet: Option<String>,
    /// The price of electricity.
    pub electricity: Option<(Price, Place)>,
    /// Prices of food by its name.
    pub food_prices: BTreeMap<String, Price>,
    /// Severities that the site has changed, by code.
    pub severities: Vec<(Named, Option<Severity>)>,
}

impl Default for Site {
    fn default() -> Site {
        Site {
            file: FileId(0),
            title: String::new(),
            footer: None,
            language: "en".to_owned(),
            units: System::Metric,
            paper: Paper::A4,
            address: None,
            standards: Vec::new(),
            libraries: vec!["builtin".to_owned()],
            review_every: Span::from_days(730.5),
            vet: None,
            electricity: None,
            food_prices: BTreeMap::new(),
            severities: Vec::new(),
        }
    }
}

/// A size of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paper {
    /// ISO 216 A4.
    A4,
    /// US Letter.
    Letter,
}

impl super::word::Word for Paper {
    const ALL: &'static [(Paper, &'static str)] = &[(Paper::A4, "A4"), (Paper::Letter, "Letter")];
}

/// Phone numbers and addresses. Nothing of it may reach a public page.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Private {
    /// The keeper.
    pub keeper: Contact,
    /// Somebody near who can help.
    pub second: Contact,
    /// The vet.
    pub vet: Contact,
    /// The vet out of hours.
    pub vet_out_of_hours: Contact,
    /// The house: where things are, what a sitter may spend; heading and text.
    pub house: Vec<(String, String)>,
}

/// Somebody who can be reached.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Contact {
    /// Name.
    pub name: Option<String>,
    /// Telephone.
    pub phone: Option<String>,
    /// Address.
    pub address: Option<String>,
    /// E-mail.
    pub email: Option<String>,
}

impl Contact {
    /// Whether nothing is known.
    pub fn is_empty(&self) -> bool {
        *self == Contact::default()
    }
}

/// A further page.
#[derive(Debug, Clone, PartialEq)]
pub struct Page {
    /// Its title: the first heading, or its name.
    pub title: String,
    /// Its words.
    pub words: Words,
}
