//! The bibliography.

use crate::finding::Place;

/// One publication.
#[derive(Debug, Clone, PartialEq)]
pub struct Source {
    /// Its title.
    pub title: String,
    /// Author or issuer.
    pub issuer: String,
    /// The year as printed, or `n.d.`
    pub year: String,
    /// Where it can be read.
    pub address: Option<String>,
    /// How far it was followed.
    pub read: Followed,
    /// One sentence about it.
    pub note: Option<String>,
    /// Where it is written.
    pub place: Place,
}

impl Source {
    /// Author and year, as they stand beside a figure.
    pub fn short(&self) -> String {
        let issuer = self.issuer.split([',', '(', ';']).next().unwrap_or("").trim();
        match self.year.as_str() {
            "" | "n.d." => format!("{issuer}, undated"),
            year => format!("{issuer} {year}"),
        }
    }
}

/// How far a source was followed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Followed {
    /// Read in the source itself.
    Read,
    /// Read in something that quotes it.
    Secondary,
    /// Known, not read.
    Memory,
}
