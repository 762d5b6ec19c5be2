//! The whole compile without a disk: texts in, pages and findings out.
//!
//! [`check`] reads, works out and proves. [`Pages`] sets a page at a time, [`compile`] all of them; [`handover`], [`sitter`] and
//! [`round`] set a sheet that was asked for by itself.

mod beside;
mod open;
mod pages;
mod shortened;
mod single;

use std::collections::BTreeSet;

use jiff::civil::Date;

use crate::figures::{Figures, figures};
use crate::finding::{FileId, Finding};
use crate::model::Model;
use crate::parse::parse;
use crate::proof::{Evidence, proof, with_site_severities};
use crate::source::Sources;
use crate::source::codes::FILE_EMPTY;

use shortened::shortened;

pub use beside::private_photos;
pub use open::before_handover;
pub use pages::{Halt, Pages, compile};
pub use single::{handover, round, sitter};

/// Everything that is known of a site once it has been read and checked.
#[derive(Debug)]
pub struct Checked {
    /// What the files say.
    pub model: Model,
    /// What was worked out.
    pub figures: Figures,
    /// What is wrong or doubtful, in the order of the files.
    pub findings: Vec<Finding>,
}

/// Reads, types, works out and checks, and writes nothing.
///
/// `read` holds what the reading of the files has found already.
pub fn check(sources: &Sources, read: Vec<Finding>, as_of: Date) -> Checked {
    let (model, mut parsed) = parse(sources);
    let figures = figures(&model, as_of);
    // What was not read at all stands there as a file of nothing, and that would be said of it too.
    let not_read = files_of(&read);
    parsed.retain(|finding| finding.code.name != FILE_EMPTY.name || !stands_in(finding, &not_read));
    let mut found = read;
    found.extend(parsed);
    let faulty = files_of(&found);
    let mut proved = proof(&Evidence { sources, model: &model, figures: &figures });
    // A figure that could not be read has been reported; that it is missing too would be said twice.
    proved.retain(|finding| !(reports_absence(finding) && stands_in(finding, &faulty)));
    found.extend(proved);
    let findings = with_site_severities(&model, shortened(found));
    Checked { model, figures, findings }
}

/// The files that findings stand in.
fn files_of(found: &[Finding]) -> BTreeSet<FileId> {
    found.iter().filter_map(|finding| finding.place).map(|place| place.file).collect()
}

fn stands_in(finding: &Finding, files: &BTreeSet<FileId>) -> bool {
    finding.place.is_some_and(|place| files.contains(&place.file))
}

/// Tells whether a finding says that something is not there.
fn reports_absence(finding: &Finding) -> bool {
    finding.code.name.ends_with("-missing")
}
