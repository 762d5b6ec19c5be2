//! A day far longer or shorter than any at home.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::quantity::{Range, Span};

static CODE: Code = Code {
    name: "hours-far-from-home",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Light,
    summary: "lamps are lit for longer or shorter than any day where the species comes from",
    page: include_str!("hours_far_from_home.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How far beyond the shortest and longest month a lamp may go, hours: a timer is set to the hour, and dusk is light too.
const MARGIN_H: f64 = 1.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let light = evidence.figures.species.get(&housed.animal.species.name);
        let Some(months) = light.and_then(|figures| figures.light.day_hours) else { continue };
        let own = housed.species.light.hours.as_ref().map(|hours| hours.value);
        let hours = |end: Option<Span>| end.map(|span| span.hours());
        let shortest =
            months.into_iter().chain(hours(own.and_then(|own| own.low()))).fold(24.0, f64::min);
        let longest =
            months.into_iter().chain(hours(own.and_then(|own| own.high()))).fold(0.0, f64::max);
        // The lamp that is lit longest makes the day; the others may come and go within it.
        let lamps = housed.housing.lamps.iter().filter_map(|lamp| {
            let (range, place) = lamp.hours?;
            let (low, high) =
                (hours(range.low().or(range.high()))?, hours(range.high().or(range.low()))?);
            Some((low, high, range, place, lamp.kind.as_str()))
        });
        let Some((low, high, range, place, kind)) =
            lamps.reduce(|a, b| if b.1 > a.1 { b } else { a })
        else {
            continue;
        };
        let too_long = low > longest + MARGIN_H;
        // A tube for ultraviolet alone may be lit for part of the day while other light makes the rest.
        let too_short = high < shortest - MARGIN_H && !kind.to_lowercase().contains("uv");
        if !too_long && !too_short {
            continue;
        }
        let home = Range::between(in_hours(shortest), in_hours(longest));
        let home = home.map_or(String::new(), |home| housed.range(&home));
        let message = format!(
            "the {kind} of {} is lit for {} a day, and where its species ({}) comes from days last {home}",
            housed.animal.name,
            housed.range(&range),
            housed.species.name,
        );
        found.push(Finding::new(&CODE, place, message).help(
            "set the timer to the hours of the month, as the light table of its species shows",
        ));
    }
}

/// To the half hour, as a timer is set.
fn in_hours(hours: f64) -> Span {
    Span::from_days((hours * 2.0).round() / 48.0)
}
