//! No place warm enough to bask.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "no-basking-spot",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "no probe reads a basking spot as warm as the species needs",
    page: include_str!("no_basking_spot.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(basking) = &housed.species.temperature.basking else { continue };
        let Some(low) = basking.value.low() else { continue };
        let warmest = housed
            .readings()
            .into_iter()
            .filter_map(|read| read.day)
            .reduce(|a, b| if b.0 > a.0 { b } else { a });
        let Some((day, place)) = warmest.filter(|(day, _)| *day < low && !housed.winters_at(*day))
        else {
            continue;
        };
        let message = format!(
            "the warmest probe of {} reads {}, and the basking spot should be {}",
            housed.animal.name,
            housed.one(day),
            housed.range(&basking.value)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("put a probe named `basking` at the surface where it basks, and warm that spot if it is too cold")
                .also_at(basking.place, "the species' basking spot"),
        );
    }
}
