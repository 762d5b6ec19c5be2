//! An animal fed at another interval than its stage of life asks for.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{fed, shown};

static CODE: Code = Code {
    name: "interval-outside-stage",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Feeding,
    summary: "an animal is fed at another interval than its stage of life asks for",
    page: include_str!("interval_outside_stage.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for fed in fed(evidence) {
        let own = fed.animal.feeding.as_ref().and_then(|practice| practice.every);
        let stage = fed.stage.and_then(|stage| Some((stage, stage.every.as_ref()?)));
        let (Some((own, place)), Some((stage, asked))) = (own, stage) else { continue };
        if own.overlaps(&asked.value) {
            continue;
        }
        let often = match (own.high(), asked.value.low()) {
            (Some(own), Some(asked)) if own < asked => "more often",
            _ => "more seldom",
        };
        let message = format!(
            "{} is fed every {}, {often} than the stage `{}` of {} asks for: every {}",
            fed.animal.name,
            shown(&own, system),
            stage.name,
            fed.species.name,
            shown(&asked.value, system)
        );
        let help = "feed as its stage asks, or say in its notes why this animal differs";
        found.push(
            Finding::new(&CODE, place, message)
                .help(help)
                .also_at(asked.place, "the species' rule"),
        );
    }
}
