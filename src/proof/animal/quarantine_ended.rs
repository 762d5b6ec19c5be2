//! A quarantine that is over and still stands in the animal's status.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Status;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "quarantine-ended",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal's quarantine is over and its status still says quarantine",
    page: include_str!("quarantine_ended.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let as_of = evidence.figures.as_of;
    for (name, animal) in &evidence.model.animals {
        let until = evidence.figures.animals.get(name).and_then(|figures| figures.quarantine_until);
        let Some(until) = until.filter(|until| *until <= as_of) else { continue };
        if animal.status != Status::Quarantine {
            continue;
        }
        let message = format!("the quarantine of {} ended on {until}", animal.name);
        let help = "change its status once every test is back and it has stayed well";
        found.push(Finding::new(&CODE, evidence.field(animal.file, "status"), message).help(help));
    }
}
