//! A species without a temperature that its kind cannot be kept without.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Habit;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "temperatures-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Species,
    summary: "a species lacks a temperature that its kind cannot be kept without",
    page: include_str!("temperatures_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for species in evidence.model.species.values() {
        let of = &species.temperature;
        let mut missing = Vec::new();
        let mut need = |name, is_given: bool| missing.extend((!is_given).then_some(name));
        match species.habit {
            Habit::Aquatic => need("water", of.water.is_some()),
            Habit::SemiAquatic => {
                need("water", of.water.is_some() || of.cool.is_some());
                need("basking", of.basking.is_some() || of.warm.is_some());
            }
            _ => {
                need("warm", of.warm.is_some());
                need("cool", of.cool.is_some());
            }
        }
        need("night", of.night.is_some());
        need("never_above", of.never_above.is_some());
        need("critical_low", of.critical_low.is_some());
        if missing.is_empty() {
            continue;
        }
        let message =
            format!("{} does not give {} in [temperature]", species.name, missing.join(", "));
        let help = "add each as a range with its unit: night = \"20-23 C\"";
        found.push(Finding::new(&CODE, evidence.field(species.file, "name"), message).help(help));
    }
}
