//! `animals/NAME.toml`.

use std::sync::Arc;

use crate::finding::{Finding, Place};
use crate::model::animal::{HistoryEntry, Notes, Practice, Quarantine};
use crate::model::recording::Logger;
use crate::model::word::{Basis, Sex, Status};
use crate::model::{Animal, Named};
use crate::quantity::Span;
use crate::source::SourceFile;

use super::housing::housing;
use super::table::{self, Table};

/// A quarantine without a length of its own lasts as long as accreditation guidance asks at the least, times three:
/// the longest of the common figures, since a clock that runs too long harms nobody.
const QUARANTINE_DAYS: f64 = 90.0;
/// An enclosure has a few data loggers, a room one.
const MOST_LOGGERS: usize = 64;

pub(super) fn animal(file: &SourceFile) -> (Option<Animal>, Vec<Finding>) {
    table::read(file.id, &file.text, |top| {
        top.missing("name", "the animal's name: name = \"Juniper\"");
        top.missing("species", "the name of its species file: species = \"corn-snake\"");
        let name = top.text("name");
        let species = top.named("species");
        let basis = top.word("hatched_basis").map_or(Basis::Known, |(basis, _)| basis);
        let heat = Equipment {
            heaters: top.tables("heater"),
            lamps: top.tables("lamp"),
            probes: top.tables("probe"),
            hides: top.tables("hide"),
        };
        let enclosure = top.table("enclosure");
        let place = enclosure.as_ref().map_or(top.place(), Table::place);
        let has_equipment = [&heat.heaters, &heat.lamps, &heat.probes, &heat.hides]
            .iter()
            .any(|tables| !tables.is_empty());
        let animal = Animal {
            file: file.id,
            name: name.clone().unwrap_or_default(),
            // Read to the end even without a species, so that each fault is reported once.
            species: species.clone().unwrap_or(Named { name: String::new(), place: top.place() }),
            form: top.named("form"),
            sex: top.word("sex").map_or(Sex::Unknown, |(sex, _)| sex),
            sex_basis: top.text("sex_basis"),
            hatched: top.date("hatched").map(|(date, place)| (date, basis, place)),
            arrived: top.date("arrived"),
            origin: top.text("origin"),
            status: top.word("status").map_or(Status::Resident, |(status, _)| status),
            publish: top.flag("publish").is_some_and(|(publish, _)| publish),
            story: top.text("story"),
            chip: top.text("chip"),
            company: top.list("with"),
            turn: top.number("turn"),
            tools: top.list("tools"),
            temperament: top.text("temperament"),
            photo: top.named("photo"),
            photo_shows: top.text("photo_shows"),
            housing: (enclosure.is_some() || has_equipment)
                .then(|| housing(enclosure.as_ref(), &heat, place)),
            feeding: top.table("feeding").map(|table| practice(&table)),
            quarantine: top.table("quarantine").and_then(|table| quarantine(&table)),
            history: top.tables("history").iter().filter_map(history).collect(),
            notes: top.table("notes").map(|table| notes(&table)).unwrap_or_default(),
            under_treatment: top.flag("under_treatment"),
            loggers: top.tables_at_most(MOST_LOGGERS, "logger").iter().filter_map(logger).collect(),
            papers: top.list("papers").into_iter().map(|named| named.name).collect(),
            log: Vec::new(),
        };
        (name.is_some() && species.is_some()).then_some(animal)
    })
}

/// The tables of an animal file that stand beside `[enclosure]`.
pub(super) struct Equipment<'t, 'i> {
    pub(super) heaters: Vec<Table<'t, 'i>>,
    pub(super) lamps: Vec<Table<'t, 'i>>,
    pub(super) probes: Vec<Table<'t, 'i>>,
    pub(super) hides: Vec<Table<'t, 'i>>,
}

fn practice(table: &Table<'_, '_>) -> Practice {
    let practice = Practice {
        place: table.place(),
        meal: table.text("meal"),
        mass: table.range("mass"),
        width: table.one("width"),
        count: table.parsed("count", super::figure::whole_numbers),
        every: table.range("every"),
        frozen: table.flag("frozen").map(|(frozen, _)| frozen),
    };
    table.close();
    practice
}

fn quarantine(table: &Table<'_, '_>) -> Option<Quarantine> {
    let started: Option<(jiff::civil::Date, Place)> = table.date("started");
    let minimum =
        table.one::<Span>("minimum").map_or(Span::from_days(QUARANTINE_DAYS), |(span, _)| span);
    let until = table.date("until");
    if started.is_none() {
        table.missing("started", "the first day: started = 2026-10-20");
    }
    table.close();
    started.map(|(started, place)| Quarantine { started, minimum, until, place })
}

fn logger(table: &Table<'_, '_>) -> Option<Logger> {
    table.missing("readings", "the table in readings/: readings = \"juniper-2026\"");
    table.missing("map", "the map in maps/ that says how it is read: map = \"hall-logger\"");
    let (readings, map) = (table.named("readings"), table.named("map"));
    let place = table.place();
    table.close();
    Some(Logger { place, readings: readings?, map: map?, file: None, recordings: Arc::default() })
}

fn history(table: &Table<'_, '_>) -> Option<HistoryEntry> {
    let date = table.date("date").map(|(date, _)| date);
    let what = table.text("what");
    let by = table.text("by");
    if what.is_none() {
        table.missing("what", "what happened: what = \"…\"");
    }
    table.close();
    Some(HistoryEntry { date, what: what?, by })
}

fn notes(table: &Table<'_, '_>) -> Notes {
    let notes = Notes {
        sitter: table.text("sitter"),
        vet: table.text("vet"),
        keeper: table.text("keeper"),
    };
    table.close();
    notes
}
