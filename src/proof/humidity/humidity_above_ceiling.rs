//! A hygrometer above what the ceiling allows there.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::Humidity;

static CODE: Code = Code {
    name: "humidity-above-ceiling",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Humidity,
    summary: "a hygrometer reads more than the ceiling allows at that place",
    page: include_str!("humidity_above_ceiling.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(ceiling) = &housed.species.humidity.ceiling else { continue };
        for read in housed.readings() {
            let Some((reads, place)) = read.humidity else { continue };
            let allowed = housed.figures.humidity.readings.iter();
            let allowed = allowed.filter(|allowed| allowed.zone == read.probe.name);
            let Some(at_most) = allowed.map(|allowed| allowed.at_most_percent).reduce(f64::min)
            else {
                continue;
            };
            if reads.percent() <= at_most {
                continue;
            }
            let message = format!(
                "the hygrometer `{}` of {} reads {}, and at its temperature at most {} keeps the cool side under its ceiling of {}",
                read.probe.name,
                housed.animal.name,
                housed.one(reads),
                housed.one(Humidity::from_percent(at_most.floor())),
                housed.one(ceiling.value.high().or(ceiling.value.low()).unwrap_or(reads))
            );
            found.push(
                Finding::new(&CODE, place, message)
                    .help("let in more air, take out wet substrate, and spray less or in the morning only")
                    .also_at(ceiling.place, "the ceiling at the cool side"),
            );
        }
    }
}
