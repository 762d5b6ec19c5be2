//! An enclosure seen from the front, to scale: what stands in it, and what holds along it.

use crate::figures::grown::grown_space;
use crate::figures::humidity::Reading;
use crate::figures::lifetime::inside_cm;
use crate::figures::working::number;
use crate::figures::{AnimalFigures, SpeciesFigures};
use crate::model::{Animal, Species};
use crate::quantity::{Dimensions, Humidity, Rounding, Temperature, print_one};
use crate::sheets::index::lengths;
use crate::sheets::print;

use super::{Block, Drawing, Front, Part, Picture, Zone, percent};
use crate::sheets::edition::Edition;

/// The lines on which heaters, lamps and probes stand, shares of the height; a heater below the floor stands on the last.
const LINES: [f64; 4] = [0.12, 0.4, 0.68, 0.93];

/// The enclosure of an animal from the front. None without its inside measures.
pub(in crate::sheets) fn front(
    animal: &Animal,
    own: &AnimalFigures,
    edition: &Edition<'_>,
) -> Option<Drawing> {
    let housing = animal.housing.as_ref()?;
    let [long, _, high] = inside_cm(housing)?;
    if long <= 0.0 || high <= 0.0 {
        return None;
    }
    let along = |cm: f64| percent((cm / long).clamp(0.0, 1.0));
    let mut parts = Vec::new();
    let mut places = Vec::new();
    let mut letters = 'A'..='Z';
    for heater in &housing.heaters {
        let (Some((at, _)), Some(mark)) = (heater.at, letters.next()) else { continue };
        let line = if heater.below { LINES[3] } else { LINES[0] };
        let (mark, at, line) = (mark.to_string(), along(at.cm()), percent(line));
        parts.push(Part { mark, label: edition.word("heater", heater.kind), at, line });
    }
    for lamp in &housing.lamps {
        let (Some((at, _)), Some(mark)) = (lamp.at, letters.next()) else { continue };
        let (mark, at, line) = (mark.to_string(), along(at.cm()), percent(LINES[1]));
        parts.push(Part { mark, label: lamp.kind.clone(), at, line });
    }
    for (place, zone) in own.zones.iter().enumerate() {
        let Some(cm) = zone.at_cm else { continue };
        let temperature = |celsius: Option<f64>, when: &str| {
            let reading = print::temperature(Some(celsius?), edition).to_string();
            Some(edition.tell(when, [("reading", reading.into())]))
        };
        let by_day = temperature(zone.day_c, "drawing-by-day");
        let by_night = temperature(zone.night_c, "drawing-by-night");
        let name = edition.tell("drawing-probe", [("name", zone.zone.as_str().into())]);
        let mut said: Vec<String> = [Some(name), by_day, by_night].into_iter().flatten().collect();
        let ceiling = own.humidity.readings.iter().find(|reading| reading.zone == zone.zone);
        let most = ceiling.map(|reading| at_most(reading, edition));
        if let Some(celsius) = zone.day_c {
            let reads = print::temperature(Some(celsius), edition).first;
            places.push((cm / long, None, reads, most.clone()));
        }
        said.extend(
            most.map(|most| edition.tell("drawing-hygrometer", [("reading", most.into())])),
        );
        parts.push(Part {
            mark: (place + 1).to_string(),
            label: said.join("; "),
            at: along(cm),
            line: percent(LINES[2]),
        });
    }
    let hides = housing.hides.iter().filter_map(|hide| {
        let (at, _) = hide.at?;
        let Dimensions { length, height, .. } = hide.inside?.0;
        // A hide without a height is drawn half as high as it is long, but never through the roof.
        let tall = if height.cm() > 0.0 { height.cm() } else { length.cm() / 2.0 };
        let (tall, wide) = ((tall / high).min(0.5), (length.cm() / long).min(1.0));
        let left = (at.cm() / long - wide / 2.0).clamp(0.0, 1.0 - wide);
        Some(Block {
            left: percent(left),
            long: percent(wide),
            top: percent(1.0 - tall),
            high: percent(tall),
        })
    });
    let hides: Vec<Block> = hides.collect();
    if parts.is_empty() && hides.is_empty() {
        return None;
    }
    let said: Vec<String> =
        parts.iter().map(|part| format!("{}, {}", part.mark, part.label)).collect();
    Some(Drawing {
        id: "front".to_owned(),
        title: edition.say("drawing-front"),
        text: edition.tell(
            "drawing-front-text",
            [("parts", said.join(" | ").into()), ("hides", hides.len().into())],
        ),
        picture: Picture::Front(Front {
            long: number(long, 0),
            high: number(high, 0),
            parts,
            hides,
            zones: zones(places),
            animal: None,
            note: edition.say("drawing-front-note"),
        }),
    })
}

/// What a hygrometer may read.
fn at_most(reading: &Reading, edition: &Edition<'_>) -> String {
    let most = Humidity::from_percent(reading.at_most_percent);
    let most = edition.shown(print_one(most, edition.units(), Rounding::Down)).first;
    edition.tell("figure-at-most", [("figure", most.into())])
}

/// Places nearer than this to the one before, as a share of the width, are written a line lower.
const CLOSE: f64 = 0.24;

/// A place as a share of the length, its name, the temperature, and what a hygrometer may read.
type Along = (f64, Option<String>, String, Option<String>);

fn zones(mut places: Vec<Along>) -> Vec<Zone> {
    places.sort_by(|(a, ..), (b, ..)| a.total_cmp(b));
    let mut low = false;
    let mut before = f64::NEG_INFINITY;
    let set = places.into_iter().map(|(share, name, reads, damp)| {
        low = !low && share - before < CLOSE;
        before = share;
        // Words in the middle of the very edge would hang out of the page.
        Zone { at: percent(share.clamp(0.1, 0.9)), name, reads, damp, low }
    });
    set.collect()
}

/// The least enclosure of a grown animal from the front, with the temperature along it. None where no standard gives its sides,
/// or neither end has a temperature.
pub(in crate::sheets) fn grown(
    species: &Species,
    of: &SpeciesFigures,
    edition: &Edition<'_>,
) -> Option<Drawing> {
    let space = grown_space(&of.enclosure)?;
    let [long, _, high] = space.inside_cm;
    if long <= 0.0 || high <= 0.0 || of.gradient.water_c.is_some() {
        return None;
    }
    // The basking spot at the warm end, the warm side beside it, the cool side at the other end.
    let along = [
        ("zone-basking-spot", "", of.gradient.basking_c, 0.12),
        ("zone-warm-side", "warm", of.gradient.warm_c, 0.4),
        ("zone-cool-side", "cool", of.gradient.cool_c, 0.86),
    ];
    let mut places = Vec::new();
    let mut said = Vec::new();
    for (label, zone, ends, share) in along {
        let Some(range) = ends.and_then(print::range::<Temperature>) else { continue };
        let reads = edition.shown(range.print(edition.units(), Rounding::Nearest));
        let reading = of.humidity.readings.iter().find(|reading| reading.zone == zone);
        let most = reading.map(|reading| at_most(reading, edition));
        let name = edition.say(label);
        let (zone, reading) =
            (("zone", name.as_str().into()), ("reading", reads.first.as_str().into()));
        said.push(match &most {
            Some(most) => edition
                .tell("drawing-grown-place-damp", [zone, reading, ("damp", most.as_str().into())]),
            None => edition.tell("drawing-grown-place", [zone, reading]),
        });
        places.push((share, Some(name), reads.first, most));
    }
    if places.len() < 2 {
        return None;
    }
    let longest = lengths(species).and_then(|(low, high)| high.or(low));
    let lies = longest.filter(|cm| *cm <= long);
    let sides = print::sides(space.inside_cm, edition).first;
    let mut text = edition.tell("drawing-grown-text", [("places", said.join("; ").into())]);
    if let Some(cm) = lies {
        let length = print::length(cm, edition).first;
        text.push(' ');
        text.push_str(&edition.tell("drawing-grown-animal", [("length", length.into())]));
    }
    Some(Drawing {
        id: "front".to_owned(),
        title: edition.tell("drawing-grown", [("sides", sides.into())]),
        picture: Picture::Front(Front {
            long: number(long, 0),
            high: number(high, 0),
            parts: Vec::new(),
            hides: Vec::new(),
            zones: zones(places),
            animal: lies.map(|cm| percent(cm / long)),
            note: format!("{text} {}", edition.say("drawing-grown-scale")),
        }),
        text,
    })
}
