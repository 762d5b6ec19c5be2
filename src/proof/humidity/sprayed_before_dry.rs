//! Spraying that comes round before the air can have dried.

use crate::figures::moisture::drying_h;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::Span;

static CODE: Code = Code {
    name: "sprayed-before-dry",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Humidity,
    summary: "an enclosure is sprayed more often than its air can dry",
    page: include_str!("sprayed_before_dry.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some((every, place)) = housed.housing.spray_every else { continue };
        let Ok(drying) = drying_h(housed.housing, housed.species) else { continue };
        let Some(top) = housed.species.humidity.range.as_ref() else { continue };
        let message = match drying {
            Some(hours) if hours <= every.hours() => continue,
            Some(hours) => format!(
                "{} is sprayed every {}, and its air needs {} to come back into the range of its species",
                housed.animal.name,
                housed.one(every),
                housed.one(Span::from_days((hours * 10.0).round() / 240.0))
            ),
            None => format!(
                "{} is sprayed, and the air of its room is so damp that its own never comes back into the range of its species",
                housed.animal.name
            ),
        };
        found.push(
            Finding::new(&CODE, place, message)
                .help("spray less often, or let in more air: walls and skin must dry in between")
                .also_at(top.place, "the range"),
        );
    }
}
