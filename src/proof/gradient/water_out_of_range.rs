//! Water warmer or colder than the species asks for.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Zone;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "water-out-of-range",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "the water reads outside its range",
    page: include_str!("water_out_of_range.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(water) = &housed.species.temperature.water else { continue };
        let Some((reads, place)) = housed
            .by_day(Zone::Water)
            .filter(|(reads, _)| !water.value.contains(*reads) && !housed.winters_at(*reads))
        else {
            continue;
        };
        let message = format!(
            "the water of {} reads {}, and should be {}",
            housed.animal.name,
            housed.one(reads),
            housed.range(&water.value)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("change its temperature slowly, a degree or two a day, and look at the heater or the room")
                .also_at(water.place, "the species' water"),
        );
    }
}
