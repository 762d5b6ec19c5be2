//! Opens a site: what every command that reads one does first.

use std::path::PathBuf;

use crate::compile::{Checked, check};
use crate::finding::Finding;
use crate::parse;
use crate::source::{Folder, Role, Sources};

use super::format::Format;
use super::{Failure, Outside, Whereabouts};

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
    /// Draws findings for people, and says how many there are.
    pub(super) fn tell(
        &self,
        findings: &[Finding],
        outside: &mut Outside<'_>,
    ) -> Result<(), Failure> {
        Format::Human.tell(findings, &self.sources, outside)
    }
}
