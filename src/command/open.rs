//! Opens a site: what every command that reads one does first.

use std::path::PathBuf;

use crate::compile::{Checked, check, private_photos};
use crate::finding::{Finding, stops};
use crate::parse;
use crate::render::{File, theme};
use crate::source::{Folder, Role, Sources};
use crate::write::{write_on_request, write_some};

use super::format::Format;
use super::{Ended, Failure, Outcome, Outside, Whereabouts};

/// A site that has been read and checked.
pub(super) struct Opened {
    pub(super) folder: PathBuf,
    pub(super) sources: Sources,
    pub(super) checked: Checked,
}

pub(super) fn open(at: &Whereabouts, outside: &Outside<'_>) -> Result<Opened, Failure> {
    let folder = Folder::find(at.site.as_deref(), &outside.here)?;
    let (first, _) = folder.read_site_file();
    let libraries = first
        .named(Role::Site, "wardsheet")
        .map(|file| parse::libraries(&file.text))
        .unwrap_or_default();
    let (sources, read) = folder.read(&libraries)?;
    let checked = check(&sources, read, at.as_of.unwrap_or(outside.today));
    Ok(Opened { folder: folder.path().to_owned(), sources, checked })
}

impl Opened {
    /// Writes a private sheet that was asked for by itself, with the theme and the photos of animals that it needs, and prints
    /// where it is.
    pub(super) fn write_sheet(
        &self,
        outside: &mut Outside<'_>,
        animals: &[String],
        set: impl FnOnce(&Sources, &Checked) -> Result<Vec<File>, Vec<Finding>>,
    ) -> Ended {
        if !self.checked.findings.is_empty() {
            self.tell(&self.checked.findings, outside)?;
        }
        if stops(&self.checked.findings) {
            return Ok(Outcome::Stopped);
        }
        let set = set(&self.sources, &self.checked)
            .and_then(|files| Ok((files, private_photos(&self.sources, &self.checked, animals)?)));
        let (files, photos) = match set {
            Ok(set) => set,
            Err(broken) => {
                self.tell(&broken, outside)?;
                return Ok(Outcome::Stopped);
            }
        };
        let out = self.folder.join("out");
        let look: Vec<File> = theme(&self.sources)
            .into_iter()
            .filter(|file| file.path.starts_with("private/"))
            .chain(photos)
            .collect();
        write_some(&out, &look)?;
        write_on_request(&out, &files)?;
        for file in &files {
            writeln!(outside.out, "{}", out.join(&file.path).display())?;
        }
        Ok(Outcome::Done)
    }

    /// Draws findings for people, and says how many there are.
    pub(super) fn tell(
        &self,
        findings: &[Finding],
        outside: &mut Outside<'_>,
    ) -> Result<(), Failure> {
        Format::Human.tell(findings, &self.sources, outside)
    }
}
