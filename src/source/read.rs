//! Brings a site's folder in from the disk.

#![expect(
    clippy::disallowed_methods,
    clippy::disallowed_types,
    reason = "this room is where the disk is read"
)]

use std::io::{self, Read as _};
use std::path::{Path, PathBuf};

use walkdir::WalkDir;

use crate::finding::{Finding, Place};

use super::bytes::{LARGEST_BYTES, decoded, largest, not_utf8, over};
use super::library::role_of;
use super::{Layer, Photo, Role, Sources, codes};

/// A site's folder that is known to hold a `wardsheet.toml`.
#[derive(Debug, Clone)]
pub struct Folder(PathBuf);

/// Why a site's folder could not be opened at all.
#[derive(Debug)]
pub enum ReadError {
    /// There is no such folder.
    NoFolder(PathBuf),
    /// Neither the folder nor, where none was named, any folder above it holds a `wardsheet.toml`.
    NotASite(PathBuf),
    /// A library that the site names is not a folder.
    NoLibrary(String),
}

impl std::fmt::Display for ReadError {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            ReadError::NoFolder(path) => write!(out, "there is no folder {}", path.display()),
            ReadError::NotASite(path) => write!(
                out,
                "{} holds no wardsheet.toml; `wardsheet start DIR` lays out a new site, `--site DIR` names another folder",
                path.display()
            ),
            ReadError::NoLibrary(name) => {
                write!(
                    out,
                    "wardsheet.toml names the library `{name}`, and there is no such folder"
                )
            }
        }
    }
}

impl std::error::Error for ReadError {}

impl Folder {
    /// Opens the folder that the user named, or finds the nearest one upwards from `here`.
    ///
    /// # Errors
    /// When there is no such folder, or it is not a site.
    pub fn find(named: Option<&Path>, here: &Path) -> Result<Folder, ReadError> {
        let is_site = |path: &Path| path.join("wardsheet.toml").is_file();
        match named {
            Some(path) if !path.is_dir() => Err(ReadError::NoFolder(path.to_owned())),
            Some(path) if !is_site(path) => Err(ReadError::NotASite(path.to_owned())),
            Some(path) => Ok(Folder(path.to_owned())),
            None => match here.ancestors().find(|path| is_site(path)) {
                Some(path) => Ok(Folder(path.to_owned())),
                None => Err(ReadError::NotASite(here.to_owned())),
            },
        }
    }

    /// The folder's path.
    pub fn path(&self) -> &Path {
        &self.0
    }

    /// Reads `wardsheet.toml` alone: it says which libraries the rest needs.
    pub fn read_site_file(&self) -> (Sources, Vec<Finding>) {
        let mut reading = Reading::default();
        reading.file(&self.0.join("wardsheet.toml"), "wardsheet.toml", Layer::Own);
        (reading.sources, reading.findings)
    }

    /// Reads everything: the site's own files, its libraries from the nearest on, and the built-in look.
    ///
    /// # Errors
    /// When a library is not a folder. What is wrong with single files is a finding.
    pub fn read(&self, libraries: &[String]) -> Result<(Sources, Vec<Finding>), ReadError> {
        let mut reading = Reading::default();
        reading.folder(&self.0, "", Layer::Own);
        for (number, library) in libraries.iter().enumerate() {
            if library == "builtin" {
                super::library::add_species(&mut reading.sources);
                continue;
            }
            let path = self.0.join(library);
            if !path.is_dir() {
                return Err(ReadError::NoLibrary(library.clone()));
            }
            let layer = Layer::Library(u16::try_from(number).unwrap_or(u16::MAX));
            reading.folder(&path, &format!("{}/", library.trim_end_matches('/')), layer);
        }
        super::library::add_look(&mut reading.sources);
        reading.report_names_taken_twice();
        Ok((reading.sources, reading.findings))
    }
}

#[derive(Default)]
pub(super) struct Reading {
    pub(super) sources: Sources,
    pub(super) findings: Vec<Finding>,
}

/// What is read of a folder. A library lends its species and what they refer to, nothing else.
pub(super) fn parts(layer: Layer) -> &'static [&'static str] {
    match layer {
        Layer::Own => &[
            "wardsheet.toml",
            "private.toml",
            "sources.toml",
            "species",
            "animals",
            "readings",
            "maps",
            "pages",
            "photos",
            "templates",
            "theme",
        ],
        _ => &["sources.toml", "species"],
    }
}

impl Reading {
    pub(super) fn folder(&mut self, folder: &Path, shown: &str, layer: Layer) {
        for part in parts(layer) {
            let start = folder.join(part);
            if !start.exists() {
                continue;
            }
            for entry in WalkDir::new(&start).follow_links(true).sort_by_file_name() {
                match entry {
                    Ok(entry) if entry.file_type().is_file() => {
                        self.entry(folder, entry.path(), shown, layer)
                    }
                    Ok(_) => {}
                    Err(error) => self.walk_error(folder, &error, shown, layer),
                }
            }
        }
    }

    fn entry(&mut self, folder: &Path, path: &Path, shown: &str, layer: Layer) {
        let inside = inside(folder, path);
        match inside.strip_prefix("photos/") {
            Some(photo) => {
                self.sources.add_photo(photo.to_owned(), Photo::OnDisk(path.to_owned()));
            }
            None => self.file(path, &inside, layer).map_or((), |id| self.rename(id, shown)),
        }
    }

    pub(super) fn rename(&mut self, id: usize, shown: &str) {
        if !shown.is_empty() {
            let path = format!("{shown}{}", self.sources.files[id].path);
            self.sources.files[id].path = path;
        }
    }

    fn file(&mut self, path: &Path, inside: &str, layer: Layer) -> Option<usize> {
        let (role, _) = role_of(inside)?;
        self.bytes(inside, layer, read_bytes(path, largest(role)))
    }

    /// Takes in a file as it was read, or why it could not be; none where a site has no file of that path.
    pub(super) fn bytes(
        &mut self,
        inside: &str,
        layer: Layer,
        read: Result<Vec<u8>, Fault>,
    ) -> Option<usize> {
        let (bytes, fault) = match read {
            Ok(bytes) => (bytes, None),
            Err(fault) => (Vec::new(), Some(fault)),
        };
        let (id, findings) = self.sources.add_bytes(inside, layer, bytes)?;
        let fault = fault.map(|(code, why)| Finding::new(code, Place::start_of(id), why));
        self.findings.extend(fault);
        self.findings.extend(findings);
        Some(id.0 as usize)
    }

    fn walk_error(&mut self, folder: &Path, error: &walkdir::Error, shown: &str, layer: Layer) {
        let path = error.path().map(|path| inside(folder, path)).unwrap_or_default();
        let id = self.sources.add(format!("{shown}{path}"), Role::Page, "", layer, String::new());
        let finding = match error.loop_ancestor() {
            Some(_) => Finding::new(
                &codes::LINK_LOOP,
                Place::start_of(id),
                "this link leads back to a folder above it",
            )
            .help("remove the link"),
            None => Finding::new(
                &codes::FILE_UNREADABLE,
                Place::start_of(id),
                unreadable(error.io_error()),
            ),
        };
        self.findings.push(finding);
    }

    pub(super) fn report_names_taken_twice(&mut self) {
        let mut seen = std::collections::BTreeMap::new();
        let mut twice = Vec::new();
        for file in &self.sources.files {
            if file.name.is_empty() || matches!(file.role, Role::Bibliography) {
                continue;
            }
            match seen.insert((file.role, file.layer, file.name.to_lowercase()), file) {
                None => {}
                Some(first) => {
                    twice.push((file.id, first.id, first.path.clone(), file.name.clone()))
                }
            }
        }
        for (file, first, path, name) in twice {
            let message = format!("the name `{name}` is already taken by {path}");
            self.findings.push(
                Finding::new(&codes::NAME_TAKEN_TWICE, Place::start_of(file), message)
                    .help("rename one of the two files: the name is the address of its page")
                    .also_at(Place::start_of(first), "taken here"),
            );
        }
    }
}

impl Sources {
    /// The bytes of a photo under `photos/`, by its file name; none where there is no such file.
    ///
    /// # Errors
    /// A code and a sentence, where the file cannot be read or is too large for a photo.
    pub fn photo(&self, file_name: &str) -> Option<Result<std::sync::Arc<[u8]>, Fault>> {
        let path = match self.photos.get(file_name)? {
            Photo::InMemory(bytes) => return Some(Ok(std::sync::Arc::clone(bytes))),
            Photo::OnDisk(path) => path,
        };
        if is_over(path, LARGEST_BYTES) {
            let (code, why) = over(LARGEST_BYTES);
            return Some(Err((
                code,
                why.replacen("this file", &format!("`photos/{file_name}`"), 1),
            )));
        }
        let read = std::fs::read(path).map(std::sync::Arc::from);
        Some(read.map_err(|error| {
            let why = unreadable(Some(&error)).replacen("this file", "the file", 1);
            (&codes::FILE_UNREADABLE, format!("`photos/{file_name}`: {why}"))
        }))
    }
}

/// The path inside the site's folder, with forward slashes on every system.
fn inside(folder: &Path, path: &Path) -> String {
    path.strip_prefix(folder).unwrap_or(path).to_string_lossy().replace('\\', "/")
}

/// What is wrong with a file: the code and the sentence of a finding.
pub type Fault = (&'static crate::finding::Code, String);

/// Reads a file by itself, such as a spreadsheet that is brought in: its text without a byte order mark.
///
/// # Errors
/// One sentence: why it cannot be read, or that it is not UTF-8 text.
pub fn text_of(path: &Path) -> Result<String, String> {
    match decoded(read_bytes(path, LARGEST_BYTES).map_err(|(_, why)| why)?) {
        (text, None) => Ok(text),
        (_, Some(line)) => Err(not_utf8(line)),
    }
}

fn read_bytes(path: &Path, limit: usize) -> Result<Vec<u8>, Fault> {
    if is_over(path, limit) {
        return Err(over(limit));
    }
    let mut bytes = Vec::new();
    // A device has no size and no end, and a file may grow while it is read.
    let read = std::fs::File::open(path)
        .and_then(|file| file.take(limit as u64 + 1).read_to_end(&mut bytes));
    match read {
        Ok(_) if bytes.len() > limit => Err(over(limit)),
        Ok(_) => Ok(bytes),
        Err(error) => Err((&codes::FILE_UNREADABLE, unreadable(Some(&error)))),
    }
}

fn is_over(path: &Path, limit: usize) -> bool {
    std::fs::metadata(path).is_ok_and(|about| about.len() > limit as u64)
}

fn unreadable(error: Option<&io::Error>) -> String {
    match error.map(io::Error::kind) {
        Some(io::ErrorKind::PermissionDenied) => {
            "this file may not be read: permission denied".to_owned()
        }
        Some(io::ErrorKind::NotFound) => "this file is not there: a link leads nowhere".to_owned(),
        _ => error.map_or("this file cannot be read".to_owned(), |error| {
            format!("this file cannot be read: {error}")
        }),
    }
}
