//! `readings/NAME.csv`: what a data logger has recorded, read through a map in one pass.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use jiff::civil::Date;
use rayon::prelude::*;

use crate::finding::{FileId, Finding};
use crate::model::Model;
use crate::model::map::Map;
use crate::model::recording::{Recording, Sample};
use crate::source::{Role, SourceFile, Sources};

use super::map::{Row, Rows, number, place_of_line};
use super::{codes, moment};

/// Where one probe's numbers stand.
struct Columns {
    temperature: Option<usize>,
    humidity: Option<usize>,
    fahrenheit: bool,
}

/// What was not understood: how many rows, and the first of them.
#[derive(Default)]
struct Faults {
    rows: usize,
    first: Option<(u64, String)>,
}

impl Faults {
    fn add(&mut self, line: u64, why: impl FnOnce() -> String) {
        self.rows += 1;
        if self.first.is_none() {
            self.first = Some((line, why()));
        }
    }
}

/// Reads what the data loggers have recorded. The logger of a room is named by every animal in it, and its table read once.
pub(super) fn loggers(sources: &Sources, model: &mut Model) -> Vec<Finding> {
    let mut findings = Vec::new();
    let named = model.animals.values().flat_map(|animal| &animal.loggers);
    let named: BTreeSet<(&str, &str)> =
        named.map(|logger| (logger.readings.name.as_str(), logger.map.name.as_str())).collect();
    let tables = named.into_iter().filter_map(|(readings, map)| {
        let table = sources.named(Role::Readings, readings)?;
        Some(((readings.to_owned(), map.to_owned()), (table, model.maps.get(map))))
    });
    let tables: Vec<_> = tables.collect();
    let read: Vec<_> = tables
        .into_par_iter()
        .map(|(names, (table, map))| (names, table.id, map.map(|map| recordings(table, map))))
        .collect();
    let mut known: BTreeMap<_, (FileId, Arc<[Recording]>)> = BTreeMap::new();
    for (names, file, made) in read {
        let (made, found) = made.unwrap_or_default();
        findings.extend(found);
        known.insert(names, (file, made.into()));
    }
    for logger in model.animals.values_mut().flat_map(|animal| &mut animal.loggers) {
        let names = (logger.readings.name.clone(), logger.map.name.clone());
        if let Some((file, made)) = known.get(&names) {
            logger.file = Some(*file);
            logger.recordings = Arc::clone(made);
        }
    }
    findings
}

/// Reads what the probes of a map have recorded.
///
/// A row is kept for the probes whose numbers can be read. A row whose moment cannot be read, or that does not come after the
/// row before it, is left out; how many there were, and the first of them, is told in one finding.
pub fn recordings(file: &SourceFile, map: &Map) -> (Vec<Recording>, Vec<Finding>) {
    let mut findings = Vec::new();
    let mut rows = Rows::open(map, &file.text);
    let mut missing = |why: String, place| {
        findings.push(
            Finding::new(&codes::READINGS_COLUMN, place, why)
                .also_at(crate::finding::Place::start_of(file.id), "the table"),
        );
    };
    let mut find = |column: &crate::model::map::Column| match rows.column(column) {
        Ok(number) => Some(number),
        Err(why) => {
            missing(why, column.place);
            None
        }
    };
    let time: Vec<usize> = map.time.iter().filter_map(&mut find).collect();
    let mut columns = Vec::new();
    for probe in &map.probes {
        let temperature = probe.temperature.as_ref().and_then(&mut find);
        let humidity = probe.humidity.as_ref().and_then(&mut find);
        columns.push(Columns { temperature, humidity, fahrenheit: false });
    }
    if time.is_empty() || time.len() < map.time.len() {
        return (Vec::new(), findings);
    }
    for (probe, columns) in map.probes.iter().zip(&mut columns) {
        let heading = columns.temperature.and_then(|number| rows.headings.get(number));
        let told = heading.is_some_and(|heading| {
            let heading = heading.to_lowercase();
            heading.contains("°f") || heading.contains("fahrenheit") || heading.ends_with("(f)")
        });
        columns.fahrenheit = probe.fahrenheit.unwrap_or(told);
    }
    let mut made: Vec<Recording> = map
        .probes
        .iter()
        .map(|probe| Recording { probe: probe.name.clone(), samples: Vec::new() })
        .collect();
    let (mut unread, mut unordered) = (Faults::default(), Faults::default());
    let mut clock = Clock { map, time, day: None, joined: String::new() };
    let mut last = i64::MIN;
    while let Some(row) = rows.next() {
        let Some(at) = clock.read(&row) else {
            unread.add(row.line, || {
                format!("`{}` is not of the form {}", clock.joined, map.form.written)
            });
            continue;
        };
        if at <= last {
            unordered.add(row.line, || "it does not come after the row before it".to_owned());
            continue;
        }
        last = at;
        for (columns, recording) in columns.iter().zip(&mut made) {
            match sample(map, &row, columns, at) {
                Ok(Some(sample)) => recording.samples.push(sample),
                Ok(None) => {}
                Err(cell) => unread.add(row.line, || format!("`{cell}` is not a number")),
            }
        }
    }
    for (faults, what) in [(unread, "cannot be read"), (unordered, "are out of order")] {
        let Some((line, why)) = faults.first else { continue };
        let rows =
            if faults.rows == 1 { "1 row".to_owned() } else { format!("{} rows", faults.rows) };
        let message = format!(
            "{rows} of these readings {what} and count for nothing; the first, on line {line}: {why}"
        );
        let place = place_of_line(file.id, &file.text, line);
        let help = "put the row right, or say in the map how it is written";
        findings.push(Finding::new(&codes::READINGS_ROW, place, message).help(help));
    }
    (made, findings)
}

/// Reads moments, and remembers the day: most rows are of the day of the row before.
struct Clock<'m> {
    map: &'m Map,
    time: Vec<usize>,
    day: Option<(Date, i64)>,
    joined: String,
}

impl Clock<'_> {
    fn read(&mut self, row: &Row<'_>) -> Option<i64> {
        self.joined.clear();
        for (place, column) in self.time.iter().enumerate() {
            if place > 0 {
                self.joined.push(' ');
            }
            self.joined.push_str(row.cell(*column));
        }
        let moment = moment::read(&self.map.form, &self.joined)?;
        let day = match self.day {
            Some((date, number)) if date == moment.date => number,
            _ => {
                let number = moment::day_number(moment.date);
                self.day = Some((moment.date, number));
                number
            }
        };
        Some(day * 86_400 + moment.seconds)
    }
}

/// One probe's numbers in a row; none where both cells are empty.
fn sample<'r>(
    map: &Map,
    row: &'r Row<'_>,
    columns: &Columns,
    at: i64,
) -> Result<Option<Sample>, &'r str> {
    let figure = |column: Option<usize>| -> Result<Option<f64>, &'r str> {
        let cell = column.map_or("", |column| row.cell(column));
        if cell.is_empty() {
            return Ok(None);
        }
        number(map, cell.trim_end_matches(['%', '°', 'C', 'F', ' ', '\u{a0}']))
            .map(Some)
            .ok_or(cell)
    };
    let temperature = figure(columns.temperature)?;
    let celsius = temperature
        .map(|degrees| (if columns.fahrenheit { (degrees - 32.0) / 1.8 } else { degrees }) as f32);
    let percent = figure(columns.humidity)?.map(|percent| percent as f32);
    let any = celsius.is_some() || percent.is_some();
    Ok(any.then_some(Sample { at, celsius, percent }))
}
