//! `wardsheet log ANIMAL …`: append one checked line to an animal's log.

use clap::{Args, ValueEnum};
use jiff::civil::Date;

use crate::finding::{did_you_mean, stops};
use crate::parse::log::{entries, heading, line};
use crate::proof::new_line::doubts;
use crate::source::{Layer, Role, Sources};
use crate::write::append_line;

use super::open::open;
use super::{Ended, Failure, Outcome, Outside, Whereabouts, read_date};

#[derive(Debug, Args)]
#[command(after_help = "Examples:\n  wardsheet log juniper weight \"452 g\"\n  \
    wardsheet log juniper length \"142 cm\" --on 2026-11-20\n  \
    wardsheet log juniper meal \"rat 180 g\" taken\n  wardsheet log juniper shed complete\n  \
    wardsheet log juniper reading warm \"31 C\" \"52 %\"")]
pub(super) struct Arguments {
    /// The animal's name: the name of its file
    animal: String,
    /// What happened
    what: What,
    /// A figure with its unit; of a meal what was offered, then taken, part or refused; of a shed complete or pieces; of a reading the probe, then what it read
    #[arg(required = true, num_args = 1..=3)]
    value: Vec<String>,
    /// The day it happened [default: today]
    #[arg(long, value_name = "DATE", value_parser = read_date)]
    on: Option<Date>,
    /// A note at the end of the line
    #[arg(long, value_name = "TEXT")]
    note: Option<String>,
    /// Write the line though it is doubtful
    #[arg(long)]
    yes: bool,
    #[command(flatten)]
    at: Whereabouts,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
enum What {
    Weight,
    Length,
    Meal,
    Shed,
    Reading,
}

impl Arguments {
    /// The line as it would stand in the log, without its end.
    fn line(&self, today: Date) -> Result<String, Failure> {
        let first = self.value.first().map_or("", String::as_str);
        let rest = self.value.get(1..).unwrap_or_default();
        let all = self.value.join(" ");
        let (what, value, outcome, most) = match self.what {
            What::Weight => ("weight", first, "", 1),
            What::Length => ("length", first, "", 1),
            What::Meal => ("meal", first, rest.first().map_or("", String::as_str), 2),
            What::Shed => ("shed", "", first, 1),
            What::Reading => ("reading", all.as_str(), "", 3),
        };
        if let Some(extra) = self.value.get(most) {
            return Err(Failure::Said(format!(
                "a {what} does not take `{extra}`; put a figure and its unit in quotes: \"2.41 kg\""
            )));
        }
        let date = self.on.unwrap_or(today).to_string();
        Ok(line([&date, what, value, outcome, self.note.as_deref().unwrap_or("")]))
    }
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let today = arguments.at.as_of.unwrap_or(outside.today);
    let opened = open(&arguments.at, outside)?;
    let model = &opened.checked.model;
    let Some(animal) = model.animals.get(&arguments.animal) else {
        let near = did_you_mean(&arguments.animal, model.animals.keys().map(String::as_str));
        let near = near.unwrap_or_else(|| "see the folder animals/".to_owned());
        return Err(Failure::Said(format!("there is no animal `{}`; {near}", arguments.animal)));
    };
    let written = arguments.line(today)?;
    // The line is read by itself first, as it will be read from the log.
    let mut alone = Sources::default();
    alone.add(
        "the new line",
        Role::Log,
        &arguments.animal,
        Layer::Own,
        format!("{}\n{written}\n", heading()),
    );
    let (read, found) = entries(&alone.files()[0]);
    if stops(&found) || read.len() != 1 {
        let drawn = crate::finding::draw::draw(&found, outside.colour, &|file| alone.shown(file));
        writeln!(outside.err, "{drawn}nothing was written")?;
        return Ok(Outcome::Stopped);
    }
    let species = model.species.get(&animal.species.name);
    let found: Vec<String> =
        read.iter().flat_map(|entry| doubts(animal, species, entry, today)).collect();
    for doubt in &found {
        writeln!(outside.err, "doubtful: {doubt}")?;
    }
    // All of it is told before one question is asked.
    if !found.is_empty() && !arguments.yes && !asked(outside)? {
        writeln!(outside.err, "nothing was written")?;
        return Ok(Outcome::Stopped);
    }
    let place = opened.folder.join("animals").join(format!("{}.csv", arguments.animal));
    append_line(&place, &heading(), &written)?;
    writeln!(outside.out, "{}: {written}", place.display())?;
    Ok(Outcome::Done)
}

/// Asks whoever sits at the terminal; where nobody does, the answer is no.
fn asked(outside: &mut Outside<'_>) -> Result<bool, Failure> {
    let Some(answers) = &mut outside.answers else {
        writeln!(outside.err, "if it is right, say --yes")?;
        return Ok(false);
    };
    write!(outside.err, "write it all the same? [y/N] ")?;
    outside.err.flush()?;
    let mut answer = String::new();
    answers.read_line(&mut answer)?;
    Ok(matches!(answer.trim().to_lowercase().as_str(), "y" | "yes"))
}
