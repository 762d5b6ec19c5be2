//! `wardsheet compile`: check, then write the site and the private sheets.

use std::path::PathBuf;

use clap::Args;

use crate::compile::compile;
use crate::finding;
use crate::write::write;

use super::open::open;
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
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let opened = open(&arguments.at, outside)?;
    let findings = &opened.checked.findings;
    let denied = arguments.deny.is_some()
        && findings.iter().any(|finding| finding.severity > finding::Severity::Note);
    if !findings.is_empty() {
        opened.tell(findings, outside)?;
    }
    let out = arguments.out.clone().unwrap_or_else(|| opened.folder.join("out"));
    if finding::stops(findings) || denied {
        writeln!(outside.err, "nothing was written; {} is as it was", out.display())?;
        return Ok(Outcome::Stopped);
    }
    let mut files = match compile(&opened.sources, &opened.checked) {
        Ok(files) => files,
        Err(broken) => {
            opened.tell(&broken, outside)?;
            writeln!(outside.err, "nothing was written; {} is as it was", out.display())?;
            return Ok(Outcome::Stopped);
        }
    };
    if arguments.public_only {
        files.retain(|file| file.path.starts_with("public/"));
    }
    let written = write(&out, &files)?;
    writeln!(
        outside.out,
        "{} files: {} new or changed, {} removed\nthe site:           {}",
        written.files,
        written.changed,
        written.removed,
        out.join("public").join("index.html").display(),
    )?;
    if !arguments.public_only {
        writeln!(outside.out, "the private sheets: {}", out.join("private").display())?;
    }
    Ok(Outcome::Done)
}
