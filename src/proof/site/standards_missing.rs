//! A site that does not say which standards are in force.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "standards-missing",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Site,
    summary: "the site does not say which standards are in force",
    page: include_str!("standards_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let model = evidence.model;
    if !model.site.standards.is_empty() || model.standards.is_empty() {
        return;
    }
    let message =
        "no standard is said to be in force, so every one that a species names is applied";
    let names: Vec<&str> = model.standards.keys().map(String::as_str).take(2).collect();
    let help =
        format!("name those that hold where you are: standards = [\"{}\"]", names.join("\", \""));
    found.push(Finding::new(&CODE, evidence.field(model.site.file, "title"), message).help(help));
}
