//! `species/NAME.override.toml`: single figures of a species that a nearer folder puts in place of a farther one's.

use std::collections::BTreeMap;

use crate::finding::Finding;
use crate::model::overriding::{Outcome, Override, Replaced};
use crate::model::slot::Slot;
use crate::model::species::Figure;
use crate::model::stated::{Amount, Statable};
use crate::model::{Cited, Named, Species};
use crate::quantity::{self, Fault, FaultKind};
use crate::source::{Role, SourceFile, Sources};

use super::figure::whole_numbers;
use super::table::{self, Table};

/// Reads every override, from the farthest folder to the nearest, and puts each in its place.
///
/// An override holds for what the folders below its own define. What came of each is told, so that proof can judge it.
pub(super) fn overrides(
    sources: &Sources,
    species: &mut BTreeMap<String, Species>,
) -> (Vec<Override>, Vec<Finding>) {
    let mut files: Vec<&SourceFile> = sources.of(Role::Override).collect();
    files.sort_by_key(|file| (std::cmp::Reverse(file.layer), file.name.clone()));
    let (mut read, mut findings) = (Vec::new(), Vec::new());
    for file in files {
        let whole = sources.named(Role::Species, &file.name).map(|whole| whole.layer);
        let (entries, found) = table::read(file.id, &file.text, |top| {
            top.missing("figure", "a figure to replace: [[figure]]");
            let below = match whole {
                Some(layer) if layer <= file.layer => Err(Outcome::WholeSpecies),
                _ => species.get_mut(&file.name).ok_or(Outcome::NoSpecies),
            };
            let tables = top.tables("figure");
            match below {
                Ok(species) => {
                    let read = |table: &Table<'_, '_>| entry(file, table, Some(&mut *species));
                    tables.iter().filter_map(read).collect::<Vec<_>>()
                }
                Err(outcome) => {
                    let entries = tables.iter().filter_map(|table| entry(file, table, None));
                    entries.map(|entry| Override { outcome: outcome.clone(), ..entry }).collect()
                }
            }
        });
        findings.extend(found);
        for entry in &entries {
            if let (Some(_), Some(species)) = (entry.replaced(), species.get_mut(&entry.species)) {
                species.overrides.retain(|older| older.figure.name != entry.figure.name);
                species.overrides.push(entry.clone());
            }
        }
        read.extend(entries);
    }
    (read, findings)
}

/// Reads one entry and, where there is a species, puts it in its place.
fn entry(
    file: &SourceFile,
    table: &Table<'_, '_>,
    species: Option<&mut Species>,
) -> Option<Override> {
    let figure = table.named("name");
    let (by, reason) = (table.text("by"), table.text("reason"));
    let (sources, on) = (table.list("source"), table.date("on"));
    table.missing("name", "the figure, by the name that words use: name = \"humidity.ceiling\"");
    table.missing("value", "what holds instead: value = \"65 %\"");
    table.missing("reason", "why it differs here: reason = \"…\"");
    table.missing("by", "who decided it: by = \"…\"");
    // A figure changes only where somebody stands behind it and says why.
    let outcome = match (&figure, &by, &reason, species) {
        (Some(figure), Some(_), Some(reason), Some(species)) => {
            place(table, species, &figure.name, &Citing { sources: &sources, reason })
        }
        _ => {
            _ = (table.named("value"), table.named("was"));
            Outcome::NoSpecies
        }
    };
    table.close();
    Some(Override {
        file: file.id,
        species: file.name.clone(),
        figure: figure?,
        by: by?,
        reason: reason?,
        sources,
        on: on.map(|(on, _)| on),
        outcome,
    })
}

/// What the new figure says of where it comes from.
struct Citing<'a> {
    sources: &'a [Named],
    reason: &'a str,
}

/// Puts the value of an entry in the place of a figure.
fn place(table: &Table<'_, '_>, species: &mut Species, name: &str, citing: &Citing<'_>) -> Outcome {
    let known: Vec<String> = species.stated().into_iter().map(|stated| stated.name).collect();
    let slot = if known.iter().any(|known| known == name) { species.slot(name) } else { None };
    let replaced = match slot {
        None => {
            _ = (table.named("value"), table.named("was"));
            return Outcome::NoFigure(known);
        }
        Some(Slot::Temperature(slot)) => figure(table, slot, citing),
        Some(Slot::Length(slot)) => figure(table, slot, citing),
        Some(Slot::Mass(slot)) => figure(table, slot, citing),
        Some(Slot::Humidity(slot)) => figure(table, slot, citing),
        Some(Slot::Span(slot)) => figure(table, slot, citing),
        Some(Slot::Share(slot)) => figure(table, slot, citing),
        Some(Slot::UvIndex(slot)) => figure(table, slot, citing),
        Some(Slot::Latitude(slot)) => figure(table, slot, citing),
        Some(Slot::PerYear(slot)) => figure(table, slot, citing),
        Some(Slot::Multiple(slot)) => figure(table, slot, citing),
        Some(Slot::Count(slot)) => {
            cited(table, slot, citing, whole_numbers, |(low, high)| Amount::Count(*low, *high))
        }
        Some(Slot::Zone(slot)) => cited(table, slot, citing, zone, Amount::of_zone),
    };
    replaced.map_or(Outcome::Unreadable, |replaced| Outcome::Replaced(Box::new(replaced)))
}

fn figure<Q: Statable>(
    table: &Table<'_, '_>,
    slot: &mut Figure<Q>,
    citing: &Citing<'_>,
) -> Option<Replaced> {
    cited(table, slot, citing, quantity::parse_range::<Q>, |range| Q::amount(*range))
}

/// Replaces a cited value. What others say stays beside it: it is said of the same figure.
fn cited<T>(
    table: &Table<'_, '_>,
    slot: &mut Option<Cited<T>>,
    citing: &Citing<'_>,
    parse: impl Fn(&str) -> Result<T, Fault>,
    amount: impl Fn(&T) -> Amount,
) -> Option<Replaced> {
    let value = table.parsed("value", &parse);
    let was = table.parsed("was", &parse).map(|(was, place)| (amount(&was), place));
    let (value, place) = value?;
    let before = slot.as_mut()?;
    let replaced = Replaced {
        after: amount(&value),
        before: amount(&before.value),
        before_sources: before.sources.clone(),
        before_others: before.others.iter().map(|other| amount(&other.value)).collect(),
        was,
    };
    let others = std::mem::take(&mut before.others);
    let (sources, note) = (citing.sources.to_vec(), Some(citing.reason.to_owned()));
    *slot = Some(Cited { value, place, sources, note, others });
    Some(replaced)
}

fn zone(text: &str) -> Result<u8, Fault> {
    let number = text.trim().trim_start_matches("zone").trim().parse::<u8>().ok();
    number.filter(|zone| (1..=4).contains(zone)).ok_or_else(|| Fault {
        kind: FaultKind::Unreadable,
        at: 0..text.len(),
        message: format!("`{text}` is no ultraviolet zone"),
        help: "write a zone from \"1\" (shade) to \"4\" (full sun)".to_owned(),
    })
}
