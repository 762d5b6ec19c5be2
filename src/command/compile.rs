//! `wardsheet compile`: check, then write the site and the private sheets.

use std::path::{Path, PathBuf};
use std::time::Duration;

use clap::Args;

use crate::compile::{Halt, Pages};
use crate::finding;
use crate::render::Look;
use crate::write::{Stage, WriteError, Written};

use super::format::Format;
use super::open::{Opened, open};
use super::progress::Progress;
use super::{Ended, Outcome, Outside, Whereabouts};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    #[command(flatten)]
    at: Whereabouts,
    /// The folder to write to [default: out, in the site's folder]
    #[arg(long, value_name = "DIR")]
    out: Option<PathBuf>,
    /// Write no private sheet, and remove those of an earlier compile
    #[arg(long)]
    public_only: bool,
    /// Let warnings stop it too
    #[arg(long, value_name = "WHAT", value_parser = ["warnings"])]
    deny: Option<String>,
    /// Tell findings and faults only
    #[arg(long, short)]
    quiet: bool,
    /// How findings are told
    #[arg(long, value_enum, default_value_t = Format::Human)]
    format: Format,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let opened = open(&arguments.at, outside)?;
    let out = arguments.out.clone().unwrap_or_else(|| opened.folder.join("out"));
    let mut findings = opened.checked.findings.clone();
    let denied = arguments.deny.is_some()
        && findings.iter().any(|finding| finding.severity > finding::Severity::Note);
    let mut written = None;
    if !finding::stops(&findings) && !denied {
        match set_and_write(&opened, &out, arguments, outside.terminal) {
            Ok(done) => written = Some(done),
            Err(Halt::Refused(error)) => return Err(error.into()),
            Err(Halt::Broken(broken)) => {
                findings.extend(broken);
                finding::sort(&mut findings);
            }
        }
    }
    // A document is owed even where there is nothing to tell; people are told nothing then.
    if arguments.format != Format::Human || !findings.is_empty() {
        arguments.format.tell(&findings, &opened.sources, outside)?;
    }
    let Some(written) = written else {
        writeln!(outside.err, "nothing was written; {} is as it was", out.display())?;
        return Ok(Outcome::Stopped);
    };
    if arguments.quiet {
        return Ok(Outcome::Done);
    }
    let mut words =
        format!("the site:           {}\n", out.join("public").join("index.html").display());
    if arguments.public_only {
        // What was asked for by itself is not a compile's to remove.
        let left = "no private sheet was written; those of an earlier compile were removed, those of `sitter` and `round` are left\n";
        words.push_str(left);
    } else {
        words.push_str(&format!("the private sheets: {}\n", out.join("private").display()));
    }
    words.push_str(&account(&written, (outside.elapsed)()));
    arguments.format.say(&words, outside)?;
    Ok(Outcome::Done)
}

/// Sets the pages and lets each wait on the disk as soon as it is set; then puts them all in place.
fn set_and_write(
    opened: &Opened,
    out: &Path,
    arguments: &Arguments,
    terminal: bool,
) -> Result<Written, Halt<WriteError>> {
    let wants = |path: &str| !arguments.public_only || path.starts_with("public/");
    let look = Look::new(&opened.sources).map_err(Halt::Broken)?;
    let pages = Pages::new(&opened.sources, &opened.checked, &look);
    let stage = Stage::open(out).map_err(Halt::Refused)?;
    let progress = Progress::new(pages.plan().len(), terminal && !arguments.quiet);
    let stand = |files: &[String], made_from| stage.keep(files, made_from);
    pages.each_but(wants, stand, |file| stage.put(&file).map(|_| progress.step()))?;
    let written = stage.swap().map_err(Halt::Refused)?;
    progress.end();
    Ok(written)
}

/// What was done, in one line.
fn account(written: &Written, took: Duration) -> String {
    let Written { new, changed, unchanged, removed } = written;
    let files = new + changed + unchanged;
    format!(
        "{files} files: {new} new, {changed} changed, {unchanged} unchanged, {removed} removed, in {:.2} s",
        took.as_secs_f64()
    )
}
