//! The picture of an animal or a species, and what is drawn where there is none.

use serde::Serialize;

use crate::model::word::Word;
use crate::model::{Animal, Named, Species};

use super::edition::Edition;
use super::public::PublicAnimal;

/// A picture on a sheet. Without prints it is a drawing of the kind of animal, with room for a photo on paper.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Picture {
    /// The sizes there are, from the smallest up.
    pub prints: Vec<PrintLink>,
    /// What it shows, for those who do not see it.
    pub shows: String,
    /// What kind of animal it is.
    pub kind: String,
}

/// One size of a picture.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct PrintLink {
    /// Where it stands, from the root of the site's part.
    pub href: String,
    /// Width, pixels.
    pub width: u32,
    /// Height, pixels.
    pub height: u32,
}

/// The name of a print in the folder of its page. The longer side tells the sizes apart; the name of the photo itself, which may
/// tell more than it should, is never used.
pub fn print_name(width: u32, height: u32) -> String {
    format!("photo-{}.jpg", width.max(height))
}

/// The picture of an animal on its private sheets.
pub(super) fn of_animal(
    edition: &Edition<'_>,
    key: &str,
    animal: &Animal,
    species: &Species,
) -> Picture {
    let sizes = animal.photo.as_ref().and_then(|photo| edition.photos.get(&photo.name));
    picture(edition, &animal_folder(key), sizes, &animal.photo_shows, &animal.name, species)
}

/// The picture of a published animal.
pub(super) fn of_public(
    edition: &Edition<'_>,
    key: &str,
    animal: &PublicAnimal,
    species: &Species,
) -> Picture {
    let sizes = animal.photo.as_ref();
    picture(edition, &animal_folder(key), sizes, &animal.photo_shows, &animal.name, species)
}

/// The picture of a species; none where it has no photo.
pub(super) fn of_species(edition: &Edition<'_>, key: &str, species: &Species) -> Option<Picture> {
    let sizes = edition.photos.get(&species.photo.as_ref()?.name)?;
    let name = edition.name(species);
    Some(picture(edition, &species_folder(key), Some(sizes), &species.photo_shows, name, species))
}

fn picture(
    edition: &Edition<'_>,
    folder: &str,
    sizes: Option<&Vec<(u32, u32)>>,
    shows: &Option<String>,
    name: &str,
    species: &Species,
) -> Picture {
    let kind = species.kind.spelling().to_owned();
    let print = |&(width, height): &(u32, u32)| {
        let href = format!("{folder}/{}", print_name(width, height));
        PrintLink { href, width, height }
    };
    let prints: Vec<PrintLink> = sizes.into_iter().flatten().map(print).collect();
    let shows = match shows {
        Some(shows) if !prints.is_empty() => shows.clone(),
        _ if prints.is_empty() => {
            let animal = edition.word("picture-of", species.kind);
            edition.tell("picture-none", [("name", name.into()), ("animal", animal.into())])
        }
        _ => name.to_owned(),
    };
    Picture { prints, shows, kind }
}

fn animal_folder(key: &str) -> String {
    format!("animals/{key}")
}

fn species_folder(key: &str) -> String {
    format!("species/{key}")
}

/// A photo and the folders, below the output folder, in which its prints stand.
#[derive(Debug, Clone, PartialEq)]
pub struct Printed {
    /// The photo, and where it is named.
    pub photo: Named,
    /// The folders.
    pub folders: Vec<String>,
}

/// Every photo that a page shows. Only that of a published animal that is kept, or of a species, has prints in the public part.
pub fn printed(edition: &Edition<'_>) -> Vec<Printed> {
    let readable = |photo: &Option<Named>| {
        photo.clone().filter(|photo| edition.photos.contains_key(&photo.name))
    };
    let mut all = Vec::new();
    for (key, animal) in &edition.animals {
        let Some(photo) = readable(&animal.photo) else { continue };
        let folder = animal_folder(key);
        let mut folders = vec![format!("private/{folder}")];
        if animal.is_kept() && PublicAnimal::of(edition, animal).is_some() {
            folders.push(format!("public/{folder}"));
        }
        all.push(Printed { photo, folders });
    }
    for (key, species) in &edition.species {
        let Some(photo) = readable(&species.photo) else { continue };
        all.push(Printed { photo, folders: vec![format!("public/{}", species_folder(key))] });
    }
    all
}
