//! `wardsheet handover ANIMAL`: write the handover sheet of one animal.

use clap::Args;

use crate::compile;
use crate::finding::{self, Finding, did_you_mean};
use crate::render::theme;
use crate::write::write_some;

use super::open::open;
use super::{Ended, Failure, Outcome, Outside, Whereabouts, read_language};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// The animal's name: the name of its file
    animal: String,
    /// Whom the sheet is addressed to
    #[arg(long = "for", value_name = "NAME")]
    addressed_to: Option<String>,
    /// The language of the sheet, such as de [default: that of the site]
    #[arg(long, value_name = "TAG", value_parser = read_language)]
    language: Option<String>,
    #[command(flatten)]
    at: Whereabouts,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let opened = open(&arguments.at, outside)?;
    let checked = &opened.checked;
    if !checked.findings.is_empty() {
        opened.tell(&checked.findings, outside)?;
    }
    if finding::stops(&checked.findings) {
        return Ok(Outcome::Stopped);
    }
    let animals = &checked.model.animals;
    if !animals.contains_key(&arguments.animal) {
        let near = did_you_mean(&arguments.animal, animals.keys().map(String::as_str));
        let near = near.unwrap_or_else(|| {
            format!("there are: {}", animals.keys().cloned().collect::<Vec<_>>().join(", "))
        });
        return Err(Failure::Said(format!("there is no animal `{}`; {near}", arguments.animal)));
    }
    // What proof has told already, because the animal seeks a home, is not told twice.
    let animal = arguments.animal.as_str();
    let mut before = compile::before_handover(&opened.sources, checked, animal);
    before.retain(|finding| !checked.findings.contains(finding));
    if !before.is_empty() {
        opened.tell(&before, outside)?;
    }
    if finding::stops(&before) {
        return Ok(Outcome::Stopped);
    }
    let language = arguments.language.as_deref();
    let addressed_to = arguments.addressed_to.as_deref();
    let set = compile::handover(&opened.sources, checked, animal, addressed_to, language);
    let set: Result<_, Vec<Finding>> = set.and_then(|file| {
        Ok((file, compile::private_photos(&opened.sources, checked, &[animal.to_owned()])?))
    });
    let (file, photos) = match set {
        Ok(set) => set,
        Err(broken) => {
            opened.tell(&broken, outside)?;
            return Ok(Outcome::Stopped);
        }
    };
    let out = opened.folder.join("out");
    let mut files: Vec<_> = theme(&opened.sources)
        .into_iter()
        .filter(|file| file.path.starts_with("private/"))
        .collect();
    let place = out.join(&file.path);
    files.push(file);
    files.extend(photos);
    write_some(&out, &files)?;
    writeln!(outside.out, "{}", place.display())?;
    Ok(Outcome::Done)
}
