//! Public words that carry a value of the private file.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::model::site::{Contact, Private};
use crate::proof::{Evidence, Rule};
use crate::source::Role;

static CODE: Code = Code {
    name: "private-value-in-public",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Site,
    summary: "public words carry a value of the private file",
    page: include_str!("private_value_in_public.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let values = values(&evidence.model.private);
    let mut public: Vec<(Place, &str)> = Vec::new();
    for role in
        [Role::Site, Role::Species, Role::Override, Role::Words, Role::Page, Role::Bibliography]
    {
        let files = evidence.sources.nearest(role).into_values();
        public.extend(files.map(|file| (Place::start_of(file.id), file.text.as_str())));
    }
    for animal in evidence.model.animals.values().filter(|animal| animal.publish) {
        for (key, words) in [("story", &animal.story), ("origin", &animal.origin)] {
            if words.is_some() {
                let place = evidence.field(animal.file, key);
                public.push((place, evidence.text_at(place)));
            }
        }
    }
    for (start, text) in &public {
        // Reduced once for all values: the house may have any number of them.
        let reduced = [false, true]
            .map(|is_number| kept(text, is_number).map(|(_, c)| c).collect::<String>());
        for value in &values {
            if !reduced[usize::from(value.is_number)].contains(&value.text) {
                continue;
            }
            let Some(span) = value.find_in(text) else { continue };
            let place = Place::new(start.file, start.start + span.start..start.start + span.end);
            let message = format!("public words carry {} from private.toml", value.what);
            let help = "take it out: the private sheets carry it, and whatever is published stays published";
            found.push(Finding::new(&CODE, place, message).help(help));
        }
    }
}

/// A value that must stay private: what it is, and its text reduced to what matters.
struct Value {
    what: String,
    text: String,
    is_number: bool,
}

/// What counts of a text, in lower case, each with its place.
fn kept(text: &str, is_number: bool) -> impl Iterator<Item = (usize, char)> {
    let counts = move |c: char| {
        if is_number { c.is_ascii_digit() } else { c.is_alphanumeric() || c == '@' }
    };
    text.char_indices()
        // Between the digits of a telephone number stand spaces and signs only; anything else parts two numbers.
        .filter(move |(_, c)| counts(*c) || (is_number && !" -()/.+\u{a0}".contains(*c)))
        .flat_map(|(at, c)| c.to_lowercase().map(move |c| (at, c)))
}

impl Value {
    /// The bytes at which a text carries the value, however it is spaced.
    fn find_in(&self, text: &str) -> Option<std::ops::Range<usize>> {
        let kept: Vec<(usize, char)> = kept(text, self.is_number).collect();
        let wanted: Vec<char> = self.text.chars().collect();
        let at = kept.windows(wanted.len()).enumerate().position(|(at, window)| {
            // A longer number that only begins with this one is another.
            let goes_on = kept.get(at + wanted.len()).is_some_and(|(_, c)| c.is_ascii_digit());
            !(self.is_number && goes_on) && window.iter().map(|(_, c)| c).eq(&wanted)
        })?;
        let (start, last) = (kept[at].0, kept[at + wanted.len() - 1]);
        Some(start..last.0 + last.1.len_utf8())
    }
}

/// What may not be published of a contact or of the house. Names may: a keeper signs a page.
fn values(private: &Private) -> Vec<Value> {
    let contacts: [(&str, &Contact); 4] = [
        ("the keeper's", &private.keeper),
        ("the second contact's", &private.second),
        ("the vet's", &private.vet),
        ("the out-of-hours vet's", &private.vet_out_of_hours),
    ];
    let mut values = Vec::new();
    // A few letters or digits stand in many texts without being the value.
    let mut add = |what: String, text: &str, is_number: bool, least: usize| {
        let text: String = text
            .chars()
            .flat_map(char::to_lowercase)
            .filter(
                |c| if is_number { c.is_ascii_digit() } else { c.is_alphanumeric() || *c == '@' },
            )
            .collect();
        if text.chars().count() >= least {
            values.push(Value { what, text, is_number });
        }
    };
    for (whose, contact) in contacts {
        let fields = [
            ("telephone number", &contact.phone, true),
            ("address", &contact.address, false),
            ("mail address", &contact.email, false),
        ];
        for (what, value, is_number) in fields {
            let Some(value) = value else { continue };
            // An address without a number is the name of a place, which may be said.
            let is_place = what == "address" && !value.contains(|c: char| c.is_ascii_digit());
            let least = if is_place { 20 } else { 6 };
            add(format!("{whose} {what}"), value, is_number, least);
        }
    }
    for (heading, text) in &private.house {
        add(format!("`{heading}` of the house"), text, false, 16);
    }
    values
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found<'t>(private: &str, is_number: bool, text: &'t str) -> Option<&'t str> {
        let value = Value { what: String::new(), text: private.to_owned(), is_number };
        value.find_in(text).map(|span| &text[span])
    }

    #[test]
    fn a_number_is_found_however_it_is_spaced_and_not_inside_a_longer_one() {
        assert_eq!(found("5550100", true, "ring 555-01 00 now"), Some("555-01 00"));
        assert_eq!(found("5550100", true, "+1 (555) 0100"), Some("555) 0100"));
        assert_eq!(found("5550100", true, "55501002"), None);
        assert_eq!(found("5550100", true, "555 km, 0100 hours"), None);
    }

    #[test]
    fn an_address_is_found_whatever_its_commas_and_capitals() {
        assert_eq!(found("1milllane", false, "at 1, MILL Lane."), Some("1, MILL Lane"));
        assert_eq!(found("1milllane", false, "a mill lane"), None);
    }
}
