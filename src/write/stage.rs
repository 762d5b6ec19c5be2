//! Files on their way into the output folder.

#![expect(clippy::disallowed_methods, reason = "this room is where the disk is written")]
#![expect(clippy::disallowed_types, reason = "a lock is held on an open file")]

use std::collections::BTreeSet;
use std::fs::{File as OpenFile, OpenOptions, TryLockError};
use std::io;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use crate::render::File;

use super::{
    LIST, REQUESTED, WriteError, Written, create_folder, list_text, read_list,
    remove_empty_folders, remove_folder,
};

/// Where files wait until all of them are there.
const STAGE: &str = ".wardsheet-stage";
/// The same folder once all of them are: what is in it only needs to be moved.
const SWAP: &str = ".wardsheet-swap";
/// The new files, in the stage and the swap.
const FILES: &str = "files";
/// The new lists, in the stage and the swap.
const LISTS: &str = "lists";
/// Held while a run writes; the system lets it go when the run ends, however it ends.
const LOCK: &str = ".wardsheet-lock";

/// What became of a file that was put on the stage.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fate {
    /// There was none of that name.
    New,
    /// It has other bytes than the one in place.
    Changed,
    /// It is the same as the one in place, and was not written.
    Unchanged,
}

/// Files that wait to be put in place. One that is dropped before its swap leaves the output folder as it was.
#[derive(Debug)]
pub struct Stage {
    out: PathBuf,
    /// What the tool has written before, and so may replace.
    known: BTreeSet<String>,
    put: Mutex<Put>,
    _lock: OpenFile,
}

#[derive(Debug, Default)]
struct Put {
    paths: BTreeSet<String>,
    counts: Written,
}

impl Stage {
    /// Opens the output folder for writing, and finishes a swap that was interrupted.
    ///
    /// # Errors
    /// When the system refuses, or another run is writing to the folder.
    pub fn open(out: &Path) -> Result<Stage, WriteError> {
        let place = out.join(LOCK);
        create_folder(&place)?;
        let refused = |error| WriteError::Io(place.clone(), error);
        let lock = OpenOptions::new().create(true).append(true).open(&place).map_err(refused)?;
        match lock.try_lock() {
            Err(TryLockError::WouldBlock) => return Err(WriteError::Busy(out.to_owned())),
            // A disk that knows no locks, as some network drives: two runs at once are the user's to avoid there.
            Ok(()) | Err(TryLockError::Error(_)) => {}
        }
        finish(out)?;
        remove_folder(&out.join(STAGE))?;
        let mut known = read_list(out, LIST);
        known.extend(read_list(out, REQUESTED));
        Ok(Stage { out: out.to_owned(), known, put: Mutex::default(), _lock: lock })
    }

    /// Compares a file with the one in place, and lets it wait on the disk where they differ. Safe to call from many threads.
    ///
    /// # Errors
    /// When the system refuses, or a file that the tool has not written stands in the way.
    pub fn put(&self, file: &File) -> Result<Fate, WriteError> {
        let place = self.out.join(&file.path);
        let fate = match std::fs::metadata(&place) {
            Err(error) if is_absent(&error) => Fate::New,
            Err(error) => return Err(WriteError::Io(place, error)),
            Ok(about) if about.is_file() && holds(&place, about.len(), &file.bytes) => {
                Fate::Unchanged
            }
            Ok(about) if about.is_file() && self.known.contains(&file.path) => Fate::Changed,
            Ok(_) => return Err(WriteError::InTheWay(place)),
        };
        if fate != Fate::Unchanged {
            let waiting = self.out.join(STAGE).join(FILES).join(&file.path);
            create_folder(&waiting)?;
            std::fs::write(&waiting, &file.bytes)
                .map_err(|error| WriteError::Io(waiting.clone(), error))?;
        }
        let mut put = self.put.lock().unwrap_or_else(PoisonError::into_inner);
        put.paths.insert(file.path.clone());
        match fate {
            Fate::New => put.counts.new += 1,
            Fate::Changed => put.counts.changed += 1,
            Fate::Unchanged => put.counts.unchanged += 1,
        }
        Ok(fate)
    }

    /// Puts every file in place, and removes those of an earlier compile that were not put on the stage again.
    ///
    /// # Errors
    /// When the system refuses.
    pub fn swap(self) -> Result<Written, WriteError> {
        let paths = self.paths();
        self.swap_listed(LIST, &paths)
    }

    /// Puts every file in place and writes a list anew. What stood in that list and does no longer is removed.
    pub(super) fn swap_listed(
        self,
        list: &str,
        paths: &BTreeSet<String>,
    ) -> Result<Written, WriteError> {
        let mut counts = self.put.lock().unwrap_or_else(PoisonError::into_inner).counts;
        let text = list_text(paths);
        let is_listed = std::fs::read_to_string(self.out.join(list)).is_ok_and(|old| old == text);
        if is_listed && counts.new + counts.changed == 0 {
            return Ok(counts);
        }
        let stage = self.out.join(STAGE);
        // What may still run out of room is done before the step that counts: the list, and the folders to move to.
        let waiting = stage.join(LISTS).join(list);
        create_folder(&waiting)?;
        std::fs::write(&waiting, text).map_err(|error| WriteError::Io(waiting.clone(), error))?;
        for path in waiting_files(&stage)? {
            create_folder(&self.out.join(path))?;
        }
        let swap = self.out.join(SWAP);
        std::fs::rename(&stage, &swap).map_err(|error| WriteError::Io(swap, error))?;
        counts.removed = finish(&self.out)?;
        Ok(counts)
    }

    /// The files that were put on the stage.
    pub(super) fn paths(&self) -> BTreeSet<String> {
        self.put.lock().unwrap_or_else(PoisonError::into_inner).paths.clone()
    }
}

impl Drop for Stage {
    fn drop(&mut self) {
        // After a swap there is none; what cannot be removed now is removed by the next run.
        let _ = remove_folder(&self.out.join(STAGE));
        // A first run that came to nothing leaves nothing of its own; a folder with anything else in it stays.
        if self.known.is_empty() && !self.out.join(LIST).exists() {
            let _ = std::fs::remove_file(self.out.join(LOCK));
            let _ = std::fs::remove_dir(&self.out);
        }
    }
}

/// Moves what lies in the swap to its place, and removes what its lists no longer hold. Returns how many files were removed.
///
/// Every step can be done again, so that it does not matter where an earlier run was interrupted.
fn finish(out: &Path) -> Result<usize, WriteError> {
    let swap = out.join(SWAP);
    if !swap.is_dir() {
        return Ok(0);
    }
    for path in waiting_files(&swap)? {
        let (from, place) = (swap.join(FILES).join(&path), out.join(&path));
        create_folder(&place)?;
        std::fs::rename(&from, &place).map_err(|error| WriteError::Io(place, error))?;
    }
    let mut removed = 0;
    for list in [LIST, REQUESTED] {
        let from = swap.join(LISTS).join(list);
        if !from.is_file() {
            continue;
        }
        let now = read_list(&swap.join(LISTS), list);
        for stale in read_list(out, list).difference(&now) {
            let place = out.join(stale);
            if std::fs::remove_file(&place).is_ok() {
                removed += 1;
                remove_empty_folders(out, &place);
            }
        }
        let place = out.join(list);
        std::fs::rename(&from, &place).map_err(|error| WriteError::Io(place, error))?;
    }
    remove_folder(&swap)?;
    Ok(removed)
}

/// The files that wait in the stage or the swap, by their paths below the output folder, in order.
fn waiting_files(folder: &Path) -> Result<Vec<PathBuf>, WriteError> {
    let root = folder.join(FILES);
    let mut found = Vec::new();
    let mut open = vec![PathBuf::new()];
    while let Some(inside) = open.pop() {
        let folder = root.join(&inside);
        let refused = |error| WriteError::Io(folder.clone(), error);
        let entries = match std::fs::read_dir(&folder) {
            Err(error) if is_absent(&error) => continue,
            entries => entries.map_err(refused)?,
        };
        for entry in entries {
            let entry = entry.map_err(refused)?;
            let path = inside.join(entry.file_name());
            if entry.file_type().map_err(refused)?.is_dir() {
                open.push(path)
            } else {
                found.push(path)
            }
        }
    }
    found.sort();
    Ok(found)
}

fn is_absent(error: &io::Error) -> bool {
    matches!(error.kind(), io::ErrorKind::NotFound | io::ErrorKind::NotADirectory)
}

/// Tells whether the file at a place has these bytes.
fn holds(place: &Path, length: u64, bytes: &[u8]) -> bool {
    length == bytes.len() as u64 && std::fs::read(place).is_ok_and(|found| found == bytes)
}
