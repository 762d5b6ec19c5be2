//! `wardsheet proof`: read and check everything, write nothing.

use clap::Args;

use crate::finding;

use super::format::Format;
use super::open::open;
use super::{Ended, Outcome, Outside, Whereabouts};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    #[command(flatten)]
    at: Whereabouts,
    /// Let warnings stop it too
    #[arg(long, value_name = "WHAT", value_parser = ["warnings"])]
    deny: Option<String>,
    /// How findings are told
    #[arg(long, value_enum, default_value_t = Format::Human)]
    format: Format,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let opened = open(&arguments.at, outside)?;
    let findings = &opened.checked.findings;
    arguments.format.tell(findings, &opened.sources, outside)?;
    let model = &opened.checked.model;
    let animals = if model.animals.len() == 1 {
        "1 animal".to_owned()
    } else {
        format!("{} animals", model.animals.len())
    };
    let checked = format!("{} species and {animals} checked", model.species.len());
    arguments.format.say(&checked, outside)?;
    let denied = arguments.deny.is_some()
        && findings.iter().any(|finding| finding.severity > finding::Severity::Note);
    Ok(if finding::stops(findings) || denied { Outcome::Stopped } else { Outcome::Done })
}
