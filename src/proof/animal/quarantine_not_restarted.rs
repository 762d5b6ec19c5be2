//! A quarantine that ended by its first day, although something started it again.

use crate::figures::quarantine::{Cause, ended_by_first_day, last_restart, until};
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Status;
use crate::proof::{Evidence, Rule};

use super::standing;

static CODE: Code = Code {
    name: "quarantine-not-restarted",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "an illness or a newcomer should have started a quarantine again",
    page: include_str!("quarantine_not_restarted.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let as_of = evidence.figures.as_of;
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        let Some(quarantine) = &animal.quarantine else { continue };
        let Some(restart) = last_restart(evidence.model, animal, as_of) else { continue };
        let Some(until) = until(evidence.model, animal, as_of) else { continue };
        let written = quarantine.until.filter(|(written, _)| *written < until);
        let ended = ended_by_first_day(quarantine, as_of)
            && animal.status != Status::Quarantine
            && until > as_of;
        let day = restart.date;
        let (what, starts) = match restart.cause {
            Cause::Illness(entry) => (format!("the illness of {day}"), Some(entry.place)),
            Cause::Joined(entry) => {
                (format!("the animal that joined it on {day}"), Some(entry.place))
            }
            Cause::CompanionIll(other, entry) => {
                (format!("the illness of {} on {day}", other.name), Some(entry.place))
            }
            Cause::CompanionCame(other) => {
                let place = other.arrived.map(|(_, place)| place);
                (format!("the arrival of {} on {day}", other.name), place)
            }
        };
        let (place, message) = match written {
            Some((written, place)) => (
                place,
                format!(
                    "the quarantine of {} is written to end on {written}, and {what} starts it again: it lasts until {until}",
                    animal.name
                ),
            ),
            None if ended => (
                quarantine.place,
                format!(
                    "{} {}, as if its quarantine had ended, and {what} starts it again: it lasts until {until}",
                    animal.name,
                    standing(animal.status)
                ),
            ),
            None => continue,
        };
        let mut finding = Finding::new(&CODE, place, message).help(
            "write the new end on the door and status = \"quarantine\"; the time is counted from the last illness and the last newcomer",
        );
        if let Some(place) = starts {
            finding = finding.also_at(place, "starts it again");
        }
        found.push(finding);
    }
}
