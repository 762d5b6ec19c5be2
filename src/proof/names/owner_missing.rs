//! Words without their species, or a log without its animal.

use crate::finding::{Code, Finding, Place, Severity, Subject, did_you_mean};
use crate::proof::{Evidence, Rule};
use crate::source::{Role, in_language};

static CODE: Code = Code {
    name: "owner-missing",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Names,
    summary: "a log or words stand beside no animal or species",
    page: include_str!("owner_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for (role, owner) in [(Role::Log, Role::Animal), (Role::Words, Role::Species)] {
        for file in evidence.sources.of(role) {
            // Words in a further language bear its tag behind the name of their species.
            let name = in_language(&file.name).0;
            if evidence.sources.named(owner, name).is_some() {
                continue;
            }
            let message =
                format!("there is no {} `{}` for {} to belong to", owner.noun(), name, file.path);
            let owners = evidence.sources.of(owner).map(|file| file.name.as_str());
            let help = did_you_mean(name, owners);
            let help = help.unwrap_or_else(|| {
                "add its .toml file beside this one, or rename this one".to_owned()
            });
            found.push(Finding::new(&CODE, Place::start_of(file.id), message).help(help));
        }
    }
}
