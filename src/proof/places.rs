//! Places that the model does not keep: where a field stands in a file, and what a line says.

use crate::finding::{FileId, Place};

use super::Evidence;

impl<'a> Evidence<'a> {
    /// The text of a file.
    pub(in crate::proof) fn text(&self, file: FileId) -> &'a str {
        self.sources.shown(file).text
    }

    /// The text at a place.
    pub(in crate::proof) fn text_at(&self, place: Place) -> &'a str {
        self.text(place.file).get(place.start..place.end).unwrap_or("")
    }

    /// The line of a TOML file on which a field stands, or the start of the file where it is written otherwise.
    pub(in crate::proof) fn field(&self, file: FileId, key: &str) -> Place {
        let mut start = 0;
        for line in self.text(file).split_inclusive('\n') {
            let rest = line.trim_start().strip_prefix(key);
            if rest.is_some_and(|rest| rest.trim_start().starts_with('=')) {
                let lead = line.len() - line.trim_start().len();
                return Place::new(file, start + lead..start + line.trim_end().len());
            }
            start += line.len();
        }
        Place::start_of(file)
    }

    /// The place of a text from a place onwards, or that place itself where the text is written otherwise.
    pub(in crate::proof) fn found_from(&self, from: Place, wanted: &str) -> Place {
        let rest = self.text(from.file).get(from.start..).unwrap_or("");
        match rest.find(wanted) {
            Some(at) => Place::new(from.file, from.start + at..from.start + at + wanted.len()),
            None => from,
        }
    }
}
