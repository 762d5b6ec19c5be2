//! `wardsheet proof`: read and check everything, write nothing.

use clap::Args;

use crate::finding;

use super::open::open;
use super::{Ended, Outcome, Outside, Whereabouts};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    #[command(flatten)]
    at: Whereabouts,
    /// Let warnings stop it too
    #[arg(long, value_name = "WHAT", value_parser = ["warnings"])]
    deny: Option<String>,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let opened = open(&arguments.at, outside)?;
    let findings = &opened.checked.findings;
    opened.tell(findings, outside)?;
    let model = &opened.checked.model;
    let animals = if model.animals.len() == 1 {
        "1 animal".to_owned()
    } else {
        format!("{} animals", model.animals.len())
    };
    writeln!(outside.out, "{} species and {animals} checked", model.species.len())?;
    let denied = arguments.deny.is_some()
        && findings.iter().any(|finding| finding.severity > finding::Severity::Note);
    Ok(if finding::stops(findings) || denied { Outcome::Stopped } else { Outcome::Done })
}
