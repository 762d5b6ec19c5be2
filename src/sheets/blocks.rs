//! The parts that sheets are made of. They say what stands on a page, not how it looks.

use serde::Serialize;

use super::drawing::Drawing;

/// A value as it stands on a page: in the site's first system, and in the other where there is one.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Shown {
    /// In the system that the site puts first.
    pub first: String,
    /// In the other system.
    pub second: Option<String>,
    /// Whether the fact is missing, and a line is left to write it on.
    pub missing: bool,
}

impl Shown {
    /// A value that is the same in both systems, or no quantity at all.
    pub fn plain(text: impl Into<String>) -> Shown {
        Shown { first: text.into(), second: None, missing: false }
    }
}

impl std::fmt::Display for Shown {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match &self.second {
            Some(second) => write!(out, "{} ({second})", self.first),
            None => out.write_str(&self.first),
        }
    }
}

/// A source as it stands beside a figure.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SourceLink {
    /// Its key in the bibliography: its anchor on the sources page.
    pub key: String,
    /// Its number in the page's own list of sources.
    pub number: usize,
    /// Author and year.
    pub short: String,
}

/// What another source says of the same figure.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Rival {
    /// Its value.
    pub value: Shown,
    /// The sources.
    pub sources: Vec<SourceLink>,
}

/// A fact: what it is, its value, and where that comes from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Fact {
    /// What it is.
    pub label: String,
    /// Its value.
    pub value: Shown,
    /// Its sources.
    pub sources: Vec<SourceLink>,
    /// Whether it is a figure without a source: common practice.
    pub practice: bool,
    /// One sentence about it.
    pub note: Option<String>,
    /// What other sources say.
    pub others: Vec<Rival>,
    /// Where a nearer folder put it in place of a farther one's.
    pub overridden: Option<Overridden>,
}

/// A figure that stands in place of another folder's.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Overridden {
    /// Who decided it.
    pub by: String,
    /// When, where that was written down.
    pub on: Option<String>,
    /// What the folder below says.
    pub before: Shown,
    /// The sources that the folder below names.
    pub sources: Vec<SourceLink>,
}

impl Fact {
    /// A fact that needs no source: a date, a name, something worked out elsewhere on the page.
    pub fn plain(label: impl Into<String>, value: impl Into<Shown>) -> Fact {
        let (label, value) = (label.into(), value.into());
        Fact {
            label,
            value,
            sources: Vec::new(),
            practice: false,
            note: None,
            others: Vec::new(),
            overridden: None,
        }
    }
}

impl From<String> for Shown {
    fn from(text: String) -> Shown {
        Shown::plain(text)
    }
}

impl From<&str> for Shown {
    fn from(text: &str) -> Shown {
        Shown::plain(text)
    }
}

/// A table with a heading for every column; the first column heads its row.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Table {
    /// What the table is about.
    pub caption: String,
    /// The headings.
    pub head: Vec<String>,
    /// The rows, a cell for each heading.
    pub rows: Vec<Vec<Shown>>,
    /// A sentence under the table.
    pub note: Option<String>,
}

impl Table {
    /// A table without a sentence under it; none where there is no row.
    pub fn of(caption: impl Into<String>, head: &[&str], rows: Vec<Vec<Shown>>) -> Option<Table> {
        let head = head.iter().map(|heading| (*heading).to_owned()).collect();
        (!rows.is_empty()).then(|| Table { caption: caption.into(), head, rows, note: None })
    }
}

/// How a figure was worked out, folded away on the page.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct WorkingBlock {
    /// What was worked out.
    pub title: String,
    /// The formula.
    pub formula: String,
    /// The formula with the numbers put in.
    pub steps: Vec<String>,
    /// What was taken for granted.
    pub assumptions: Vec<String>,
    /// Who published it.
    pub publication: String,
}

impl From<&crate::figures::Working> for WorkingBlock {
    fn from(working: &crate::figures::Working) -> WorkingBlock {
        WorkingBlock {
            title: working.title.clone(),
            formula: working.formula.clone(),
            steps: working.steps.clone(),
            assumptions: working.assumptions.clone(),
            publication: working.publication.clone(),
        }
    }
}

/// A chapter of a sheet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Default)]
pub struct Chapter {
    /// Its anchor.
    pub id: String,
    /// Its heading.
    pub title: String,
    /// Its words, in Markdown.
    pub words: String,
    /// The language of its words, where that is another than the page's.
    pub language: Option<String>,
    /// Its facts.
    pub facts: Vec<Fact>,
    /// Its tables.
    pub tables: Vec<Table>,
    /// Its drawings.
    pub drawings: Vec<Drawing>,
    /// How its figures were worked out.
    pub workings: Vec<WorkingBlock>,
}

impl Chapter {
    /// A chapter with nothing in it yet.
    pub fn new(id: &str, title: &str) -> Chapter {
        Chapter { id: id.to_owned(), title: title.to_owned(), ..Chapter::default() }
    }

    /// Whether there is nothing to show.
    pub fn is_empty(&self) -> bool {
        self.words.trim().is_empty() && self.facts.is_empty() && self.tables.is_empty()
    }
}

/// A caution: what can hurt, and what to do.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Caution {
    /// What it is about.
    pub title: String,
    /// The caution.
    pub text: String,
}

/// A publication in a list of sources.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SourceEntry {
    /// Its key: its anchor.
    pub key: String,
    /// Its number on this page.
    pub number: usize,
    /// Its title.
    pub title: String,
    /// Author or issuer.
    pub issuer: String,
    /// The year.
    pub year: String,
    /// Where it can be read.
    pub address: Option<String>,
    /// How far it was followed: `read`, `secondary` or `memory`.
    pub read: &'static str,
    /// One sentence about it.
    pub note: Option<String>,
}

/// A link to another page.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Link {
    /// What it says.
    pub text: String,
    /// Where it leads, from the root of the site's part.
    pub href: String,
}
