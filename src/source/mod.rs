//! Texts in memory and the files they came from.
//!
//! [`read`] brings a site's folder in, [`library`] the built-in one; what comes out is a [`Sources`]: every text with its
//! role and its name, in a fixed order. Nothing here judges care or knows what a text means.

pub mod codes;
pub mod library;
pub mod name;
pub mod read;

pub use read::{Folder, ReadError};

use crate::finding::FileId;
use crate::finding::draw::Shown;

/// What a file is for, told by where it stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Role {
    /// `wardsheet.toml`.
    Site,
    /// `private.toml`.
    Private,
    /// `sources.toml`: the bibliography.
    Bibliography,
    /// `species/standards/NAME.toml`: a published standard.
    Standard,
    /// `species/NAME.toml`.
    Species,
    /// `species/NAME.md`.
    Words,
    /// `animals/NAME.toml`.
    Animal,
    /// `animals/NAME.csv`.
    Log,
    /// `pages/NAME.md`.
    Page,
    /// `templates/NAME.html`.
    Template,
    /// `theme/NAME`.
    Theme,
}

impl Role {
    /// What it is called in findings.
    pub fn noun(self) -> &'static str {
        match self {
            Role::Site => "the site's file",
            Role::Private => "the private file",
            Role::Bibliography => "the bibliography",
            Role::Standard => "standard",
            Role::Species => "species",
            Role::Words => "the words of species",
            Role::Animal => "animal",
            Role::Log => "the log of animal",
            Role::Page => "page",
            Role::Template => "template",
            Role::Theme => "theme file",
        }
    }
}

/// Which folder a file comes from. A nearer layer takes the place of a farther one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Layer {
    /// The site's own folder.
    Own,
    /// A library folder that the site names, counted from the nearest.
    Library(u16),
    /// The built-in library.
    BuiltIn,
}

/// One text and where it comes from.
#[derive(Debug, Clone)]
pub struct SourceFile {
    /// Its number.
    pub id: FileId,
    /// Its path as shown to people, with forward slashes.
    pub path: String,
    /// What it is for.
    pub role: Role,
    /// The name that its path gives it, `corn-snake` for `species/corn-snake.toml`.
    pub name: String,
    /// The folder it comes from.
    pub layer: Layer,
    /// Its text.
    pub text: String,
}

/// All the texts of one compile, in a fixed order.
#[derive(Debug, Clone, Default)]
pub struct Sources {
    files: Vec<SourceFile>,
    photos: std::collections::BTreeMap<String, Photo>,
}

/// Where the bytes of a photo are. A photo is a hundred times as large as a text, and most of a site's are on no page of the
/// day, so they stay on the disk until they are asked for.
#[derive(Debug, Clone)]
pub enum Photo {
    /// In a file.
    OnDisk(std::path::PathBuf),
    /// Here.
    InMemory(std::sync::Arc<[u8]>),
}

impl Sources {
    /// Adds a text and gives it its number.
    pub fn add(
        &mut self,
        path: impl Into<String>,
        role: Role,
        name: &str,
        layer: Layer,
        text: String,
    ) -> FileId {
        let id = FileId(u32::try_from(self.files.len()).unwrap_or(u32::MAX));
        self.files.push(SourceFile {
            id,
            path: path.into(),
            role,
            name: name.to_owned(),
            layer,
            text,
        });
        id
    }

    /// Notes that a photo exists under `photos/`, by its file name.
    pub fn add_photo(&mut self, file_name: String, photo: Photo) {
        self.photos.insert(file_name, photo);
    }

    /// Tells whether `photos/` holds a file of that name.
    pub fn has_photo(&self, file_name: &str) -> bool {
        self.photos.contains_key(file_name)
    }

    /// Every file, in the order of reading.
    pub fn files(&self) -> &[SourceFile] {
        &self.files
    }

    /// Every file of a role, in the order of reading: nearest layer first, then by name.
    pub fn of(&self, role: Role) -> impl Iterator<Item = &SourceFile> {
        self.files.iter().filter(move |file| file.role == role)
    }

    /// The nearest file of a role and name.
    pub fn named(&self, role: Role, name: &str) -> Option<&SourceFile> {
        self.of(role).filter(|file| file.name == name).min_by_key(|file| file.layer)
    }

    /// The nearest file of every name of a role, by name.
    pub fn nearest(&self, role: Role) -> std::collections::BTreeMap<&str, &SourceFile> {
        let mut nearest: std::collections::BTreeMap<&str, &SourceFile> =
            std::collections::BTreeMap::new();
        for file in self.of(role) {
            let kept = nearest.entry(&file.name).or_insert(file);
            if file.layer < kept.layer {
                *kept = file;
            }
        }
        nearest
    }

    /// A file's path and text, for drawing.
    pub fn shown(&self, id: FileId) -> Shown<'_> {
        match self.files.get(id.0 as usize) {
            Some(file) => Shown { path: &file.path, text: &file.text },
            None => Shown { path: "", text: "" },
        }
    }
}
