//! The whole compile as one pure function: texts in, pages and findings out.

use std::collections::BTreeSet;

use jiff::civil::Date;
use rayon::prelude::*;

use crate::figures::{Figures, figures};
use crate::finding::{self, Finding};
use crate::model::Model;
use crate::parse::{parse, photo_fault};
use crate::photo::Kept;
use crate::proof::{Evidence, proof, with_site_severities};
use crate::render::{File, Look, calendar, theme};
use crate::sheets::due;
use crate::sheets::picture::{print_name, printed};
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
    let findings = with_site_severities(&model, found);
    Checked { model, figures, findings }
}

/// Tells whether a finding says that something is not there.
fn reports_absence(finding: &Finding) -> bool {
    finding.code.name.ends_with("-missing")
}

/// Sets every page of a checked site, on all cores. An error among the findings stops it: nothing is set.
///
/// # Errors
/// The findings that templates of the site's own have caused.
pub fn compile(sources: &Sources, checked: &Checked) -> Result<Vec<File>, Vec<Finding>> {
    compile_keeping(sources, checked, &Kept::default())
}

/// Compiles as [`compile`] does, and takes the prints of photos that have not changed from those of an earlier compile.
///
/// # Errors
/// The findings that templates of the site's own, or photos that break off, have caused.
pub fn compile_keeping(
    sources: &Sources,
    checked: &Checked,
    kept: &Kept,
) -> Result<Vec<File>, Vec<Finding>> {
    if finding::stops(&checked.findings) {
        return Err(Vec::new());
    }
    let look = Look::new(sources)?;
    let set = |wanted: &Wanted| {
        let mut sheet = sheets::build(&checked.model, &checked.figures, wanted)?;
        if let (sheets::Sheet::Record(record), Wanted::Record(key)) = (&mut sheet, wanted) {
            record.findings = open_findings(sources, checked, key);
        }
        Some(look.set(sources, wanted, &sheet))
    };
    let pages: Vec<Result<File, Finding>> =
        sheets::plan(&checked.model).par_iter().filter_map(set).collect();
    let mut files = theme(sources);
    let mut broken = match photos(sources, checked, kept, |_| true) {
        Ok(prints) => {
            files.extend(prints);
            Vec::new()
        }
        Err(broken) => broken,
    };
    for page in pages {
        match page {
            Ok(file) => files.push(file),
            Err(finding) if broken.contains(&finding) => {}
            Err(finding) => broken.push(finding),
        }
    }
    if !broken.is_empty() {
        finding::sort(&mut broken);
        return Err(broken);
    }
    files.extend(calendars(checked));
    files.push(File {
        path: "private/DO-NOT-PUBLISH.txt".to_owned(),
        bytes: PRIVATE_NOTE.as_bytes().to_vec(),
    });
    files.sort_by(|a, b| a.path.cmp(&b.path));
    Ok(files)
}

/// The calendar of every animal that is kept: what is due, day by day.
fn calendars(checked: &Checked) -> Vec<File> {
    let Checked { model, figures, .. } = checked;
    let kept = model.animals.par_iter().filter(|(_, animal)| animal.is_kept());
    let set = |(key, animal): (&String, &crate::model::Animal)| {
        let species = model.species.get(&animal.species.name)?;
        let own = figures.animals.get(key)?;
        let events = due::calendar(model, figures, key, animal, species, own);
        let revision = due::revision(&[animal], figures.as_of);
        let name = format!("Care of {}", animal.name);
        let text = calendar(&events, &name, figures.as_of, revision);
        Some(File { path: sheets::calendar_path(key), bytes: text.into_bytes() })
    };
    kept.filter_map(set).collect()
}

/// The photos that pages show, written anew, on all cores; only those in a folder that is wanted.
///
/// # Errors
/// A finding for every photo that breaks off.
pub fn photos(
    sources: &Sources,
    checked: &Checked,
    kept: &Kept,
    wanted: impl Fn(&str) -> bool + Sync,
) -> Result<Vec<File>, Vec<Finding>> {
    let made = printed(&checked.model).into_par_iter().map(|mut one| {
        one.folders.retain(|folder| wanted(folder));
        if one.folders.is_empty() {
            return Ok(Vec::new());
        }
        // A photo that has gone since it was measured is as good as one that breaks off.
        let fault = |fault: &crate::photo::Fault| photo_fault(&one.photo, fault);
        let Some(Ok(bytes)) = sources.photo(&one.photo.name) else {
            return Err(fault(&crate::photo::Fault::Broken));
        };
        let prints = kept.prints(&bytes);
        let prints = prints.as_ref().as_ref().map_err(fault)?;
        let files = one.folders.iter().flat_map(|folder| {
            prints.iter().map(move |print| File {
                path: format!("{folder}/{}", print_name(print.width, print.height)),
                bytes: print.bytes.clone(),
            })
        });
        Ok(files.collect())
    });
    let made: Vec<Result<Vec<File>, Finding>> = made.collect();
    kept.forget_unused();
    let (files, broken): (Vec<_>, Vec<_>) = made.into_iter().partition(Result::is_ok);
    let mut broken: Vec<Finding> = broken.into_iter().filter_map(Result::err).collect();
    if broken.is_empty() {
        return Ok(files.into_iter().flatten().flatten().collect());
    }
    finding::sort(&mut broken);
    Err(broken)
}

/// The photos that the private sheets of some animals show, for a sheet that is written by itself.
///
/// # Errors
/// A finding for every photo that breaks off.
pub fn private_photos(
    sources: &Sources,
    checked: &Checked,
    animals: &[String],
) -> Result<Vec<File>, Vec<Finding>> {
    let wanted = |folder: &str| {
        folder
            .strip_prefix("private/animals/")
            .is_some_and(|key| animals.is_empty() || animals.iter().any(|animal| animal == key))
    };
    photos(sources, checked, &Kept::default(), wanted)
}

/// What is doubtful in the files of one animal.
fn open_findings(sources: &Sources, checked: &Checked, animal: &str) -> Vec<OpenFinding> {
    let files: Vec<_> = [Role::Animal, Role::Log]
        .into_iter()
        .filter_map(|role| Some(sources.named(role, animal)?.id))
        .collect();
    let here = checked
        .findings
        .iter()
        .filter(|finding| finding.place.is_some_and(|place| files.contains(&place.file)));
    here.map(|finding| OpenFinding {
        code: finding.code.name.to_owned(),
        severity: finding.severity.word().to_owned(),
        message: finding.message.clone(),
        help: finding.help.clone(),
    })
    .collect()
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
    let as_of = checked.figures.as_of;
    let here = |key: &String| animals.is_empty() || animals.contains(key);
    let of: Vec<_> = checked.model.animals.iter().filter(|(key, _)| here(key)).collect();
    let of: Vec<_> = of.into_iter().map(|(_, animal)| animal).collect();
    let revision = due::revision(&of, as_of);
    let events = calendar(&sheet.calendar, &sheet.frame.title, as_of, revision);
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
