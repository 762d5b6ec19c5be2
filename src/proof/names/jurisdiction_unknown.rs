//! A jurisdiction that is not there.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::unknown;

static CODE: Code = Code {
    name: "jurisdiction-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Names,
    summary: "a jurisdiction is not there",
    page: include_str!("jurisdiction_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let laws = &evidence.model.laws;
    let larger = laws.values().flat_map(|law| &law.within);
    let site = &evidence.model.site;
    let worded = site.wordings.iter().map(|words| &words.named);
    for named in site.jurisdictions.iter().chain(worded).chain(larger) {
        if !laws.contains_key(&named.name) {
            let known = laws.keys().map(String::as_str);
            found.push(unknown(&CODE, named, ("jurisdiction", ""), known));
        }
    }
}
