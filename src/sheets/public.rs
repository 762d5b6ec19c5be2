//! What of an animal may be public. Public sheets are built from this and cannot hold anything else.

use jiff::civil::Date;

use crate::model::word::{Basis, Sex, Status};
use crate::model::{Animal, Model};

/// The public part of a published animal.
#[derive(Debug, Clone, PartialEq)]
pub struct PublicAnimal {
    /// Its name.
    pub name: String,
    /// Its species' name in files and addresses.
    pub species: String,
    /// Its species' common name.
    pub species_name: String,
    /// Its form's name.
    pub form: Option<String>,
    /// Its sex.
    pub sex: Sex,
    /// When it hatched, and how sure that is.
    pub hatched: Option<(Date, Basis)>,
    /// How it stands with its keeper.
    pub status: Status,
    /// Its story.
    pub story: Option<String>,
    /// The sizes in which its photo is printed, width and height in pixels.
    pub photo: Option<Vec<(u32, u32)>>,
    /// What the photo shows.
    pub photo_shows: Option<String>,
}

impl PublicAnimal {
    /// The public part of an animal; none unless it is published.
    pub fn of(model: &Model, animal: &Animal) -> Option<PublicAnimal> {
        if !animal.publish {
            return None;
        }
        let species = model.species.get(&animal.species.name)?;
        let form = animal.form.as_ref().and_then(|form| species.size.forms.get(&form.name));
        Some(PublicAnimal {
            name: animal.name.clone(),
            species: animal.species.name.clone(),
            species_name: species.name.clone(),
            form: form.map(|form| form.name.clone()),
            sex: animal.sex,
            hatched: animal.hatched.map(|(date, basis, _)| (date, basis)),
            status: animal.status,
            story: animal.story.clone(),
            photo: animal.photo.as_ref().and_then(|photo| model.photos.get(&photo.name)).cloned(),
            photo_shows: animal.photo_shows.clone(),
        })
    }
}
