//! A standard, or a row of one, that is not there.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::Named;
use crate::proof::{Evidence, Rule};

use super::unknown;

static CODE: Code = Code {
    name: "standard-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Names,
    summary: "a standard or one of its rows is not there",
    page: include_str!("standard_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let standards = &evidence.model.standards;
    let names = || standards.keys().map(String::as_str);
    for named in &evidence.model.site.standards {
        if !standards.contains_key(&named.name) {
            found.push(unknown(&CODE, named, ("standard", ""), names()));
        }
    }
    for species in evidence.model.species.values() {
        for (name, rule) in &species.enclosure {
            match standards.get(name) {
                None => {
                    let named = Named { name: name.clone(), place: rule.place };
                    found.push(unknown(&CODE, &named, ("standard", ""), names()));
                }
                Some(standard) if !standard.rows.contains_key(&rule.row.name) => {
                    let whose = format!(" in {name}");
                    found.push(unknown(
                        &CODE,
                        &rule.row,
                        ("row", &whose),
                        standard.rows.keys().map(String::as_str),
                    ));
                }
                Some(_) => {}
            }
        }
    }
}
