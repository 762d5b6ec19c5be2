//! Which part of a site has to be looked at first after an edit.

use std::collections::BTreeSet;

use crate::compile::Checked;
use crate::finding::{self, FileId, Finding};
use crate::source::{Role, SourceFile, Sources, in_language};

/// The files that have changed, where nothing else has: no file came, went or moved.
#[derive(Debug, Default, PartialEq, Eq)]
pub(super) struct Edited {
    files: BTreeSet<FileId>,
    animals: BTreeSet<String>,
    species: BTreeSet<String>,
    pages: bool,
    look: bool,
}

impl Edited {
    /// What was edited between two readings; none where that can only be told by looking at everything: a file came or went,
    /// or one was edited that all others rest on.
    pub(super) fn between(old: &Sources, new: &Sources) -> Option<Edited> {
        if old.files().len() != new.files().len() || !old.same_photos(new) {
            return None;
        }
        let mut edited = Edited::default();
        for (before, after) in old.files().iter().zip(new.files()) {
            if before.path != after.path {
                return None;
            }
            if before.text == after.text {
                continue;
            }
            edited.files.insert(after.id);
            match after.role {
                Role::Animal | Role::Log => drop(edited.animals.insert(after.name.clone())),
                Role::Species | Role::Words => {
                    edited.species.insert(in_language(&after.name).0.to_owned());
                }
                Role::Page => edited.pages = true,
                Role::Template | Role::Theme => edited.look = true,
                _ => return None,
            }
        }
        Some(edited)
    }

    /// The files that have another text.
    pub(super) fn files(&self) -> &BTreeSet<FileId> {
        &self.files
    }

    /// Whether no file has another text.
    pub(super) fn is_nothing(&self) -> bool {
        self.files.is_empty()
    }

    /// Whether templates or the theme were edited.
    pub(super) fn touches_the_look(&self) -> bool {
        self.look
    }

    /// Whether anything was edited that the pages speak of.
    pub(super) fn touches_the_care(&self) -> bool {
        self.pages || !self.animals.is_empty() || !self.species.is_empty()
    }

    /// The sources with all animals set aside but those that were edited and their company.
    pub(super) fn narrowed(&self, sources: &Sources, last: &Checked) -> Sources {
        let mut kept = self.animals.clone();
        for name in &self.animals {
            let company = last.model.animals.get(name).map(|animal| &animal.company);
            kept.extend(company.into_iter().flatten().map(|one| one.name.clone()));
        }
        sources.setting_aside(|file: &SourceFile| {
            matches!(file.role, Role::Animal | Role::Log) && !kept.contains(&file.name)
        })
    }

    /// Puts what was found out about the edited files into what was known of the whole site.
    pub(super) fn put_into(&self, whole: &mut Checked, part: &Checked) {
        for name in &self.animals {
            exchange(&mut whole.model.animals, &part.model.animals, name);
            exchange(&mut whole.figures.animals, &part.figures.animals, name);
        }
        for name in &self.species {
            exchange(&mut whole.model.species, &part.model.species, name);
            exchange(&mut whole.figures.species, &part.figures.species, name);
        }
        if self.pages {
            whole.model.pages.clone_from(&part.model.pages);
        }
    }

    /// The findings of the whole site with those at the edited files found anew.
    pub(super) fn findings(&self, whole: &[Finding], part: &[Finding]) -> Vec<Finding> {
        let here = |finding: &&Finding| {
            finding.place.is_some_and(|place| self.files.contains(&place.file))
        };
        let mut found: Vec<Finding> =
            whole.iter().filter(|finding| !here(finding)).cloned().collect();
        found.extend(part.iter().filter(here).cloned());
        finding::sort(&mut found);
        found
    }
}

/// Takes one entry over from another map, its absence too.
fn exchange<T: Clone>(
    into: &mut std::collections::BTreeMap<String, T>,
    from: &std::collections::BTreeMap<String, T>,
    name: &str,
) {
    match from.get(name) {
        Some(value) => drop(into.insert(name.to_owned(), value.clone())),
        None => drop(into.remove(name)),
    }
}
