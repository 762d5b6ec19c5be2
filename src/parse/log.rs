//! `animals/NAME.csv`: the log.
//!
//! The csv crate reads the records; it knows where a record starts but not where a cell does, so the cell's place is found
//! inside the record's own text.

use csv::StringRecord;
use jiff::civil::Date;

use crate::finding::{FileId, Finding, Place, did_you_mean};
use crate::model::log::{Entry, Event, MealOutcome};
use crate::quantity::{self, Fault, Humidity, Length, Mass, Temperature};
use crate::source::SourceFile;

use super::codes;
use super::figure::figure_fault;

const HEADING: [&str; 5] = ["date", "what", "value", "outcome", "note"];
const EVENTS: [&str; 11] = [
    "weight",
    "length",
    "meal",
    "shed",
    "reading",
    "illness",
    "treatment",
    "joined",
    "move",
    "death",
    "note",
];

/// The first line of every log, without its end.
pub fn heading() -> String {
    HEADING.join(",")
}

/// Writes the cells of a log's line as they stand in the file, without the end of the line.
pub fn line(cells: [&str; 5]) -> String {
    let mut writer = csv::WriterBuilder::new().from_writer(Vec::new());
    // Line ends inside a cell would make two lines of one.
    let cells = cells.map(|cell| cell.split_whitespace().collect::<Vec<_>>().join(" "));
    let written = writer.write_record(&cells).ok().and_then(|()| writer.into_inner().ok());
    String::from_utf8(written.unwrap_or_default()).unwrap_or_default().trim_end().to_owned()
}

/// Reads a log by itself: what a line says before it is written down.
pub fn entries(file: &SourceFile) -> (Vec<Entry>, Vec<Finding>) {
    log(file)
}

pub(super) fn log(file: &SourceFile) -> (Vec<Entry>, Vec<Finding>) {
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .comment(Some(b'#'))
        .from_reader(file.text.as_bytes());
    let mut findings = Vec::new();
    let mut entries = Vec::new();
    let mut record = StringRecord::new();
    let mut headed = false;
    loop {
        match reader.read_record(&mut record) {
            Ok(false) => break,
            Ok(true) => {}
            Err(error) => {
                let start = error.position().map_or(0, byte);
                let message = format!("this line cannot be read: {error}");
                findings.push(Finding::new(
                    &codes::LOG_LINE,
                    Place::new(file.id, start..start),
                    message,
                ));
                continue;
            }
        }
        let start = line_start(&file.text, record.position().map_or(0, byte));
        let end =
            usize::try_from(reader.position().byte()).unwrap_or(usize::MAX).min(file.text.len());
        let line = Line {
            file: file.id,
            record: &record,
            text: file.text.get(start..end).unwrap_or(""),
            start,
        };
        if !headed {
            headed = true;
            if line.cells().collect::<Vec<_>>() == HEADING {
                continue;
            }
            let message = "the first line is not the heading of a log";
            findings.push(
                Finding::new(&codes::LOG_HEADING, line.place(), message)
                    .help("start the file with: date,what,value,outcome,note"),
            );
            if line.date().is_none() {
                continue; // A heading of other words: the lines under it are still read.
            }
        }
        match line.entry() {
            Ok(entry) => entries.push(entry),
            Err(finding) => findings.push(finding),
        }
    }
    if !headed {
        let message = "this log has nothing in it";
        findings.push(
            Finding::new(&codes::LOG_HEADING, Place::start_of(file.id), message)
                .help("start the file with: date,what,value,outcome,note"),
        );
    }
    (entries, findings)
}

/// The start of the record itself: the reader counts blank lines and comments before it as its own.
fn line_start(text: &str, mut start: usize) -> usize {
    while let Some(rest) = text.get(start..) {
        let length = rest.find('\n').map_or(rest.len(), |newline| newline + 1);
        let passed_over = rest.starts_with('#') || rest[..length].trim().is_empty();
        if !passed_over || length == 0 {
            break;
        }
        start += length;
    }
    start
}

fn byte(position: &csv::Position) -> usize {
    usize::try_from(position.byte()).unwrap_or(usize::MAX)
}

/// One line of a log with its text and where that starts.
struct Line<'a> {
    file: FileId,
    record: &'a StringRecord,
    text: &'a str,
    start: usize,
}

impl Line<'_> {
    fn cells(&self) -> impl Iterator<Item = &str> {
        self.record.iter().map(str::trim)
    }

    fn cell(&self, number: usize) -> &str {
        self.record.get(number).unwrap_or("").trim()
    }

    /// The place of the whole line. The reader may have stepped over blank lines before it and the line end after it.
    fn place(&self) -> Place {
        let lead = self.text.len() - self.text.trim_start().len();
        let length = self.text.trim().lines().next().unwrap_or("").len();
        Place::new(self.file, self.start + lead..self.start + lead + length)
    }

    /// The place of a cell: after the cells before it, found inside the line's own text.
    fn place_of(&self, number: usize) -> Place {
        let mut from = 0;
        for cell in self.record.iter().take(number) {
            let found = self.text[from..]
                .find(cell.trim())
                .map_or(from, |at| from + at + cell.trim().len());
            from = self.text[found..].find(',').map_or(found, |comma| found + comma + 1);
        }
        let cell = self.cell(number);
        match self.text[from..].find(cell) {
            Some(at) if !cell.is_empty() => {
                let at = self.start + from + at;
                Place::new(self.file, at..at + cell.len())
            }
            _ => self.place(),
        }
    }

    fn date(&self) -> Option<Date> {
        self.cell(0).parse().ok()
    }

    fn entry(&self) -> Result<Entry, Finding> {
        let Some(date) = self.date() else {
            let message = format!("`{}` is not a day of the calendar", self.cell(0));
            return Err(Finding::new(&codes::DATE_UNREADABLE, self.place_of(0), message)
                .help("write the year, month and day: 2026-11-25"));
        };
        if self.record.len() > HEADING.len() {
            let message = format!(
                "this line has {} cells and a log has {}",
                self.record.len(),
                HEADING.len()
            );
            return Err(Finding::new(&codes::LOG_LINE, self.place(), message)
                .help("put a text that holds a comma in quotes"));
        }
        let note = Some(self.cell(4)).filter(|note| !note.is_empty()).map(str::to_owned);
        Ok(Entry { date, event: self.event()?, note, place: self.place() })
    }

    fn event(&self) -> Result<Event, Finding> {
        let (what, value) = (self.cell(1), self.cell(2));
        match what {
            "weight" => self.value(quantity::parse_one::<Mass>).map(Event::Weight),
            "length" => self.value(quantity::parse_one::<Length>).map(Event::Length),
            "meal" => self.meal(),
            "shed" => Ok(Event::Shed { complete: self.shed_outcome()? }),
            "reading" => self.reading(),
            "illness" => Ok(Event::Illness(self.words())),
            "treatment" => Ok(Event::Treatment(self.words())),
            "joined" => Ok(Event::Joined(value.to_owned())),
            "move" | "death" | "note" => Ok(Event::Other(self.words())),
            _ => {
                let help = did_you_mean(what, EVENTS).unwrap_or_default();
                Err(Finding::new(
                    &codes::LOG_LINE,
                    self.place_of(1),
                    format!("`{what}` is not something that a log records"),
                )
                .help(format!("{help} It is one of: {}", EVENTS.join(", ")).trim().to_owned()))
            }
        }
    }

    fn words(&self) -> String {
        if self.cell(2).is_empty() { self.cell(4).to_owned() } else { self.cell(2).to_owned() }
    }

    fn value<T>(&self, parse: impl Fn(&str) -> Result<T, Fault>) -> Result<T, Finding> {
        parse(self.cell(2)).map_err(|fault| figure_fault(self.cell(1), self.place_of(2), 0, fault))
    }

    /// A meal's value is what was offered, with its mass at the end where it was weighed: `mouse, adult 28 g`.
    fn meal(&self) -> Result<Event, Finding> {
        let outcome = match self.cell(3) {
            "taken" | "" => MealOutcome::Taken,
            "part" => MealOutcome::Part,
            "refused" => MealOutcome::Refused,
            other => return Err(self.unknown_outcome(other, &["taken", "part", "refused"])),
        };
        let value = self.cell(2);
        if value.is_empty() {
            return Err(Finding::new(
                &codes::LOG_LINE,
                self.place(),
                "this meal does not say what was offered",
            )
            .help("write it in the third cell: rat 180 g"));
        }
        let mass_at = value
            .find(|c: char| c.is_ascii_digit())
            .filter(|at| quantity::parse_one::<Mass>(&value[*at..]).is_ok());
        let (food, mass) = match mass_at {
            Some(at) => (value[..at].trim(), quantity::parse_one::<Mass>(&value[at..]).ok()),
            None => (value, None),
        };
        Ok(Event::Meal { food: food.trim_end_matches(',').to_owned(), mass, outcome })
    }

    fn shed_outcome(&self) -> Result<Option<bool>, Finding> {
        let outcome = if self.cell(3).is_empty() { self.cell(2) } else { self.cell(3) };
        match outcome {
            "complete" => Ok(Some(true)),
            "partial" => Ok(Some(false)),
            "" => Ok(None),
            other => Err(self.unknown_outcome(other, &["complete", "partial"])),
        }
    }

    fn unknown_outcome(&self, word: &str, known: &[&str]) -> Finding {
        let help = did_you_mean(word, known.iter().copied()).unwrap_or_default();
        Finding::new(
            &codes::LOG_LINE,
            self.place_of(3),
            format!("`{word}` is not an outcome of a {}", self.cell(1)),
        )
        .help(format!("{help} It is one of: {}", known.join(", ")).trim().to_owned())
    }

    /// A reading's value is the probe's name, then a temperature, a humidity or both: `warm 31 C 52 %`.
    fn reading(&self) -> Result<Event, Finding> {
        let value = self.cell(2);
        let figures_at =
            value.find(|c: char| c.is_ascii_digit() || c == '-').unwrap_or(value.len());
        let (probe, figures) = value.split_at(figures_at);
        let humidity_at = figures.find('%').map(|percent| {
            let before = figures[..percent].trim_end();
            before.trim_end_matches(|c: char| c.is_ascii_digit() || c == '.').len()
        });
        let (degrees, humidity) = match humidity_at {
            Some(at) => (figures[..at].trim(), figures[at..].trim()),
            None => (figures.trim(), ""),
        };
        let fault = |fault| figure_fault(self.cell(1), self.place_of(2), figures_at, fault);
        let temperature = if degrees.is_empty() {
            None
        } else {
            Some(quantity::parse_one::<Temperature>(degrees).map_err(fault)?)
        };
        let humidity = if humidity.is_empty() {
            None
        } else {
            Some(quantity::parse_one::<Humidity>(humidity).map_err(fault)?)
        };
        if probe.trim().is_empty() || (temperature.is_none() && humidity.is_none()) {
            return Err(Finding::new(
                &codes::LOG_LINE,
                self.place_of(2),
                "a reading names a probe and what it read",
            )
            .help("write it as: warm 31 C 52 %"));
        }
        Ok(Event::Reading { probe: probe.trim().to_owned(), temperature, humidity })
    }
}
