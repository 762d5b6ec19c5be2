//! Bytes as they come from outside, made into a text with a role.

use crate::finding::{FileId, Finding, Place};

use super::library::{is_face, role_of};
use super::read::Fault;
use super::{Layer, Role, Sources, codes, in_language, name};

impl Sources {
    /// Adds a file as it was read, by its path inside the site or library, and says what is wrong with its bytes or its name.
    ///
    /// None where nothing at that path is read. Bytes that are not UTF-8 are reported and replaced, so that the rest of the file
    /// can be looked at.
    ///
    /// # Examples
    /// ```
    /// use wardsheet::source::{Layer, Sources};
    /// let mut sources = Sources::default();
    /// let (_, found) = sources.add_bytes("animals/juniper.toml", Layer::Own, vec![0xff]).expect("an animal");
    /// assert_eq!(found[0].code.name, "not-utf8");
    /// assert!(sources.add_bytes("notes.txt", Layer::Own, Vec::new()).is_none());
    /// ```
    pub fn add_bytes(
        &mut self,
        inside: &str,
        layer: Layer,
        bytes: Vec<u8>,
    ) -> Option<(FileId, Vec<Finding>)> {
        let (role, name) = role_of(inside)?;
        if is_face(inside) {
            return Some((self.add_face(inside, name, layer, bytes), Vec::new()));
        }
        let limit = largest(role);
        let too_large = bytes.len() > limit;
        let (text, broken) = decoded(if too_large { Vec::new() } else { bytes });
        let id = self.add(inside, role, name, layer, text);
        let mut findings = Vec::new();
        if too_large {
            let (code, message) = over(limit);
            findings.push(Finding::new(code, Place::start_of(id), message));
        }
        if let Some(line) = broken {
            findings.push(Finding::new(&codes::NOT_UTF8, Place::start_of(id), not_utf8(line)));
        }
        let names_a_page = matches!(
            role,
            Role::Species | Role::Override | Role::Animal | Role::Page | Role::Standard | Role::Law
        );
        // A page in a further language bears its tag behind its name.
        let (owner, _) = if role == Role::Page { in_language(name) } else { (name, None) };
        if names_a_page && !name::is_usable(owner) {
            findings.push(name::unusable(id, name));
        }
        Some((id, findings))
    }
}

/// The largest data file that is read, in bytes: a keeper's whole life of log lines is a thousandth of it.
pub(super) const LARGEST_BYTES: usize = 64 * MEGABYTE;
/// The largest text in Markdown: a book of a thousand pages. Its reader takes up to a hundred times as much memory as the text.
const LARGEST_WORDS: usize = 4 * MEGABYTE;
const MEGABYTE: usize = 1024 * 1024;

/// How many bytes are read of a file with a role.
pub(super) fn largest(role: Role) -> usize {
    match role {
        Role::Words | Role::Page => LARGEST_WORDS,
        _ => LARGEST_BYTES,
    }
}

/// What is said of a file that is larger.
pub(super) fn over(limit: usize) -> Fault {
    (&codes::FILE_TOO_LARGE, format!("this file is over {} MB", limit / MEGABYTE))
}

/// The text of some bytes, and the first line that is not UTF-8 where there is one.
pub(super) fn decoded(bytes: Vec<u8>) -> (String, Option<usize>) {
    match String::from_utf8(bytes) {
        // A byte order mark says nothing in UTF-8 and would shift the first column.
        Ok(text) => (text.strip_prefix('\u{feff}').map(str::to_owned).unwrap_or(text), None),
        Err(error) => {
            let whole = &error.as_bytes()[..error.utf8_error().valid_up_to()];
            let line = whole.iter().filter(|byte| **byte == b'\n').count() + 1;
            (String::from_utf8_lossy(error.as_bytes()).into_owned(), Some(line))
        }
    }
}

/// What is said of text that is not UTF-8.
pub(super) fn not_utf8(line: usize) -> String {
    format!("line {line} of this file is not UTF-8 text")
}
