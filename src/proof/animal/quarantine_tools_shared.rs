//! Tools that serve an animal in quarantine and one that is not.

use std::collections::BTreeMap;

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Status;
use crate::model::{Animal, Named};
use crate::proof::{Evidence, Rule};

use super::standing;

static CODE: Code = Code {
    name: "quarantine-tools-shared",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Animal,
    summary: "tools of an animal in quarantine are used for one that is not",
    page: include_str!("quarantine_tools_shared.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let kept = || evidence.model.animals.values().filter(|animal| animal.is_kept());
    let plain = |named: &Named| named.name.trim().to_lowercase();
    let mut outside: BTreeMap<String, (&Animal, &Named)> = BTreeMap::new();
    for animal in kept().filter(|animal| animal.status != Status::Quarantine) {
        for tools in &animal.tools {
            outside.entry(plain(tools)).or_insert((animal, tools));
        }
    }
    for animal in kept().filter(|animal| animal.status == Status::Quarantine) {
        for tools in &animal.tools {
            let Some((other, theirs)) = outside.get(&plain(tools)) else { continue };
            let message = format!(
                "the tools `{}` serve {}, which is in quarantine, and {}, which {}",
                tools.name,
                animal.name,
                other.name,
                standing(other.status)
            );
            found.push(
                Finding::new(&CODE, tools.place, message)
                    .help("give quarantine tongs, bowls, brushes and cloths of its own that never leave it")
                    .also_at(theirs.place, "used here too"),
            );
        }
    }
}
