//! An animal that has died or gone and still shares an enclosure.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{companions, standing};

static CODE: Code = Code {
    name: "ended-animal-with-company",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal that has died or gone still shares an enclosure",
    page: include_str!("ended_animal_with_company.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values() {
        for companion in companions(evidence, animal) {
            let (one, other) = (animal, companion.animal);
            let gone = if other.is_kept() { one } else { other };
            if gone.is_kept() || companion.is_second {
                continue;
            }
            let message = format!(
                "{} shares its enclosure with {}, and {} {}",
                one.name,
                other.name,
                gone.name,
                standing(gone.status)
            );
            let help = "take it out of `with`: the space and the food are worked out for those that live there";
            found.push(Finding::new(&CODE, companion.named.place, message).help(help));
        }
    }
}
