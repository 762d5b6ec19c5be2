//! Air so damp that water settles by night.

use crate::figures::formula::humidity::dew_point_c;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::Temperature;

static CODE: Code = Code {
    name: "condensation-by-night",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Humidity,
    summary: "the air is so damp by day that water settles by night",
    page: include_str!("condensation_by_night.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// A ceiling from here on belongs to a kind that is meant to meet wet leaves, per cent.
const WET_KIND_PERCENT: f64 = 85.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(ceiling) = &housed.species.humidity.ceiling else { continue };
        let most = ceiling.value.high().or(ceiling.value.low());
        if most.is_none_or(|most| most.percent() >= WET_KIND_PERCENT) {
            continue;
        }
        let readings = housed.readings();
        let coldest = readings.iter().filter_map(|read| read.night);
        let Some((night, night_place)) = coldest.reduce(|a, b| if b.0 < a.0 { b } else { a })
        else {
            continue;
        };
        let dampest = readings
            .iter()
            .filter_map(|read| {
                let ((day, _), (humidity, place)) = (read.day?, read.humidity?);
                let dew = dew_point_c(day.celsius(), humidity.percent()).ok()?;
                Some((dew, humidity, place, read.probe.name.as_str()))
            })
            .reduce(|a, b| if b.0 > a.0 { b } else { a });
        let Some((dew, humidity, place, probe)) =
            dampest.filter(|(dew, ..)| *dew > night.celsius())
        else {
            continue;
        };
        let message = format!(
            "air at the {} that the hygrometer `{probe}` of {} reads by day sheds water below {}, and the night falls to {}",
            housed.one(humidity),
            housed.animal.name,
            housed.one(Temperature::from_celsius((dew * 10.0).round() / 10.0)),
            housed.one(night)
        );
        found.push(
            Finding::new(&CODE, place, message)
                .help("let in more air in the evening, spray in the morning, or keep the night warmer")
                .also_at(night_place, "the coldest place by night"),
        );
    }
}
