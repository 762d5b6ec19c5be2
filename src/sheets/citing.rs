//! Sources beside figures: each page numbers the sources that it uses, in the order in which they first stand on it.

use std::collections::BTreeMap;

use crate::model::source::Followed;
use crate::model::stated::Stated;
use crate::model::{Named, Source};

use super::blocks::{Fact, Overridden, Rival, SourceEntry, SourceLink};
use super::edition::Edition;
use super::phrases;

/// The sources of one page as they gather.
pub struct Citing<'a> {
    bibliography: &'a BTreeMap<String, Source>,
    used: Vec<&'a str>,
}

impl<'a> Citing<'a> {
    /// A page that has used no source yet.
    pub fn new(bibliography: &'a BTreeMap<String, Source>) -> Citing<'a> {
        Citing { bibliography, used: Vec::new() }
    }

    /// The links that stand beside a figure. A key that the bibliography does not hold is left out.
    pub fn links(&mut self, sources: &[Named]) -> Vec<SourceLink> {
        sources.iter().filter_map(|named| self.link(&named.name)).collect()
    }

    /// The link of one source.
    pub fn link(&mut self, key: &str) -> Option<SourceLink> {
        let (key, source) = self.bibliography.get_key_value(key)?;
        let place = self.used.iter().position(|used| used == key).unwrap_or_else(|| {
            self.used.push(key);
            self.used.len() - 1
        });
        Some(SourceLink { key: key.clone(), number: place + 1, short: source.short() })
    }

    /// A stated figure as a fact of the page.
    pub fn fact(&mut self, stated: &Stated<'_>, edition: &Edition<'_>) -> Fact {
        let others = stated.others.iter().map(|(amount, sources)| Rival {
            value: edition.shown(amount.print(edition.units(), crate::quantity::Rounding::Nearest)),
            sources: self.links(sources),
        });
        let others = others.collect();
        let sources = self.links(stated.sources);
        let overridden = stated.overridden.and_then(|entry| {
            let before = entry.replaced()?;
            Some(Overridden {
                by: entry.by.clone(),
                on: entry.on.map(|date| edition.long_date(date)),
                before: edition.shown(before.before.print(edition.units(), stated.rounding)),
                sources: self.links(&before.before_sources),
            })
        });
        Fact {
            label: phrases::figure(edition, stated),
            value: edition.shown(stated.amount.print(edition.units(), stated.rounding)),
            practice: sources.is_empty(),
            sources,
            note: stated.note.map(str::to_owned),
            others,
            overridden,
        }
    }

    /// The page's list of sources, by number.
    pub fn entries(&self) -> Vec<SourceEntry> {
        let numbered = self.used.iter().enumerate();
        numbered
            .filter_map(|(place, key)| Some(entry(key, place + 1, self.bibliography.get(*key)?)))
            .collect()
    }
}

/// A publication as it stands in a list.
pub fn entry(key: &str, number: usize, source: &Source) -> SourceEntry {
    SourceEntry {
        key: key.to_owned(),
        number,
        title: source.title.clone(),
        issuer: source.issuer.clone(),
        year: source.year.clone(),
        address: source.address.clone().filter(|address| crate::parse::is_safe_address(address)),
        read: match source.read {
            Followed::Read => "read",
            Followed::Secondary => "secondary",
            Followed::Memory => "memory",
        },
        note: source.note.clone(),
    }
}
