//! A setting for a finding that does not exist.

use crate::finding::{Code, Finding, Severity, Subject, did_you_mean};
use crate::proof::{Evidence, Rule, codes};

static CODE: Code = Code {
    name: "code-unknown",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Site,
    summary: "[findings] names a code that does not exist",
    page: include_str!("code_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let known = codes();
    for (code, _) in &evidence.model.site.severities {
        if !known.contains_key(code.name.as_str()) {
            let help = did_you_mean(&code.name, known.keys().copied());
            let help = help.unwrap_or_else(|| "`wardsheet explain` lists every code".to_owned());
            found.push(
                Finding::new(&CODE, code.place, format!("there is no finding `{}`", code.name))
                    .help(help),
            );
        }
    }
}
