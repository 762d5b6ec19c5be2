//! The pages of a checked site, set one at a time.

use std::convert::Infallible;
use std::sync::{Mutex, PoisonError};

use rayon::prelude::*;

use crate::finding::{self, Finding};
use crate::render::{File, Look};
use crate::sheets::{self, Wanted};
use crate::source::Sources;

use super::beside::{Standing, none_stands};
use super::open::{ByFile, by_file, on_the_sheet, open_findings};
use super::{Checked, beside};

/// Sets every page of a checked site, on all cores, and keeps them all in memory: for tests and small sites.
///
/// # Errors
/// The findings that templates of the site's own, or photos that break off, have caused. An error among those of the check stops
/// it too, with none.
pub fn compile(sources: &Sources, checked: &Checked) -> Result<Vec<File>, Vec<Finding>> {
    if finding::stops(&checked.findings) {
        return Err(Vec::new());
    }
    let look = Look::new(sources)?;
    let pages = Pages::new(sources, checked, &look);
    gathered(|keep| pages.each(|_| true, keep))
}

/// Keeps every file that is handed on, in the order of their paths.
pub(super) fn gathered(
    set: impl FnOnce(&(dyn Fn(File) -> Result<(), Infallible> + Sync)) -> Result<(), Halt<Infallible>>,
) -> Result<Vec<File>, Vec<Finding>> {
    let files = Mutex::new(Vec::new());
    let keep = |file| {
        files.lock().unwrap_or_else(PoisonError::into_inner).push(file);
        Ok(())
    };
    match set(&keep) {
        Ok(()) => {}
        Err(Halt::Broken(findings)) => return Err(findings),
        Err(Halt::Refused(never)) => match never {},
    }
    let mut files = files.into_inner().unwrap_or_else(PoisonError::into_inner);
    files.sort_by(|a, b| a.path.cmp(&b.path));
    Ok(files)
}

/// The pages of a checked site, set one at a time.
pub struct Pages<'a> {
    sources: &'a Sources,
    checked: &'a Checked,
    look: &'a Look,
    /// The findings of each file, so that a record need not look through all of them.
    by_file: ByFile,
}

/// Why not every page was handed on.
#[derive(Debug)]
pub enum Halt<E> {
    /// Templates of the site's own do not work, or photos break off.
    Broken(Vec<Finding>),
    /// Whoever took the pages would take no more.
    Refused(E),
}

impl<'a> Pages<'a> {
    /// The pages of a site in a look.
    pub fn new(sources: &'a Sources, checked: &'a Checked, look: &'a Look) -> Pages<'a> {
        Pages { sources, checked, look, by_file: by_file(&checked.findings) }
    }

    /// Which pages there are, in the order of their paths.
    pub fn plan(&self) -> Vec<Wanted> {
        sheets::plan(&self.checked.model)
    }

    /// Sets one page; none where the model does not hold what it is about.
    ///
    /// The result is an error where a template of the site's own does not work.
    pub fn page(&self, wanted: &Wanted) -> Option<Result<File, Finding>> {
        let Pages { sources, checked, .. } = *self;
        let mut sheet = sheets::build(&checked.model, &checked.figures, wanted)?;
        if let (sheets::Sheet::Record(record), Wanted::Record(key)) = (&mut sheet, wanted) {
            record.findings = open_findings(sources, checked, &self.by_file, key);
        }
        if let (sheets::Sheet::Handover(handover), Wanted::Handover(key)) = (&mut sheet, wanted) {
            handover.before = on_the_sheet(sources, checked, key);
        }
        Some(self.look.set(sources, wanted.language(&checked.model), wanted, &sheet))
    }

    /// Sets the files whose paths are wanted, on all cores, and hands on each as soon as it is set; none is kept. What stands
    /// beside the pages comes first.
    ///
    /// # Errors
    /// The findings that templates of the site's own, or photos that break off, have caused, or what `take` returned first.
    pub fn each<E: Send>(
        &self,
        wants: impl Fn(&str) -> bool + Sync,
        take: impl Fn(File) -> Result<(), E> + Sync,
    ) -> Result<(), Halt<E>> {
        self.each_but(wants, none_stands, take)
    }

    /// The same, but for what stands in its place and is costly to make. `stand` is asked for several files and what they
    /// would be made from: where it answers yes, they stay as they are and are not handed on.
    ///
    /// # Errors
    /// As for [`Pages::each`].
    pub fn each_but<E: Send>(
        &self,
        wants: impl Fn(&str) -> bool + Sync,
        stand: impl Fn(&[String], u64) -> bool + Sync,
        take: impl Fn(File) -> Result<(), E> + Sync,
    ) -> Result<(), Halt<E>> {
        self.beside(&wants, &stand, &take)?;
        let plan = self.plan().into_iter().filter(|wanted| wants(&wanted.path()));
        let plan: Vec<Wanted> = plan.collect();
        let broken = Mutex::new(Vec::new());
        let set = plan.par_iter().try_for_each(|wanted| match self.page(wanted) {
            None => Ok(()),
            Some(Ok(file)) => take(file),
            Some(Err(finding)) => {
                let mut broken = broken.lock().unwrap_or_else(PoisonError::into_inner);
                if !broken.contains(&finding) {
                    broken.push(finding);
                }
                Ok(())
            }
        });
        set.map_err(Halt::Refused)?;
        let mut broken = broken.into_inner().unwrap_or_else(PoisonError::into_inner);
        if broken.is_empty() {
            return Ok(());
        }
        finding::sort(&mut broken);
        Err(Halt::Broken(broken))
    }

    /// Hands on what stands beside the pages: the theme, photos, calendars.
    ///
    /// # Errors
    /// The findings that photos have caused, or what `take` returned first.
    pub fn beside<E: Send>(
        &self,
        wants: &(impl Fn(&str) -> bool + Sync),
        stand: &Standing<'_>,
        take: &(impl Fn(File) -> Result<(), E> + Sync + ?Sized),
    ) -> Result<(), Halt<E>> {
        let fixed =
            beside::fixed(self.sources, self.checked).into_iter().filter(|file| wants(&file.path));
        fixed.into_iter().try_for_each(take).map_err(Halt::Refused)?;
        beside::photos(self.sources, self.checked, wants, stand, take)?;
        let calendars = beside::with_calendar(self.checked);
        let wanted = calendars.into_par_iter().filter(|key| wants(&sheets::calendar_path(key)));
        let set = wanted.filter_map(|key| beside::calendar_of(self.checked, key));
        set.try_for_each(take).map_err(Halt::Refused)
    }
}
