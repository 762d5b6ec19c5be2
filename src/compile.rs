//! The whole compile without a disk: texts in, pages and findings out. [`Pages`] sets a page at a time, [`compile`] all of them.

use std::collections::{BTreeMap, BTreeSet};
use std::convert::Infallible;
use std::sync::{Mutex, PoisonError};

use jiff::civil::Date;
use rayon::prelude::*;

use crate::figures::{Figures, figures};
use crate::finding::{self, FileId, Finding};
use crate::model::Model;
use crate::parse::parse;
use crate::proof::{Evidence, proof, with_site_severities};
use crate::render::{File, Look, calendar, theme};
use crate::sheets::record::OpenFinding;
use crate::sheets::sitter::Stay;
use crate::sheets::{self, Wanted};
use crate::source::{Role, Sources};

/// Everything that is known of a site once it has been read and checked.
#[derive(Debug)]
pub struct Checked {
    /// What the files say.
    pub model: Model,
    /// What was worked out.
    pub figures: Figures,
    /// What is wrong or doubtful, in the order of the files.
    pub findings: Vec<Finding>,
}

/// A note that keeps the private part from being published by mistake.
const PRIVATE_NOTE: &str = "These sheets hold addresses, telephone numbers and the histories of animals.\n\
    Do not publish this folder. The folder to publish is `public`, beside it.\n";

/// Reads, types, works out and checks, and writes nothing.
///
/// `read` holds what the reading of the files has found already.
pub fn check(sources: &Sources, read: Vec<Finding>, as_of: Date) -> Checked {
    let (model, parsed) = parse(sources);
    let figures = figures(&model, as_of);
    let mut found = read;
    found.extend(parsed);
    let faulty: BTreeSet<_> =
        found.iter().filter_map(|finding| finding.place).map(|place| place.file).collect();
    let mut proved = proof(&Evidence { sources, model: &model, figures: &figures });
    // A figure that could not be read has been reported; that it is missing too would be said twice.
    proved.retain(|finding| {
        !(reports_absence(finding)
            && finding.place.is_some_and(|place| faulty.contains(&place.file)))
    });
    found.extend(proved);
    let findings = with_site_severities(&model, shortened(found));
    Checked { model, figures, findings }
}

/// So many findings of one code are told of one file; what follows them is counted only. A file where every line is wrong is
/// not put right line by line, and what is told stays in proportion to the files.
const TOLD_OF_A_FILE: usize = 100;

/// Leaves out what is found too often in one file to be of use, and says how often at the last place that is told.
fn shortened(found: Vec<Finding>) -> Vec<Finding> {
    let mut counts: BTreeMap<(FileId, &str), usize> = BTreeMap::new();
    let mut kept: Vec<Finding> = Vec::new();
    let mut last: BTreeMap<(FileId, &str), usize> = BTreeMap::new();
    for finding in found {
        if let Some(place) = finding.place {
            let key = (place.file, finding.code.name);
            let count = counts.entry(key).or_default();
            *count += 1;
            if *count > TOLD_OF_A_FILE {
                continue;
            }
            last.insert(key, kept.len());
        }
        kept.push(finding);
    }
    for (key, at) in last {
        let more = counts.get(&key).map_or(0, |count| count.saturating_sub(TOLD_OF_A_FILE));
        if let (true, Some(finding)) = (more > 0, kept.get_mut(at)) {
            finding.message.push_str(&format!("; and {more} more like this in the file"));
        }
    }
    kept
}

/// Tells whether a finding says that something is not there.
fn reports_absence(finding: &Finding) -> bool {
    finding.code.name.ends_with("-missing")
}

/// Sets every page of a checked site, on all cores, and keeps them all in memory: for tests and small sites.
///
/// # Errors
/// The findings that templates of the site's own have caused. An error among those of the check stops it too, with none.
pub fn compile(sources: &Sources, checked: &Checked) -> Result<Vec<File>, Vec<Finding>> {
    if finding::stops(&checked.findings) {
        return Err(Vec::new());
    }
    let pages = Pages::new(sources, checked)?;
    let files = Mutex::new(Vec::new());
    let keep = |file| {
        files.lock().unwrap_or_else(PoisonError::into_inner).push(file);
        Ok::<(), Infallible>(())
    };
    match pages.each(|_| true, keep) {
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
    look: Look,
    /// The findings of each file, so that a record need not look through all of them.
    by_file: BTreeMap<FileId, Vec<&'a Finding>>,
}

/// Why not every page was handed on.
#[derive(Debug)]
pub enum Halt<E> {
    /// Templates of the site's own do not work.
    Broken(Vec<Finding>),
    /// Whoever took the pages would take no more.
    Refused(E),
}

impl<'a> Pages<'a> {
    /// Reads the templates.
    ///
    /// # Errors
    /// The findings that templates of the site's own have caused.
    pub fn new(sources: &'a Sources, checked: &'a Checked) -> Result<Pages<'a>, Vec<Finding>> {
        let look = Look::new(sources)?;
        let mut by_file: BTreeMap<FileId, Vec<&Finding>> = BTreeMap::new();
        for finding in &checked.findings {
            if let Some(place) = finding.place {
                by_file.entry(place.file).or_default().push(finding);
            }
        }
        Ok(Pages { sources, checked, look, by_file })
    }

    /// Which pages there are, in the order of their paths.
    pub fn plan(&self) -> Vec<Wanted> {
        sheets::plan(&self.checked.model)
    }

    /// Sets one page; none where the model does not hold what it is about.
    ///
    /// # Errors
    /// A finding where a template of the site's own does not work.
    pub fn page(&self, wanted: &Wanted) -> Option<Result<File, Finding>> {
        let mut sheet = sheets::build(&self.checked.model, &self.checked.figures, wanted)?;
        if let (sheets::Sheet::Record(record), Wanted::Record(key)) = (&mut sheet, wanted) {
            record.findings = self.open_findings(key);
        }
        Some(self.look.set(self.sources, wanted, &sheet))
    }

    /// The files that are not set from templates: the theme, and the note in the private part.
    pub fn beside(&self) -> Vec<File> {
        let mut files = theme(self.sources);
        let bytes = PRIVATE_NOTE.as_bytes().to_vec();
        files.push(File { path: "private/DO-NOT-PUBLISH.txt".to_owned(), bytes });
        files
    }

    /// Sets the files whose paths are wanted, on all cores, and hands on each as soon as it is set; none is kept.
    ///
    /// # Errors
    /// The findings that templates of the site's own have caused, or what `take` returned first.
    pub fn each<E: Send>(
        &self,
        wants: impl Fn(&str) -> bool,
        take: impl Fn(File) -> Result<(), E> + Sync,
    ) -> Result<(), Halt<E>> {
        let refused = |error| Halt::Refused(error);
        self.beside()
            .into_iter()
            .filter(|file| wants(&file.path))
            .try_for_each(&take)
            .map_err(refused)?;
        let plan: Vec<Wanted> =
            self.plan().into_iter().filter(|wanted| wants(&wanted.path())).collect();
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
        set.map_err(refused)?;
        let mut broken = broken.into_inner().unwrap_or_else(PoisonError::into_inner);
        if broken.is_empty() {
            return Ok(());
        }
        finding::sort(&mut broken);
        Err(Halt::Broken(broken))
    }

    /// What is doubtful in the files of one animal.
    fn open_findings(&self, animal: &str) -> Vec<OpenFinding> {
        let mut files: Vec<FileId> = [Role::Animal, Role::Log]
            .into_iter()
            .filter_map(|role| Some(self.sources.named(role, animal)?.id))
            .collect();
        files.sort_unstable();
        let here = files.iter().filter_map(|file| self.by_file.get(file)).flatten();
        here.map(|finding| OpenFinding {
            code: finding.code.name.to_owned(),
            severity: finding.severity.word().to_owned(),
            message: finding.message.clone(),
            help: finding.help.clone(),
        })
        .collect()
    }
}

/// Sets the handover sheet of one animal, addressed to somebody where a name is given.
///
/// # Errors
/// The findings that templates of the site's own have caused; none where there is no such animal.
pub fn handover(
    sources: &Sources,
    checked: &Checked,
    animal: &str,
    addressed_to: Option<&str>,
) -> Result<File, Vec<Finding>> {
    let look = Look::new(sources)?;
    let sheet = sheets::handover_sheet(&checked.model, &checked.figures, animal, addressed_to)
        .ok_or_else(Vec::new)?;
    let sheet = sheets::Sheet::Handover(Box::new(sheet));
    look.set(sources, &Wanted::Handover(animal.to_owned()), &sheet).map_err(|finding| vec![finding])
}

/// Sets the sheet for somebody who looks after the animals from one day to another, and the calendar beside it.
///
/// # Errors
/// The findings that templates of the site's own have caused.
pub fn sitter(
    sources: &Sources,
    checked: &Checked,
    (from, until): (Date, Date),
    animals: &[String],
) -> Result<Vec<File>, Vec<Finding>> {
    let stay = Stay { from, until, animals: animals.to_vec() };
    let sheet = sheets::sitter::sitter(&checked.model, &checked.figures, &stay);
    let events = calendar(&sheet.calendar, &sheet.frame.title, checked.figures.as_of);
    let wanted = Wanted::Sitter(stay);
    let page = Look::new(sources)?
        .set(sources, &wanted, &sheets::Sheet::Sitter(Box::new(sheet)))
        .map_err(|finding| vec![finding])?;
    let beside = page.path.replace(".html", ".ics");
    Ok(vec![page, File { path: beside, bytes: events.into_bytes() }])
}

/// Sets the work of the week that a day is in.
///
/// # Errors
/// The findings that templates of the site's own have caused.
pub fn round(sources: &Sources, checked: &Checked, day: Date) -> Result<Vec<File>, Vec<Finding>> {
    let wanted = Wanted::Round(sheets::round::monday(day));
    let sheet = sheets::build(&checked.model, &checked.figures, &wanted).ok_or_else(Vec::new)?;
    let page =
        Look::new(sources)?.set(sources, &wanted, &sheet).map_err(|finding| vec![finding])?;
    Ok(vec![page])
}
