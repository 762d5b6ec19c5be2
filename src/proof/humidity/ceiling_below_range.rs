//! A humidity range that goes above its own ceiling.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::Rounding;

static CODE: Code = Code {
    name: "ceiling-below-range",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Humidity,
    summary: "a humidity range goes above its own ceiling",
    page: include_str!("ceiling_below_range.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let units = evidence.model.site.units;
    for species in evidence.model.species.values() {
        let humidity = &species.humidity;
        let Some(ceiling) = &humidity.ceiling else { continue };
        let Some(most) = ceiling.value.high().or(ceiling.value.low()) else { continue };
        for (range, words) in
            [(&humidity.range, "humidity"), (&humidity.shed, "humidity while shedding")]
        {
            let Some(range) = range else { continue };
            if range.value.high().or(range.value.low()).is_none_or(|top| top <= most) {
                continue;
            }
            let message = format!(
                "the {words} of {} is {}, and its ceiling is {}",
                species.name,
                range.value.print(units, Rounding::Inward),
                crate::quantity::print_one(most, units, Rounding::Down)
            );
            found.push(
                Finding::new(&CODE, range.place, message)
                    .help("raise the ceiling to the top of the range, or lower the range")
                    .also_at(ceiling.place, "the ceiling"),
            );
        }
    }
}
