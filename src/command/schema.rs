//! `wardsheet schema FILE-KIND`: a JSON Schema for editors.

use clap::Args;

use crate::finding::did_you_mean;
use crate::schema::FILE_KINDS;

use super::{Ended, Failure, Outcome, Outside};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// Which kind of file: species, override, animal, site, private, sources or standard
    #[arg(value_name = "FILE-KIND")]
    kind: String,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let name = arguments.kind.as_str();
    let Some(kind) = FILE_KINDS.iter().find(|kind| kind.name == name) else {
        let names: Vec<&str> = FILE_KINDS.iter().map(|kind| kind.name).collect();
        let near = did_you_mean(name, names.iter().copied());
        let near = near.unwrap_or_else(|| format!("there are: {}", names.join(", ")));
        return Err(Failure::Said(format!("there is no kind of file `{name}`; {near}")));
    };
    let text = serde_json::to_string_pretty(&kind.schema()).unwrap_or_default();
    writeln!(outside.out, "{text}")?;
    Ok(Outcome::Done)
}
