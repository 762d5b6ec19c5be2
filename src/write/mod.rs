//! The output tree: staged beside the old one, then put in place in one sweep.
//!
//! A [`Stage`] takes one file at a time, from any number of threads, so that no more of the output is in memory than is being
//! worked on. A file that is on the disk already, byte for byte, is left alone; any other is written whole into a folder of its
//! own under the output folder. Only when all of them are there does that folder take the name of the swap, in one step of the
//! system. From then on the new site counts: its files are moved to their places, each in one step, and what an earlier compile
//! wrote and this one did not is removed. Whatever is interrupted before that step leaves the old site whole; what is
//! interrupted after it is finished by the next write, since all that is needed lies in the swap.
//!
//! A file that the tool has not written is never touched: the list of those it has is kept beside them.

#![expect(clippy::disallowed_methods, reason = "this room is where the disk is written")]

mod append;
mod fresh;
mod stage;

use std::collections::BTreeMap;
use std::hash::{DefaultHasher, Hash as _, Hasher as _};
use std::io;
use std::path::{Path, PathBuf};

use crate::render::File;

pub use append::{append_line, write_log};
pub use fresh::{FreshError, write_fresh, write_on_request, write_some};
pub use stage::{Fate, Stage};

/// The list of files that the tool has written, kept in the output folder.
const LIST: &str = ".wardsheet-files";
/// The list of sheets that were asked for by themselves; a compile leaves them.
const REQUESTED: &str = ".wardsheet-requested";

/// What a write has done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Written {
    /// How many files are there that were not.
    pub new: usize,
    /// How many files have other bytes than before.
    pub changed: usize,
    /// How many files are as they were, and were not written.
    pub unchanged: usize,
    /// How many files of an earlier compile were removed.
    pub removed: usize,
}

/// Why nothing, or not everything, could be written.
#[derive(Debug)]
pub enum WriteError {
    /// The system refused.
    Io(PathBuf, io::Error),
    /// A file stands in the way that the tool has not written.
    InTheWay(PathBuf),
    /// Another run is writing to the same folder.
    Busy(PathBuf),
}

impl std::fmt::Display for WriteError {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            WriteError::Io(path, error) => write!(out, "cannot write {}: {error}", path.display()),
            WriteError::Busy(path) => {
                write!(out, "another run of wardsheet is writing to {}", path.display())
            }
            WriteError::InTheWay(path) => {
                write!(
                    out,
                    "{} was not written by wardsheet and stands in the way; move it elsewhere",
                    path.display()
                )
            }
        }
    }
}

impl std::error::Error for WriteError {}

/// Writes the files below `out`, and removes those that an earlier compile wrote and this one did not.
///
/// A file whose bytes have not changed is left as it is. Nothing in place is changed before every new file is on the disk.
///
/// # Errors
/// When the system refuses, or a file that the tool has not written stands in the way.
pub fn write(out: &Path, files: &[File]) -> Result<Written, WriteError> {
    let stage = Stage::open(out)?;
    files.iter().try_for_each(|file| stage.put(file).map(|_| ()))?;
    stage.swap()
}

/// What is known of a file that is costly to make: what it was made from, and its bytes, each as a number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Mark {
    made_from: u64,
    bytes: u64,
}

impl Mark {
    fn of(made_from: u64, bytes: &[u8]) -> Mark {
        let mut hasher = DefaultHasher::new();
        bytes.hash(&mut hasher);
        Mark { made_from, bytes: hasher.finish() }
    }
}

/// A list of files, each on a line, with its mark behind a tab where it has one.
type List = BTreeMap<String, Option<Mark>>;

fn read_list(out: &Path, list: &str) -> List {
    let text = std::fs::read_to_string(out.join(list)).unwrap_or_default();
    // A line that leads out of the folder is none of ours.
    let own = |path: &str| {
        !path.is_empty() && !path.starts_with('/') && path.split('/').all(|part| part != "..")
    };
    let entry = |line: &str| {
        let mut parts = line.split('\t');
        let path = parts.next().filter(|path| own(path))?.to_owned();
        let mut number = || u64::from_str_radix(parts.next()?, 16).ok();
        let mark = number().zip(number()).map(|(made_from, bytes)| Mark { made_from, bytes });
        Some((path, mark))
    };
    text.lines().filter_map(entry).collect()
}

fn list_text(files: &List) -> String {
    let line = |(path, mark): (&String, &Option<Mark>)| match mark {
        Some(mark) => format!("{path}\t{:016x}\t{:016x}\n", mark.made_from, mark.bytes),
        None => format!("{path}\n"),
    };
    files.iter().map(line).collect()
}

fn create_folder(file: &Path) -> Result<(), WriteError> {
    let folder = file.parent().unwrap_or(file);
    std::fs::create_dir_all(folder).map_err(|error| WriteError::Io(folder.to_owned(), error))
}

fn remove_folder(folder: &Path) -> Result<(), WriteError> {
    match std::fs::remove_dir_all(folder) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => {
            Err(WriteError::Io(folder.to_owned(), error))
        }
        _ => Ok(()),
    }
}

fn remove_empty_folders(out: &Path, file: &Path) {
    for folder in file.ancestors().skip(1).take_while(|folder| *folder != out) {
        if std::fs::remove_dir(folder).is_err() {
            break; // It still holds something.
        }
    }
}
