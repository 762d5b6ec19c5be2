//! A heater or lamp on a socket strip that the site does not list.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::unknown;

static CODE: Code = Code {
    name: "strip-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Names,
    summary: "something is plugged into a socket strip that is not defined",
    page: include_str!("strip_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let strips = &evidence.model.site.strips;
    for animal in evidence.model.animals.values() {
        let Some(housing) = &animal.housing else { continue };
        let heaters = housing.heaters.iter().filter_map(|heater| heater.strip.as_ref());
        let lamps = housing.lamps.iter().filter_map(|lamp| lamp.strip.as_ref());
        for named in heaters.chain(lamps) {
            if strips.iter().all(|strip| strip.name != named.name) {
                let known = strips.iter().map(|strip| strip.name.as_str());
                found.push(unknown(&CODE, named, ("socket strip", ""), known));
            }
        }
    }
}
