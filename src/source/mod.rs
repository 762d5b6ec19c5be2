//! Texts in memory and the files they came from.
//!
//! [`read`] brings a site's folder in, [`library`] the built-in one; what comes out is a [`Sources`]: every text with its
//! role and its name, in a fixed order. Nothing here judges care or knows what a text means.

pub mod codes;
pub mod git;
pub mod library;
pub mod name;
pub mod read;

mod bytes;

pub use git::{GitError, Repository};
pub use library::{in_language, is_language_tag};
pub use read::{Folder, ReadError, text_of};

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
    /// `species/law/NAME.toml`: what the law of a place asks.
    Law,
    /// `species/NAME.toml`.
    Species,
    /// `species/NAME.override.toml`: single figures in place of a farther folder's.
    Override,
    /// `species/NAME.md`.
    Words,
    /// `animals/NAME.toml`.
    Animal,
    /// `animals/NAME.csv`.
    Log,
    /// `readings/NAME.csv`: what a data logger has recorded.
    Readings,
    /// `maps/NAME.toml`: which column of a table means what.
    Map,
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
            Role::Law => "jurisdiction",
            Role::Species => "species",
            Role::Override => "the overrides of species",
            Role::Words => "the words of species",
            Role::Animal => "animal",
            Role::Log => "the log of animal",
            Role::Readings => "the readings",
            Role::Map => "the map",
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
    /// The nearest file of every role and name: a site of many animals is asked for each of theirs.
    nearest: std::collections::BTreeMap<Role, std::collections::BTreeMap<String, FileId>>,
    photos: std::collections::BTreeMap<String, Photo>,
    faces: std::collections::BTreeMap<FileId, Vec<u8>>,
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
        let of_role = self.nearest.entry(role).or_default();
        match of_role.get(name).and_then(|known| self.files.get(known.0 as usize)) {
            Some(known) if known.layer <= layer => {}
            _ => {
                of_role.insert(name.to_owned(), id);
            }
        }
        self.files.push(SourceFile {
            id,
            path: path.into(),
            role,
            name: name.to_owned(),
            layer,
            text,
        });
        let nearest = self.nearest.entry(role).or_default().entry(name.to_owned()).or_insert(id);
        if layer < self.files[nearest.0 as usize].layer {
            *nearest = id;
        }
        id
    }

    /// Adds a face of the theme, which is no text, and gives it its number.
    pub fn add_face(
        &mut self,
        path: impl Into<String>,
        name: &str,
        layer: Layer,
        bytes: Vec<u8>,
    ) -> FileId {
        let id = self.add(path, Role::Theme, name, layer, String::new());
        self.faces.insert(id, bytes);
        id
    }

    /// What stands in a file: the bytes of a face, the text of any other.
    pub fn bytes<'a>(&'a self, file: &'a SourceFile) -> &'a [u8] {
        self.faces.get(&file.id).map_or(file.text.as_bytes(), Vec::as_slice)
    }

    /// Notes that a photo exists under `photos/`, by its file name.
    pub fn add_photo(&mut self, file_name: String, photo: Photo) {
        self.photos.insert(file_name, photo);
    }

    /// Tells whether `photos/` holds a file of that name.
    pub fn has_photo(&self, file_name: &str) -> bool {
        self.photos.contains_key(file_name)
    }

    /// Tells whether the same photos exist in both.
    pub fn same_photos(&self, other: &Sources) -> bool {
        self.photos.keys().eq(other.photos.keys())
    }

    /// The same files under the same numbers, but those that the test names count for nothing.
    ///
    /// What is left can be looked at by itself, and a finding in it stands where it stands in the whole.
    pub fn setting_aside(&self, test: impl Fn(&SourceFile) -> bool) -> Sources {
        let set_aside = |file: &SourceFile| SourceFile {
            role: Role::Page,
            name: String::new(),
            text: String::new(),
            id: file.id,
            path: file.path.clone(),
            layer: file.layer,
        };
        let kept = |file| if test(file) { set_aside(file) } else { file.clone() };
        let mut left = Sources { photos: self.photos.clone(), ..Sources::default() };
        for file in self.files.iter().map(kept) {
            let id = left.add(file.path, file.role, &file.name, file.layer, file.text);
            if let Some(face) = self.faces.get(&id) {
                left.faces.insert(id, face.clone());
            }
        }
        left
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
        self.file(*self.nearest.get(&role)?.get(name)?)
    }

    /// The nearest file of every name of a role, by name.
    pub fn nearest(&self, role: Role) -> std::collections::BTreeMap<&str, &SourceFile> {
        let named = self.nearest.get(&role).into_iter().flatten();
        named.filter_map(|(name, id)| Some((name.as_str(), self.file(*id)?))).collect()
    }

    /// A file by its number.
    fn file(&self, id: FileId) -> Option<&SourceFile> {
        self.files.get(id.0 as usize)
    }

    /// A file's path and text, for drawing.
    pub fn shown(&self, id: FileId) -> Shown<'_> {
        match self.files.get(id.0 as usize) {
            Some(file) => Shown { path: &file.path, text: &file.text },
            None => Shown { path: "", text: "" },
        }
    }
}
