//! A room with heated enclosures and no smoke alarm.

use std::collections::BTreeMap;

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "room-without-alarm",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "enclosures are heated in a room without a smoke alarm",
    page: include_str!("room_without_alarm.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let mut heated: BTreeMap<&str, (usize, Place)> = BTreeMap::new();
    for animal in evidence.model.animals.values().filter(|animal| animal.is_kept()) {
        let Some(housing) = animal
            .housing
            .as_ref()
            .filter(|housing| !housing.heaters.is_empty() || !housing.lamps.is_empty())
        else {
            continue;
        };
        let Some(room) = &housing.room else { continue };
        heated.entry(&room.name).or_insert((0, room.place)).0 += 1;
    }
    for room in &evidence.model.site.rooms {
        let Some((enclosures, first)) = heated.get(room.name.as_str()) else { continue };
        let (place, said) = match room.smoke_alarm {
            Some((true, _)) => continue,
            Some((false, place)) => (place, "has no smoke alarm"),
            None => (room.place, "is not said to have a smoke alarm"),
        };
        let animals = if *enclosures == 1 {
            "one animal is".to_owned()
        } else {
            format!("{enclosures} animals are")
        };
        let message =
            format!("the room `{}`, where {animals} under heaters or lamps, {said}", room.name);
        found.push(
            Finding::new(&CODE, place, message)
                .help("hang a smoke alarm in it that is heard where people sleep, press its button every week, and write smoke_alarm = true")
                .also_at(*first, "heated here"),
        );
    }
}
