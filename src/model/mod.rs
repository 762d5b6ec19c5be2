//! Species, animals, enclosures, logs, standards and the site: typed and complete.
//!
//! Everything here is plain data that has been read without a fault. It knows where each figure was written, so that a
//! later room can point at it, but not in which kind of file.

pub mod animal;
pub mod cited;
pub mod housing;
pub mod log;
pub mod overriding;
pub mod site;
pub mod slot;
pub mod source;
pub mod species;
pub mod standard;
pub mod stated;
pub mod word;

use std::collections::BTreeMap;

pub use animal::Animal;
pub use cited::{Cited, Named};
pub use overriding::Override;
pub use site::{Page, Private, Site};
pub use source::Source;
pub use species::Species;
pub use standard::Standard;

/// Everything that was read, by name.
#[derive(Debug, Clone, Default)]
pub struct Model {
    /// The site's own settings.
    pub site: Site,
    /// Phone numbers and addresses.
    pub private: Private,
    /// The bibliography: the library's and the site's together.
    pub sources: BTreeMap<String, Source>,
    /// Published standards.
    pub standards: BTreeMap<String, Standard>,
    /// Species.
    pub species: BTreeMap<String, Species>,
    /// Single figures that a nearer folder has put in place of a farther one's, in the order in which they took effect.
    pub overrides: Vec<Override>,
    /// Animals.
    pub animals: BTreeMap<String, Animal>,
    /// Further pages.
    pub pages: BTreeMap<String, Page>,
}
