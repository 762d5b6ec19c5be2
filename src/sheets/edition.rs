//! The model in one language: what every sheet is built from.

use std::collections::BTreeMap;
use std::ops::Deref;

use jiff::civil::Date;

use crate::language::{Catalogue, Value, is_same, primary};
use crate::model::species::{Translation, Words};
use crate::model::word::Word;
use crate::model::{Model, Page, Species};
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

    /// The same model in another language of the site.
    pub fn other(&self, language: &'a str) -> Edition<'a> {
        Edition::further(self.model, language)
    }

    /// A page in this language.
    pub fn wanted(&self, page: Wanted) -> Wanted {
        if self.folder.is_empty() {
            page
        } else {
            Wanted::In(self.folder.to_owned(), Box::new(page))
        }
    }

    /// The words of a species in this language, where they are not those that it has in its own.
    fn translation<'s>(&self, species: &'s Species) -> Option<&'s Translation> {
        self.foreign(species)?;
        self.among(&species.translations)
    }

    /// That of several translations which is in this language: of the very tag, or else of the same language elsewhere.
    fn among<'s>(&self, all: &'s BTreeMap<String, Translation>) -> Option<&'s Translation> {
        let own = self.language();
        let elsewhere = || all.iter().find(|(tag, _)| is_same(tag, own)).map(|(_, one)| one);
        all.get(own).or_else(elsewhere)
    }

    /// The name of a species in this language, or in its own.
    pub fn name<'s>(&self, species: &'s Species) -> &'s str {
        let further = self.translation(species).and_then(|one| one.title.as_deref());
        further.unwrap_or(&species.name)
    }

    /// The sentence on a species in this language; in its own only where it has no words in this one.
    pub fn summary<'s>(&self, species: &'s Species) -> Option<&'s str> {
        match self.translation(species) {
            Some(further) => further.summary.as_deref(),
            None => species.summary.as_deref(),
        }
    }

    /// The words of a species in this language, or in its own.
    pub fn words<'s>(&self, species: &'s Species) -> Option<&'s Words> {
        let further = self.translation(species).map(|one| &one.words);
        further.or(species.words.as_ref())
    }

    /// The language of a species' texts, where that is another than this.
    pub fn foreign<'s>(&self, species: &'s Species) -> Option<&'s str>
    where
        'a: 's,
    {
        let theirs = species.language_in(&self.model.site);
        (!is_same(theirs, self.language())).then_some(theirs)
    }

    /// The language of a species' words as they stand on a page in this one, where that is another.
    pub fn foreign_words<'s>(&self, species: &'s Species) -> Option<&'s str>
    where
        'a: 's,
    {
        if self.translation(species).is_some() { None } else { self.foreign(species) }
    }

    /// A page in this language, where it has one besides its own.
    pub fn page<'p>(&self, page: &'p Page) -> Option<&'p Translation> {
        let is_own = is_same(&self.model.site.language, self.language());
        if is_own { None } else { self.among(&page.translations) }
    }

    /// The title of a page in this language, or in that of the site.
    pub fn page_title<'p>(&self, page: &'p Page) -> &'p str {
        self.page(page).and_then(|one| one.title.as_deref()).unwrap_or(&page.title)
    }

    /// A language by its name in this one; by its tag where there is no label for it.
    pub fn language_name(&self, tag: &str) -> String {
        let label = format!("language-{}", primary(tag));
        self.catalogue.find(&label).unwrap_or_else(|| tag.to_owned())
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
        Shown { missing: true, ..Shown::plain(self.say("not-known")) }
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
