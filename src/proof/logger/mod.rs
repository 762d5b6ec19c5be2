//! What data loggers have recorded.

pub(super) mod logger_unknown;
pub(super) mod recorded_too_damp;
pub(super) mod recorded_too_hot;

use crate::figures::logger::{LoggerFigures, Spell};
use crate::finding::Place;
use crate::model::Animal;
use crate::proof::Evidence;

/// Goes through what the probes of every animal that is kept have recorded, and tells of each spell that passes a limit: the
/// animal, the probe's figures, the spell, the limit, and where the table is named.
fn over_spells<'a>(
    evidence: &Evidence<'a>,
    passing: impl Fn(&LoggerFigures) -> Option<(Spell, f64)>,
    mut tell: impl FnMut(&'a Animal, &'a LoggerFigures, (Spell, f64), Place),
) {
    for (key, animal) in evidence.model.animals.iter().filter(|(_, animal)| animal.is_kept()) {
        let Some(figures) = evidence.figures.animals.get(key) else { continue };
        for logger in &figures.loggers {
            let Some(spell) = passing(logger) else { continue };
            let of = animal
                .loggers
                .iter()
                .find(|of| of.recordings.iter().any(|recording| recording.probe == logger.probe));
            let Some(of) = of else { continue };
            tell(animal, logger, spell, of.readings.place);
        }
    }
}

/// Hours in words.
fn hours(hours: f64) -> String {
    let number = crate::figures::working::number(hours, 1);
    if number == "1" { "1 hour".to_owned() } else { format!("{number} hours") }
}
