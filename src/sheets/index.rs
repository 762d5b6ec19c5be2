//! The index: species by group, and the animals that are looking for a home.

use serde::Serialize;

use crate::figures::Figures;
use crate::figures::growth::adult_range_cm;
use crate::figures::working::{Ends, ends};
use crate::model::Species;
use crate::model::word::{Sex, Status, Word};
use crate::quantity::{Length, Rounding};

use super::blocks::{Link, Shown};
use super::edition::Edition;
use super::frame::Frame;
use super::public::PublicAnimal;
use super::{care, order, print};

/// The index of a site.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct IndexSheet {
    /// The frame.
    pub frame: Frame,
    /// The groups of species.
    pub groups: Vec<Group>,
    /// The species by how long they grow.
    pub sizes: Vec<Listed>,
    /// The species by name, every name that they go by.
    pub names: Vec<Link>,
    /// Animals that are looking for a home.
    pub seeking: Vec<AnimalEntry>,
    /// Other published animals.
    pub residents: Vec<AnimalEntry>,
    /// Further pages.
    pub pages: Vec<Link>,
}

/// A group of species.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Group {
    /// Its heading.
    pub title: String,
    /// Its kind of animal.
    pub kind: String,
    /// Its species.
    pub species: Vec<SpeciesEntry>,
}

/// Species under one heading.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Listed {
    /// The heading.
    pub title: String,
    /// Their care sheets.
    pub links: Vec<Link>,
}

/// A species in the index.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SpeciesEntry {
    /// Its care sheet.
    pub link: Link,
    /// The scientific name.
    pub scientific: String,
    /// One sentence.
    pub summary: Option<String>,
    /// Adult length.
    pub size: Shown,
    /// Years of keeping.
    pub years: Shown,
    /// What to build for it when grown.
    pub space: Shown,
}

/// An animal in the index.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct AnimalEntry {
    /// Its page.
    pub link: Link,
    /// What it is.
    pub species: String,
    /// The first sentence of its story.
    pub teaser: Option<String>,
}

/// Builds the index.
pub fn index(edition: &Edition<'_>, figures: &Figures) -> IndexSheet {
    let mut groups = Vec::new();
    for kind in order::GROUPS {
        let species: Vec<SpeciesEntry> = order::in_order(edition)
            .into_iter()
            .filter(|(_, species)| species.kind == kind)
            .filter_map(|(key, species)| {
                let of = figures.species.get(key)?;
                Some(SpeciesEntry {
                    link: Link {
                        text: edition.name(species).to_owned(),
                        href: super::care_path(key),
                    },
                    scientific: species.scientific.clone(),
                    summary: edition.summary(species).map(str::to_owned),
                    size: print::shown::<Length>(lengths(species), edition, Rounding::Nearest),
                    years: print::years(of.years, edition),
                    space: care::space(of, edition),
                })
            })
            .collect();
        if !species.is_empty() {
            groups.push(Group {
                title: edition.word("group", kind),
                kind: kind.spelling().to_owned(),
                species,
            });
        }
    }
    let entries = |seeking: bool| -> Vec<AnimalEntry> {
        let all = edition.animals.iter().filter_map(|(key, animal)| {
            let public = PublicAnimal::of(edition, animal)?;
            let is_seeking = public.status == Status::SeekingHome;
            (is_seeking == seeking && animal.is_kept()).then(|| AnimalEntry {
                link: Link { text: public.name.clone(), href: super::animal_path(key) },
                species: edition
                    .species
                    .get(&public.species)
                    .map_or(&*public.species_name, |species| edition.name(species))
                    .to_owned(),
                teaser: public.story.as_deref().map(first_sentences),
            })
        });
        all.collect()
    };
    let pages = edition.pages.iter().map(|(key, page)| Link {
        text: edition.page_title(page).to_owned(),
        href: super::page_path(key),
    });
    IndexSheet {
        frame: Frame::new(
            edition,
            "index.html",
            false,
            &edition.site.title,
            &edition.say("index-description"),
            figures.as_of,
        ),
        groups,
        sizes: sizes(edition),
        names: names(edition),
        seeking: entries(true),
        residents: entries(false),
        pages: pages.collect(),
    }
}

/// Up to these lengths in cm a reader thinks of a hand, a forearm, an arm, a person.
const SIZES_CM: [f64; 4] = [20.0, 50.0, 100.0, 200.0];

/// The species by how long they grow at most, the smallest first.
fn sizes(edition: &Edition<'_>) -> Vec<Listed> {
    let longest = |species: &Species| lengths(species).and_then(|(low, high)| high.or(low));
    let between = |over: Option<f64>, up_to: Option<f64>| -> Vec<Link> {
        let fits = |cm: f64| over.is_none_or(|over| cm > over) && up_to.is_none_or(|top| cm <= top);
        let all = order::in_order(edition).into_iter();
        all.filter(|(_, species)| longest(species).is_some_and(fits))
            .map(|(key, species)| Link {
                text: edition.name(species).to_owned(),
                href: super::care_path(key),
            })
            .collect()
    };
    let name = |cm: f64| print::length(cm, edition).to_string();
    let mut listed = Vec::new();
    let mut over = None;
    for up_to in SIZES_CM.map(Some).into_iter().chain([None]) {
        let title = match (over, up_to) {
            (_, Some(top)) => edition.tell("index-up-to", [("length", name(top).into())]),
            (Some(over), None) => edition.tell("index-more-than", [("length", name(over).into())]),
            (None, None) => String::new(),
        };
        listed.push(Listed { title, links: between(over, up_to) });
        over = up_to;
    }
    listed.retain(|listed| !listed.links.is_empty());
    listed
}

/// Every name that a species goes by, in the order of the alphabet.
fn names(edition: &Edition<'_>) -> Vec<Link> {
    let mut names: Vec<Link> = Vec::new();
    for (key, species) in &edition.species {
        let href = super::care_path(key);
        names.push(Link { text: edition.name(species).to_owned(), href: href.clone() });
        let also = species.also.iter();
        names.extend(also.map(|also| {
            let of = [("also", also.as_str().into()), ("name", edition.name(species).into())];
            Link { text: edition.tell("index-see", of), href: href.clone() }
        }));
    }
    names.sort_by_key(|link| link.text.to_lowercase());
    names
}

/// How long it grows, nose to tail tip where that is given: what a reader pictures.
pub(super) fn lengths(species: &Species) -> Option<Ends> {
    match &species.size.total_length {
        Some(total) => Some(ends(&total.value)),
        None => {
            adult_range_cm(species, Sex::Unknown, None).map(|(low, high)| (Some(low), Some(high)))
        }
    }
}

/// The first sentences of a story, as many as say something.
pub(super) fn first_sentences(text: &str) -> String {
    const ENOUGH: usize = 60;
    let ends = text.match_indices(". ").map(|(at, _)| at + 1);
    let end = ends.filter(|end| *end >= ENOUGH).min().unwrap_or(text.len());
    text[..end].trim_end().to_owned()
}
