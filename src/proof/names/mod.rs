//! Names that stand for something elsewhere.

pub(super) mod companion_unknown;
pub(super) mod form_unknown;
pub(super) mod owner_missing;
pub(super) mod photo_missing;
pub(super) mod photo_without_description;
pub(super) mod source_unknown;
pub(super) mod species_unknown;
pub(super) mod standard_unknown;

use crate::finding::{Code, Finding, did_you_mean};
use crate::model::Named;

/// Reports a name that stands for nothing, with the nearest that does; `whose` says of what, where that helps.
fn unknown<'a>(
    code: &'static Code,
    named: &Named,
    (what, whose): (&str, &str),
    known: impl Iterator<Item = &'a str>,
) -> Finding {
    let known: Vec<&str> = known.collect();
    let help =
        did_you_mean(&named.name, known.iter().copied()).or_else(|| match known.as_slice() {
            [] => Some(format!("no {what} is defined{whose}; leave the field out")),
            few if few.len() <= 12 => Some(format!("known: {}", few.join(", "))),
            _ => None,
        });
    Finding::new(code, named.place, format!("there is no {what} `{}`{whose}", named.name))
        .help_if(help)
}
