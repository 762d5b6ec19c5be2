//! Files on their way into the output folder.

#![expect(clippy::disallowed_methods, reason = "this room is where the disk is written")]
#![expect(clippy::disallowed_types, reason = "a lock is held on an open file")]

use std::fs::{File as OpenFile, OpenOptions, TryLockError};
use std::io;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use crate::render::File;

use super::{
    LIST, List, Mark, REQUESTED, WriteError, Written, create_folder, list_text, read_list,
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
    known: List,
    put: Mutex<Put>,
    _lock: OpenFile,
}

#[derive(Debug, Default)]
struct Put {
    files: List,
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
            Ok(about) if about.is_file() && self.known.contains_key(&file.path) => Fate::Changed,
            Ok(_) => return Err(WriteError::InTheWay(place)),
        };
        if fate != Fate::Unchanged {
            write_waiting(&self.out.join(STAGE).join(FILES).join(&file.path), &file.bytes)?;
        }
        let mark = file.made_from.map(|made_from| Mark::of(made_from, &file.bytes));
        let mut put = self.put.lock().unwrap_or_else(PoisonError::into_inner);
        put.files.insert(file.path.clone(), mark);
        match fate {
            Fate::New => put.counts.new += 1,
            Fate::Changed => put.counts.changed += 1,
            Fate::Unchanged => put.counts.unchanged += 1,
        }
        Ok(fate)
    }

    /// Lets files stay as they are, if all of them stand in their places as they were made from something.
    pub fn keep(&self, paths: &[String], made_from: u64) -> bool {
        let standing = |path: &String| {
            let mark = self.known.get(path).copied().flatten();
            let mark = mark.filter(|mark| mark.made_from == made_from)?;
            let place = self.out.join(path);
            let is_file = std::fs::symlink_metadata(&place).is_ok_and(|about| about.is_file());
            let found = std::fs::read(&place).ok().filter(|_| is_file)?;
            (Mark::of(made_from, &found) == mark).then(|| (path.clone(), Some(mark)))
        };
        let Some(standing) = paths.iter().map(standing).collect::<Option<Vec<_>>>() else {
            return false;
        };
        let mut put = self.put.lock().unwrap_or_else(PoisonError::into_inner);
        put.counts.unchanged += standing.len();
        put.files.extend(standing);
        true
    }

    /// Puts every file in place, and removes those of an earlier compile that were not put on the stage again.
    ///
    /// # Errors
    /// When the system refuses.
    pub fn swap(self) -> Result<Written, WriteError> {
        let files = self.files();
        self.swap_listed(LIST, &files)
    }

    /// Puts every file in place and writes a list anew. What stood in that list and does no longer is removed.
    pub(super) fn swap_listed(self, list: &str, files: &List) -> Result<Written, WriteError> {
        let mut counts = self.put.lock().unwrap_or_else(PoisonError::into_inner).counts;
        let text = list_text(files);
        let is_listed = std::fs::read_to_string(self.out.join(list)).is_ok_and(|old| old == text);
        if is_listed && counts.new + counts.changed == 0 {
            return Ok(counts);
        }
        let stage = self.out.join(STAGE);
        // What may still fail is done before the step that counts: the list needs room, and a folder cannot take the place of a
        // file.
        write_waiting(&stage.join(LISTS).join(list), text.as_bytes())?;
        for Move { place, .. } in moves(&stage.join(FILES), &self.out)? {
            if let Some(parent) = place.parent().filter(|parent| !parent.is_dir()) {
                return Err(WriteError::InTheWay(parent.to_owned()));
            }
        }
        let swap = self.out.join(SWAP);
        std::fs::rename(&stage, &swap).map_err(|error| WriteError::Io(swap, error))?;
        counts.removed = finish(&self.out)?;
        Ok(counts)
    }

    /// The files that were put on the stage.
    pub(super) fn files(&self) -> List {
        self.put.lock().unwrap_or_else(PoisonError::into_inner).files.clone()
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
///
/// A folder that is not there yet comes in one step with all that is in it, the whole site of a first compile in two. Where
/// there is one it is not exchanged as a whole: it may hold files of other hands, those that have not changed would have to be
/// copied or linked into the new one, and no step that every system knows puts one folder in the place of another, so that a
/// run killed between the two would leave none at all. So its files are moved one by one, and a run that is killed meanwhile
/// leaves whole files, of the old site and the new, until the next one goes on.
fn finish(out: &Path) -> Result<usize, WriteError> {
    let swap = out.join(SWAP);
    if !swap.is_dir() {
        return Ok(0);
    }
    for Move { from, place } in moves(&swap.join(FILES), out)? {
        std::fs::rename(&from, &place).map_err(|error| WriteError::Io(place, error))?;
    }
    let mut removed = 0;
    for list in [LIST, REQUESTED] {
        let from = swap.join(LISTS).join(list);
        if !from.is_file() {
            continue;
        }
        let now = read_list(&swap.join(LISTS), list);
        for stale in read_list(out, list).keys().filter(|path| !now.contains_key(*path)) {
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

/// Writes a file that waits. That its folder is missing is found out by trying: most have come with another file.
fn write_waiting(waiting: &Path, bytes: &[u8]) -> Result<(), WriteError> {
    let mut written = std::fs::write(waiting, bytes);
    if written.as_ref().is_err_and(is_absent) {
        create_folder(waiting)?;
        written = std::fs::write(waiting, bytes);
    }
    written.map_err(|error| WriteError::Io(waiting.to_owned(), error))
}

/// A file that waits, or a whole folder, and its place.
struct Move {
    from: PathBuf,
    place: PathBuf,
}

/// What brings all that waits in a folder to its place, in order of the places: a folder goes as a whole where there is none.
fn moves(waiting: &Path, place: &Path) -> Result<Vec<Move>, WriteError> {
    let mut found = Vec::new();
    let mut open = vec![Move { from: waiting.to_owned(), place: place.to_owned() }];
    while let Some(folder) = open.pop() {
        let refused = |error| WriteError::Io(folder.from.clone(), error);
        let entries = match std::fs::read_dir(&folder.from) {
            Err(error) if is_absent(&error) => continue,
            entries => entries.map_err(refused)?,
        };
        for entry in entries {
            let entry = entry.map_err(refused)?;
            let place = folder.place.join(entry.file_name());
            let is_there = std::fs::symlink_metadata(&place).is_ok();
            let parts = is_there && entry.file_type().map_err(refused)?.is_dir();
            let one = Move { from: entry.path(), place };
            if parts { open.push(one) } else { found.push(one) }
        }
    }
    found.sort_by(|a, b| a.place.cmp(&b.place));
    Ok(found)
}

fn is_absent(error: &io::Error) -> bool {
    matches!(error.kind(), io::ErrorKind::NotFound | io::ErrorKind::NotADirectory)
}

/// Tells whether the file at a place has these bytes.
fn holds(place: &Path, length: u64, bytes: &[u8]) -> bool {
    length == bytes.len() as u64 && std::fs::read(place).is_ok_and(|found| found == bytes)
}
