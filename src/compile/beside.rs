//! The files that stand beside the pages: the theme, photos written anew, calendars, and the note in the private part.

use std::collections::BTreeMap;

use rayon::prelude::*;

use crate::finding::{self, Finding};
use crate::model::Animal;
use crate::parse::photo_fault;
use crate::photo::{Fault, made_from, prints};
use crate::render::{File, calendar, theme};
use crate::sheets::edition::Edition;
use crate::sheets::picture::{Printed, print_name, printed};
use crate::sheets::{calendar_path, due};
use crate::source::Sources;

use super::{Checked, Halt};

/// Tells whether files stand in their places as they were made from something, and lets them stay if all of them do.
pub(super) type Standing<'a> = dyn Fn(&[String], u64) -> bool + Sync + 'a;

/// Nothing stands anywhere yet.
pub(super) fn none_stands(_: &[String], _: u64) -> bool {
    false
}

/// The theme, and a note that keeps the private part from being published by mistake.
pub(super) fn fixed(sources: &Sources, checked: &Checked) -> Vec<File> {
    let mut files = theme(sources);
    let note = Edition::of_site(&checked.model).say("private-note");
    let bytes = format!("{note}\n").into_bytes();
    files.push(File::new("private/DO-NOT-PUBLISH.txt", bytes));
    files
}

/// The animals that have a calendar: those that are kept.
pub(super) fn with_calendar(checked: &Checked) -> Vec<&str> {
    let animals = checked.model.animals.iter();
    animals.filter(|(_, animal)| animal.is_kept()).map(|(key, _)| key.as_str()).collect()
}

/// The calendar of an animal: what is due, day by day. None where the model does not hold it.
pub(super) fn calendar_of(checked: &Checked, key: &str) -> Option<File> {
    let Checked { model, figures, .. } = checked;
    let animal: &Animal = model.animals.get(key)?;
    let species = model.species.get(&animal.species.name)?;
    let edition = Edition::of_site(model);
    let events = due::calendar(&edition, figures, key, animal, species, figures.animals.get(key)?);
    let revision = due::revision(&[animal], figures.as_of);
    let name = edition.tell("due-calendar", [("name", animal.name.as_str().into())]);
    let text = calendar(&events, &name, figures.as_of, revision);
    Some(File::new(calendar_path(key), text.into_bytes()))
}

/// Writes the photos that pages show anew, on all cores, and hands on each print whose path is wanted. Where all prints of a
/// photo stand in their places as they were made from it, none of them is made again: to decode a photo takes a quarter of a
/// second.
///
/// # Errors
/// A finding for every photo that breaks off, or what `take` returned first.
pub(super) fn photos<E: Send>(
    sources: &Sources,
    checked: &Checked,
    wants: &(impl Fn(&str) -> bool + Sync),
    stand: &Standing<'_>,
    take: &(impl Fn(File) -> Result<(), E> + Sync + ?Sized),
) -> Result<(), Halt<E>> {
    let all = printed(&Edition::of_site(&checked.model));
    // One photo may be named by many animals; it is decoded once, and its prints are let go with the last folder that they
    // stand in.
    let mut by_photo: BTreeMap<&str, Vec<&Printed>> = BTreeMap::new();
    for one in &all {
        by_photo.entry(&one.photo.name).or_default().push(one);
    }
    let one = |(name, namings): (&str, Vec<&Printed>)| -> Result<(), Halt<E>> {
        // Every print of a photo stands beside the others: where the folder is not wanted none of them is made.
        let is_wanted = |folder: &&String| wants(&format!("{folder}/"));
        let wanted = |one: &&Printed| one.folders.iter().any(|folder| is_wanted(&folder));
        let namings: Vec<&Printed> = namings.into_iter().filter(wanted).collect();
        if namings.is_empty() {
            return Ok(());
        }
        let fault = |fault: &Fault| {
            Halt::Broken(namings.iter().map(|one| photo_fault(&one.photo, fault)).collect())
        };
        // A photo that has gone since it was measured is as good as one that breaks off.
        let Some(Ok(bytes)) = sources.photo(name) else { return Err(fault(&Fault::Broken)) };
        let folders: Vec<&String> =
            namings.iter().flat_map(|one| &one.folders).filter(is_wanted).collect();
        let source = made_from(&bytes);
        let place =
            |folder: &str, (width, height)| format!("{folder}/{}", print_name(width, height));
        let measures = checked.model.photos.get(name).map(Vec::as_slice).unwrap_or_default();
        let places: Vec<String> = folders
            .iter()
            .flat_map(|folder| measures.iter().map(|size| place(folder, *size)))
            .collect();
        if !places.is_empty() && stand(&places, source) {
            return Ok(());
        }
        let prints = prints(&bytes).map_err(|found| fault(&found))?;
        for folder in folders {
            for print in &prints {
                let path = place(folder, (print.width, print.height));
                let file = File { path, bytes: print.bytes.clone(), made_from: Some(source) };
                take(file).map_err(Halt::Refused)?;
            }
        }
        Ok(())
    };
    let made: Vec<Result<(), Halt<E>>> = by_photo.into_par_iter().map(one).collect();
    let mut broken: Vec<Finding> = Vec::new();
    for result in made {
        match result {
            Ok(()) => {}
            Err(Halt::Broken(findings)) => broken.extend(findings),
            Err(refused) => return Err(refused),
        }
    }
    if broken.is_empty() {
        return Ok(());
    }
    finding::sort(&mut broken);
    Err(Halt::Broken(broken))
}

/// The photos that the private sheets of some animals show, or of all where none is named, for a sheet that is written by itself.
///
/// # Errors
/// A finding for every photo that breaks off.
pub fn private_photos(
    sources: &Sources,
    checked: &Checked,
    animals: &[String],
) -> Result<Vec<File>, Vec<Finding>> {
    let wants = |path: &str| {
        let key = path.strip_prefix("private/animals/").and_then(|rest| rest.split('/').next());
        key.is_some_and(|key| animals.is_empty() || animals.iter().any(|animal| animal == key))
    };
    super::pages::gathered(|keep| photos(sources, checked, &wants, &none_stands, keep))
}
