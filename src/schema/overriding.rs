//! The fields of `species/NAME.override.toml`.

use super::field::{Field, Form, may, must};

pub(super) const FIELDS: &[Field] =
    &[must("figure", "The figures that hold here instead of the library's", Form::Tables(FIGURE))];

const FIGURE: &[Field] = &[
    must(
        "name",
        "The figure, by the name that words use: its table and its field, joined by a point",
        Form::Text(&["humidity.ceiling", "temperature.night", "feeding.adult.every"]),
    ),
    must(
        "value",
        "What holds here, written as in the species file: with its unit, in quotes",
        Form::Text(&["65 %", "20-22 C", "14-21 days"]),
    ),
    may(
        "was",
        "What the library said when this was written, so that a later change of the library is noticed",
        Form::Text(&["70 %", "18-22 C", "10-14 days"]),
    ),
    must("reason", "Why it differs here", Form::Text(&["Our animal room is damp in winter."])),
    may(
        "source",
        "On whose authority: a key of a sources.toml, or a list of keys; without it, your own practice",
        Form::Texts(&["example-book"]),
    ),
    must("by", "Who decided it", Form::Text(&["The care group of the society"])),
    may("on", "The day on which it was decided", Form::Date),
];
