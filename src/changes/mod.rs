//! What differs between two states of a site: care figures, the derived ones included, their sources, and words.
//!
//! Both sides are worked out for the same day, so that nothing differs but the files. [`compare`] finds the differences;
//! [`tell`] writes them for people, [`mod@json`] for programs.

pub mod json;
pub mod tell;

mod derived;
mod own;
mod stated;
mod weight;
mod words;

use crate::figures::Figures;
use crate::model::Model;

pub use weight::Weight;

/// One state of a site.
#[derive(Debug, Clone, Copy)]
pub struct State<'a> {
    /// What its files say.
    pub model: &'a Model,
    /// What was worked out.
    pub figures: &'a Figures,
}

/// Whose figure it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Whose {
    /// A species'.
    Species,
    /// One animal's.
    Animal,
}

/// A care figure that differs.
#[derive(Debug, Clone, PartialEq)]
pub struct Change {
    /// How much it matters.
    pub weight: Weight,
    /// Whether it now allows more than before: a ceiling raised, a floor lowered.
    pub loosened: bool,
    /// Whose it is.
    pub whose: Whose,
    /// The name of the file.
    pub key: String,
    /// The figure's name.
    pub figure: String,
    /// What it is, for people.
    pub label: String,
    /// Its value before; none where it was not there.
    pub before: Option<String>,
    /// Its value now; none where it is gone.
    pub after: Option<String>,
    /// By how much its ends moved, where both sides are numbers.
    pub by: Option<String>,
    /// Its sources on either side; none for a figure that is worked out or measured.
    pub sources: Option<[Vec<String>; 2]>,
    /// Animals whose sheets it moves.
    pub animals: Vec<String>,
}

/// A figure that is as it was and rests on other sources, or on another note.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Resourced {
    /// The species.
    pub key: String,
    /// The figure's name.
    pub figure: String,
    /// Its sources before.
    pub before: Vec<String>,
    /// Its sources now.
    pub after: Vec<String>,
}

/// A chapter of words that differs.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Reworded {
    /// Whose words: `species corn-snake`, `page about`.
    pub whose: String,
    /// The chapter.
    pub chapter: String,
    /// What became of it.
    pub how: How,
}

/// What became of something.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum How {
    /// It is new.
    Added,
    /// It is gone.
    Removed,
    /// It differs.
    Changed,
}

impl How {
    /// The word for it.
    pub fn word(self) -> &'static str {
        match self {
            How::Added => "added",
            How::Removed => "removed",
            How::Changed => "changed",
        }
    }
}

/// Everything that differs.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Changes {
    /// Figures, the gravest first.
    pub figures: Vec<Change>,
    /// Figures that only rest on other sources.
    pub sources: Vec<Resourced>,
    /// Words.
    pub words: Vec<Reworded>,
    /// Species that are new or gone, with their common names.
    pub species: Vec<(String, String, How)>,
    /// Animals that are new or gone, with their names.
    pub animals: Vec<(String, String, How)>,
}

impl Changes {
    /// Whether a care figure differs. A species that is new or gone brings or takes all of its figures.
    pub fn figures_differ(&self) -> bool {
        !self.figures.is_empty() || !self.species.is_empty()
    }

    /// Whether nothing differs at all.
    pub fn is_empty(&self) -> bool {
        !self.figures_differ()
            && self.sources.is_empty()
            && self.words.is_empty()
            && self.animals.is_empty()
    }
}

/// Finds what differs between an old state and a new one.
pub fn compare(old: State<'_>, new: State<'_>) -> Changes {
    let mut changes = Changes::default();
    for (key, before) in &old.model.species {
        match new.model.species.get(key) {
            None => changes.species.push((key.clone(), before.name.clone(), How::Removed)),
            Some(after) => {
                stated::species(&mut changes, key, (before, after), new);
                words::species(&mut changes, key, before, after);
            }
        }
    }
    for (key, after) in
        new.model.species.iter().filter(|(key, _)| !old.model.species.contains_key(*key))
    {
        changes.species.push((key.clone(), after.name.clone(), How::Added));
    }
    for (key, before) in &old.model.animals {
        match new.model.animals.get(key) {
            None => changes.animals.push((key.clone(), before.name.clone(), How::Removed)),
            Some(after) => own::animal(&mut changes, key, (before, after), new.model.site.units),
        }
    }
    for (key, after) in
        new.model.animals.iter().filter(|(key, _)| !old.model.animals.contains_key(*key))
    {
        changes.animals.push((key.clone(), after.name.clone(), How::Added));
    }
    derived::all(&mut changes, old, new);
    words::pages(&mut changes, old.model, new.model);
    changes.figures.sort_by(|a, b| {
        let rank = |change: &Change| (change.weight, !change.loosened, change.whose);
        rank(a).cmp(&rank(b)).then_with(|| a.key.cmp(&b.key))
    });
    changes
}
