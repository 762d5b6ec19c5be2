//! The photos that animals and species name: whether each is a picture that can be used, and the sizes it is printed in.

use std::collections::BTreeMap;

use crate::finding::Finding;
use crate::model::{Model, Named};
use crate::photo::{Fault, LONGEST_SIDE, MOST_PIXELS, look, sizes};
use crate::source::Sources;

use super::codes;

/// Every photo that an animal or a species names, and where.
pub(super) fn named(model: &Model) -> impl Iterator<Item = Named> {
    let animals = model.animals.values().filter_map(|animal| animal.photo.clone());
    animals.chain(model.species.values().filter_map(|species| species.photo.clone()))
}

/// Reads the measures of a photo. One that is not there is left to the rules.
pub(super) fn measure(
    photo: &Named,
    sources: &Sources,
    photos: &mut BTreeMap<String, Vec<(u32, u32)>>,
    findings: &mut Vec<Finding>,
) {
    let name = &photo.name;
    if photos.contains_key(name) {
        return; // Two animals in one picture.
    }
    match sources.photo(name) {
        None => {}
        Some(Err((code, message))) => findings.push(
            Finding::new(code, photo.place, message).help("put a picture of a usual size there"),
        ),
        Some(Ok(bytes)) => match look(&bytes) {
            Ok(look) => {
                photos.insert(name.clone(), sizes(look));
            }
            Err(fault) => findings.push(told(photo, &fault)),
        },
    }
}

/// A photo that cannot be used, as a finding where it is named.
pub fn told(photo: &Named, fault: &Fault) -> Finding {
    let file = format!("`photos/{}`", photo.name);
    let (code, message, help) = match fault {
        Fault::NotAPicture => (
            &codes::PHOTO_UNREADABLE,
            format!("{file} is not a picture"),
            "name a JPEG, PNG or WebP file; the ending of a name does not make it one".to_owned(),
        ),
        Fault::Broken => (
            &codes::PHOTO_UNREADABLE,
            format!("{file} is a broken picture: it cannot be read to its end"),
            "copy it again from where it came from".to_owned(),
        ),
        Fault::KindNotRead(kind) => (
            &codes::PHOTO_KIND_NOT_READ,
            format!("{file} is a {kind} picture, and that kind is not read"),
            "save it as JPEG, PNG or WebP".to_owned(),
        ),
        Fault::TooLarge(width, height) => (
            &codes::PHOTO_TOO_LARGE,
            format!("{file} is {width} by {height} pixels, more than any photo needs"),
            format!(
                "make it smaller: at most {} million pixels, and {LONGEST_SIDE} on a side",
                MOST_PIXELS / 1_000_000
            ),
        ),
    };
    Finding::new(code, photo.place, message).help(help)
}
