//! What data loggers have recorded.

pub(super) mod logger_unknown;
pub(super) mod recorded_too_damp;
pub(super) mod recorded_too_hot;

/// Hours in words.
fn hours(hours: f64) -> String {
    let number = crate::figures::working::number(hours, 1);
    if number == "1" { "1 hour".to_owned() } else { format!("{number} hours") }
}
