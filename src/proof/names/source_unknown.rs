//! A figure that names a source which the bibliography does not hold.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::Named;
use crate::proof::{Evidence, Rule};

use super::unknown;

static CODE: Code = Code {
    name: "source-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Names,
    summary: "a figure names a source that the bibliography does not hold",
    page: include_str!("source_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let known = &evidence.model.sources;
    let mut check = |named: &Named| {
        if !known.contains_key(&named.name) {
            let keys = known.keys().map(String::as_str);
            let mut finding = unknown(&CODE, named, ("source", ""), keys);
            if finding.help.is_none() {
                let entry = format!(
                    "enter it in sources.toml: a table [{}] with title, issuer and year",
                    named.name
                );
                finding = finding.help(entry);
            }
            found.push(finding);
        }
    };
    for species in evidence.model.species.values() {
        for stated in species.stated() {
            stated.sources.iter().for_each(&mut check);
            stated.others.iter().flat_map(|(_, sources)| sources.iter()).for_each(&mut check);
        }
        species.signs.iter().flat_map(|sign| &sign.sources).for_each(&mut check);
        species.legal.rules.iter().flat_map(|rule| &rule.sources).for_each(&mut check);
    }
    for law in evidence.model.laws.values() {
        law.sources().into_iter().for_each(&mut check);
    }
}
