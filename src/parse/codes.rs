//! The kinds of finding that parsing can make.

use crate::finding::{Code, Severity, Subject};

const fn writing(name: &'static str, summary: &'static str, page: &'static str) -> Code {
    Code {
        name,
        severity: Severity::Error,
        safety: false,
        subject: Subject::Writing,
        summary,
        page,
    }
}

/// A file that is not TOML.
pub static TOML_SYNTAX: Code =
    writing("toml-syntax", "a file is not valid TOML", include_str!("pages/toml-syntax.md"));
/// A field that nobody knows.
pub static KEY_UNKNOWN: Code =
    writing("key-unknown", "a field is not known", include_str!("pages/key-unknown.md"));
/// A field that must be there.
pub static FIELD_MISSING: Code = writing(
    "field-missing",
    "a field that must be there is not",
    include_str!("pages/field-missing.md"),
);
/// A value of the wrong kind.
pub static WRONG_KIND: Code = writing(
    "wrong-kind",
    "a field holds the wrong kind of value",
    include_str!("pages/wrong-kind.md"),
);
/// A word that the field does not know.
pub static WORD_UNKNOWN: Code = writing(
    "word-unknown",
    "a field holds a word it does not know",
    include_str!("pages/word-unknown.md"),
);
/// A figure without its unit.
pub static FIGURE_WITHOUT_UNIT: Code = writing(
    "figure-without-unit",
    "a figure has no unit",
    include_str!("pages/figure-without-unit.md"),
);
/// A unit that nobody knows, or that measures something else.
pub static UNIT_UNKNOWN: Code = writing(
    "unit-unknown",
    "a unit is not known or measures something else",
    include_str!("pages/unit-unknown.md"),
);
/// A range whose low end is above its high end.
pub static RANGE_REVERSED: Code = writing(
    "range-reversed",
    "a range runs from high to low",
    include_str!("pages/range-reversed.md"),
);
/// A value that no living animal could bear.
pub static FIGURE_UNBEARABLE: Code = writing(
    "figure-unbearable",
    "a figure is beyond what any animal bears",
    include_str!("pages/figure-unbearable.md"),
);
/// A figure that cannot be read at all.
pub static FIGURE_UNREADABLE: Code = writing(
    "figure-unreadable",
    "a figure cannot be read",
    include_str!("pages/figure-unreadable.md"),
);
/// A date that is not a day of the calendar.
pub static DATE_UNREADABLE: Code = writing(
    "date-unreadable",
    "a date is not a day of the calendar",
    include_str!("pages/date-unreadable.md"),
);
/// A log without its heading line.
pub static LOG_HEADING: Code =
    writing("log-heading", "a log lacks its heading line", include_str!("pages/log-heading.md"));
/// A log line that cannot be read.
pub static LOG_LINE: Code =
    writing("log-line", "a line of a log cannot be read", include_str!("pages/log-line.md"));
/// Words that would run in a reader's browser.
pub static WORDS_HTML: Code = Code {
    subject: Subject::Words,
    severity: Severity::Warning,
    ..writing(
        "words-html",
        "words hold HTML or a link that runs",
        include_str!("pages/words-html.md"),
    )
};

/// A photo that is no picture, or a broken one.
pub static PHOTO_UNREADABLE: Code = writing(
    "photo-unreadable",
    "a photo is not a picture or is broken",
    include_str!("pages/photo-unreadable.md"),
);
/// A photo of a kind that is not read.
pub static PHOTO_KIND_NOT_READ: Code = writing(
    "photo-kind-not-read",
    "a photo is of a kind that is not read",
    include_str!("pages/photo-kind-not-read.md"),
);
/// A picture larger than any photo.
pub static PHOTO_TOO_LARGE: Code = writing(
    "photo-too-large",
    "a photo is larger than any page needs",
    include_str!("pages/photo-too-large.md"),
);

/// A list longer than anything it could stand for.
pub static LIST_TOO_LONG: Code = writing(
    "list-too-long",
    "a list is longer than anything it could stand for",
    include_str!("pages/list-too-long.md"),
);

/// A column that a map names and a table does not have.
pub static READINGS_COLUMN: Code = Code {
    severity: Severity::Warning,
    ..writing(
        "readings-column",
        "a map names a column that a table does not have",
        include_str!("pages/readings-column.md"),
    )
};
/// Rows of a data logger that cannot be read.
pub static READINGS_ROW: Code = Code {
    severity: Severity::Warning,
    ..writing(
        "readings-row",
        "rows of a data logger cannot be read",
        include_str!("pages/readings-row.md"),
    )
};

/// Every code of this room.
pub static ALL: [&Code; 20] = [
    &TOML_SYNTAX,
    &KEY_UNKNOWN,
    &FIELD_MISSING,
    &WRONG_KIND,
    &WORD_UNKNOWN,
    &FIGURE_WITHOUT_UNIT,
    &UNIT_UNKNOWN,
    &RANGE_REVERSED,
    &FIGURE_UNBEARABLE,
    &FIGURE_UNREADABLE,
    &DATE_UNREADABLE,
    &LOG_HEADING,
    &LOG_LINE,
    &LIST_TOO_LONG,
    &READINGS_COLUMN,
    &READINGS_ROW,
    &WORDS_HTML,
    &PHOTO_UNREADABLE,
    &PHOTO_KIND_NOT_READ,
    &PHOTO_TOO_LARGE,
];
