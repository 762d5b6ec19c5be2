//! The last good site, and what is wrong with the files as they are.

use std::collections::{BTreeMap, BTreeSet};
use std::convert::Infallible;
use std::sync::{Arc, Mutex, PoisonError};

use jiff::civil::Date;

use crate::compile::{Checked, Pages, check};
use crate::finding::{FileId, Finding, stops};
use crate::render::{File, Look};
use crate::sheets::{Wanted, plan};
use crate::source::Sources;

use super::narrow::Edited;

/// A site that is looked at while it is being edited.
pub struct Watched {
    as_of: Date,
    sources: Arc<Sources>,
    read: Vec<Finding>,
    findings: Vec<Finding>,
    broken_templates: Vec<Finding>,
    good: Option<Good>,
    /// The files that were edited last.
    newest: BTreeSet<FileId>,
    /// Whether templates may be others than those in use.
    look_is_old: bool,
    /// How many times the files have been read.
    readings: u64,
}

/// What a reading has brought.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Change {
    /// Every file says what it said before.
    Nothing,
    /// What was edited has been looked at; the rest of the site has yet to be.
    Part,
    /// Nothing has been looked at yet: the whole site has to be.
    Unknown,
}

/// A site without errors, as it was when last seen.
struct Good {
    checked: Checked,
    look: Look,
    pages: BTreeMap<String, Wanted>,
    /// The pages that have been asked for, as they were last set, for a template that stops working.
    set: Mutex<BTreeMap<String, Vec<u8>>>,
}

impl Watched {
    /// Looks at a whole site for the first time.
    pub fn new(sources: Sources, read: Vec<Finding>, as_of: Date) -> Watched {
        let sources = Arc::new(sources);
        let mut watched = Watched {
            as_of,
            sources: Arc::clone(&sources),
            read: read.clone(),
            findings: Vec::new(),
            broken_templates: Vec::new(),
            good: None,
            newest: BTreeSet::new(),
            look_is_old: true,
            readings: 0,
        };
        watched.settle(check(&sources, read, as_of));
        watched
    }

    /// Takes the files as they have been read again, and looks at once at those that were edited.
    pub fn take(&mut self, sources: Sources, read: Vec<Finding>) -> Change {
        let edited = Edited::between(&self.sources, &sources);
        if edited.as_ref().is_some_and(Edited::is_nothing) && read == self.read {
            return Change::Nothing;
        }
        self.readings += 1;
        self.sources = Arc::new(sources);
        self.read = read;
        self.look_is_old |= edited.as_ref().is_none_or(Edited::touches_the_look);
        self.newest = edited.as_ref().map(|edited| edited.files().clone()).unwrap_or_default();
        let (Some(edited), Some(good)) = (edited, &mut self.good) else { return Change::Unknown };
        if edited.touches_the_care() {
            let narrowed = edited.narrowed(&self.sources, &good.checked);
            let part = check(&narrowed, self.read.clone(), self.as_of);
            self.findings = edited.findings(&self.findings, &part.findings);
            if !stops(&self.findings) {
                edited.put_into(&mut good.checked, &part);
                good.checked.findings.clone_from(&self.findings);
                good.pages = pages(&good.checked);
            }
        }
        self.renew_look();
        Change::Part
    }

    /// What it takes to look at the whole site, away from here, and which reading that is of.
    pub fn whole(&self) -> (u64, impl FnOnce() -> Checked + Send + use<>) {
        let (sources, read, as_of) = (Arc::clone(&self.sources), self.read.clone(), self.as_of);
        (self.readings, move || check(&sources, read, as_of))
    }

    /// Takes what was found by looking at the whole site, unless the files have been read again since.
    ///
    /// Tells whether anything is different from what was known.
    pub fn take_whole(&mut self, reading: u64, checked: Checked) -> bool {
        if reading != self.readings {
            return false;
        }
        let same = self.findings == checked.findings
            && self.good.as_ref().is_none_or(|good| {
                good.checked.figures == checked.figures
                    && good.checked.model.species.len() == checked.model.species.len()
                    && good.checked.model.pages.len() == checked.model.pages.len()
            });
        self.settle(checked);
        !same
    }

    fn settle(&mut self, checked: Checked) {
        self.findings.clone_from(&checked.findings);
        if stops(&checked.findings) {
            return;
        }
        match self.good.take() {
            Some(good) => {
                self.good = Some(Good { pages: pages(&checked), checked, ..good });
                self.renew_look();
            }
            None => match Look::new(&self.sources) {
                Ok(look) => {
                    self.broken_templates.clear();
                    self.look_is_old = false;
                    self.good =
                        Some(Good { look, pages: pages(&checked), checked, set: Mutex::default() });
                }
                Err(broken) => self.broken_templates = broken,
            },
        }
    }

    /// Reads templates that have been edited anew; such as do not work leave the earlier ones in use.
    fn renew_look(&mut self) {
        let Some(good) = self.good.as_mut().filter(|_| self.look_is_old) else { return };
        self.look_is_old = false;
        match Look::new(&self.sources) {
            Ok(look) => {
                good.look = look;
                self.broken_templates.clear();
            }
            Err(broken) => self.broken_templates = broken,
        }
    }

    /// What is wrong or doubtful in the files as they are.
    pub fn findings(&self) -> Vec<Finding> {
        let mut all = self.findings.clone();
        if !self.broken_templates.is_empty() {
            all.extend(self.broken_templates.iter().cloned());
            crate::finding::sort(&mut all);
        }
        all
    }

    /// Whether the pages are those of an earlier edit, because the newest has an error.
    pub fn is_held_back(&self) -> bool {
        stops(&self.findings) || !self.broken_templates.is_empty()
    }

    /// The files that were edited last; none where that is not known.
    pub(super) fn newest(&self) -> &BTreeSet<FileId> {
        &self.newest
    }

    /// The files as they are, for drawing findings.
    pub fn sources(&self) -> &Sources {
        &self.sources
    }

    /// The title of the site, if it has ever been free of errors.
    pub fn title(&self) -> Option<&str> {
        self.good.as_ref().map(|good| good.checked.model.site.title.as_str())
    }

    /// The addresses of all pages, by their paths below the output folder.
    pub fn paths(&self) -> impl Iterator<Item = &str> {
        self.good.iter().flat_map(|good| good.pages.keys().map(String::as_str))
    }

    /// One page or file of the site by its path below the output folder, and why it could not be set anew.
    pub fn file(&self, path: &str) -> Option<(Vec<u8>, Option<Finding>)> {
        let good = self.good.as_ref()?;
        let pages = Pages::new(&self.sources, &good.checked, &good.look);
        let Some(wanted) = good.pages.get(path) else {
            return Some((beside(&pages, path)?, None));
        };
        let mut earlier = good.set.lock().unwrap_or_else(PoisonError::into_inner);
        match pages.page(wanted)? {
            Ok(file) => {
                earlier.insert(path.to_owned(), file.bytes.clone());
                Some((file.bytes, None))
            }
            Err(broken) => Some((earlier.get(path).cloned().unwrap_or_default(), Some(broken))),
        }
    }
}

/// A file that stands beside the pages. Photos and calendars are made when they are asked for, and only those in the folder of the
/// one that is.
fn beside(pages: &Pages<'_>, path: &str) -> Option<Vec<u8>> {
    let found = Mutex::new(None);
    let wants = |other: &str| other == path || (other.ends_with('/') && path.starts_with(other));
    let take = |file: File| {
        if file.path == path {
            *found.lock().unwrap_or_else(PoisonError::into_inner) = Some(file.bytes);
        }
        Ok::<(), Infallible>(())
    };
    // A photo that breaks off is among the findings; here it is only not there.
    let _ = pages.beside(&wants, &|_, _| false, &take);
    found.into_inner().unwrap_or_else(PoisonError::into_inner)
}

fn pages(checked: &Checked) -> BTreeMap<String, Wanted> {
    plan(&checked.model).into_iter().map(|wanted| (wanted.path(), wanted)).collect()
}
