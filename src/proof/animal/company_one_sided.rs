//! An animal that names a companion by which it is not named.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::companions;

static CODE: Code = Code {
    name: "company-one-sided",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal names a companion that does not name it",
    page: include_str!("company_one_sided.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for (name, animal) in &evidence.model.animals {
        for companion in companions(evidence, animal) {
            let other = companion.animal;
            let named_back = other.company.iter().any(|named| named.name == *name);
            if named_back || companion.named.name == *name || !(animal.is_kept() && other.is_kept())
            {
                continue;
            }
            let message = format!(
                "{} shares its enclosure with {}, whose file does not say so",
                animal.name, other.name
            );
            let help = format!("add `{name}` to `with` in {}.toml", companion.named.name);
            let finding = Finding::new(&CODE, companion.named.place, message).help(help);
            found.push(finding.also_at(evidence.field(other.file, "with"), "the other file"));
        }
    }
}
