//! An animal that has died or gone, and for which there is still work to do.

use crate::figures::quarantine::until;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::log::Entry;
use crate::proof::{Evidence, Rule};

use super::standing;

static CODE: Code = Code {
    name: "ended-animal-with-tasks",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal that has died or gone still has tasks",
    page: include_str!("ended_animal_with_tasks.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let as_of = evidence.figures.as_of;
    for animal in evidence.model.animals.values().filter(|animal| !animal.is_kept()) {
        let gone = format!("{} {}", animal.name, standing(animal.status));
        if let Some((turn, place)) = animal.turn {
            let message = format!("{gone} and still has turn {turn} in the daily round");
            found.push(Finding::new(&CODE, place, message).help("take its turn out"));
        }
        let runs = until(evidence.model, animal, as_of).filter(|until| *until > as_of);
        if let (Some(until), Some(quarantine)) = (runs, &animal.quarantine) {
            let message = format!("{gone}, and its quarantine still runs until {until}");
            let help = "take the quarantine out; what was found stays in the log and the history";
            found.push(Finding::new(&CODE, quarantine.place, message).help(help));
        }
        let kind = |entry: &Entry| evidence.text_at(entry.place).split(',').nth(1).map(str::trim);
        let death = animal.log.iter().find(|entry| kind(entry) == Some("death"));
        let after = death.and_then(|death| {
            let later = animal
                .log
                .iter()
                .find(|entry| entry.date > death.date && kind(entry) != Some("note"));
            later.map(|later| (death, later))
        });
        if let Some((death, later)) = after {
            let message = format!(
                "{} died on {}, and its log goes on with a line of {}",
                animal.name, death.date, later.date
            );
            found.push(
                Finding::new(&CODE, later.place, message)
                    .help("correct the day, or move the line to the animal that it is about")
                    .also_at(death.place, "its death"),
            );
        }
    }
}
