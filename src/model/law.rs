//! What the law of a place asks of whoever sells an animal or gives it away, as our reading notes have it.
//!
//! Nothing here decides a case. Each row says on which act and article it rests and whether it is told from memory; what the
//! notes do not hold is left out, and is said to be.

use std::collections::BTreeMap;

use jiff::civil::Date;

use crate::finding::FileId;
use crate::quantity::{Length, Mass, Span};

use super::cited::Named;
use super::word::{Kind, Word};

/// One place and what its law asks.
#[derive(Debug, Clone, PartialEq)]
pub struct Jurisdiction {
    /// The file it is written in.
    pub file: FileId,
    /// The place, as people say it.
    pub name: String,
    /// The act or order.
    pub title: String,
    /// Who issued it.
    pub issuer: String,
    /// The year, or "n.d.".
    pub year: String,
    /// What holds for every row that does not say otherwise.
    pub ground: Ground,
    /// The day by which the text, or what tells of it, had been read.
    pub read: Option<Date>,
    /// Of which day or version the text was.
    pub state: Option<String>,
    /// Whom it binds.
    pub applies_to: Option<String>,
    /// The larger jurisdictions that it lies within, by the names of their files.
    pub within: Vec<Named>,
    /// The names that species files give to this place, beside its own.
    pub places: Vec<String>,
    /// What a written care sheet, or the paper that goes with the animal, must say.
    pub items: BTreeMap<Item, Ask>,
    /// The public-health notice.
    pub notice: Option<Notice>,
    /// The least age of a buyer.
    pub buyer: Option<Rule<Span>>,
    /// An animal under treatment.
    pub treatment: Option<Rule<Sale>>,
    /// Sizes below which an animal may not be sold.
    pub sizes: Vec<Rule<Concerns>>,
    /// Papers that go with an animal.
    pub papers: Vec<Rule<(String, Concerns)>>,
    /// Marks that an animal carries.
    pub marks: Vec<Rule<(String, Concerns)>>,
    /// How long records are kept.
    pub records: Option<Rule<Span>>,
    /// The form in which the sheet is handed over.
    pub delivery: Option<Rule<Delivery>>,
    /// What else it asks, which no sheet can answer.
    pub further: Vec<Rule<()>>,
}

/// What a row rests on.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Ground {
    /// The article, or a sentence saying that it is not known.
    pub article: Option<String>,
    /// The key of its source.
    pub source: Option<Named>,
    /// Whether it was told from memory and not read.
    pub from_memory: bool,
    /// One sentence more.
    pub note: Option<String>,
}

/// A row: what it is about, what it says in our words, and what it rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Rule<T> {
    /// What it is about.
    pub about: T,
    /// What it says, in our words.
    pub says: Option<String>,
    /// What it rests on.
    pub ground: Ground,
}

/// An item that the law names.
#[derive(Debug, Clone, PartialEq)]
pub struct Ask {
    /// Whether only a wider word of the text covers it.
    pub wider: bool,
    /// Whether the law sets the very words.
    pub wording_set: bool,
    /// Those words, where the site has taken them from the law.
    pub wording: Option<String>,
    /// What it rests on.
    pub ground: Ground,
}

/// A public-health notice: a text of its own, never joined with that of another place.
#[derive(Debug, Clone, PartialEq)]
pub struct Notice {
    /// Whether the law asks for it; if not, it is advice.
    pub binding: bool,
    /// The title of what it is told from, where that is not the act of the file.
    pub title: Option<String>,
    /// The kinds of animal it is for; none means all.
    pub kinds: Vec<Kind>,
    /// What it says, in our words.
    pub says: String,
    /// The ages that it names, each with what it says of them.
    pub ages: Vec<Rule<Span>>,
    /// To whom it is given, and how.
    pub given_to: Option<String>,
    /// What hangs on the wall.
    pub wall: Option<String>,
    /// Whether the words themselves are set, or may be set, by the law.
    pub wording_set: bool,
    /// Those words, where the site has taken them from the law.
    pub wording: Option<String>,
    /// What it rests on.
    pub ground: Ground,
}

impl Notice {
    /// Whether it is for animals of a kind.
    pub fn is_for(&self, kind: Kind) -> bool {
        self.kinds.is_empty() || self.kinds.contains(&kind)
    }
}

/// Which animals a row concerns. What is not given holds for all.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Concerns {
    /// The kinds of animal.
    pub kinds: Vec<Kind>,
    /// Only species that stand, or only species that do not stand, in an appendix of CITES.
    pub protected: Option<bool>,
    /// Only species whose own file names this paper for the place.
    pub with_paper: Option<String>,
    /// Only animals whose shell is shorter.
    pub shell_below: Option<Length>,
    /// Only animals whose shell is at least so long.
    pub shell_from: Option<Length>,
    /// Only animals of at least this mass.
    pub mass_from: Option<Mass>,
}

/// What the law says to the sale of an animal under treatment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sale {
    /// It may not be sold.
    Forbidden,
    /// It may go on conditions.
    OnConditions,
}

impl Word for Sale {
    const ALL: &'static [(Sale, &'static str)] =
        &[(Sale::Forbidden, "forbidden"), (Sale::OnConditions, "on conditions")];
}

/// The form in which the sheet is handed over.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Delivery {
    /// Whether it must be on paper.
    pub paper: bool,
    /// The language that it must be in, a BCP 47 tag.
    pub language: Option<String>,
}

/// Something that a law may name for a written care sheet or for the paper that goes with an animal.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[expect(missing_docs, reason = "each is told in the trade's words by `label`")]
pub enum Item {
    Names,
    LifeExpectancy,
    AdultSize,
    Housing,
    Environment,
    Feeding,
    DailyRation,
    Watering,
    GeneralCare,
    Handling,
    Cleaning,
    Equipment,
    Movement,
    Enrichment,
    SocialLife,
    Behaviour,
    Danger,
    Reproduction,
    SignsOfIllness,
    VeterinaryCare,
    YearlyCost,
    ProtectionStatus,
    LegalBasis,
    NoRelease,
    HealthOnTheDay,
    Particulars,
}

impl Word for Item {
    const ALL: &'static [(Item, &'static str)] = &[
        (Item::Names, "names"),
        (Item::LifeExpectancy, "life-expectancy"),
        (Item::AdultSize, "adult-size"),
        (Item::Housing, "housing"),
        (Item::Environment, "environment"),
        (Item::Feeding, "feeding"),
        (Item::DailyRation, "daily-ration"),
        (Item::Watering, "watering"),
        (Item::GeneralCare, "general-care"),
        (Item::Handling, "handling"),
        (Item::Cleaning, "cleaning"),
        (Item::Equipment, "equipment"),
        (Item::Movement, "movement"),
        (Item::Enrichment, "enrichment"),
        (Item::SocialLife, "social-life"),
        (Item::Behaviour, "behaviour"),
        (Item::Danger, "danger"),
        (Item::Reproduction, "reproduction"),
        (Item::SignsOfIllness, "signs-of-illness"),
        (Item::VeterinaryCare, "veterinary-care"),
        (Item::YearlyCost, "yearly-cost"),
        (Item::ProtectionStatus, "protection-status"),
        (Item::LegalBasis, "legal-basis"),
        (Item::NoRelease, "no-release"),
        (Item::HealthOnTheDay, "health-on-the-day"),
        (Item::Particulars, "particulars"),
    ];
}

impl Item {
    /// What it is, in the trade's words.
    pub fn label(self) -> &'static str {
        match self {
            Item::Names => "scientific and common name",
            Item::LifeExpectancy => "life expectancy",
            Item::AdultSize => "adult size",
            Item::Housing => "housing: size and fittings",
            Item::Environment => "environment: heat, humidity, light",
            Item::Feeding => "feeding",
            Item::DailyRation => "daily ration",
            Item::Watering => "watering",
            Item::GeneralCare => "general care",
            Item::Handling => "handling",
            Item::Cleaning => "cleaning",
            Item::Equipment => "equipment and accessories",
            Item::Movement => "movement",
            Item::Enrichment => "enrichment",
            Item::SocialLife => "social life: alone or in company",
            Item::Behaviour => "behaviour",
            Item::Danger => "danger to people",
            Item::Reproduction => "reproduction and rearing",
            Item::SignsOfIllness => "signs of illness",
            Item::VeterinaryCare => "veterinary care",
            Item::YearlyCost => "yearly cost of keeping",
            Item::ProtectionStatus => "protection status",
            Item::LegalBasis => "legal basis of keeping",
            Item::NoRelease => "warning against release",
            Item::HealthOnTheDay => "health of this animal on the day",
            Item::Particulars => "origin, age, sex and vet's record",
        }
    }

    /// Whether it is told of one animal, and so stands on its handover sheet.
    pub fn is_of_animal(self) -> bool {
        matches!(self, Item::HealthOnTheDay | Item::Particulars)
    }
}

impl Jurisdiction {
    /// Every ground that its rows rest on, its own first.
    pub fn grounds(&self) -> Vec<&Ground> {
        let mut grounds = vec![&self.ground];
        grounds.extend(self.items.values().map(|ask| &ask.ground));
        if let Some(notice) = &self.notice {
            grounds.push(&notice.ground);
            grounds.extend(notice.ages.iter().map(|age| &age.ground));
        }
        grounds.extend(self.buyer.iter().map(|rule| &rule.ground));
        grounds.extend(self.treatment.iter().map(|rule| &rule.ground));
        grounds.extend(self.sizes.iter().map(|rule| &rule.ground));
        grounds.extend(self.papers.iter().chain(&self.marks).map(|rule| &rule.ground));
        grounds.extend(self.records.iter().map(|rule| &rule.ground));
        grounds.extend(self.delivery.iter().map(|rule| &rule.ground));
        grounds.extend(self.further.iter().map(|rule| &rule.ground));
        grounds
    }

    /// Takes in the words that its law sets for its notice and its warning against release, as the site has them.
    pub fn take_words(&mut self, notice: Option<String>, release: Option<String>) {
        if let Some(own) = &mut self.notice {
            own.wording = notice.or(own.wording.take());
        }
        if let Some(ask) = self.items.get_mut(&Item::NoRelease) {
            ask.wording = release.or(ask.wording.take());
        }
    }

    /// Every source that it names, each once.
    pub fn sources(&self) -> Vec<&Named> {
        let mut named: Vec<&Named> =
            self.grounds().into_iter().filter_map(|ground| ground.source.as_ref()).collect();
        named.sort_by_key(|named| (&named.name, named.place));
        named.dedup_by_key(|named| &named.name);
        named
    }

    /// Whether the place that a species file names is this one: its own name or one of its `places`, alone or joined by "and".
    pub fn is_place(&self, named: &str) -> bool {
        named.split(" and ").map(str::trim).any(|part| {
            part.eq_ignore_ascii_case(&self.name)
                || self.places.iter().any(|place| part.eq_ignore_ascii_case(place))
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_item_has_a_spelling_and_a_label() {
        let spellings: std::collections::BTreeSet<_> =
            Item::ALL.iter().map(|(_, spelling)| spelling).collect();
        let labels: std::collections::BTreeSet<_> =
            Item::ALL.iter().map(|(item, _)| item.label()).collect();
        assert_eq!((spellings.len(), labels.len()), (Item::ALL.len(), Item::ALL.len()));
    }
}
