//! What the law of the site's jurisdictions asks of a sheet, and of an animal that is to be handed on.

pub(super) mod care_sheet_item_missing;
pub(super) mod handed_on_below_size;
pub(super) mod handed_on_under_treatment;
pub(super) mod handover_item_missing;
pub(super) mod mark_missing;
pub(super) mod paper_missing;
pub(super) mod sheet_in_another_language;
pub(super) mod wording_not_taken;

use crate::figures::owed::in_force;
use crate::finding::{Finding, Place};
use crate::model::law::{Concerns, Ground, Jurisdiction};
use crate::model::word::{Cites, Kind, Measure, Status};
use crate::model::{Animal, Species};
use crate::proof::Evidence;
use crate::quantity::{Length, Mass, Rounding, print_one};

/// An animal that is to be handed on under a law.
#[derive(Clone, Copy)]
struct Handed<'a> {
    evidence: &'a Evidence<'a>,
    animal: &'a Animal,
    species: &'a Species,
    law: &'a Jurisdiction,
}

/// What one rule finds of one animal under one law.
type Check = fn(Handed<'_>, &mut Vec<Finding>);

/// Every rule on an animal that is to be handed on.
const CHECKS: [Check; 5] = [
    handed_on_below_size::check,
    handed_on_under_treatment::check,
    handover_item_missing::check,
    mark_missing::check,
    paper_missing::check,
];

/// Runs a rule over every animal that is seeking a home, under every law in force.
fn over_seeking(evidence: &Evidence<'_>, found: &mut Vec<Finding>, check: Check) {
    let laws = in_force(evidence.model);
    let seeking =
        evidence.model.animals.values().filter(|animal| animal.status == Status::SeekingHome);
    for animal in seeking {
        let Some(species) = evidence.model.species.get(&animal.species.name) else { continue };
        laws.iter()
            .for_each(|law| check(Handed { evidence, animal, species, law: law.law }, found));
    }
}

/// What stands between one animal and being handed on under the laws in force, whatever its status.
///
/// Empty where there is no such animal, its species is not known, or the site names no jurisdiction.
pub fn before_handover(evidence: &Evidence<'_>, key: &str) -> Vec<Finding> {
    let mut found = Vec::new();
    let Some(animal) = evidence.model.animals.get(key) else { return found };
    let Some(species) = evidence.model.species.get(&animal.species.name) else { return found };
    for law in in_force(evidence.model) {
        for check in CHECKS {
            check(Handed { evidence, animal, species, law: law.law }, &mut found);
        }
    }
    found
}

/// The article, as it stands in brackets behind what it asks for, and whether that is told from memory.
fn article(ground: &Ground) -> String {
    let article = ground.article.as_deref().unwrap_or("article not in our notes");
    format!("{article}{}", if ground.from_memory { "; from memory, not read" } else { "" })
}

/// A help line, with what the law says and what is to be known of the row.
fn help(first: &str, says: Option<&String>, ground: &Ground) -> String {
    let more = says.into_iter().chain(&ground.note).map(|text| text.trim_end_matches('.'));
    let more: Vec<&str> = std::iter::once(first).chain(more).collect();
    format!("{}; local law decides", more.join(". "))
}

impl Handed<'_> {
    /// The place of a field of its file.
    fn field(&self, key: &str) -> Place {
        self.evidence.field(self.animal.file, key)
    }

    /// Whether its species has a shell that is measured.
    fn has_shell(&self) -> bool {
        self.species.size.measure == Measure::Carapace
            || matches!(self.species.kind, Kind::Tortoise | Kind::Turtle)
    }

    /// The last shell length in its log, for species that are measured by the shell.
    fn shell(&self) -> Option<Length> {
        let by_shell = self.species.size.measure == Measure::Carapace;
        let until = self.evidence.figures.as_of;
        let last = self.animal.lengths().rev().find(|(date, _)| *date <= until);
        last.map(|(_, length)| length).filter(|_| by_shell)
    }

    /// The last weight in its log.
    fn mass(&self) -> Option<Mass> {
        let until = self.evidence.figures.as_of;
        let last = self.animal.weights().rev().find(|(date, _)| *date <= until);
        last.map(|(_, mass)| mass)
    }

    /// Whether a row concerns it, as far as that does not hang on its size.
    fn is_concerned(&self, concerns: &Concerns) -> bool {
        let kind = concerns.kinds.is_empty() || concerns.kinds.contains(&self.species.kind);
        let listed = self.species.legal.cites.is_some_and(|cites| cites != Cites::NotListed);
        let protected = concerns.protected.is_none_or(|protected| protected == listed);
        let papered = concerns.with_paper.as_ref().is_none_or(|wanted| {
            let papers = self
                .species
                .legal
                .rules
                .iter()
                .filter(|rule| self.law.is_place(&rule.jurisdiction));
            papers
                .filter_map(|rule| rule.paper.as_ref())
                .any(|paper| paper.eq_ignore_ascii_case(wanted))
        });
        kind && protected && papered
    }

    /// Whether its size lets a row concern it: yes or no, and whether the size is known. A size that nobody has measured is taken
    /// as that of an animal past the limit from which something is owed.
    fn is_of_size(&self, concerns: &Concerns) -> (bool, bool) {
        let (shell, mass) = (self.shell(), self.mass());
        let long = concerns.shell_from.is_none_or(|from| shell.is_none_or(|shell| shell >= from));
        let short =
            concerns.shell_below.is_none_or(|below| shell.is_some_and(|shell| shell < below));
        let heavy = concerns.mass_from.is_none_or(|from| mass.is_none_or(|mass| mass >= from));
        let needs_shell = concerns.shell_from.is_some() || concerns.shell_below.is_some();
        let known =
            (!needs_shell || shell.is_some()) && (concerns.mass_from.is_none() || mass.is_some());
        (long && short && heavy, known)
    }
}

/// A length in the system that the site puts first.
fn length(evidence: &Evidence<'_>, length: Length) -> String {
    print_one(length, evidence.model.site.units, Rounding::Nearest).first
}
