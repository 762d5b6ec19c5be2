//! An enclosure without its inside measures.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::housed;

static CODE: Code = Code {
    name: "inside-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Enclosure,
    summary: "an enclosure's inside measures are not given",
    page: include_str!("inside_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in housed(evidence) {
        if housed.housing.inside.is_some() {
            continue;
        }
        let measured_elsewhere = housed.animal.company.iter().any(|companion| {
            let companion = evidence.model.animals.get(&companion.name);
            let housing = companion.and_then(|companion| companion.housing.as_ref());
            housing.is_some_and(|housing| housing.inside.is_some())
        });
        if measured_elsewhere {
            continue;
        }
        let message = "the inside measures of this enclosure are not given, so nobody can tell whether it is large enough";
        let help = "write length, width and height: inside = \"120 x 60 x 60 cm\"";
        found.push(Finding::new(&CODE, housed.housing.place, message).help(help));
    }
}
