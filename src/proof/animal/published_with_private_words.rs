//! A published animal whose public words give away a number or an address.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "published-with-private-words",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Animal,
    summary: "a published animal's story gives away a number or an address",
    page: include_str!("published_with_private_words.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values().filter(|animal| animal.publish) {
        for (key, words) in [("story", &animal.story), ("origin", &animal.origin)] {
            let Some(words) = words else { continue };
            let mut report = |what: &str, wanted: &str| {
                let place: Place = evidence.found_from(evidence.field(animal.file, key), wanted);
                let message =
                    format!("the public words of {} give away {what}: {wanted}", animal.name);
                found.push(
                    Finding::new(&CODE, place, message)
                        .help("take it out; the private sheets carry it for those who need it"),
                );
            };
            // A mark of a few letters may stand in any sentence.
            if let Some(chip) = animal.chip.as_deref().map(str::trim).filter(|chip| chip.len() >= 6)
                && words.contains(chip)
            {
                report("its chip", chip);
                continue;
            }
            if let Some(number) = telephone(words) {
                report("a telephone number", number);
            }
            let address = words.split_whitespace().find(|word| is_mail_address(word));
            if let Some(address) = address {
                report("a mail address", address.trim_matches(|c: char| !c.is_alphanumeric()));
            }
        }
    }
}

/// The first stretch that is dialled: seven digits or more that begin with a nought, a plus or a bracket.
///
/// Dates and years begin with another digit.
fn telephone(words: &str) -> Option<&str> {
    let mut from = 0;
    while let Some(start) = words[from..].find(['0', '+', '(']).map(|at| from + at) {
        let rest = &words[start..];
        let end = rest
            .find(|c: char| !(c.is_ascii_digit() || " -()/.+".contains(c)))
            .unwrap_or(rest.len());
        let stretch = rest[..end].trim_end_matches(|c: char| !c.is_ascii_digit());
        let inside_a_number =
            words[..start].ends_with(|c: char| c.is_ascii_digit() || c == '-' || c == '.');
        let digits = stretch.chars().filter(char::is_ascii_digit).count();
        let is_code = !rest.starts_with('(') || rest.find(')').is_some_and(|close| close <= 6);
        if !inside_a_number && is_code && digits >= 7 && !is_date(stretch) {
            return Some(stretch);
        }
        from = if inside_a_number || digits < 7 { start + 1 } else { start + stretch.len().max(1) };
    }
    None
}

/// Whether a stretch is a day of the calendar: 01.05.2021, 1/5/2021.
fn is_date(stretch: &str) -> bool {
    let lengths: Vec<usize> = stretch.split(['.', '/', '-']).map(str::len).collect();
    matches!(lengths.as_slice(), [1..=2, 1..=2, 4])
}

fn is_mail_address(word: &str) -> bool {
    word.split_once('@').is_some_and(|(name, host)| {
        name.ends_with(|c: char| c.is_ascii_alphanumeric())
            && host.trim_end_matches('.').contains('.')
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_dialled_is_found_and_days_and_figures_are_not() {
        let cases = [
            ("Ring 0555 910 0200 to see her", Some("0555 910 0200")),
            ("ring +44 20 7946 0100.", Some("+44 20 7946 0100")),
            ("or (555) 010-0200", Some("(555) 010-0200")),
            ("hatched 01.05.2021, came 2021-05-01", None),
            ("kept in two homes (2019-2023) before", None),
            ("grew 0.5 m in 2020 and 2021", None),
        ];
        for (words, expected) in cases {
            assert_eq!(telephone(words), expected, "{words}");
        }
    }
}
