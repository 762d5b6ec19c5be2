//! `maps/NAME.toml`, and the table that a map is laid over.

use std::collections::BTreeMap;

use csv::ByteRecord;

use crate::finding::{FileId, Finding, Place};
use crate::model::map::{Column, LogColumn, Map, ProbeColumns};
use crate::model::word::Word;

use super::codes;
use super::moment;
use super::table::{self, Table};

/// A map that says nothing of dates means the form that this program writes.
const STANDING_FORM: &str = "YYYY-MM-DD";
/// The year, the month, the day, the hour, the minute, the second, and what a table may hold besides.
const MOST_TIME_COLUMNS: usize = 8;
/// Every row is read once for each probe.
const MOST_PROBES: usize = 64;

/// Reads a map by itself: where it is named on the command line.
pub fn map_of(file: FileId, text: &str) -> (Map, Vec<Finding>) {
    table::read(file, text, |top| {
        let form = top.named("date");
        let written = form.as_ref().map_or(STANDING_FORM, |named| named.name.as_str());
        let form_read = moment::form(written).or_else(|why| {
            let place = form.as_ref().map_or(top.place(), |named| named.place);
            top.report(
                Finding::new(&codes::FIGURE_UNREADABLE, place, why)
                    .help("write it with YYYY, MM, DD, hh, mm and ss: DD.MM.YYYY hh:mm"),
            );
            moment::form(STANDING_FORM)
        });
        let separator = top.named("separator").and_then(|named| {
            let mut letters = named.name.chars();
            match (named.name.as_str(), letters.next(), letters.next()) {
                ("tab", ..) => Some('\t'),
                (_, Some(letter), None) if letter.is_ascii() => Some(letter),
                _ => {
                    let message = format!("`{}` does not part columns", named.name);
                    top.report(
                        Finding::new(&codes::FIGURE_UNREADABLE, named.place, message)
                            .help("write one sign, such as \";\", or \"tab\""),
                    );
                    None
                }
            }
        });
        let decimal_comma = match top.named("decimal") {
            Some(named) if named.name == "," => true,
            Some(named) if named.name != "." => {
                let message = format!("`{}` does not stand before decimals", named.name);
                top.report(
                    Finding::new(&codes::FIGURE_UNREADABLE, named.place, message)
                        .help("write \",\" or \".\""),
                );
                false
            }
            _ => false,
        };
        top.missing("time", "the column that holds the date: time = \"Date\"");
        let time = top.list_at_most(MOST_TIME_COLUMNS, "time");
        let probes = top.tables_at_most(MOST_PROBES, "probe");
        let log = top.table("log");
        let units = top.table("units");
        let words = top.table("words");
        let map = Map {
            file,
            separator,
            decimal_comma,
            heading: top.number("heading").map_or(1, |(line, _)| line),
            form: form_read.unwrap_or(crate::model::map::DateForm {
                written: STANDING_FORM.to_owned(),
                pieces: Vec::new(),
            }),
            time: time.into_iter().map(column).collect(),
            probes: probes.iter().filter_map(probe).collect(),
            log: log.as_ref().map(columns).unwrap_or_default(),
            units: units.as_ref().map(units_of).unwrap_or_default(),
            words: words.as_ref().map(words_of).unwrap_or_default(),
        };
        [log, units].iter().flatten().for_each(Table::close);
        map
    })
}

fn column(named: crate::model::Named) -> Column {
    Column { name: named.name, place: named.place }
}

fn probe(table: &Table<'_, '_>) -> Option<ProbeColumns> {
    table.missing("name", "the probe's name, as in the animal's file: name = \"warm\"");
    let name = table.text("name");
    let fahrenheit = table.named("unit").and_then(|named| match named.name.as_str() {
        "C" | "°C" => Some(false),
        "F" | "°F" => Some(true),
        other => {
            let message = format!("`{other}` is no unit of a temperature");
            table.report(
                Finding::new(&codes::UNIT_UNKNOWN, named.place, message)
                    .help("write \"C\" or \"F\""),
            );
            None
        }
    });
    let (temperature, humidity) =
        (table.named("temperature").map(column), table.named("humidity").map(column));
    table.close();
    Some(ProbeColumns { name: name?, temperature, humidity, fahrenheit })
}

fn columns(table: &Table<'_, '_>) -> BTreeMap<LogColumn, Column> {
    let all = LogColumn::ALL.iter();
    all.filter_map(|(what, key)| Some((*what, column(table.named(key)?)))).collect()
}

fn units_of(table: &Table<'_, '_>) -> BTreeMap<LogColumn, String> {
    let with_unit = [LogColumn::Weight, LogColumn::Length, LogColumn::MealMass];
    let keyed = LogColumn::ALL.iter().filter(|(what, _)| with_unit.contains(what));
    keyed.filter_map(|(what, key)| Some((*what, table.text(key)?))).collect()
}

fn words_of(table: &Table<'_, '_>) -> BTreeMap<String, String> {
    let pair = |named: crate::model::Named| {
        let ours = table.text(&named.name)?;
        Some((named.name.trim().to_lowercase(), ours))
    };
    table.names().into_iter().filter_map(pair).collect()
}

/// A table as it is read through a map, row by row.
pub(super) struct Rows<'a> {
    reader: csv::Reader<&'a [u8]>,
    record: ByteRecord,
    /// The headings, where there are any.
    pub(super) headings: Vec<String>,
    text: &'a [u8],
    /// How far lines have been counted, and how many there were to there.
    counted: (usize, u64),
}

/// One row: its line in the file and its cells.
pub(super) struct Row<'r> {
    pub(super) line: u64,
    record: &'r ByteRecord,
}

impl Row<'_> {
    /// A cell without white space at its ends; what is not UTF-8 counts as empty.
    pub(super) fn cell(&self, column: usize) -> &str {
        let bytes = self.record.get(column).unwrap_or_default();
        std::str::from_utf8(bytes).unwrap_or_default().trim()
    }
}

impl<'a> Rows<'a> {
    /// Opens a table; the lines before its headings are passed over.
    pub(super) fn open(map: &Map, text: &'a str) -> Rows<'a> {
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let above = u64::from(map.heading.saturating_sub(1));
        let start = start_of_line(text, above + 1);
        let first = text[start..].lines().next().unwrap_or_default();
        let separator = map.separator.unwrap_or_else(|| {
            let count = |sign: &char| first.matches(*sign).count();
            [',', ';', '\t'].into_iter().max_by_key(count).unwrap_or(',')
        });
        let reader = csv::ReaderBuilder::new()
            .has_headers(false)
            .flexible(true)
            .delimiter(u8::try_from(separator).unwrap_or(b','))
            .from_reader(&text.as_bytes()[start..]);
        let (record, headings) = (ByteRecord::new(), Vec::new());
        let text = &text.as_bytes()[start..];
        let mut rows = Rows { reader, record, headings, text, counted: (0, above) };
        if map.heading > 0
            && let Some(row) = rows.next()
        {
            let cells = (0..row.record.len()).map(|number| row.cell(number).to_owned());
            rows.headings = cells.collect();
        }
        rows
    }

    /// The next row that is not blank.
    pub(super) fn next(&mut self) -> Option<Row<'_>> {
        loop {
            // A table of bytes has no row that the reader would refuse.
            if !self.reader.read_byte_record(&mut self.record).unwrap_or(false) {
                return None;
            }
            let blank = self.record.iter().all(|cell| cell.iter().all(u8::is_ascii_whitespace));
            if !blank {
                break;
            }
        }
        let start = self.record.position().map_or(0, csv::Position::byte);
        let mut start = usize::try_from(start).unwrap_or(usize::MAX).min(self.text.len());
        // The reader counts the line end before a row as the row's own, in part or in whole.
        while matches!(self.text.get(start), Some(b'\r' | b'\n')) {
            start += 1;
        }
        let (from, lines) = self.counted;
        let passed = self.text.get(from..start).unwrap_or_default();
        let more = passed.iter().filter(|byte| **byte == b'\n').count();
        self.counted = (start, lines + more as u64);
        Some(Row { line: self.counted.1 + 1, record: &self.record })
    }

    /// The number of a column, by its heading without regard to case, or written as `column 3`.
    pub(super) fn column(&self, column: &Column) -> Result<usize, String> {
        let wanted = column.name.to_lowercase();
        let found = self.headings.iter().position(|heading| heading.to_lowercase() == wanted);
        let numbered = wanted
            .strip_prefix("column ")
            .and_then(|number| number.trim().parse::<usize>().ok())
            .and_then(|number| number.checked_sub(1));
        found.or(numbered).ok_or_else(|| {
            let near = crate::finding::did_you_mean(
                &column.name,
                self.headings.iter().map(String::as_str),
            );
            let near = near.unwrap_or_else(|| format!("there are: {}", self.headings.join(", ")));
            format!("the table has no column `{}`; {near}", column.name)
        })
    }
}

/// A number as the table writes it; none where it is not one. Spaces and apostrophes between thousands are passed over.
pub(super) fn number(map: &Map, cell: &str) -> Option<f64> {
    let plain = cell.bytes().all(|byte| byte.is_ascii_digit() || byte == b'.' || byte == b'-');
    if plain && !map.decimal_comma {
        return cell.parse().ok();
    }
    let mut written = String::with_capacity(cell.len());
    for letter in cell.chars() {
        match letter {
            ',' if map.decimal_comma => written.push('.'),
            '.' if map.decimal_comma => {}
            '\u{2212}' => written.push('-'),
            ' ' | '\u{a0}' | '\u{202f}' | '\'' => {}
            _ => written.push(letter),
        }
    }
    written.parse().ok().filter(|number: &f64| number.is_finite())
}

/// The place of a line of a table, for a finding.
pub(super) fn place_of_line(file: FileId, text: &str, line: u64) -> Place {
    let start = start_of_line(text, line);
    let length = text[start..].lines().next().unwrap_or_default().len();
    Place::new(file, start..start + length)
}

/// Where a line begins, counted from 1: the end of the text where it has fewer.
fn start_of_line(text: &str, line: u64) -> usize {
    let Some(ends_before) = line.checked_sub(2) else { return 0 };
    let nth = usize::try_from(ends_before).unwrap_or(usize::MAX);
    text.match_indices('\n').nth(nth).map_or(text.len(), |(at, _)| at + 1)
}
