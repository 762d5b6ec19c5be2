//! An animal that is given far more energy than it uses.

use crate::figures::working::number;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::fed;

static CODE: Code = Code {
    name: "overfed",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Feeding,
    summary: "an animal's food holds more energy than its species should be given",
    page: include_str!("overfed.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// Food energy over resting energy above which a grown animal is looked at where its species says nothing (common practice,
/// no source). It is twice what a fence lizard uses in the field, 2.0 to 2.5 (A. F. Bennett and K. A. Nagy 1977, Ecology).
const COMMON_LIMIT: f64 = 5.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for fed in fed(evidence) {
        // Where the lower end is above the limit, every published equation agrees that it is too much.
        let Some(((low, high), _)) = &fed.figures.energy else { continue };
        let practice = fed.animal.feeding.as_ref().map(|practice| practice.place);
        let stage = fed.stage.map(|stage| stage.place);
        let Some(place) = practice.or(Some(fed.animal.species.place)) else { continue };
        let grown = fed.species.feeding.last().map(|stage| stage.place) == stage;
        let own = fed.species.energy_at_most.as_ref();
        let own_limit = own
            .and_then(|most| Some((most.value.high().or(most.value.low())?.times(), most.place)));
        let limit = match own_limit {
            Some((limit, _)) => limit,
            None if grown => COMMON_LIMIT,
            // A young animal builds its body from the rest; how much of it is not known for every kind.
            None => continue,
        };
        if *low <= limit {
            continue;
        }
        let whose = match own_limit {
            Some(_) => format!("{} should be given at most", fed.species.name),
            None => "a grown animal is commonly given at most".to_owned(),
        };
        let message = format!(
            "{}'s food holds {}–{} times its energy at rest, and {whose} {} times",
            fed.animal.name,
            number(*low, 1),
            number(*high, 1),
            number(limit, 1)
        );
        let mut finding = Finding::new(&CODE, place, message)
            .help("give less or less often, and weigh it again; ask a vet before a fat animal is made to fast");
        match own_limit {
            Some((_, rule)) => finding = finding.also_at(rule, "the species' limit"),
            None => finding.severity = Severity::Note,
        }
        found.push(finding);
    }
}
