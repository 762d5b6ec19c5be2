//! The nearest valid word to a misspelt one.

/// Offers the nearest of the valid words, as the end of a help line: "did you mean `humidity`?".
///
/// Two letters may differ in a short word, a third of the letters in a long one; transposed letters count once.
///
/// # Examples
/// ```
/// use wardsheet::finding::did_you_mean;
/// assert_eq!(did_you_mean("humidty", ["humidity", "light"]), Some("did you mean `humidity`?".to_owned()));
/// assert_eq!(did_you_mean("xyz", ["humidity", "light"]), None);
/// ```
pub fn did_you_mean<'a>(word: &str, valid: impl IntoIterator<Item = &'a str>) -> Option<String> {
    nearest(word, valid).map(|near| format!("did you mean `{near}`?"))
}

/// The longest word that is compared, in bytes: what is longer is no misspelling, and the comparison takes the product of two lengths.
const LONGEST_WORD: usize = 200;

/// Finds the nearest of the valid words, if one is near enough to be meant.
pub fn nearest<'a>(word: &str, valid: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    if word.len() > LONGEST_WORD {
        return None;
    }
    let lower = word.to_lowercase();
    let limit = (word.chars().count() / 3).clamp(1, 4);
    valid
        .into_iter()
        .filter(|candidate| candidate.len() <= LONGEST_WORD)
        .map(|candidate| (strsim::osa_distance(&lower, &candidate.to_lowercase()), candidate))
        .filter(|(distance, candidate)| *distance <= limit || shares_start(&lower, candidate))
        .min()
        .map(|(_, candidate)| candidate)
}

/// A word cut short, or one with an ending too many, is near whatever the distance.
fn shares_start(word: &str, candidate: &str) -> bool {
    word.len() >= 4
        && candidate.len() >= 4
        && (candidate.starts_with(word) || word.starts_with(candidate))
}
