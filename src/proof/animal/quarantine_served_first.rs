//! An animal in quarantine that is served before one that is not.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Status;
use crate::proof::{Evidence, Rule};

use super::standing;

static CODE: Code = Code {
    name: "quarantine-served-first",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal in quarantine is served before a resident",
    page: include_str!("quarantine_served_first.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let kept = || evidence.model.animals.values().filter(|animal| animal.is_kept());
    let residents = kept().filter(|animal| animal.status != Status::Quarantine);
    let last = residents
        .filter_map(|animal| Some((animal, animal.turn?)))
        .max_by_key(|(_, (turn, _))| *turn);
    let Some((resident, (last, last_place))) = last else { return };
    for animal in kept().filter(|animal| animal.status == Status::Quarantine) {
        let Some((turn, place)) = animal.turn.filter(|(turn, _)| *turn <= last) else { continue };
        let message = format!(
            "{} is in quarantine and has turn {turn} in the round; {}, which {}, has turn {last}",
            animal.name,
            resident.name,
            standing(resident.status)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("serve those in quarantine last, then wash and change clothes; give them the last turns")
                .also_at(last_place, "its turn"),
        );
    }
}
