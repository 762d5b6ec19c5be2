//! A new folder with its first files, and single sheets beside those of a compile.

#![expect(clippy::disallowed_methods, reason = "this room is where the disk is written")]

use std::path::Path;

use crate::render::File;

use super::{LIST, REQUESTED, WriteError, place_files, read_list, write_list};

/// Why a folder could not be laid out.
#[derive(Debug)]
pub enum FreshError {
    /// It holds something already.
    NotEmpty,
    /// The system refused.
    Write(WriteError),
}

/// Writes the first files of a folder that is new or empty.
///
/// # Errors
/// When the folder holds anything, or the system refuses.
pub fn write_fresh(dir: &Path, files: &[File]) -> Result<(), FreshError> {
    let io = |error| FreshError::Write(WriteError::Io(dir.to_owned(), error));
    if dir.exists() {
        for entry in std::fs::read_dir(dir).map_err(io)? {
            // A folder under version control that holds nothing else yet is as good as empty.
            if entry.map_err(io)?.file_name() != ".git" {
                return Err(FreshError::NotEmpty);
            }
        }
    }
    for file in files {
        let place = dir.join(&file.path);
        super::create_folder(&place).map_err(FreshError::Write)?;
        std::fs::write(&place, &file.bytes)
            .map_err(|error| FreshError::Write(WriteError::Io(place, error)))?;
    }
    Ok(())
}

/// Writes some files below `out` and leaves every other one as it is.
///
/// # Errors
/// When the system refuses, or a file that the tool has not written stands in the way.
pub fn write_some(out: &Path, files: &[File]) -> Result<(), WriteError> {
    let mut list = read_list(out, LIST);
    place_files(out, files, &list)?;
    list.extend(files.iter().map(|file| file.path.clone()));
    write_list(out, LIST, &list)
}

/// Writes a sheet that was asked for by itself. A later compile does not make it again and does not remove it.
///
/// # Errors
/// When the system refuses, or a file that the tool has not written stands in the way.
pub fn write_on_request(out: &Path, files: &[File]) -> Result<(), WriteError> {
    let mut list = read_list(out, REQUESTED);
    let mut known = read_list(out, LIST);
    known.extend(list.iter().cloned());
    // The list of a compile holds them only while they are put in place.
    let compiled = read_list(out, LIST);
    place_files(out, files, &known)?;
    write_list(out, LIST, &compiled)?;
    list.extend(files.iter().map(|file| file.path.clone()));
    write_list(out, REQUESTED, &list)
}
