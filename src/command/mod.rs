//! The command line: one file per command, each the rooms in order.

mod changes;
mod compile;
mod explain;
mod figures;
mod format;
mod handover;
mod history;
mod import;
mod log;
mod open;
mod preview;
mod progress;
mod proof;
mod round;
mod schema;
mod sitter;
mod start;

use std::io::{self, Write};
use std::path::PathBuf;

use clap::{Args, Parser, Subcommand};
use jiff::civil::Date;

use crate::language::Catalogue;

/// How a run ended. The number is the exit status.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    /// Done.
    Done = 0,
    /// Findings stopped it, or what was compared differs.
    Stopped = 1,
    /// The command line or the machine was at fault.
    Failed = 2,
}

/// What a run is given from outside: the day, the folder it was started in, and where its words go.
pub struct Outside<'a> {
    /// Today, or the day that `SOURCE_DATE_EPOCH` names.
    pub today: Date,
    /// The folder that the command was started in.
    pub here: PathBuf,
    /// Standard output: results.
    pub out: &'a mut dyn Write,
    /// Standard error: findings and progress.
    pub err: &'a mut dyn Write,
    /// Answers to questions; none where nobody sits at a terminal.
    pub answers: Option<&'a mut dyn io::BufRead>,
    /// Whether findings may be drawn in colour.
    pub colour: bool,
    /// Whether standard error is a terminal, where progress may be shown.
    pub terminal: bool,
    /// How long the run has taken so far.
    pub elapsed: &'a dyn Fn() -> std::time::Duration,
}

/// Compiles care data into care sheets.
#[derive(Debug, Parser)]
#[command(name = "wardsheet", version, max_term_width = 100, propagate_version = true)]
#[command(
    after_help = "Exit status: 0 done; 1 findings stopped it; 2 the command line or the machine was at fault."
)]
pub struct Command {
    #[command(subcommand)]
    verb: Verb,
}

#[derive(Debug, Subcommand)]
enum Verb {
    /// Lay out a new site that compiles as it stands
    Start(start::Arguments),
    /// Read and check everything, write nothing
    Proof(proof::Arguments),
    /// Check, then write the site and the private sheets
    Compile(compile::Arguments),
    /// Serve the site to this machine only, and follow every edit
    Preview(preview::Arguments),
    /// The derived figures, as a table or as JSON
    Figures(figures::Arguments),
    /// Write the handover sheet of one animal
    Handover(handover::Arguments),
    /// Append one checked line to an animal's log
    Log(log::Arguments),
    /// Bring the rows of a spreadsheet into an animal's log
    Import(import::Arguments),
    /// Write the sheet for somebody who looks after the animals
    Sitter(sitter::Arguments),
    /// Write the week's work for the whole collection
    Round(round::Arguments),
    /// Which care figures differ between two folders or two git revisions
    Changes(changes::Arguments),
    /// What a finding means and how to put it right
    Explain(explain::Arguments),
    /// A JSON Schema of one kind of file, for editors
    Schema(schema::Arguments),
}

/// Which site, and for which day.
#[derive(Debug, Args)]
struct Whereabouts {
    /// The site's folder [default: the nearest folder upwards with a wardsheet.toml]
    #[arg(long, value_name = "DIR")]
    site: Option<PathBuf>,
    /// The day that the sheets are for [default: today]
    #[arg(long, value_name = "DATE", value_parser = read_date)]
    as_of: Option<Date>,
}

fn read_language(text: &str) -> Result<String, String> {
    match Catalogue::of(text) {
        Some(_) => Ok(text.to_owned()),
        None => {
            Err(format!("there are labels in {}", Catalogue::tags().collect::<Vec<_>>().join(", ")))
        }
    }
}

fn read_date(text: &str) -> Result<Date, String> {
    text.parse().map_err(|_| "write the year, month and day: 2026-11-25".to_owned())
}

impl Command {
    /// Runs the command.
    pub fn run(self, outside: &mut Outside<'_>) -> Outcome {
        let ended = match self.verb {
            Verb::Start(arguments) => start::run(&arguments, outside),
            Verb::Proof(arguments) => proof::run(&arguments, outside),
            Verb::Compile(arguments) => compile::run(&arguments, outside),
            Verb::Preview(arguments) => preview::run(&arguments, outside),
            Verb::Figures(arguments) => figures::run(&arguments, outside),
            Verb::Handover(arguments) => handover::run(&arguments, outside),
            Verb::Log(arguments) => log::run(&arguments, outside),
            Verb::Import(arguments) => import::run(&arguments, outside),
            Verb::Sitter(arguments) => sitter::run(&arguments, outside),
            Verb::Round(arguments) => round::run(&arguments, outside),
            Verb::Changes(arguments) => changes::run(&arguments, outside),
            Verb::Explain(arguments) => explain::run(&arguments, outside),
            Verb::Schema(arguments) => schema::run(&arguments, outside),
        };
        match ended {
            Ok(outcome) => outcome,
            // Whoever reads the output has had enough; that is no fault.
            Err(Failure::Pipe) => Outcome::Done,
            Err(Failure::Said(sentence)) => {
                // Where even this cannot be written there is nobody left to tell.
                let _ = writeln!(outside.err, "wardsheet: {sentence}");
                Outcome::Failed
            }
        }
    }
}

/// Why a command could not run.
enum Failure {
    /// The reader of the output has gone.
    Pipe,
    /// One sentence.
    Said(String),
}

impl From<io::Error> for Failure {
    fn from(error: io::Error) -> Failure {
        match error.kind() {
            io::ErrorKind::BrokenPipe => Failure::Pipe,
            _ => Failure::Said(format!("cannot write the output: {error}")),
        }
    }
}

impl From<crate::source::ReadError> for Failure {
    fn from(error: crate::source::ReadError) -> Failure {
        Failure::Said(error.to_string())
    }
}

impl From<crate::write::WriteError> for Failure {
    fn from(error: crate::write::WriteError) -> Failure {
        Failure::Said(error.to_string())
    }
}

type Ended = Result<Outcome, Failure>;
