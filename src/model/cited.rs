//! A figure with where it is written, where it comes from, and what others say.

use crate::finding::Place;

/// A value with its place in the files and the sources that it names.
#[derive(Debug, Clone, PartialEq)]
pub struct Cited<T> {
    /// The value.
    pub value: T,
    /// Where it is written.
    pub place: Place,
    /// The keys of its sources in the bibliography; none means common practice.
    pub sources: Vec<Named>,
    /// One sentence about it.
    pub note: Option<String>,
    /// What other sources say of the same thing.
    pub others: Vec<Cited<T>>,
}

impl<T> Cited<T> {
    /// A value without sources: common practice.
    pub fn common_practice(value: T, place: Place) -> Cited<T> {
        Cited { value, place, sources: Vec::new(), note: None, others: Vec::new() }
    }

    /// The same citation for something made from the value.
    pub fn with<U>(&self, value: U) -> Cited<U> {
        let (place, sources, note) = (self.place, self.sources.clone(), self.note.clone());
        Cited { value, place, sources, note, others: Vec::new() }
    }

    /// Every source that it or its rivals name, with the place of the naming.
    pub fn all_sources(&self) -> impl Iterator<Item = &Named> {
        self.sources.iter().chain(self.others.iter().flat_map(|other| other.sources.iter()))
    }
}

/// A name that stands for something elsewhere, with the place where it is written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Named {
    /// The name.
    pub name: String,
    /// Where it is written.
    pub place: Place,
}
