//! An animal of unknown sex whose species' sexes differ in size.

use crate::figures::growth::adult_range_cm;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Sex;
use crate::proof::{Evidence, Rule};
use crate::quantity::{Length, Range, Rounding};

static CODE: Code = Code {
    name: "sex-unknown",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal's sex is not known and its species' sexes differ in size",
    page: include_str!("sex_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How much longer one sex is than the other before it matters for the enclosure.
const TIMES: f64 = 1.25;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        let Some(species) = evidence.model.species.get(&animal.species.name) else { continue };
        if animal.sex != Sex::Unknown {
            continue;
        }
        let form = animal.form.as_ref().map(|form| form.name.as_str());
        let range = |sex| adult_range_cm(species, sex, form);
        let (Some(female), Some(male)) = (range(Sex::Female), range(Sex::Male)) else { continue };
        if female.1.max(male.1) < female.1.min(male.1) * TIMES {
            continue;
        }
        let shown = |(low, high): (f64, f64)| {
            let range = Range::between(Length::from_cm(low), Length::from_cm(high));
            range.map_or(String::new(), |range| range.print(system, Rounding::Nearest).first)
        };
        let message = format!(
            "the sex of {} is not known: a female grows to {}, a male to {}, and the larger is planned for",
            animal.name,
            shown(female),
            shown(male)
        );
        let help = "have it sexed by somebody who can, and write sex and sex_basis";
        found.push(Finding::new(&CODE, evidence.field(animal.file, "name"), message).help(help));
    }
}
