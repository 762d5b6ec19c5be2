//! `wardsheet start DIR`: lay out a new site that compiles as it stands.

use std::path::PathBuf;

use clap::Args;
use include_dir::{Dir, include_dir};

use crate::render::File;
use crate::schema::FILE_KINDS;
use crate::source::library;
use crate::write::{FreshError, write_fresh};

use super::{Ended, Failure, Outcome, Outside};

/// The files of a new site, as they stand in the source.
static LAYOUT: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/src/command/start");

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// The folder to lay out: new, or empty
    dir: PathBuf,
    /// Copy the program's templates and theme out as well, to be changed
    #[arg(long)]
    with_templates: bool,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let mut files = Vec::new();
    gather(&LAYOUT, &mut files);
    // Editors find a schema by the comment in the first line of a file, and read it from the site's own folder.
    files.extend(FILE_KINDS.iter().map(|kind| File {
        path: format!("schemas/{}.json", kind.name),
        bytes: serde_json::to_vec_pretty(&kind.schema()).unwrap_or_default(),
    }));
    if arguments.with_templates {
        let look = library::look().into_iter();
        files.extend(look.map(|(path, bytes)| File { path, bytes: bytes.to_vec() }));
    }
    files.sort_by(|a: &File, b| a.path.cmp(&b.path));
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

fn gather(dir: &Dir<'_>, files: &mut Vec<File>) {
    for file in dir.files() {
        // A file whose name begins with a dot would be taken for one of this project's own.
        let path = file.path().to_string_lossy().replace('\\', "/").replace("dot-", ".");
        files.push(File { path, bytes: file.contents().to_vec() });
    }
    dir.dirs().for_each(|inner| gather(inner, files));
}
