//! Species, animals, enclosures, logs, standards and the site: typed and complete.
//!
//! Everything here is plain data that has been read without a fault. It knows where each figure was written, so that a
//! later room can point at it, but not in which kind of file.

pub mod animal;
pub mod cited;
pub mod housing;
pub mod log;
pub mod site;
pub mod source;
pub mod species;
pub mod standard;
pub mod stated;
pub mod word;

use std::collections::BTreeMap;

pub use animal::Animal;
pub use cited::{Cited, Named};
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
    /// Animals.
    pub animals: BTreeMap<String, Animal>,
    /// Further pages.
    pub pages: BTreeMap<String, Page>,
    /// The photos that an animal or a species names and that can be read: by file name, the sizes in which each is printed,
    /// from the smallest up; width and height in pixels.
    pub photos: BTreeMap<String, Vec<(u32, u32)>>,
}
