//! The derived figures: pure functions over the model, one subject a file, each with its publication.
//!
//! [`figures`] works everything out for every species and animal. [`formula`] holds the formulas over plain numbers,
//! [`enclosure`] the rules of published standards; the other files put a species' or an animal's own numbers into them.
//! A figure that cannot be worked out is absent, and why stands under its name. [`document`] is the whole as JSON.

pub mod absence;
pub mod animal;
pub mod calendar;
pub mod cost;
pub mod disinfection;
pub mod document;
pub mod enclosure;
pub mod energy;
pub mod feeding;
pub mod formula;
pub mod gradient;
pub mod grown;
pub mod growth;
pub mod heat;
pub mod humidity;
pub mod instruments;
pub mod lamp;
pub mod lifetime;
pub mod light;
pub mod logger;
pub mod moisture;
pub mod overriding;
pub mod owed;
pub mod plan;
mod power_cut;
pub mod prey;
pub mod quarantine;
pub mod quoting;
pub mod space;
pub mod species;
pub mod store;
pub mod upkeep;
pub mod working;

use std::collections::BTreeMap;

use jiff::civil::Date;
use rayon::prelude::*;

use crate::model::Model;

pub use absence::Absence;
pub use animal::AnimalFigures;
pub use species::SpeciesFigures;
pub use working::{Ends, Why, Working};

/// Every derived figure of a site on one day.
#[derive(Debug, Clone, PartialEq)]
pub struct Figures {
    /// The day.
    pub as_of: Date,
    /// By species.
    pub species: BTreeMap<String, SpeciesFigures>,
    /// By animal; an animal whose species is not known has none.
    pub animals: BTreeMap<String, AnimalFigures>,
    /// What the whole collection needs in store.
    pub store: store::StoreFigures,
}

/// Works out every figure.
pub fn figures(model: &Model, as_of: Date) -> Figures {
    let of_species =
        |(name, species)| (String::clone(name), species::species(model, species, as_of));
    let species: BTreeMap<_, _> = model.species.iter().map(of_species).collect();
    // Each animal by itself: the growth curves are fitted on all cores.
    let animals = model.animals.par_iter().filter_map(|(name, animal)| {
        let species = model.species.get(&animal.species.name)?;
        Some((name.clone(), animal::animal(model, animal, species, as_of)))
    });
    let animals = animals.collect();
    Figures { as_of, store: store::store(model, &animals, as_of), animals, species }
}
