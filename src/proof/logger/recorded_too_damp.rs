//! A recording that stays above the humidity ceiling for longer than the species bears.

use crate::figures::working::number;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "recorded-too-damp",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Humidity,
    summary: "a data logger shows the humidity above its ceiling for longer than the species bears",
    page: include_str!("recorded_too_damp.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for (key, animal) in evidence.model.animals.iter().filter(|(_, animal)| animal.is_kept()) {
        let Some(figures) = evidence.figures.animals.get(key) else { continue };
        for logger in &figures.loggers {
            let (Some(spell), Some(ceiling)) = (logger.too_damp(), logger.ceiling_percent) else {
                continue;
            };
            let of = animal
                .loggers
                .iter()
                .find(|of| of.recordings.iter().any(|recording| recording.probe == logger.probe));
            let Some(of) = of else { continue };
            let message = format!(
                "from {} on, the probe `{}` of {} was above {} % for {} on end, up to {} %, and {} is the most",
                spell.from.strftime("%Y-%m-%d %H:%M"),
                logger.probe,
                animal.name,
                number(ceiling.floor(), 0),
                super::hours(spell.hours),
                number(spell.highest, 0),
                super::hours(logger.bears_h.0)
            );
            found.push(Finding::new(&CODE, of.readings.place, message).help(
                "find out what kept it damp; let in more air, spray less, take out wet substrate",
            ));
        }
    }
}
