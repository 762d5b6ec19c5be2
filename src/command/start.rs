//! `wardsheet start DIR`: lay out a new site that compiles as it stands.

use std::collections::BTreeMap;
use std::path::PathBuf;

use clap::{Args, ValueEnum};
use include_dir::{Dir, include_dir};

use crate::render::File;
use crate::schema::FILE_KINDS;
use crate::source::library;
use crate::write::{FreshError, write_fresh};

use super::{Ended, Failure, Outcome, Outside};

/// The files of a new site, as they stand in the source.
static LAYOUT: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/src/command/start");
/// What each kind of site has beside them; `shared` is for all kinds.
static KINDS: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/src/command/kinds");

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// The folder to lay out: new, or empty
    dir: PathBuf,
    /// Copy the program's templates and theme out as well, to be changed
    #[arg(long)]
    with_templates: bool,
    /// Lay out what such a site needs besides: a check for every proposed change, a guide, pages
    #[arg(long, value_enum, value_name = "KIND")]
    kind: Option<Kind>,
}

/// Who keeps the site.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Kind {
    /// Members who write care sheets together
    Club,
    /// Animals that come, are nursed and leave again
    Rescue,
    /// Animals that are sold with a sheet
    Shop,
    /// One keeper and their animals
    Keeper,
}

impl Kind {
    fn folder(self) -> &'static str {
        match self {
            Kind::Club => "club",
            Kind::Rescue => "rescue",
            Kind::Shop => "shop",
            Kind::Keeper => "keeper",
        }
    }
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    // By path, so that what a kind lays out takes the place of what every site has.
    let mut by_path = BTreeMap::new();
    gather(&LAYOUT, "", &mut by_path);
    if let Some(kind) = arguments.kind {
        for part in ["shared", kind.folder()] {
            if let Some(dir) = KINDS.get_dir(part) {
                gather(dir, &format!("{part}/"), &mut by_path);
            }
        }
    }
    // Editors find a schema by the comment in the first line of a file, and read it from the site's own folder.
    by_path.extend(FILE_KINDS.iter().map(|kind| {
        let text = serde_json::to_vec_pretty(&kind.schema()).unwrap_or_default();
        (format!("schemas/{}.json", kind.name), text)
    }));
    if arguments.with_templates {
        by_path.extend(library::look().into_iter().map(|(path, bytes)| (path, bytes.to_vec())));
    }
    let files: Vec<File> =
        by_path.into_iter().map(|(path, bytes)| File::new(path, bytes)).collect();
    let dir = outside.here.join(&arguments.dir);
    match write_fresh(&dir, &files) {
        Ok(()) => {}
        Err(FreshError::NotEmpty) => {
            let sentence = format!(
                "{} is not empty; nothing was written. Name a new folder",
                arguments.dir.display()
            );
            return Err(Failure::Said(sentence));
        }
        Err(FreshError::Write(error)) => return Err(error.into()),
    }
    let shown = arguments.dir.display();
    writeln!(outside.out, "a new site in {shown}:")?;
    for file in &files {
        writeln!(outside.out, "  {}", file.path)?;
    }
    writeln!(outside.out, "\nnext: wardsheet compile --site {shown}")?;
    Ok(Outcome::Done)
}

/// Gathers the files below a folder by their paths without `start`.
fn gather(dir: &Dir<'_>, start: &str, files: &mut BTreeMap<String, Vec<u8>>) {
    for file in dir.files() {
        // A file whose name begins with a dot would be taken for one of this project's own.
        let path = file.path().to_string_lossy().replace('\\', "/").replace("dot-", ".");
        let path = path.strip_prefix(start).unwrap_or(&path).to_owned();
        files.insert(path, file.contents().to_vec());
    }
    dir.dirs().for_each(|inner| gather(inner, start, files));
}
