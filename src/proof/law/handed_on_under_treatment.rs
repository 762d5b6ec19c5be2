//! An animal under treatment that is to be handed on where the law forbids that or sets conditions.

use crate::figures::owed::{Treatment, treatment};
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::law::Sale;
use crate::proof::{Evidence, Rule};

use super::{Handed, article, help, over_seeking};

static CODE: Code = Code {
    name: "handed-on-under-treatment",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Law,
    summary: "an animal under treatment is to be handed on where the law forbids it or sets conditions",
    page: include_str!("handed_on_under_treatment.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    over_seeking(evidence, found, check);
}

pub(super) fn check(handed: Handed<'_>, found: &mut Vec<Finding>) {
    let Some(rule) = &handed.law.treatment else { return };
    let animal = handed.animal;
    let state = match treatment(animal, handed.evidence.figures.as_of) {
        Treatment::None => return,
        Treatment::Stated => format!("{} is under treatment", animal.name),
        Treatment::Logged(date) => format!(
            "{} was ill or treated on {date} by its log and nothing says that this is over",
            animal.name
        ),
    };
    let says = match rule.about {
        Sale::Forbidden => "an animal under treatment may not be sold",
        Sale::OnConditions => "an animal under treatment goes only on conditions",
    };
    let message = format!("{state}; in {} {says} ({})", handed.law.name, article(&rule.ground));
    let first = "keep it until a vet says that it is well, then write under_treatment = false";
    let place = animal.under_treatment.map_or_else(|| handed.field("name"), |(_, place)| place);
    found.push(Finding::new(&CODE, place, message).help(help(
        first,
        rule.says.as_ref(),
        &rule.ground,
    )));
}
