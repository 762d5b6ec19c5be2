//! Something placed beyond the end of the enclosure.

use crate::finding::Place;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::housing::Housing;
use crate::model::word::{HeaterKind, Word};
use crate::proof::{Evidence, Rule};
use crate::quantity::Length;

static CODE: Code = Code {
    name: "position-outside-enclosure",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Enclosure,
    summary: "something is placed beyond the enclosure's length",
    page: include_str!("position_outside_enclosure.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some((inside, inside_place)) = housed.housing.inside else { continue };
        for (what, (at, place)) in placed(housed.housing) {
            if at <= inside.length {
                continue;
            }
            let message = format!(
                "the {what} of {} is placed {} from the warm end of an enclosure {} long",
                housed.animal.name,
                housed.one(at),
                housed.one(inside.length)
            );
            found.push(
                Finding::new(&CODE, place, message)
                    .help("measure again from the warm end, inside; the first of the three inside measures is the length")
                    .also_at(inside_place, "the length"),
            );
        }
    }
}

/// Everything but the hides that has a place along the enclosure; hides have a rule that knows how wide they are.
fn placed(housing: &Housing) -> Vec<(String, (Length, Place))> {
    let heaters = housing.heaters.iter().filter(|heater| heater.kind != HeaterKind::RoomHeater);
    let heaters = heaters.map(|heater| (format!("heater ({})", heater.kind.spelling()), heater.at));
    let lamps = housing.lamps.iter().map(|lamp| (lamp.kind.clone(), lamp.at));
    let probes = housing.probes.iter().map(|probe| (format!("probe `{}`", probe.name), probe.at));
    let all = heaters.chain(lamps).chain(probes);
    all.filter_map(|(what, at)| Some((what, at?))).collect()
}
