//! `wardsheet changes OLD NEW`: which care figures differ between two folders or two git revisions.

use std::path::Path;

use clap::{Args, ValueEnum};

use crate::changes::tell::{Side, markdown, text};
use crate::changes::{State, compare, json};
use crate::compile::{Checked, check};
use crate::finding::{Finding, Severity};
use crate::parse;
use crate::source::{Folder, GitError, ReadError, Repository, Sources};

use super::format::Format;
use super::open::read_folder;
use super::{Ended, Failure, Outcome, Outside, Whereabouts};

#[derive(Debug, Args)]
#[command(after_help = "Examples:\n  wardsheet changes main HEAD\n  \
    wardsheet changes HEAD . --format markdown\n  wardsheet changes ../last-year .\n\n\
    Exit status: 0 no care figure differs; 1 at least one does; 2 it could not be told.")]
pub(super) struct Arguments {
    /// The state before: a site's folder, or a git revision of the site
    old: String,
    /// The state after: a site's folder, or a git revision of the site
    new: String,
    #[command(flatten)]
    at: Whereabouts,
    /// How differences are told
    #[arg(long, value_enum, default_value_t = Form::Text)]
    format: Form,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Form {
    /// Plain text
    Text,
    /// Markdown, for the comment on a proposed change
    Markdown,
    /// One JSON document
    Json,
}

/// One side, read and worked out.
struct Read {
    side: Side,
    sources: Sources,
    checked: Checked,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let sides =
        [read(&arguments.old, arguments, outside)?, read(&arguments.new, arguments, outside)?];
    let mut readable = true;
    for one in &sides {
        let faults: Vec<Finding> =
            one.checked.findings.iter().filter(|f| f.is_meaningless()).cloned().collect();
        if !faults.is_empty() {
            writeln!(outside.err, "{} cannot be read:", one.side.name)?;
            Format::Human.tell(&faults, &one.sources, outside)?;
            readable = false;
        }
    }
    if !readable {
        return Ok(Outcome::Failed);
    }
    let [old, new] = &sides;
    let changes = compare(
        State { model: &old.checked.model, figures: &old.checked.figures },
        State { model: &new.checked.model, figures: &new.checked.figures },
    );
    let named = (&old.side, &new.side);
    match arguments.format {
        Form::Text => write!(outside.out, "{}", text(&changes, named))?,
        Form::Markdown => write!(outside.out, "{}", markdown(&changes, named))?,
        Form::Json => {
            let document = json::json(&changes, named, new.checked.figures.as_of);
            let text = serde_json::to_string_pretty(&document).unwrap_or_default();
            writeln!(outside.out, "{text}")?;
        }
    }
    Ok(if changes.figures_differ() { Outcome::Stopped } else { Outcome::Done })
}

/// Reads a side: the folder of that name where it holds a site, else the revision of that name.
fn read(name: &str, arguments: &Arguments, outside: &Outside<'_>) -> Result<Read, Failure> {
    let as_of = arguments.at.as_of.unwrap_or(outside.today);
    let (shown, (sources, found)) =
        match Folder::find(Some(&outside.here.join(name)), &outside.here) {
            Ok(folder) => (name.to_owned(), read_folder(&folder)?),
            Err(no_folder) => revision(name, arguments, outside, &no_folder)?,
        };
    let checked = check(&sources, found, as_of);
    let errors = checked.findings.iter().filter(|f| f.severity == Severity::Error).count();
    Ok(Read { side: Side { name: shown, errors }, sources, checked })
}

type Texts = (Sources, Vec<Finding>);

fn revision(
    name: &str,
    arguments: &Arguments,
    outside: &Outside<'_>,
    no_folder: &ReadError,
) -> Result<(String, Texts), Failure> {
    let site = Folder::find(arguments.at.site.as_deref(), &outside.here).map_err(|_| {
        Failure::Said(format!(
            "{no_folder}; for git revisions, stand in a site's folder or name it with --site"
        ))
    })?;
    let neither = |error: GitError| match error {
        GitError::NoRevision(_) | GitError::NoRepository(_) => {
            Failure::Said(format!("`{name}` is neither a site's folder nor a revision: {error}"))
        }
        other => Failure::Said(other.to_string()),
    };
    let path: &Path = site.path();
    let revision = Repository::around(path).and_then(|git| git.revision(name)).map_err(neither)?;
    let libraries = parse::libraries(&revision.read_site_file().map_err(neither)?);
    let read = revision.read(&libraries).map_err(neither)?;
    Ok((format!("{name} ({})", revision.commit()), read))
}
