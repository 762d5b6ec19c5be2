//! Hides that all stand at the same end of the gradient.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{cm, housed};

static CODE: Code = Code {
    name: "hides-at-one-end",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Enclosure,
    summary: "every hide stands at the same end of the gradient",
    page: include_str!("hides_at_one_end.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in housed(evidence) {
        let temperature = &housed.species.temperature;
        if temperature.cool.is_none()
            || (temperature.warm.is_none() && temperature.basking.is_none())
        {
            continue;
        }
        let Some((inside, _)) = housed.housing.inside else { continue };
        let length = inside.length.cm().max(inside.width.cm());
        let placed: Vec<_> = housed.housing.hides.iter().filter_map(|hide| hide.at).collect();
        let [(first, place), rest @ ..] = placed.as_slice() else { continue };
        let all_placed = placed.len() == housed.housing.hides.len();
        if rest.is_empty() || !all_placed {
            continue;
        }
        let half = length / 2.0;
        let end = if placed.iter().all(|(at, _)| at.cm() < half) {
            "warm"
        } else if placed.iter().all(|(at, _)| at.cm() > half) {
            "cool"
        } else {
            continue;
        };
        let system = evidence.model.site.units;
        let message = format!(
            "{} stand in the {end} half, the first at {} of {}",
            if placed.len() == 2 {
                "both hides".to_owned()
            } else {
                format!("all {} hides", placed.len())
            },
            cm(first.cm(), system),
            cm(length, system)
        );
        let mut finding = Finding::new(&CODE, *place, message)
            .help("move one to the other end, so that the animal need not choose between warmth and cover");
        for (_, place) in rest {
            finding = finding.also_at(*place, "at the same end");
        }
        found.push(finding);
    }
}
