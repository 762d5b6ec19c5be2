//! Places in files: which file, and which bytes of it.

/// A file of the site or the library, by its number in the order of reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FileId(pub u32);

/// A span of bytes in a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    /// The file.
    pub file: FileId,
    /// The first byte.
    pub start: usize,
    /// The byte after the last.
    pub end: usize,
}

impl Place {
    /// A span of a file.
    pub fn new(file: FileId, span: std::ops::Range<usize>) -> Place {
        Place { file, start: span.start, end: span.end.max(span.start) }
    }

    /// The very start of a file: for faults of the file as a whole.
    pub fn start_of(file: FileId) -> Place {
        Place { file, start: 0, end: 0 }
    }

    /// A part of this place, by bytes counted from its start.
    #[must_use]
    pub fn part(self, span: std::ops::Range<usize>) -> Place {
        let start = (self.start + span.start).min(self.end);
        Place { file: self.file, start, end: (self.start + span.end).clamp(start, self.end) }
    }
}

/// Finds the line and column of a byte, both counted from 1, the column in characters.
///
/// A byte past the end of the text counts as the end.
///
/// # Examples
/// ```
/// assert_eq!(wardsheet::finding::place::line_and_column("a\nbé c", 5), (2, 3));
/// ```
pub fn line_and_column(text: &str, byte: usize) -> (usize, usize) {
    let mut byte = byte.min(text.len());
    while !text.is_char_boundary(byte) {
        byte -= 1;
    }
    let before = &text[..byte];
    let line_start = before.rfind('\n').map_or(0, |newline| newline + 1);
    (before.matches('\n').count() + 1, before[line_start..].chars().count() + 1)
}
