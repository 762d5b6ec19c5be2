//! Names that stand for something elsewhere.

pub(super) mod companion_unknown;
pub(super) mod form_unknown;
pub(super) mod owner_missing;
pub(super) mod photo_missing;
pub(super) mod source_unknown;
pub(super) mod species_unknown;
pub(super) mod standard_unknown;

use crate::finding::{Code, Finding, did_you_mean};
use crate::model::Named;

/// Reports a name that stands for nothing, with the nearest that does.
fn unknown<'a>(
    code: &'static Code,
    named: &Named,
    what: &str,
    known: impl Iterator<Item = &'a str>,
) -> Finding {
    let known: Vec<&str> = known.collect();
    let help = did_you_mean(&named.name, known.iter().copied());
    let help = help.or_else(|| {
        (!known.is_empty() && known.len() <= 12).then(|| format!("known: {}", known.join(", ")))
    });
    Finding::new(code, named.place, format!("there is no {what} `{}`", named.name)).help_if(help)
}
