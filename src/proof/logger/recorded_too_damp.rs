//! A recording that stays above the humidity ceiling for longer than the species bears.

use crate::figures::logger::LoggerFigures;
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
    let passing = |logger: &LoggerFigures| Some((logger.too_damp()?, logger.ceiling_percent?));
    super::over_spells(evidence, passing, |animal, logger, (spell, ceiling), place| {
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
        let help =
            "find out what kept it damp; let in more air, spray less, take out wet substrate";
        found.push(Finding::new(&CODE, place, message).help(help));
    });
}
