//! A sheet that is set because it was asked for by itself.

use jiff::civil::Date;

use crate::finding::Finding;
use crate::render::{File, Look, calendar};
use crate::sheets::edition::Edition;
use crate::sheets::handover::HandoverSheet;
use crate::sheets::sitter::Stay;
use crate::sheets::{self, Wanted, due};
use crate::source::Sources;

use super::Checked;
use super::open::on_the_sheet;

/// The model in the language that was asked for, or in that of the site.
fn edition<'a>(checked: &'a Checked, language: Option<&'a str>) -> Edition<'a> {
    Edition::further(&checked.model, language.unwrap_or(&checked.model.site.language))
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
    language: Option<&str>,
) -> Result<File, Vec<Finding>> {
    let look = Look::new(sources)?;
    let edition = edition(checked, language);
    let sheet = sheets::handover_sheet(&edition, &checked.figures, animal, addressed_to)
        .ok_or_else(Vec::new)?;
    let before = on_the_sheet(sources, checked, animal);
    let sheet = sheets::Sheet::Handover(Box::new(HandoverSheet { before, ..sheet }));
    let wanted = edition.wanted(Wanted::Handover(animal.to_owned()));
    look.set(sources, edition.language(), &wanted, &sheet).map_err(|finding| vec![finding])
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
    language: Option<&str>,
) -> Result<Vec<File>, Vec<Finding>> {
    let stay = Stay { from, until, animals: animals.to_vec() };
    let edition = edition(checked, language);
    let sheet = sheets::sitter::sitter(&edition, &checked.figures, &stay);
    let as_of = checked.figures.as_of;
    let here = |key: &String| animals.is_empty() || animals.contains(key);
    let of: Vec<_> = checked.model.animals.iter().filter(|(key, _)| here(key)).collect();
    let of: Vec<_> = of.into_iter().map(|(_, animal)| animal).collect();
    let revision = due::revision(&of, as_of);
    let events = calendar(&sheet.calendar, &sheet.frame.title, as_of, revision);
    let wanted = edition.wanted(Wanted::Sitter(stay));
    let page = Look::new(sources)?
        .set(sources, edition.language(), &wanted, &sheets::Sheet::Sitter(Box::new(sheet)))
        .map_err(|finding| vec![finding])?;
    let beside = page.path.replace(".html", ".ics");
    Ok(vec![page, File::new(beside, events.into_bytes())])
}

/// Sets the work of the week that a day is in.
///
/// # Errors
/// The findings that templates of the site's own have caused.
pub fn round(
    sources: &Sources,
    checked: &Checked,
    day: Date,
    language: Option<&str>,
) -> Result<Vec<File>, Vec<Finding>> {
    let wanted = edition(checked, language).wanted(Wanted::Round(sheets::round::monday(day)));
    let sheet = sheets::build(&checked.model, &checked.figures, &wanted).ok_or_else(Vec::new)?;
    let page = Look::new(sources)?
        .set(sources, wanted.language(&checked.model), &wanted, &sheet)
        .map_err(|finding| vec![finding])?;
    Ok(vec![page])
}
