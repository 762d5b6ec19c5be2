//! An animal that has lost a tenth of its weight within three months.

use crate::figures::calendar::days_between;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::log::Event;
use crate::proof::{Evidence, Rule};

use super::{grams, weights};

static CODE: Code = Code {
    name: "weight-lost",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Body,
    summary: "an animal has lost a tenth of its weight within three months",
    page: include_str!("weight_lost.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// The window in days: a vet visit goes through the last three months of a log.
const WINDOW_DAYS: i32 = 90;
/// The loss that is reported, as a share of the heaviest weight in the window.
const LOSS: f64 = 0.10;
/// Less than this of the last weight is a slip of the pen, and reported as such.
const SLIP: f64 = 0.25;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        let weights = weights(animal, evidence.figures.as_of);
        let Some(((last, now), earlier)) = weights.split_last() else { continue };
        let in_window = earlier
            .iter()
            .filter(|(entry, _)| days_between(entry.date, last.date) <= WINDOW_DAYS)
            .max_by(|a, b| a.1.total_cmp(&b.1));
        let Some((heaviest, then)) = in_window else { continue };
        let lost = 1.0 - now / then;
        if lost <= LOSS || *now < then * SLIP {
            continue;
        }
        // A female is lighter by her clutch.
        let laid = animal.log.iter().any(|entry| {
            let between = entry.date >= heaviest.date && entry.date <= last.date;
            let told = match &entry.event {
                Event::Other(words) => Some(words),
                _ => entry.note.as_ref(),
            };
            between && told.is_some_and(|words| speaks_of_laying(words))
        });
        if laid {
            continue;
        }
        let message = format!(
            "{} has lost {} of {} in {} days, {:.0} %; 10 % is the point to act on",
            animal.name,
            grams(then - now, system),
            grams(*then, system),
            days_between(heaviest.date, last.date),
            lost * 100.0
        );
        let help = "weigh it again, check the temperatures, and show it to a vet; a clutch laid belongs in the log";
        found.push(
            Finding::new(&CODE, last.place, message)
                .help(help)
                .also_at(heaviest.place, format!("it weighed {}", grams(*then, system))),
        );
    }
}

fn speaks_of_laying(words: &str) -> bool {
    let words = words.to_lowercase();
    ["laid", "lay ", "clutch", "eggs", "gave birth", "litter"]
        .iter()
        .any(|word| words.contains(word))
}
