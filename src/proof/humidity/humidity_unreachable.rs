//! A humidity that no enclosure can have at the species' own temperatures.

use crate::figures::formula::humidity::humidity_at;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::{Humidity, Rounding, print_one};

static CODE: Code = Code {
    name: "humidity-unreachable",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Humidity,
    summary: "a humidity range cannot be held at the species' own temperatures",
    page: include_str!("humidity_unreachable.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let units = evidence.model.site.units;
    for species in evidence.model.species.values() {
        let (humidity, temperature) = (&species.humidity, &species.temperature);
        let (Some(range), Some(warm), Some(cool)) =
            (&humidity.range, &temperature.warm, &temperature.cool)
        else {
            continue;
        };
        // The coolest that the warm side may be and the warmest that the cool side may: no gradient is gentler.
        let (Some(low), Some(warm_c), Some(cool_c)) =
            (range.value.low(), warm.value.low(), cool.value.high())
        else {
            continue;
        };
        let Ok(carried) = humidity_at(warm_c.celsius(), low.percent(), cool_c.celsius()) else {
            continue;
        };
        let ceiling = humidity.ceiling.as_ref().map(|ceiling| ceiling.value);
        let most = ceiling.and_then(|ceiling| ceiling.high().or(ceiling.low()));
        let at_cool = carried.relative_humidity_percent;
        let what = if carried.condenses {
            "and its water condenses at the cool side".to_owned()
        } else if let Some(most) = most.filter(|most| at_cool > most.percent()) {
            let reached = print_one(Humidity::from_percent(at_cool), units, Rounding::Up);
            let most = print_one(most, units, Rounding::Down);
            format!("which is {reached} at the cool side, above the ceiling of {most}")
        } else {
            continue;
        };
        let one = |temperature| print_one(temperature, units, Rounding::Nearest);
        let message = format!(
            "air of {} at the warm side of {} ({}) is too damp for its cool side ({}), {what}",
            print_one(low, units, Rounding::Up),
            species.name,
            one(warm_c),
            one(cool_c)
        );
        found.push(
            Finding::new(&CODE, range.place, message)
                .help("lower the range, raise the ceiling, or say in the words that the range is meant for the cool side alone")
                .also_at(warm.place, "the warm side")
                .also_at(cool.place, "the cool side"),
        );
    }
}
