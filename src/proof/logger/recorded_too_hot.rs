//! A recording that passes what is never passed.

use crate::figures::logger::LoggerFigures;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::{Quantity, Rounding, Temperature, print_one};

static CODE: Code = Code {
    name: "recorded-too-hot",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "a data logger shows a place hotter than the animal may ever be",
    page: include_str!("recorded_too_hot.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let units = evidence.model.site.units;
    let one = |celsius: f64| {
        print_one(Temperature::from_base(celsius), units, Rounding::Nearest).to_string()
    };
    let passing = |logger: &LoggerFigures| Some((logger.too_hot()?, logger.never_above_c?));
    super::over_spells(evidence, passing, |animal, logger, (spell, never), place| {
        let message = format!(
            "from {} on, the probe `{}` of {} was above {} for {} on end, up to {}",
            spell.from.strftime("%Y-%m-%d %H:%M"),
            logger.probe,
            animal.name,
            one(never),
            super::hours(spell.hours),
            one(spell.highest)
        );
        let help =
            "find out what heated it: a thermostat that failed, sun through a window, a warm day";
        found.push(Finding::new(&CODE, place, message).help(help));
    });
}
