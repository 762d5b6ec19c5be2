//! The site's own settings, the private file and further pages.

use std::collections::BTreeMap;

use crate::finding::{FileId, Place, Severity};
use crate::quantity::{Mass, Power, Price, Range, Span, System, Volume};

use super::cited::Named;
use super::species::{Translation, Words};

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
    /// Further languages in which its public pages stand, BCP 47 tags.
    pub languages: Vec<Named>,
    /// The units printed first.
    pub units: System,
    /// The paper it prints on.
    pub paper: Paper,
    /// Where it will stand.
    pub address: Option<String>,
    /// The standards in force; none means every one that a species names.
    pub standards: Vec<Named>,
    /// The places whose law the sheets are written for; none means that no law is held against them.
    pub jurisdictions: Vec<Named>,
    /// Words that a law sets, as the site has taken them from it.
    pub wordings: Vec<Wording>,
    /// Further species folders, nearest first.
    pub libraries: Vec<String>,
    /// How long a review holds.
    pub review_every: Span,
    /// The public sentence about the vet.
    pub vet: Option<String>,
    /// The promise to take an animal back, printed on its handover sheet; private.
    pub take_back: Option<String>,
    /// The price of electricity.
    pub electricity: Option<(Price, Place)>,
    /// Prices of food by its name.
    pub food_prices: BTreeMap<String, Price>,
    /// Prices of lamps by their kind.
    pub lamp_prices: BTreeMap<String, Price>,
    /// The site's own ladder of prey sizes: name and mass, in rising order of mass. Empty means the built-in one.
    pub prey: Vec<(String, Range<Mass>)>,
    /// When the lights go on, if at a fixed hour; else the day is centred on `lights_centre`.
    pub lights_on: Option<f64>,
    /// The middle of the lighted day, in hours after midnight.
    pub lights_centre: f64,
    /// Disinfectants as the site mixes them.
    pub disinfectants: Vec<Disinfectant>,
    /// Socket strips, each with what it may carry.
    pub strips: Vec<Strip>,
    /// Rooms in which enclosures stand.
    pub rooms: Vec<Room>,
    /// The figures that must have a source here: names of figures, of tables of them, or `all`.
    pub figures_need_source: Vec<Named>,
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
            languages: Vec::new(),
            units: System::Metric,
            paper: Paper::A4,
            address: None,
            standards: Vec::new(),
            jurisdictions: Vec::new(),
            wordings: Vec::new(),
            libraries: vec!["builtin".to_owned()],
            review_every: Span::from_days(730.5),
            vet: None,
            take_back: None,
            electricity: None,
            food_prices: BTreeMap::new(),
            lamp_prices: BTreeMap::new(),
            prey: Vec::new(),
            lights_on: None,
            lights_centre: 13.0,
            disinfectants: Vec::new(),
            strips: Vec::new(),
            rooms: Vec::new(),
            figures_need_source: Vec::new(),
            severities: Vec::new(),
        }
    }
}

/// A socket strip or a wall socket that several things are plugged into.
#[derive(Debug, Clone, PartialEq)]
pub struct Strip {
    /// Its name.
    pub name: String,
    /// Where it is written.
    pub place: Place,
    /// What it may carry.
    pub rating: Power,
}

/// A room in which enclosures stand.
#[derive(Debug, Clone, PartialEq)]
pub struct Room {
    /// Its name.
    pub name: String,
    /// Where it is written.
    pub place: Place,
    /// Whether a smoke alarm hangs in it; unknown where nothing is said.
    pub smoke_alarm: Option<(bool, Place)>,
}

/// Words that the law of a jurisdiction sets.
#[derive(Debug, Clone, PartialEq)]
pub struct Wording {
    /// The jurisdiction.
    pub named: Named,
    /// Of its public-health notice.
    pub notice: Option<String>,
    /// Of its warning against release.
    pub release: Option<String>,
}

/// A disinfectant as the site mixes it.
#[derive(Debug, Clone, PartialEq)]
pub struct Disinfectant {
    /// Its name: what it is, not whose.
    pub name: String,
    /// Where it is written.
    pub place: Place,
    /// How strong the mix is.
    pub strength: MixStrength,
    /// How much is mixed at a time.
    pub bucket: Volume,
    /// How long the mix keeps.
    pub keeps: Option<Span>,
    /// The organisms it is used against.
    pub against: Vec<Named>,
}

/// How strong a mix is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum MixStrength {
    /// One part in so many parts of the mix.
    OnePartIn(f64),
    /// So many per cent of what is in the bottle.
    PercentOfBottle(f64),
    /// Wanted per cent of the active substance, from a bottle that holds so many.
    PercentActive {
        /// In the mix.
        wanted: f64,
        /// In the bottle.
        bottle: f64,
    },
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
    /// The same in further languages, by their tags.
    pub translations: BTreeMap<String, Translation>,
}

impl Page {
    /// Its words in every language.
    pub fn all_words(&self) -> impl Iterator<Item = &Words> {
        let further = self.translations.values().map(|one| &one.words);
        std::iter::once(&self.words).chain(further)
    }
}

impl Site {
    /// Every language of its public pages, its own first, none twice.
    pub fn all_languages(&self) -> Vec<&str> {
        let mut all = vec![self.language.as_str()];
        for further in &self.languages {
            if !all.contains(&further.name.as_str()) {
                all.push(&further.name);
            }
        }
        all
    }
}
