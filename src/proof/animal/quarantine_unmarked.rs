//! A quarantine that still runs and that the animal's status does not mention.

use crate::figures::quarantine::ended_by_first_day;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Status;
use crate::proof::{Evidence, Rule};

use super::standing;

static CODE: Code = Code {
    name: "quarantine-unmarked",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "a quarantine is still running and the animal's status does not say so",
    page: include_str!("quarantine_unmarked.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let as_of = evidence.figures.as_of;
    for (name, animal) in evidence.model.animals.iter().filter(|(_, animal)| animal.is_kept()) {
        let Some(quarantine) = &animal.quarantine else { continue };
        let until = evidence.figures.animals.get(name).and_then(|figures| figures.quarantine_until);
        let Some(until) = until.filter(|until| *until > as_of) else { continue };
        // Where only an illness or a newcomer keeps it running, another rule says so and names it.
        if animal.status == Status::Quarantine || ended_by_first_day(quarantine, as_of) {
            continue;
        }
        let message = format!(
            "the quarantine of {} lasts until {until}, and its status says that it {}",
            animal.name,
            standing(animal.status)
        );
        let help =
            "write status = \"quarantine\" until then; illness and newcomers start the time again";
        found.push(
            Finding::new(&CODE, quarantine.place, message)
                .help(help)
                .also_at(evidence.field(animal.file, "status"), "the status"),
        );
    }
}
