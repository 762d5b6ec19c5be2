//! The figures of a species that stand in place of a farther folder's, as programs read them.

use jiff::civil::Date;

use crate::model::stated::Amount;
use crate::model::{Named, Species};
use crate::quantity::{Rounding, System};

/// A figure and what it stands in place of. Both are written as they print in metric.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Overriding {
    /// The figure, by the name that words use.
    pub figure: String,
    /// What holds.
    pub value: String,
    /// What the folder below says.
    pub before: String,
    /// Who decided it.
    pub by: String,
    /// Why.
    pub reason: String,
    /// When.
    pub on: Option<Date>,
    /// The keys of its sources.
    pub sources: Vec<String>,
    /// The keys of the sources that the folder below names.
    pub before_sources: Vec<String>,
}

/// Every figure of a species that a nearer folder has replaced.
pub fn of_species(species: &Species) -> Vec<Overriding> {
    let written = |amount: &Amount| amount.print(System::Metric, Rounding::Nearest).first;
    let keys = |sources: &[Named]| sources.iter().map(|named| named.name.clone()).collect();
    let replaced = species.overrides.iter().filter_map(|entry| {
        let replaced = entry.replaced()?;
        Some(Overriding {
            figure: entry.figure.name.clone(),
            value: written(&replaced.after),
            before: written(&replaced.before),
            by: entry.by.clone(),
            reason: entry.reason.clone(),
            on: entry.on,
            sources: keys(&entry.sources),
            before_sources: keys(&replaced.before_sources),
        })
    });
    replaced.collect()
}
