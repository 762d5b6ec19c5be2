//! A new folder with its first files, and single sheets beside those of a compile.

#![expect(clippy::disallowed_methods, reason = "this room is where the disk is written")]

use std::path::Path;

use crate::render::File;

use super::{LIST, REQUESTED, Stage, WriteError, read_list};

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
    write_beside(out, files, LIST)
}

/// Writes a sheet that was asked for by itself. A later compile does not make it again and does not remove it.
///
/// # Errors
/// When the system refuses, or a file that the tool has not written stands in the way.
pub fn write_on_request(out: &Path, files: &[File]) -> Result<(), WriteError> {
    write_beside(out, files, REQUESTED)
}

fn write_beside(out: &Path, files: &[File], list: &str) -> Result<(), WriteError> {
    let stage = Stage::open(out)?;
    files.iter().try_for_each(|file| stage.put(file).map(|_| ()))?;
    let mut listed = read_list(out, list);
    listed.extend(stage.files());
    stage.swap_listed(list, &listed)?;
    Ok(())
}
