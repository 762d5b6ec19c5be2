//! What is doubtful, as a private sheet shows it: a printed sheet carries its open doubts.

use std::collections::{BTreeMap, BTreeSet};

use crate::finding::{FileId, Finding, Severity};
use crate::proof::{self, Evidence, with_site_severities};
use crate::sheets::record::OpenFinding;
use crate::source::{Role, Sources};

use super::Checked;

/// The findings that concern each file, by their numbers.
#[derive(Default)]
pub(super) struct ByFile {
    /// Those placed in it.
    placed: BTreeMap<FileId, Vec<usize>>,
    /// Those that have another place in it: of a species there may be as many as there are animals.
    pointing: BTreeMap<FileId, Vec<usize>>,
}

/// The findings that concern each file.
pub(super) fn by_file(findings: &[Finding]) -> ByFile {
    let mut by_file = ByFile::default();
    for (number, finding) in findings.iter().enumerate() {
        if let Some(place) = finding.place {
            by_file.placed.entry(place.file).or_default().push(number);
        }
        for (place, _) in &finding.related {
            by_file.pointing.entry(place.file).or_default().push(number);
        }
    }
    by_file
}

/// What is doubtful of one animal: in its own files, and in those of its species.
///
/// A finding of another animal that only points to the species is not its own, and is left out.
pub(super) fn open_findings(
    sources: &Sources,
    checked: &Checked,
    open: &ByFile,
    animal: &str,
) -> Vec<OpenFinding> {
    let species = checked.model.animals.get(animal).map_or("", |animal| &animal.species.name);
    let named = |role, name: &str| sources.named(role, name).map(|file| file.id);
    let own = [named(Role::Animal, animal), named(Role::Log, animal)];
    let of_species = [named(Role::Species, species), named(Role::Words, species)];
    let found = |of: &BTreeMap<FileId, Vec<usize>>, files: [Option<FileId>; 2]| -> Vec<usize> {
        files.into_iter().flatten().filter_map(|file| of.get(&file)).flatten().copied().collect()
    };
    let mut numbers = BTreeSet::from_iter(found(&open.placed, own));
    numbers.extend(found(&open.pointing, own));
    numbers.extend(found(&open.placed, of_species));
    opened(numbers.into_iter().map(|number| &checked.findings[number]))
}

/// A message without the marks that set words of the files apart on a terminal.
fn unmarked(message: &str) -> String {
    message.replace('`', "")
}

/// Findings as a private sheet shows them.
fn opened<'a>(findings: impl IntoIterator<Item = &'a Finding>) -> Vec<OpenFinding> {
    let open = |finding: &Finding| OpenFinding {
        code: finding.code.name.to_owned(),
        severity: finding.severity.word().to_owned(),
        message: unmarked(&finding.message),
        help: finding.help.as_deref().map(unmarked),
    };
    findings.into_iter().map(open).collect()
}

/// What stands between an animal and being handed on under the law of the site's jurisdictions, whatever its status, with the
/// severities that the site wishes.
pub fn before_handover(sources: &Sources, checked: &Checked, animal: &str) -> Vec<Finding> {
    let evidence = Evidence { sources, model: &checked.model, figures: &checked.figures };
    with_site_severities(&checked.model, proof::before_handover(&evidence, animal))
}

/// What a handover sheet carries at its head of [`before_handover`]: a mere note stays with the command, since the sheet shows what is
/// not known as not known.
pub(super) fn on_the_sheet(sources: &Sources, checked: &Checked, animal: &str) -> Vec<OpenFinding> {
    let found = before_handover(sources, checked, animal);
    opened(found.iter().filter(|finding| finding.severity > Severity::Note))
}
