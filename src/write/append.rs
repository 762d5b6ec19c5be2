//! One line at the end of a log. What stands there already is never rewritten.

#![expect(
    clippy::disallowed_types,
    reason = "a file is opened so that the system puts the line at its end"
)]
#![expect(clippy::disallowed_methods, reason = "this room is where the disk is written")]

use std::fs::OpenOptions;
use std::io::{Read, Seek, SeekFrom, Write};
use std::path::Path;

use super::WriteError;

/// Writes a whole log in the place of the old one: beside it first, then renamed, so that no half of a log is ever there.
///
/// # Errors
/// When the system refuses.
pub fn write_log(path: &Path, text: &str) -> Result<(), WriteError> {
    let beside = path.with_extension("csv.new");
    super::create_folder(path)?;
    std::fs::write(&beside, text).map_err(|error| WriteError::Io(beside.clone(), error))?;
    std::fs::rename(&beside, path).map_err(|error| WriteError::Io(path.to_owned(), error))
}

/// Appends a line to a file in one write, and makes the file with its heading where it is new.
///
/// The line is given without its end. A file whose last line has no end gets one first, in the same write.
///
/// # Errors
/// When the system refuses.
pub fn append_line(path: &Path, heading: &str, line: &str) -> Result<(), WriteError> {
    let refused = |error| WriteError::Io(path.to_owned(), error);
    let mut file =
        OpenOptions::new().create(true).append(true).read(true).open(path).map_err(refused)?;
    let length = file.seek(SeekFrom::End(0)).map_err(refused)?;
    let mut text = String::new();
    if length == 0 {
        text.push_str(heading);
        text.push('\n');
    } else {
        let mut last = [0];
        file.seek(SeekFrom::End(-1)).and_then(|_| file.read_exact(&mut last)).map_err(refused)?;
        if last != *b"\n" {
            text.push('\n');
        }
    }
    text.push_str(line);
    text.push('\n');
    file.write_all(text.as_bytes()).map_err(refused)
}
