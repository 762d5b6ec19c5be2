//! The model in one language: what every sheet is built from.

use std::ops::Deref;

use jiff::civil::Date;

use crate::language::{Catalogue, Value};
use crate::model::Model;
use crate::model::word::Word;
use crate::quantity::{Printed, System};

use super::Wanted;
use super::blocks::Shown;

/// The model in one language. It stands for the model wherever that is read.
#[derive(Clone, Copy)]
pub struct Edition<'a> {
    /// What the files say.
    pub model: &'a Model,
    catalogue: &'static Catalogue,
    folder: &'a str,
}

impl Deref for Edition<'_> {
    type Target = Model;

    fn deref(&self) -> &Model {
        self.model
    }
}

impl<'a> Edition<'a> {
    /// The model in the language of the site, or with English labels where there is no catalogue for it.
    pub fn of_site(model: &'a Model) -> Edition<'a> {
        Edition { model, catalogue: Catalogue::nearest(&model.site.language), folder: "" }
    }

    /// The model in a further language of the site. Its pages stand in a folder of that name.
    pub fn further(model: &'a Model, language: &'a str) -> Edition<'a> {
        if language == model.site.language {
            return Edition::of_site(model);
        }
        Edition { model, catalogue: Catalogue::nearest(language), folder: language }
    }

    /// A page in this language.
    pub fn wanted(&self, page: Wanted) -> Wanted {
        if self.folder.is_empty() {
            page
        } else {
            Wanted::In(self.folder.to_owned(), Box::new(page))
        }
    }

    /// A label.
    pub fn say(&self, name: &str) -> String {
        self.catalogue.say(name)
    }

    /// A label with what is put into it.
    pub fn tell<const N: usize>(&self, name: &str, values: [(&str, Value<'_>); N]) -> String {
        self.catalogue.tell(name, values)
    }

    /// A word of the files as people read it: the label `FIELD-SPELLING`.
    pub fn word<W: Word>(&self, field: &str, word: W) -> String {
        self.catalogue.say(&format!("{field}-{}", word.spelling().replace(' ', "-")))
    }

    /// A quantity in the form of the language.
    pub fn shown(&self, printed: Printed) -> Shown {
        Shown {
            second: printed.second.map(|second| self.catalogue.figure(second)),
            ..Shown::plain(self.catalogue.figure(printed.first))
        }
    }

    /// A number with so many places behind the decimal mark.
    pub fn number(&self, value: f64, places: usize) -> String {
        self.catalogue.figure(crate::figures::working::number(value, places))
    }

    /// What stands where a fact is missing: it is shown as missing, not left out.
    pub fn missing(&self) -> Shown {
        Shown { first: self.say("not-known"), second: None, missing: true }
    }

    /// A date as it is read aloud: `25 November 2026`.
    pub fn long_date(&self, date: Date) -> String {
        self.catalogue.long_date(date)
    }

    /// A date in a table or on a box to tick: `Wed 25 Nov`.
    pub fn short_date(&self, date: Date) -> String {
        self.catalogue.short_date(date)
    }

    /// Which system of units stands first.
    pub fn units(&self) -> System {
        self.model.site.units
    }

    /// The labels alone.
    pub fn catalogue(&self) -> &'static Catalogue {
        self.catalogue
    }

    /// The folder of its pages, with a stroke at its end; empty for the language of the site.
    pub fn folder(&self) -> String {
        if self.folder.is_empty() { String::new() } else { format!("{}/", self.folder) }
    }

    /// The tag of its language.
    pub fn language(&self) -> &'a str {
        if self.folder.is_empty() { &self.model.site.language } else { self.folder }
    }
}
