//! Living rodents or other vertebrates given as food.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::log::Event;
use crate::proof::{Evidence, Rule};

use super::fed;

static CODE: Code = Code {
    name: "fed-live",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Feeding,
    summary: "living rodents or other vertebrates are given as food",
    page: include_str!("fed_live.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// Animals with a backbone that are given as food. Insects and worms are fed alive as a rule.
const VERTEBRATES: [&str; 18] = [
    "mouse", "mice", "rat", "rats", "gerbil", "gerbils", "hamster", "hamsters", "rabbit",
    "rabbits", "chick", "chicks", "quail", "pinky", "pinkies", "hopper", "rodent", "rodents",
];

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let help = "feed prey that was killed beforehand, thawed right through and warm";
    for species in evidence.model.species.values() {
        for stage in &species.feeding {
            if let Some(meal) = stage.meal.as_deref().filter(|meal| is_live(meal)) {
                let message = format!(
                    "the stage `{}` of {} is fed living prey: {meal}",
                    stage.name, species.name
                );
                found.push(Finding::new(&CODE, stage.place, message).help(help));
            }
        }
    }
    for fed in fed(evidence) {
        let practice = fed.animal.feeding.as_ref();
        let meal = practice.and_then(|practice| Some((practice, practice.meal.as_deref()?)));
        if let Some((practice, meal)) = meal.filter(|(_, meal)| is_live(meal)) {
            let message = format!("{} is fed living prey: {meal}", fed.animal.name);
            found.push(Finding::new(&CODE, practice.place, message).help(help));
        }
        let logged = fed.animal.log.iter().rev().find(|entry| {
            let food = match &entry.event {
                Event::Meal { food, .. } => food.as_str(),
                _ => return false,
            };
            is_live(food)
        });
        if let Some(entry) = logged {
            let message = format!("living prey was offered on {}", entry.date);
            let mut finding = Finding::new(&CODE, entry.place, message).help(help);
            // What has happened cannot be put right, and no sheet tells anybody to do it again.
            finding.severity = Severity::Note;
            found.push(finding);
        }
    }
}

fn is_live(meal: &str) -> bool {
    let lower = meal.to_lowercase();
    let words: Vec<&str> = lower.split(|c: char| !c.is_alphabetic()).collect();
    let alive = words.iter().any(|word| matches!(*word, "live" | "alive" | "living"))
        && !words.iter().any(|word| matches!(*word, "not" | "never" | "no"));
    alive && words.iter().any(|word| VERTEBRATES.contains(word))
}
