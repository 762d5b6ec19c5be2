//! `wardsheet import LOG.csv --animal NAME --map MAP`: bring the rows of a spreadsheet into an animal's log.

use std::collections::BTreeMap;
use std::path::PathBuf;

use clap::Args;

use crate::finding::{FileId, did_you_mean, draw, stops};
use crate::model::log::{Entry, Event};
use crate::parse::import::{Import, ImportedLine, import};
use crate::parse::log::heading;
use crate::parse::map_of;
use crate::source::{Layer, Role, Sources, text_of};
use crate::write::write_log;

use super::open::open;
use super::{Ended, Failure, Outcome, Outside, Whereabouts};

/// How many lines are shown from either end of what was understood.
const SHOWN: usize = 4;

#[derive(Debug, Args)]
#[command(
    after_help = "Example:\n  wardsheet import weights.csv --animal juniper --map maps/weights.toml"
)]
pub(super) struct Arguments {
    /// The table to bring in
    table: PathBuf,
    /// The animal's name: the name of its file
    #[arg(long, value_name = "NAME")]
    animal: String,
    /// The map that says which column means what
    #[arg(long, value_name = "FILE")]
    map: PathBuf,
    /// Write without asking
    #[arg(long)]
    yes: bool,
    #[command(flatten)]
    at: Whereabouts,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let today = arguments.at.as_of.unwrap_or(outside.today);
    let opened = open(&arguments.at, outside)?;
    let animals = &opened.checked.model.animals;
    let Some(animal) = animals.get(&arguments.animal) else {
        let near = did_you_mean(&arguments.animal, animals.keys().map(String::as_str));
        let near = near.unwrap_or_else(|| "see the folder animals/".to_owned());
        return Err(Failure::Said(format!("there is no animal `{}`; {near}", arguments.animal)));
    };
    let read = |path: &PathBuf| {
        text_of(&outside.here.join(path))
            .map_err(|why| Failure::Said(format!("{}: {why}", path.display())))
    };
    let (table, map_text) = (read(&arguments.table)?, read(&arguments.map)?);
    let mut alone = Sources::default();
    let shown = arguments.map.to_string_lossy().into_owned();
    alone.add(shown, Role::Map, "map", Layer::Own, map_text.clone());
    let (map, found) = map_of(FileId(0), &map_text);
    if !found.is_empty() {
        let drawn = draw::draw(&found, outside.colour, &|file| alone.shown(file));
        write!(outside.err, "{drawn}")?;
    }
    if stops(&found) {
        writeln!(outside.err, "nothing was written")?;
        return Ok(Outcome::Stopped);
    }
    let mut made = match import(&table, &map) {
        Ok(made) => made,
        Err(faults) => return Err(Failure::Said(faults.join("\nwardsheet: "))),
    };
    let (future, lines) = made.lines.into_iter().partition(|line| line.entry.date > today);
    made.lines = lines;
    let future: Vec<ImportedLine> = future;
    made.left.extend(
        future.iter().map(|line| (line.from, format!("{} has not come yet", line.entry.date))),
    );
    made.left.sort();
    let log = opened.sources.named(Role::Log, &arguments.animal);
    let new = not_in(&animal.log, &made.lines);
    tell(arguments, &made, new.len(), outside)?;
    if new.is_empty() {
        writeln!(outside.out, "nothing is new; nothing was written")?;
        return Ok(Outcome::Done);
    }
    if !(arguments.yes || asked(outside)?) {
        writeln!(outside.err, "nothing was written")?;
        return Ok(Outcome::Stopped);
    }
    let place = match log {
        Some(file) => opened.folder.join(&file.path),
        None => opened.folder.join("animals").join(format!("{}.csv", arguments.animal)),
    };
    let old = log.map_or("", |file| file.text.as_str());
    write_log(&place, &merged(old, &animal.log, &new))?;
    writeln!(outside.out, "{}: {} lines more", place.display(), new.len())?;
    Ok(Outcome::Done)
}

/// The lines that the log does not hold yet. What the table holds twice on one day is two events, and the log must hold it twice.
fn not_in<'a>(log: &[Entry], lines: &'a [ImportedLine]) -> Vec<&'a ImportedLine> {
    let mut held: BTreeMap<String, usize> = BTreeMap::new();
    let same = |entry: &Entry| format!("{} {:?}", entry.date, entry.event);
    for entry in log {
        *held.entry(same(entry)).or_default() += 1;
    }
    let mut new = Vec::new();
    for line in lines {
        match held.get_mut(&same(&line.entry)) {
            Some(left) if *left > 0 => *left -= 1,
            _ => new.push(line),
        }
    }
    new
}

/// The log with new lines among the old ones, each after those of its own day. The old lines stand as they stood.
fn merged(old: &str, log: &[Entry], new: &[&ImportedLine]) -> String {
    let mut new: Vec<&ImportedLine> = new.to_vec();
    new.sort_by_key(|line| line.entry.date);
    let mut text = if old.trim().is_empty() { format!("{}\n", heading()) } else { String::new() };
    let mut waiting = new.into_iter().peekable();
    let mut from = 0;
    for entry in log {
        let Some(before) = old.get(from..entry.place.start) else { continue };
        text.push_str(before);
        from = entry.place.start;
        while let Some(line) = waiting.next_if(|line| line.entry.date < entry.date) {
            text.push_str(&line.written);
            text.push('\n');
        }
    }
    text.push_str(old.get(from..).unwrap_or_default());
    if !text.ends_with('\n') {
        text.push('\n');
    }
    for line in waiting {
        text.push_str(&line.written);
        text.push('\n');
    }
    text
}

fn tell(
    arguments: &Arguments,
    made: &Import,
    new: usize,
    outside: &mut Outside<'_>,
) -> Result<(), Failure> {
    let table = arguments.table.display();
    writeln!(outside.out, "{table}: {} rows", made.rows)?;
    let width = made.columns.iter().map(|(name, _)| name.chars().count()).max().unwrap_or(0);
    for (name, meaning) in &made.columns {
        writeln!(outside.out, "  {name:width$}  {meaning}")?;
    }
    if !made.unused.is_empty() {
        writeln!(outside.out, "not used: {}", made.unused.join(", "))?;
    }
    writeln!(outside.out, "\nunderstood: {}", counted(&made.lines))?;
    let last = made.lines.len().saturating_sub(SHOWN);
    for (place, line) in made.lines.iter().enumerate() {
        if place < SHOWN || place >= last {
            writeln!(outside.out, "  {}  (line {})", line.written, line.from)?;
        } else if place == SHOWN {
            writeln!(outside.out, "  …")?;
        }
    }
    if !made.left.is_empty() {
        writeln!(outside.out, "\nnot understood: {}", made.left.len())?;
        for (line, why) in &made.left {
            writeln!(outside.out, "  {table}:{line}: {why}")?;
        }
    }
    writeln!(outside.out, "\nin the log already: {}\nnew: {new}", made.lines.len() - new)?;
    Ok(())
}

/// How many lines of each kind there are.
fn counted(lines: &[ImportedLine]) -> String {
    let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
    for line in lines {
        let kind = match line.entry.event {
            Event::Weight(_) => "weight",
            Event::Length(_) => "length",
            Event::Meal { .. } => "meal",
            Event::Shed { .. } => "shed",
            Event::Reading { .. } => "reading",
            Event::Illness(_) => "illness",
            Event::Treatment(_) => "treatment",
            Event::Joined(_) => "joined",
            Event::Other(_) => "note or other",
        };
        *counts.entry(kind).or_default() += 1;
    }
    if counts.is_empty() {
        return "nothing".to_owned();
    }
    counts.iter().map(|(kind, count)| format!("{kind} {count}")).collect::<Vec<_>>().join(", ")
}

/// Asks whoever sits at the terminal; where nobody does, the answer is no.
fn asked(outside: &mut Outside<'_>) -> Result<bool, Failure> {
    let Some(answers) = &mut outside.answers else {
        writeln!(outside.err, "if that is right, say --yes")?;
        return Ok(false);
    };
    write!(outside.err, "write the new lines? [y/N] ")?;
    outside.err.flush()?;
    let mut answer = String::new();
    answers.read_line(&mut answer)?;
    Ok(matches!(answer.trim().to_lowercase().as_str(), "y" | "yes"))
}
