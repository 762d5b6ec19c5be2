//! An enclosure in a room that the site does not list.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::unknown;

static CODE: Code = Code {
    name: "room-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Names,
    summary: "an enclosure stands in a room that is not defined",
    page: include_str!("room_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let rooms = &evidence.model.site.rooms;
    for animal in evidence.model.animals.values() {
        let Some(named) = animal.housing.as_ref().and_then(|housing| housing.room.as_ref()) else {
            continue;
        };
        if rooms.iter().all(|room| room.name != named.name) {
            let known = rooms.iter().map(|room| room.name.as_str());
            found.push(unknown(&CODE, named, ("room", ""), known));
        }
    }
}
