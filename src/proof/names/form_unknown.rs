//! An animal of a form that its species does not have.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::unknown;

static CODE: Code = Code {
    name: "form-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Names,
    summary: "an animal's form is not one of its species'",
    page: include_str!("form_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        let Some(species) = evidence.model.species.get(&animal.species.name) else { continue };
        if let Some(form) = &animal.form
            && !species.size.forms.contains_key(&form.name)
        {
            let whose = format!(" of {}", species.name);
            found.push(unknown(
                &CODE,
                form,
                ("form", &whose),
                species.size.forms.keys().map(String::as_str),
            ));
        }
    }
}
