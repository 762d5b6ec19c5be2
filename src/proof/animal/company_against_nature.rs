//! An animal with company whose species is kept alone or in pairs.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Company;
use crate::proof::{Evidence, Rule};

use super::companions;

static CODE: Code = Code {
    name: "company-against-nature",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Animal,
    summary: "an animal whose species is kept alone has company",
    page: include_str!("company_against_nature.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        let Some(species) = evidence.model.species.get(&animal.species.name) else { continue };
        let companions = companions(evidence, animal);
        let kept: Vec<_> =
            companions.iter().filter(|companion| companion.animal.is_kept()).collect();
        let Some(first) = kept.first() else { continue };
        let (most, rule) = match species.company {
            Company::Alone => (0, "kept alone"),
            Company::Pairs => (1, "kept in pairs at the most"),
            Company::Groups => continue,
        };
        let told_already = kept.iter().all(|companion| companion.is_second);
        if kept.len() <= most || told_already {
            continue;
        }
        let names: Vec<&str> =
            kept.iter().map(|companion| companion.animal.name.as_str()).collect();
        let message = format!(
            "{} shares its enclosure with {}, and {} is {rule}",
            animal.name,
            names.join(", "),
            species.name
        );
        let help =
            "part them, or say in the species file that its kind keeps company, with the source";
        found.push(Finding::new(&CODE, first.named.place, message).help(help));
    }
}
