//! A single figure of a species that a nearer folder has put in place of a farther one's.

use jiff::civil::Date;

use crate::finding::FileId;

use super::cited::Named;
use super::stated::Amount;

/// What one entry of `species/NAME.override.toml` says, and what came of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Override {
    /// The file that it is written in.
    pub file: FileId,
    /// The species, by its name in files.
    pub species: String,
    /// The figure, by the name that words use: `humidity.ceiling`.
    pub figure: Named,
    /// Who decided it.
    pub by: String,
    /// Why.
    pub reason: String,
    /// On whose authority: keys of the bibliography; none means that it is their own practice.
    pub sources: Vec<Named>,
    /// The day on which it was decided.
    pub on: Option<Date>,
    /// What came of it.
    pub outcome: Outcome,
}

/// What came of an entry.
#[derive(Debug, Clone, PartialEq)]
pub enum Outcome {
    /// No folder below the one that it stands in defines the species.
    NoSpecies,
    /// The folder that it stands in, or a nearer one, defines the species as a whole.
    WholeSpecies,
    /// The species below states no figure of that name; the names that it states.
    NoFigure(Vec<String>),
    /// Its value could not be read, which has been reported.
    Unreadable,
    /// It has taken the place of the figure below.
    Replaced(Box<Replaced>),
}

/// A figure before and after.
#[derive(Debug, Clone, PartialEq)]
pub struct Replaced {
    /// What holds now.
    pub after: Amount,
    /// What the folder below says.
    pub before: Amount,
    /// The sources that the folder below names for it.
    pub before_sources: Vec<Named>,
    /// What the folder below says that others say of it.
    pub before_others: Vec<Amount>,
    /// What the folder below said when the entry was written, as the entry recalls it.
    pub was: Option<(Amount, crate::finding::Place)>,
}

impl Override {
    /// The figure before and after, where the entry has taken its place.
    pub fn replaced(&self) -> Option<&Replaced> {
        match &self.outcome {
            Outcome::Replaced(replaced) => Some(replaced),
            _ => None,
        }
    }
}
