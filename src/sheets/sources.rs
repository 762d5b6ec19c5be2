//! The bibliography, and what rests on each source.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::figures::Figures;
use crate::figures::owed::in_force;
use crate::model::stated::Stated;

use super::blocks::{Link, Shown, SourceEntry, Table};
use super::citing;
use super::edition::Edition;
use super::frame::Frame;
use super::phrases;

/// The sources page.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SourcesSheet {
    /// The frame.
    pub frame: Frame,
    /// Every source that something rests on.
    pub sources: Vec<SourceUse>,
    /// The standards in force.
    pub standards: Vec<String>,
    /// The figures that a nearer folder put in place of a farther one's.
    pub overrides: Option<Table>,
    /// How many figures rest on common practice alone.
    pub common_practice: usize,
}

/// A source and what rests on it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SourceUse {
    /// The source.
    pub source: SourceEntry,
    /// What rests on it, by species.
    pub rests: Vec<Resting>,
}

/// The figures of one species that rest on a source.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Resting {
    /// The species, or the page on law.
    pub species: Link,
    /// The figures.
    pub figures: Vec<String>,
}

/// Builds the sources page.
pub fn sources(edition: &Edition<'_>, figures: &Figures) -> SourcesSheet {
    let mut uses: BTreeMap<&str, BTreeMap<&str, Vec<String>>> = BTreeMap::new();
    let mut common_practice = 0;
    for (key, species) in &edition.species {
        let mut rest = |source: &str, figure: String| {
            if let Some((source, _)) = edition.sources.get_key_value(source) {
                let figures = uses.entry(source).or_default().entry(key).or_default();
                if !figures.contains(&figure) {
                    figures.push(figure);
                }
            }
        };
        for stated in species.stated() {
            common_practice += usize::from(stated.sources.is_empty());
            let also = stated.others.iter().flat_map(|(_, sources)| sources.iter());
            for named in stated.sources.iter().chain(also) {
                rest(&named.name, within(edition, &stated));
            }
        }
        for sign in &species.signs {
            sign.sources.iter().for_each(|named| rest(&named.name, edition.say("sources-signs")));
        }
        for rule in &species.legal.rules {
            rule.sources.iter().for_each(|named| {
                let place = [("place", rule.jurisdiction.as_str().into())];
                rest(&named.name, edition.tell("sources-law", place));
            });
        }
        for standard in crate::figures::space::in_force(edition, species) {
            rest(&standard.source, edition.say("sources-least-enclosure"));
        }
    }
    let mut laws: BTreeMap<&str, Vec<String>> = BTreeMap::new();
    for found in in_force(edition) {
        for named in found.law.sources() {
            if let Some((source, _)) = edition.sources.get_key_value(&named.name) {
                uses.entry(source).or_default();
                laws.entry(source).or_default().push(found.law.name.clone());
            }
        }
    }
    let sources = uses.iter().enumerate().filter_map(|(place, (key, species))| {
        let law = laws.get(key).map(|places| Resting {
            species: Link { text: edition.say("sources-law-page"), href: super::LAW.to_owned() },
            figures: places.clone(),
        });
        let rests = species.iter().map(|(key, figures)| Resting {
            species: Link { text: edition.species[*key].name.clone(), href: super::care_path(key) },
            figures: figures.clone(),
        });
        Some(SourceUse {
            source: citing::entry(key, place + 1, edition.sources.get(*key)?),
            rests: rests.chain(law).collect(),
        })
    });
    let in_force: std::collections::BTreeSet<&str> = edition
        .species
        .values()
        .flat_map(|species| crate::figures::space::in_force(edition, species))
        .map(|standard| standard.name.as_str())
        .collect();
    SourcesSheet {
        frame: Frame::new(
            edition,
            super::SOURCES,
            false,
            &edition.say("sources-title"),
            &edition.say("sources-description"),
            figures.as_of,
        ),
        sources: sources.collect(),
        standards: in_force
            .into_iter()
            .map(|name| super::care::publication(edition, name))
            .collect(),
        overrides: overrides(edition),
        common_practice,
    }
}

/// The figures that were overridden: by whom, why, and what the library says of them.
fn overrides(edition: &Edition<'_>) -> Option<Table> {
    let mut rows = Vec::new();
    for species in edition.species.values() {
        for stated in species.stated() {
            let Some(entry) = stated.overridden else { continue };
            let Some(replaced) = entry.replaced() else { continue };
            let names = |keys: &[crate::model::Named]| {
                let short = keys.iter().filter_map(|named| edition.sources.get(&named.name));
                short.map(crate::model::Source::short).collect::<Vec<_>>().join("; ")
            };
            let practice = |names: String| {
                if names.is_empty() { edition.say("sources-override-practice") } else { names }
            };
            rows.push(vec![
                Shown::plain(format!("{}: {}", edition.name(species), within(edition, &stated))),
                edition.shown(stated.amount.print(edition.units(), stated.rounding)),
                edition.shown(replaced.before.print(edition.units(), stated.rounding)),
                Shown::plain(practice(names(&replaced.before_sources))),
                Shown::plain(entry.by.clone()),
                Shown::plain(format!("{} ({})", entry.reason, practice(names(&entry.sources)))),
            ]);
        }
    }
    let head = [
        "sources-override-figure",
        "sources-override-here",
        "sources-override-library",
        "sources-override-sources",
        "sources-override-by",
        "sources-override-why",
    ];
    let head = head.map(|label| edition.say(label)).to_vec();
    let caption = edition.say("sources-overrides");
    (!rows.is_empty()).then_some(Table { caption, head, rows, note: None })
}

/// The name of a figure within a list, which begins with a small letter in languages that write it so.
fn within(edition: &Edition<'_>, stated: &Stated<'_>) -> String {
    let label = phrases::figure(edition, stated);
    if edition.say("sources-figures-begin") != "small" {
        return label;
    }
    let mut letters = label.chars();
    letters.next().map(|first| first.to_lowercase().chain(letters).collect()).unwrap_or_default()
}
