//! A setting that would lower a safety error.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule, codes};

static CODE: Code = Code {
    name: "safety-lowered",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Site,
    summary: "[findings] would lower a safety error, and does not",
    page: include_str!("safety_lowered.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let known = codes();
    for (code, wish) in &evidence.model.site.severities {
        let is_safety = known.get(code.name.as_str()).is_some_and(|code| code.safety);
        if is_safety && *wish != Some(Severity::Error) {
            let message = format!("`{}` is a safety error and stays one", code.name);
            found.push(Finding::new(&CODE, code.place, message).help("remove this line"));
        }
    }
}
