//! A species: the numbers of its care.

use std::collections::BTreeMap;

use jiff::civil::Date;

use crate::finding::{FileId, Place};
use crate::quantity::{
    Humidity, Latitude, Length, Mass, Multiple, PerYear, Range, Share, Span, Temperature, UvIndex,
};

use super::cited::{Cited, Named};
use super::site::Site;
use super::word::{Active, Caution, Cites, Company, Diet, Habit, Kind, Measure, Sex, Urgency};

/// A cited range of a quantity: the commonest thing in a species file.
pub type Figure<Q> = Option<Cited<Range<Q>>>;

/// A species.
#[derive(Debug, Clone, PartialEq)]
pub struct Species {
    /// The file that it is written in.
    pub file: FileId,
    /// The trade's common name.
    pub name: String,
    /// The scientific name.
    pub scientific: String,
    /// Other common names.
    pub also: Vec<String>,
    /// What kind of animal it is.
    pub kind: Kind,
    /// Where in its enclosure it lives.
    pub habit: Habit,
    /// What it eats.
    pub diet: Diet,
    /// When it is active.
    pub active: Active,
    /// Which company it keeps.
    pub company: Company,
    /// Dangers to people.
    pub cautions: Vec<Caution>,
    /// When its figures were last gone through.
    pub reviewed: Option<(Date, Place)>,
    /// Who went through them.
    pub reviewer: Option<String>,
    /// One sentence for the index.
    pub summary: Option<String>,
    /// The file name of its picture.
    pub photo: Option<Named>,
    /// What the picture shows, for those who do not see it.
    pub photo_shows: Option<String>,
    /// Where it comes from, in words.
    pub origin: Option<String>,
    /// The latitudes it comes from.
    pub latitudes: Figure<Latitude>,
    /// Its sizes.
    pub size: Size,
    /// Published growth constants.
    pub growth: Growth,
    /// Its span of life.
    pub years: Figure<Span>,
    /// Its temperatures.
    pub temperature: Temperatures,
    /// Its humidity.
    pub humidity: Humidities,
    /// Its light.
    pub light: Light,
    /// The enclosure rules that apply to it: the standard's name and the rule.
    pub enclosure: BTreeMap<String, EnclosureRule>,
    /// What an enclosure must hold.
    pub fittings: Fittings,
    /// Feeding by stage of life, in order.
    pub feeding: Vec<Stage>,
    /// Food energy over resting energy: above this it is overfed.
    pub energy_at_most: Figure<Multiple>,
    /// How long it may go without food.
    pub fasting: Figure<Span>,
    /// When it normally fasts, in words.
    pub fasts_when: Option<String>,
    /// How long after a meal it is left alone.
    pub rest_after_meal: Figure<Span>,
    /// Signs of illness.
    pub signs: Vec<Sign>,
    /// Its legal status.
    pub legal: Legal,
    /// The figures of it that a nearer folder has replaced, each once.
    pub overrides: Vec<super::Override>,
    /// The language of its texts, a BCP 47 tag; none means that of the site.
    pub language: Option<String>,
    /// Its words, in Markdown.
    pub words: Option<Words>,
    /// Its words in further languages, by their tags.
    pub translations: BTreeMap<String, Translation>,
}

impl Species {
    /// The stage of a grown animal that is not old: the last one, or the one before a last one for old age.
    pub fn grown_stage(&self) -> Option<&Stage> {
        let (last, earlier) = self.feeding.split_last()?;
        let is_old = last.name.to_lowercase().starts_with("old");
        Some(if is_old { earlier.last().unwrap_or(last) } else { last })
    }
}

/// The sizes of a species.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Size {
    /// Which length all of these mean.
    pub measure: Measure,
    /// At birth or hatching.
    pub birth: Figure<Length>,
    /// Adult, where the sexes do not differ.
    pub adult: Figure<Length>,
    /// Adult male.
    pub male: Figure<Length>,
    /// Adult female.
    pub female: Figure<Length>,
    /// Adult, nose to tail tip, for kinds that are measured otherwise.
    pub total_length: Figure<Length>,
    /// Mass at birth or hatching.
    pub birth_mass: Figure<Mass>,
    /// Adult mass.
    pub mass: Figure<Mass>,
    /// Adult mass of males.
    pub mass_male: Figure<Mass>,
    /// Adult mass of females.
    pub mass_female: Figure<Mass>,
    /// Named forms whose adult size differs.
    pub forms: BTreeMap<String, Form>,
}

impl Size {
    /// The adult length for a sex, of a named form where it has its own figure.
    ///
    /// For an unknown sex there is no single figure unless the species gives one for both.
    pub fn adult_of(&self, sex: Sex, form: Option<&str>) -> Option<&Cited<Range<Length>>> {
        let form = form.and_then(|name| self.forms.get(name));
        let of_form = form.and_then(|form| pick(sex, &form.adult, &form.male, &form.female));
        of_form.or_else(|| pick(sex, &self.adult, &self.male, &self.female))
    }
}

fn pick<'a>(
    sex: Sex,
    adult: &'a Figure<Length>,
    male: &'a Figure<Length>,
    female: &'a Figure<Length>,
) -> Option<&'a Cited<Range<Length>>> {
    match sex {
        Sex::Female => female.as_ref().or(adult.as_ref()),
        Sex::Male => male.as_ref().or(adult.as_ref()),
        Sex::Unknown => adult.as_ref(),
    }
}

/// A named form of a species.
#[derive(Debug, Clone, PartialEq)]
pub struct Form {
    /// Its name as people say it.
    pub name: String,
    /// Adult, where the sexes do not differ.
    pub adult: Figure<Length>,
    /// Adult male.
    pub male: Figure<Length>,
    /// Adult female.
    pub female: Figure<Length>,
}

/// Published growth constants.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Growth {
    /// The rate `k` of von Bertalanffy's curve.
    pub k: Figure<PerYear>,
    /// The age at maturity.
    pub matures: Figure<Span>,
}

/// The temperatures of a species.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Temperatures {
    /// The surface at the basking spot.
    pub basking: Figure<Temperature>,
    /// The warm side.
    pub warm: Figure<Temperature>,
    /// The cool side.
    pub cool: Figure<Temperature>,
    /// By night.
    pub night: Figure<Temperature>,
    /// No place that the animal cannot leave may pass this.
    pub never_above: Figure<Temperature>,
    /// Below this it comes to harm.
    pub critical_low: Figure<Temperature>,
    /// The water, for kinds that live in it.
    pub water: Figure<Temperature>,
    /// While brumating.
    pub brumation: Figure<Temperature>,
    /// How long it brumates.
    pub brumation_weeks: Figure<Span>,
}

/// The humidity of a species.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Humidities {
    /// The range it is kept at.
    pub range: Figure<Humidity>,
    /// Never above this, at the cool side.
    pub ceiling: Figure<Humidity>,
    /// How long the ceiling may be passed at a stretch.
    pub ceiling_for: Figure<Span>,
    /// Raised while it sheds.
    pub shed: Figure<Humidity>,
}

/// The light of a species.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Light {
    /// Hours of light a day through the year.
    pub hours: Figure<Span>,
    /// Its ultraviolet zone, 1 to 4 (Ferguson et al. 2010).
    pub zone: Option<Cited<u8>>,
    /// The ultraviolet index where it basks, where it differs from the zone's band.
    pub uvi: Figure<UvIndex>,
}

/// What an enclosure must hold.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Fittings {
    /// Water.
    pub water: Option<String>,
    /// Substrate.
    pub substrate: Option<String>,
    /// The least number of hides.
    pub hides: Option<u32>,
    /// Things to climb.
    pub climbing: Option<String>,
    /// Somewhere to dig.
    pub digging: Option<String>,
    /// Somewhere to bathe.
    pub bathing: Option<String>,
}

/// How a published standard's rule reaches a species.
#[derive(Debug, Clone, PartialEq)]
pub struct EnclosureRule {
    /// The row of the standard's file.
    pub row: Named,
    /// The place of the standard's name.
    pub place: Place,
}

/// One stage of life and how it is fed.
#[derive(Debug, Clone, PartialEq)]
pub struct Stage {
    /// Its name.
    pub name: String,
    /// Where it is written.
    pub place: Place,
    /// It ends at this age.
    pub until_age: Option<Span>,
    /// It ends at this length.
    pub until_length: Option<Length>,
    /// It ends at this mass.
    pub until_mass: Option<Mass>,
    /// What a meal is.
    pub meal: Option<String>,
    /// From meal to meal.
    pub every: Figure<Span>,
    /// The mass of a meal.
    pub mass: Figure<Mass>,
    /// A meal as a share of the animal's own mass.
    pub share: Figure<Share>,
    /// How many insects.
    pub count: Option<Cited<(u32, u32)>>,
    /// The schedule of supplements.
    pub supplement: Option<String>,
    /// One sentence more.
    pub note: Option<String>,
}

/// A sign of illness.
#[derive(Debug, Clone, PartialEq)]
pub struct Sign {
    /// What is seen.
    pub sign: String,
    /// What it may mean.
    pub means: Option<String>,
    /// How urgent it is.
    pub urgency: Urgency,
    /// Who says so.
    pub sources: Vec<Named>,
}

/// The legal status of a species.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Legal {
    /// When it was looked up.
    pub checked: Option<(Date, Place)>,
    /// The CITES appendix.
    pub cites: Option<Cites>,
    /// Rules by place.
    pub rules: Vec<LegalRule>,
}

/// What the law of one place says of a species.
#[derive(Debug, Clone, PartialEq)]
pub struct LegalRule {
    /// The place.
    pub jurisdiction: String,
    /// What the law there says, in our words.
    pub says: String,
    /// The paper that a keeper must hold or hand over.
    pub paper: Option<String>,
    /// Who says so.
    pub sources: Vec<Named>,
}

impl Species {
    /// Its words in every language.
    pub fn all_words(&self) -> impl Iterator<Item = &Words> {
        let further = self.translations.values().map(|one| &one.words);
        self.words.iter().chain(further)
    }

    /// The language that it is written in: its own, or that of the site.
    pub fn language_in<'a>(&'a self, site: &'a Site) -> &'a str {
        self.language.as_deref().unwrap_or(&site.language)
    }
}

/// The chapters that the words of a species owe their reader, in their order: the anchor, and the heading that a file may have in
/// any language. The label `chapter-ANCHOR` is the heading on a page.
pub const CHAPTERS: [(&str, &str); 11] = [
    ("glance", "At a glance"),
    ("suits", "Is this animal for you"),
    ("enclosure", "Enclosure"),
    ("heat", "Heat and light"),
    ("humidity", "Humidity and water"),
    ("feeding", "Feeding"),
    ("company", "Handling and company"),
    ("cleaning", "Cleaning"),
    ("health", "Health"),
    ("growth", "Breeding and growth"),
    ("law", "Law and where it comes from"),
];

/// The words of a species or a page in a further language.
#[derive(Debug, Clone, PartialEq)]
pub struct Translation {
    /// The name in that language: the heading at the top.
    pub title: Option<String>,
    /// One sentence: what stands between that heading and the first chapter.
    pub summary: Option<String>,
    /// The rest of the words.
    pub words: Words,
}

/// Words in Markdown.
#[derive(Debug, Clone, PartialEq)]
pub struct Words {
    /// The file they stand in.
    pub file: FileId,
    /// The text.
    pub text: String,
}
