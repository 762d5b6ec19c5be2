//! A figure that the site wants a source for and that no species states.

use std::collections::BTreeSet;

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::unknown;

static CODE: Code = Code {
    name: "figure-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Names,
    summary: "a source is asked for a figure that no species states",
    page: include_str!("figure_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let asked = &evidence.model.site.figures_need_source;
    if asked.is_empty() {
        return;
    }
    let mut known = BTreeSet::from(["all".to_owned()]);
    for species in evidence.model.species.values() {
        for stated in species.stated() {
            let dots = stated.name.match_indices('.').map(|(at, _)| stated.name[..at].to_owned());
            known.extend(dots.collect::<Vec<_>>());
            known.insert(stated.name);
        }
    }
    for named in asked.iter().filter(|named| !known.contains(&named.name)) {
        found.push(unknown(&CODE, named, ("figure", ""), known.iter().map(String::as_str)));
    }
}
