//! The output tree: staged beside the old one, then put in place file by file.
//!
//! Every file is first written whole into a folder of its own under the output folder. Only when all of them are there are
//! they moved to their places, each in one step; what an earlier compile wrote and this one did not is then removed. A file
//! that the tool has not written is never touched: the list of those it has is kept beside them.

#![expect(clippy::disallowed_methods, reason = "this room is where the disk is written")]

mod append;
mod fresh;

use std::collections::BTreeSet;
use std::io;
use std::path::{Path, PathBuf};

use crate::render::File;

pub use append::{append_line, write_log};
pub use fresh::{FreshError, write_fresh, write_on_request, write_some};

/// The list of files that the tool has written, kept in the output folder.
const LIST: &str = ".wardsheet-files";
/// The list of sheets that were asked for by themselves; a compile leaves them.
const REQUESTED: &str = ".wardsheet-requested";
/// Where files wait until all of them are there.
const STAGE: &str = ".wardsheet-stage";

/// What a write has done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Written {
    /// How many files there are.
    pub files: usize,
    /// How many of them are new or have changed.
    pub changed: usize,
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
}

impl std::fmt::Display for WriteError {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            WriteError::Io(path, error) => write!(out, "cannot write {}: {error}", path.display()),
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
    let earlier = read_list(out, LIST);
    let changed = place_files(out, files, &earlier)?;
    let now: BTreeSet<String> = files.iter().map(|file| file.path.clone()).collect();
    let mut removed = 0;
    for stale in earlier.difference(&now) {
        let place = out.join(stale);
        if std::fs::remove_file(&place).is_ok() {
            removed += 1;
            remove_empty_folders(out, &place);
        }
    }
    write_list(out, LIST, &now)?;
    Ok(Written { files: files.len(), changed, removed })
}

/// Stages the files that are new or have changed, then moves them to their places. Returns how many there were.
fn place_files(
    out: &Path,
    files: &[File],
    earlier: &BTreeSet<String>,
) -> Result<usize, WriteError> {
    let stage = out.join(STAGE);
    remove_stage(&stage)?;
    let mut staged = Vec::new();
    for file in files {
        let place = out.join(&file.path);
        match std::fs::read(&place) {
            Ok(bytes) if bytes == file.bytes => continue,
            Ok(_) if !earlier.contains(&file.path) => {
                remove_stage(&stage)?;
                return Err(WriteError::InTheWay(place));
            }
            _ => {}
        }
        let waiting = stage.join(&file.path);
        create_folder(&waiting)?;
        std::fs::write(&waiting, &file.bytes)
            .map_err(|error| WriteError::Io(waiting.clone(), error))?;
        staged.push((waiting, place));
    }
    // Both lists hold while files are being moved, so that an interruption leaves nothing unaccounted for.
    let both: BTreeSet<String> =
        earlier.iter().cloned().chain(files.iter().map(|file| file.path.clone())).collect();
    write_list(out, LIST, &both)?;
    let changed = staged.len();
    for (waiting, place) in staged {
        create_folder(&place)?;
        std::fs::rename(&waiting, &place).map_err(|error| WriteError::Io(place, error))?;
    }
    remove_stage(&stage)?;
    Ok(changed)
}

fn read_list(out: &Path, list: &str) -> BTreeSet<String> {
    let text = std::fs::read_to_string(out.join(list)).unwrap_or_default();
    // A line that leads out of the folder is none of ours.
    let own = |line: &&str| {
        !line.is_empty() && !line.starts_with('/') && line.split('/').all(|part| part != "..")
    };
    text.lines().filter(own).map(str::to_owned).collect()
}

fn write_list(out: &Path, list: &str, files: &BTreeSet<String>) -> Result<(), WriteError> {
    let text: String = files.iter().map(|path| format!("{path}\n")).collect();
    let place = out.join(list);
    if std::fs::read_to_string(&place).is_ok_and(|old| old == text) {
        return Ok(());
    }
    let waiting = out.join(format!("{list}.new"));
    create_folder(&waiting)?;
    std::fs::write(&waiting, text).map_err(|error| WriteError::Io(waiting.clone(), error))?;
    std::fs::rename(&waiting, &place).map_err(|error| WriteError::Io(place, error))
}

fn create_folder(file: &Path) -> Result<(), WriteError> {
    let folder = file.parent().unwrap_or(file);
    std::fs::create_dir_all(folder).map_err(|error| WriteError::Io(folder.to_owned(), error))
}

fn remove_stage(stage: &Path) -> Result<(), WriteError> {
    match std::fs::remove_dir_all(stage) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => {
            Err(WriteError::Io(stage.to_owned(), error))
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
