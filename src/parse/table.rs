//! Fields taken one by one from a TOML table, every fault reported at its place.
//!
//! A [`Table`] hands out the fields that its caller asks for. What was never asked for is a misspelling, and [`Table::close`]
//! reports it with the nearest key that was. Nothing stops at the first fault.

mod lists;

use std::cell::RefCell;
use std::collections::BTreeSet;

use jiff::civil::Date;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

use crate::finding::{FileId, Finding, Place, did_you_mean};
use crate::model::Named;
use crate::model::word::Word;

use super::codes;

/// A table of a TOML file.
pub(crate) struct Table<'t, 'i> {
    fields: &'t DeTable<'i>,
    findings: &'t RefCell<Vec<Finding>>,
    place: Place,
    /// The dotted name of the table, empty for the file itself.
    path: String,
    asked: RefCell<Vec<String>>,
}

/// Reads a TOML text: calls `take` with its top table, and returns what that made with every finding.
///
/// Syntax faults are reported too, all of them, and do not keep the rest from being read.
pub(crate) fn read<T>(
    file: FileId,
    text: &str,
    take: impl FnOnce(&Table<'_, '_>) -> T,
) -> (T, Vec<Finding>) {
    let (document, errors) = DeTable::parse_recoverable(text);
    let findings = RefCell::new(Vec::new());
    for error in &errors {
        let place = error.span().map_or(Place::start_of(file), |span| Place::new(file, span));
        findings.borrow_mut().push(Finding::new(
            &codes::TOML_SYNTAX,
            place,
            error.message().replace('\n', "; "),
        ));
    }
    let table = Table::new(document.get_ref(), &findings, Place::start_of(file), String::new());
    let made = take(&table);
    table.close();
    drop(table);
    let mut findings = findings.into_inner();
    if !errors.is_empty() {
        // What a broken line makes of its field is not worth a second finding.
        let ends: Vec<usize> = text.match_indices('\n').map(|(at, _)| at).collect();
        let line = |place: Place| ends.partition_point(|end| *end < place.start);
        let of_errors = findings.iter().take(errors.len());
        let broken: BTreeSet<usize> = of_errors.filter_map(|found| found.place).map(line).collect();
        let mut number = 0;
        findings.retain(|found| {
            number += 1;
            number <= errors.len() || !found.place.is_some_and(|at| broken.contains(&line(at)))
        });
    }
    (made, findings)
}

impl<'t, 'i> Table<'t, 'i> {
    fn new(
        fields: &'t DeTable<'i>,
        findings: &'t RefCell<Vec<Finding>>,
        place: Place,
        path: String,
    ) -> Self {
        Table { fields, findings, place, path, asked: RefCell::new(Vec::new()) }
    }

    /// Where the table is written.
    pub(crate) fn place(&self) -> Place {
        self.place
    }

    /// Adds a finding.
    pub(crate) fn report(&self, finding: Finding) {
        self.findings.borrow_mut().push(finding);
    }

    /// The name of a field as people would say it: with the tables it stands in.
    pub(crate) fn full_name(&self, key: &str) -> String {
        if self.path.is_empty() { key.to_owned() } else { format!("{}.{key}", self.path) }
    }

    fn at(&self, span: std::ops::Range<usize>) -> Place {
        Place::new(self.place.file, span)
    }

    /// Takes a field as it stands.
    pub(crate) fn value(&self, key: &str) -> Option<&'t Spanned<DeValue<'i>>> {
        self.asked.borrow_mut().push(key.to_owned());
        self.fields.get(key)
    }

    /// The place of a value.
    pub(crate) fn place_of(&self, value: &Spanned<DeValue<'_>>) -> Place {
        self.at(value.span())
    }

    /// Every key of the table, in the order of the file, for tables whose keys are names.
    pub(crate) fn names(&self) -> Vec<Named> {
        let mut names: Vec<Named> = self
            .fields
            .iter()
            .map(|(key, _)| Named { name: key.get_ref().to_string(), place: self.at(key.span()) })
            .collect();
        names.sort_by_key(|named| named.place);
        names
    }

    /// Reports a value of the wrong kind.
    pub(crate) fn wrong_kind(&self, key: &str, value: &Spanned<DeValue<'_>>, wanted: &str) {
        let found = match value.get_ref() {
            DeValue::String(_) => "text",
            DeValue::Integer(_) | DeValue::Float(_) => "a number",
            DeValue::Boolean(_) => "true or false",
            DeValue::Datetime(_) => "a date",
            DeValue::Array(_) => "a list",
            DeValue::Table(_) => "a table",
        };
        let message = format!("`{}` is {found} and should be {wanted}", self.full_name(key));
        let place = self.at(value.span());
        self.report(Finding::new(&codes::WRONG_KIND, place, message));
    }

    /// Takes a text. White space at its ends is dropped; an empty text counts as missing.
    pub(crate) fn named(&self, key: &str) -> Option<Named> {
        let value = self.value(key)?;
        match value.get_ref() {
            DeValue::String(text) if text.trim().is_empty() => {
                let message = format!("`{}` is empty", self.full_name(key));
                self.report(
                    Finding::new(&codes::WRONG_KIND, self.at(value.span()), message)
                        .help("fill it in or leave it out"),
                );
                None
            }
            DeValue::String(text) => {
                Some(Named { name: text.trim().to_owned(), place: self.at(value.span()) })
            }
            _ => {
                self.wrong_kind(key, value, "text in quotes");
                None
            }
        }
    }

    /// Takes a text without its place.
    pub(crate) fn text(&self, key: &str) -> Option<String> {
        self.named(key).map(|named| named.name)
    }

    /// Takes one of a few words.
    pub(crate) fn word<W: Word>(&self, key: &str) -> Option<(W, Place)> {
        let named = self.named(key)?;
        self.known_word(key, &named).map(|word| (word, named.place))
    }

    /// Takes a list of words.
    pub(crate) fn words<W: Word>(&self, key: &str) -> Vec<W> {
        self.list(key).iter().filter_map(|named| self.known_word(key, named)).collect()
    }

    fn known_word<W: Word>(&self, key: &str, named: &Named) -> Option<W> {
        let found = W::ALL.iter().find(|(_, spelling)| spelling.eq_ignore_ascii_case(&named.name));
        if found.is_none() {
            let spellings: Vec<&str> = W::ALL.iter().map(|(_, spelling)| *spelling).collect();
            let message = format!("`{}` cannot be `{}`", self.full_name(key), named.name);
            let help = did_you_mean(&named.name, spellings.iter().copied()).unwrap_or_default();
            let help = format!("{help} It is one of: {}", spellings.join(", "));
            self.report(Finding::new(&codes::WORD_UNKNOWN, named.place, message).help(help.trim()));
        }
        found.map(|(word, _)| *word)
    }

    /// Takes a date, written as a TOML date (`2026-11-10`) or as text of that form.
    pub(crate) fn date(&self, key: &str) -> Option<(Date, Place)> {
        let value = self.value(key)?;
        let place = self.at(value.span());
        let written = match value.get_ref() {
            DeValue::Datetime(moment) => {
                moment.date.map(|date| date.to_string()).unwrap_or_default()
            }
            DeValue::String(text) => text.trim().to_owned(),
            _ => {
                self.wrong_kind(key, value, "a date");
                return None;
            }
        };
        match written.parse::<Date>() {
            Ok(date) => Some((date, place)),
            Err(_) => {
                let message = format!("`{}` is not a day of the calendar", self.full_name(key));
                self.report(
                    Finding::new(&codes::DATE_UNREADABLE, place, message)
                        .help("write the year, month and day: 2026-11-25"),
                );
                None
            }
        }
    }

    /// Takes a yes or no.
    pub(crate) fn flag(&self, key: &str) -> Option<(bool, Place)> {
        let value = self.value(key)?;
        match value.get_ref() {
            DeValue::Boolean(flag) => Some((*flag, self.at(value.span()))),
            _ => {
                self.wrong_kind(key, value, "true or false");
                None
            }
        }
    }

    /// Takes a whole number, for fields that count.
    pub(crate) fn number(&self, key: &str) -> Option<(u32, Place)> {
        let value = self.value(key)?;
        let number = match value.get_ref() {
            DeValue::Integer(number) => number.as_str().replace('_', "").parse().ok(),
            _ => None,
        };
        if number.is_none() {
            self.wrong_kind(key, value, "a whole number");
        }
        number.map(|number| (number, self.at(value.span())))
    }

    /// Takes a table.
    pub(crate) fn table(&self, key: &str) -> Option<Table<'t, 'i>> {
        let value = self.value(key)?;
        match value.get_ref() {
            DeValue::Table(fields) => Some(self.inner(fields, value, key)),
            _ => {
                self.wrong_kind(key, value, "a table");
                None
            }
        }
    }

    /// A value that is already in hand, as a table.
    pub(crate) fn inner(
        &self,
        fields: &'t DeTable<'i>,
        value: &Spanned<DeValue<'i>>,
        key: &str,
    ) -> Table<'t, 'i> {
        Table::new(fields, self.findings, self.at(value.span()), self.full_name(key))
    }

    /// Reports a field that must be there and is not.
    pub(crate) fn missing(&self, key: &str, what: &str) {
        if self.fields.contains_key(key) {
            return; // It is there, and what is wrong with it has been reported.
        }
        let message = format!("`{}` is missing", self.full_name(key));
        self.report(
            Finding::new(&codes::FIELD_MISSING, self.place, message).help(format!("add {what}")),
        );
    }

    /// Reports every field that nobody asked for.
    pub(crate) fn close(&self) {
        let asked = self.asked.borrow();
        let mut known: Vec<&str> = asked.iter().map(String::as_str).collect();
        known.sort_unstable();
        known.dedup();
        for (key, _) in self.fields {
            let name = key.get_ref();
            // A table may hold a million names, each of which was asked for.
            if known.binary_search(&name.as_ref()).is_ok() {
                continue;
            }
            let home =
                if self.path.is_empty() { String::new() } else { format!(" in `{}`", self.path) };
            let help = did_you_mean(name, known.iter().copied());
            let help = help.unwrap_or_else(|| format!("known here: {}", known.join(", ")));
            let place = self.at(key.span());
            self.report(
                Finding::new(&codes::KEY_UNKNOWN, place, format!("`{name}` is not a field{home}"))
                    .help(help),
            );
        }
    }
}
