//! The kinds of finding that reading can make.

use crate::finding::{Code, Severity, Subject};

const fn files(name: &'static str, summary: &'static str, page: &'static str) -> Code {
    Code { name, severity: Severity::Error, safety: false, subject: Subject::Files, summary, page }
}

/// A file that cannot be read.
pub static FILE_UNREADABLE: Code =
    files("file-unreadable", "a file cannot be read", include_str!("pages/file-unreadable.md"));
/// A file that is not UTF-8.
pub static NOT_UTF8: Code =
    files("not-utf8", "a file is not UTF-8 text", include_str!("pages/not-utf8.md"));
/// A link that leads back to a folder above it.
pub static LINK_LOOP: Code =
    files("link-loop", "a link leads round in a circle", include_str!("pages/link-loop.md"));
/// A file with nothing in it.
pub static FILE_EMPTY: Code =
    files("file-empty", "a file has nothing in it", include_str!("pages/file-empty.md"));
/// A file far larger than any care data.
pub static FILE_TOO_LARGE: Code = files(
    "file-too-large",
    "a file is too large to be care data",
    include_str!("pages/file-too-large.md"),
);
/// Two files that claim one name.
pub static NAME_TAKEN_TWICE: Code = files(
    "name-taken-twice",
    "two files claim one name",
    include_str!("pages/name-taken-twice.md"),
);
/// A name that cannot stand in an address.
pub static NAME_UNUSABLE: Code =
    files("name-unusable", "a file's name cannot be used", include_str!("pages/name-unusable.md"));

/// Every code of this room.
pub static ALL: [&Code; 7] = [
    &FILE_UNREADABLE,
    &NOT_UTF8,
    &LINK_LOOP,
    &FILE_EMPTY,
    &FILE_TOO_LARGE,
    &NAME_TAKEN_TWICE,
    &NAME_UNUSABLE,
];
