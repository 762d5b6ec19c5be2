//! Two animals with the same chip.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::Animal;
use crate::proof::{Evidence, Rule};
use std::collections::BTreeMap;

static CODE: Code = Code {
    name: "chip-twice",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Animal,
    summary: "two animals have the same chip",
    page: include_str!("chip_twice.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let mut seen: BTreeMap<String, &Animal> = BTreeMap::new();
    for animal in evidence.model.animals.values() {
        let Some(chip) = &animal.chip else { continue };
        let plain: String = chip.chars().filter(|c| c.is_alphanumeric()).collect();
        if plain.is_empty() {
            continue;
        }
        match seen.get(&plain) {
            Some(other) => {
                let message = format!("{} and {} have the same chip", other.name, animal.name);
                found.push(
                    Finding::new(&CODE, evidence.field(animal.file, "chip"), message)
                        .help("read both chips again, and correct the one that was copied")
                        .also_at(evidence.field(other.file, "chip"), "the same chip"),
                );
            }
            None => {
                seen.insert(plain, animal);
            }
        }
    }
}
