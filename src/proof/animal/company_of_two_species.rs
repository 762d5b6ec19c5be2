//! Animals of two species in one enclosure.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::companions;

static CODE: Code = Code {
    name: "company-of-two-species",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "animals of two species share an enclosure",
    page: include_str!("company_of_two_species.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        for companion in companions(evidence, animal) {
            let other = companion.animal;
            let same = other.species.name == animal.species.name;
            if same || !other.is_kept() || companion.is_second {
                continue;
            }
            let message = format!(
                "{} (`{}`) shares its enclosure with {} (`{}`), and the figures are one species' own",
                animal.name, animal.species.name, other.name, other.species.name
            );
            let help = "part them: what one needs and carries may harm the other";
            found.push(Finding::new(&CODE, companion.named.place, message).help(help));
        }
    }
}
