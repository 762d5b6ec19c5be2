//! The names that files give to species, animals, sources and standards.

use crate::finding::{FileId, Finding, Place};

use super::codes;

/// Tells whether a name can stand in an address: lower-case letters, digits and single hyphens between them.
///
/// Such a name cannot leave the output folder, and is the same file on every system.
///
/// # Examples
/// ```
/// use wardsheet::source::name::is_usable;
/// assert!(is_usable("corn-snake"));
/// assert!(!is_usable("../corn") && !is_usable("Corn snake") && !is_usable("") && !is_usable("con"));
/// ```
pub fn is_usable(name: &str) -> bool {
    let plain = name.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-');
    let edges = !name.starts_with('-') && !name.ends_with('-') && !name.contains("--");
    plain && edges && !name.is_empty() && name.len() <= 80 && !is_reserved(name)
}

/// Names that one system or another gives a meaning of its own.
fn is_reserved(name: &str) -> bool {
    let numbered = |stem: &str| name.strip_prefix(stem).is_some_and(|rest| rest.len() == 1);
    matches!(name, "con" | "prn" | "aux" | "nul" | "index") || numbered("com") || numbered("lpt")
}

/// Turns any text into the nearest usable name.
pub fn suggest(text: &str) -> String {
    let mut name = String::new();
    for c in text.chars().flat_map(char::to_lowercase) {
        if c.is_ascii_lowercase() || c.is_ascii_digit() {
            name.push(c);
        } else if !name.is_empty() && !name.ends_with('-') {
            name.push('-');
        }
    }
    let name = name.trim_end_matches('-').to_owned();
    if is_usable(&name) { name } else { format!("{name}-1").trim_start_matches('-').to_owned() }
}

/// Reports a name that cannot be used.
pub(super) fn unusable(file: FileId, name: &str) -> Finding {
    Finding::new(&codes::NAME_UNUSABLE, Place::start_of(file), format!("`{name}` cannot be a name"))
        .help(format!(
            "name the file `{}`: lower-case letters, digits and single hyphens",
            suggest(name)
        ))
}
