//! Derived numbers as they stand on a page: a unit, both systems, rounded to the safe side.

use crate::figures::enclosure::{Minimum, Shape};
use crate::figures::working::Ends;
use crate::quantity::{
    Area, Dimensions, Length, Mass, Quantity, Range, Rounding, Span, System, Temperature, Volume,
    print_one,
};

use super::blocks::Shown;
use super::edition::Edition;

/// A range from its ends, each in the base unit. None where both are open or they stand the wrong way round.
pub fn range<Q: Quantity>(ends: Ends) -> Option<Range<Q>> {
    match ends {
        (Some(low), Some(high)) => Range::between(Q::from_base(low), Q::from_base(high)).ok(),
        (Some(low), None) => Some(Range::at_least(Q::from_base(low))),
        (None, Some(high)) => Some(Range::at_most(Q::from_base(high))),
        (None, None) => None,
    }
}

/// A range in words, or that it is not known.
pub fn shown<Q: Quantity>(ends: Option<Ends>, edition: &Edition<'_>, rounding: Rounding) -> Shown {
    ends.and_then(range::<Q>).map_or_else(
        || edition.missing(),
        |range| edition.shown(range.print(edition.units(), rounding)),
    )
}

/// A temperature, to the nearest.
pub fn temperature(celsius: Option<f64>, edition: &Edition<'_>) -> Shown {
    celsius.map_or_else(
        || edition.missing(),
        |celsius| {
            edition.shown(print_one(
                Temperature::from_celsius(celsius),
                edition.units(),
                Rounding::Nearest,
            ))
        },
    )
}

/// A length, to the nearest.
pub fn length(cm: f64, edition: &Edition<'_>) -> Shown {
    edition.shown(print_one(Length::from_cm(cm), edition.units(), Rounding::Nearest))
}

/// A mass, to the nearest.
pub fn mass(grams: f64, edition: &Edition<'_>) -> Shown {
    edition.shown(print_one(Mass::from_grams(grams), edition.units(), Rounding::Nearest))
}

/// A span in days, to the nearest.
pub fn days(days: f64, edition: &Edition<'_>) -> Shown {
    edition.shown(print_one(Span::from_days(days), System::Metric, Rounding::Nearest))
}

/// A span given in years, to the nearest.
pub fn years(years: Option<Ends>, edition: &Edition<'_>) -> Shown {
    let days = |years: Option<f64>| years.map(|years| years * 365.25);
    shown::<Span>(years.map(|(low, high)| (days(low), days(high))), edition, Rounding::Nearest)
}

/// An area, rounded up.
pub fn area(square_metres: f64, edition: &Edition<'_>) -> Shown {
    edition.shown(print_one(Area::from_square_metres(square_metres), edition.units(), Rounding::Up))
}

/// Inside measures, rounded up.
pub fn sides(cm: [f64; 3], edition: &Edition<'_>) -> Shown {
    let [length, width, height] = cm.map(Length::from_cm);
    edition.shown(Dimensions { length, width, height }.print(edition.units(), Rounding::Up))
}

/// What a standard asks for: sides where it gives them, else the floor, the height and the water, all rounded up.
pub fn least(least: &Minimum, edition: &Edition<'_>) -> Shown {
    let layouts: Vec<Shown> = least
        .shapes()
        .map(|shape| layout(shape, edition))
        .filter(|shown| !shown.first.is_empty())
        .collect();
    let mut parts = vec![join(&layouts, &edition.say("join-or"))];
    if let Some(litres) = least.water_l {
        let litres = print_one(Volume::from_litres(litres), edition.units(), Rounding::Up);
        parts.push(with("least-water", edition.shown(litres), edition));
    }
    if let Some(depth) = least.water_depth_cm {
        let depth = print_one(Length::from_cm(depth), edition.units(), Rounding::Up);
        parts.push(with("least-water-depth", edition.shown(depth), edition));
    }
    if let Some(land) = least.land_m2 {
        parts.push(with("least-land", area(land, edition), edition));
    }
    parts.retain(|part| !part.first.is_empty());
    join(&parts, ", ")
}

fn layout(shape: &Shape, edition: &Edition<'_>) -> Shown {
    if let (Some([length, width]), Some(height)) = (shape.length_width_cm, shape.height_cm) {
        let all = sides([length, width, height], edition);
        // Joined standards may ask for a floor larger than the sides of the one.
        let larger = shape.floor_m2.filter(|floor| *floor > length * width / 10_000.0 * 1.005);
        return match larger {
            Some(floor) => join(&[all, with("least-floor", area(floor, edition), edition)], ", "),
            None => all,
        };
    }
    let up = |cm: f64| edition.shown(print_one(Length::from_cm(cm), edition.units(), Rounding::Up));
    let mut parts = Vec::new();
    if let Some([length, width]) = shape.length_width_cm {
        parts.push(join(&[up(length), up(width)], " × "));
    } else if let Some(floor) = shape.floor_m2 {
        parts.push(with("least-floor", area(floor, edition), edition));
    }
    if let Some(height) = shape.height_cm {
        parts.push(with("least-height", up(height), edition));
    }
    join(&parts, ", ")
}

/// A value under a label that takes it as its amount.
fn with(label: &str, shown: Shown, edition: &Edition<'_>) -> Shown {
    let told = |amount: String| edition.tell(label, [("amount", amount.into())]);
    Shown { second: shown.second.map(told), ..Shown::plain(told(shown.first)) }
}

/// Joins values. What has no other system stands in the first alone: `rat, large, 250 g (9 oz)`.
pub fn join(parts: &[Shown], between: &str) -> Shown {
    let first = parts.iter().map(|part| part.first.as_str()).collect::<Vec<_>>().join(between);
    let seconds: Vec<&str> = parts.iter().filter_map(|part| part.second.as_deref()).collect();
    Shown { second: (!seconds.is_empty()).then(|| seconds.join(between)), ..Shown::plain(first) }
}
