//! `wardsheet compile`: check, then write the site and the private sheets.

use std::path::PathBuf;

use clap::Args;

use crate::compile::compile;
use crate::finding;
use crate::write::write;

use super::format::Format;
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
    /// How findings are told
    #[arg(long, value_enum, default_value_t = Format::Human)]
    format: Format,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let opened = open(&arguments.at, outside)?;
    let mut findings = opened.checked.findings.clone();
    let denied = arguments.deny.is_some()
        && findings.iter().any(|finding| finding.severity > finding::Severity::Note);
    let mut files = None;
    if !finding::stops(&findings) && !denied {
        match compile(&opened.sources, &opened.checked) {
            Ok(set) => files = Some(set),
            Err(broken) => {
                findings.extend(broken);
                finding::sort(&mut findings);
            }
        }
    }
    // A document is owed even where there is nothing to tell; people are told nothing then.
    if arguments.format != Format::Human || !findings.is_empty() {
        arguments.format.tell(&findings, &opened.sources, outside)?;
    }
    let out = arguments.out.clone().unwrap_or_else(|| opened.folder.join("out"));
    let Some(mut files) = files else {
        writeln!(outside.err, "nothing was written; {} is as it was", out.display())?;
        return Ok(Outcome::Stopped);
    };
    if arguments.public_only {
        files.retain(|file| file.path.starts_with("public/"));
    }
    let written = write(&out, &files)?;
    let mut words = format!(
        "{} files: {} new or changed, {} removed\nthe site:           {}",
        written.files,
        written.changed,
        written.removed,
        out.join("public").join("index.html").display(),
    );
    if arguments.public_only {
        // What was asked for by itself is not a compile's to remove.
        let left = "no private sheet was written; those of an earlier compile were removed, those of `sitter` and `round` are left";
        words.push_str(&format!("\n{left}"));
    } else {
        words.push_str(&format!("\nthe private sheets: {}", out.join("private").display()));
    }
    arguments.format.say(&words, outside)?;
    Ok(Outcome::Done)
}
