//! Air that is everywhere too dry or too damp.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "humidity-out-of-range",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Humidity,
    summary: "every hygrometer reads outside the species' range",
    page: include_str!("humidity_out_of_range.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let humidity = &housed.species.humidity;
        let Some(range) = &humidity.range else { continue };
        let shed_top = humidity.shed.as_ref().and_then(|shed| shed.value.high());
        let top = range
            .value
            .high()
            .map(|top| shed_top.map_or(top, |shed| if shed > top { shed } else { top }));
        let readings: Vec<_> =
            housed.readings().into_iter().filter_map(|read| read.humidity).collect();
        let Some(dampest) = readings.iter().copied().reduce(|a, b| if b.0 > a.0 { b } else { a })
        else {
            continue;
        };
        let Some(driest) = readings.iter().copied().reduce(|a, b| if b.0 < a.0 { b } else { a })
        else {
            continue;
        };
        let (reads, place, word, help) = if range.value.low().is_some_and(|low| dampest.0 < low) {
            (
                dampest.0,
                dampest.1,
                "dampest",
                "spray, add a damp hide or a larger bowl, or close some of the vents",
            )
        } else if top.is_some_and(|top| driest.0 > top) {
            (driest.0, driest.1, "driest", "let in more air and take out wet substrate")
        } else {
            continue;
        };
        let message = format!(
            "the {word} hygrometer of {} reads {}, and the humidity should be {}",
            housed.animal.name,
            housed.one(reads),
            housed.range(&range.value)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help(help)
                .also_at(range.place, "the species' humidity"),
        );
    }
}
