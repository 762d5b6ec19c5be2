//! The figures that a species states.

use crate::model::Species;
use crate::model::stated::{Amount, Stated};
use crate::quantity::{Quantity, Range, Rounding, System};

use super::{Change, Changes, Resourced, State, Weight, Whose};

/// A number moved less than this is as it was: the unit it was written in may have changed and nothing else.
const SAME: f64 = 1e-9;

pub(super) fn species(
    changes: &mut Changes,
    key: &str,
    (before, after): (&Species, &Species),
    new: State<'_>,
) {
    let units = new.model.site.units;
    let animals: Vec<String> = new
        .model
        .animals
        .iter()
        .filter(|(_, animal)| animal.species.name == key && animal.is_kept())
        .map(|(name, _)| name.clone())
        .collect();
    let (old, now) = (before.stated(), after.stated());
    for figure in &old {
        match now.iter().find(|other| other.name == figure.name) {
            None => changes.figures.push(change(key, (Some(figure), None), units, &animals)),
            Some(other) if !same(&figure.amount, &other.amount) => {
                changes.figures.push(change(key, (Some(figure), Some(other)), units, &animals));
            }
            Some(other) => {
                let (was, is) = (names(figure), names(other));
                if was != is {
                    let (key, figure) = (key.to_owned(), figure.name.clone());
                    changes.sources.push(Resourced { key, figure, before: was, after: is });
                }
            }
        }
    }
    for figure in now.iter().filter(|figure| !old.iter().any(|other| other.name == figure.name)) {
        changes.figures.push(change(key, (None, Some(figure)), units, &animals));
    }
}

fn names(figure: &Stated<'_>) -> Vec<String> {
    figure.sources.iter().map(|named| named.name.clone()).collect()
}

fn change(
    key: &str,
    (before, after): (Option<&Stated<'_>>, Option<&Stated<'_>>),
    units: System,
    animals: &[String],
) -> Change {
    let either = after.or(before);
    let name = either.map(|figure| figure.name.clone()).unwrap_or_default();
    let print = |figure: &Stated<'_>| figure.amount.print(units, figure.rounding).to_string();
    let loosened = loosened(&name, before.map(|one| &one.amount), after.map(|one| &one.amount));
    Change {
        weight: Weight::of(&name),
        loosened,
        whose: Whose::Species,
        key: key.to_owned(),
        label: either.map(|figure| figure.label.clone()).unwrap_or_default(),
        before: before.map(print),
        after: after.map(print),
        by: before.zip(after).and_then(|(old, new)| moved(&old.amount, &new.amount, units)),
        sources: Some([
            before.map(names).unwrap_or_default(),
            after.map(names).unwrap_or_default(),
        ]),
        animals: animals.to_vec(),
        figure: name,
    }
}

/// Ends of a figure in its own base unit, and how a difference of it is written.
struct Ends {
    low: Option<f64>,
    high: Option<f64>,
    factor: f64,
    unit: &'static str,
}

fn ends(amount: &Amount, units: System) -> Option<Ends> {
    fn of<Q: Quantity>(range: &Range<Q>, factor: f64, unit: &'static str) -> Option<Ends> {
        let end = |end: Option<Q>| end.map(|end| end.base());
        Some(Ends { low: end(range.low()), high: end(range.high()), factor, unit })
    }
    let metric = units == System::Metric;
    match amount {
        Amount::Temperature(range) if metric => of(range, 1.0, "°C"),
        Amount::Temperature(range) => of(range, 1.8, "°F"),
        Amount::Length(range) if metric => of(range, 1.0, "cm"),
        Amount::Length(range) => of(range, 1.0 / 2.54, "in"),
        Amount::Mass(range) if metric => of(range, 1.0, "g"),
        Amount::Mass(range) => of(range, 1.0 / 28.349_523_125, "oz"),
        Amount::Humidity(range) => of(range, 1.0, "points of humidity"),
        Amount::Share(range) => of(range, 1.0, "points"),
        Amount::Span(range) => {
            let long = range.low().or(range.high()).is_some_and(|span| span.days() >= 730.0);
            if long { of(range, 1.0 / 365.25, "years") } else { of(range, 1.0, "days") }
        }
        Amount::UvIndex(range) => of(range, 1.0, "UVI"),
        Amount::Latitude(range) => of(range, 1.0, "°"),
        Amount::PerYear(range) => of(range, 1.0, "per year"),
        Amount::Multiple(range) => of(range, 1.0, "times"),
        Amount::Count(low, high) => Some(Ends {
            low: Some(f64::from(*low)),
            high: Some(f64::from(*high)),
            factor: 1.0,
            unit: "",
        }),
        Amount::Word(_) => None,
    }
}

fn same(before: &Amount, after: &Amount) -> bool {
    let (Some(old), Some(new)) = (ends(before, System::Metric), ends(after, System::Metric)) else {
        return before == after;
    };
    let near = |a: Option<f64>, b: Option<f64>| match (a, b) {
        (Some(a), Some(b)) => (a - b).abs() <= SAME * a.abs().max(1.0),
        (a, b) => a.is_none() && b.is_none(),
    };
    near(old.low, new.low) && near(old.high, new.high)
}

/// By how much the ends moved: one number where both moved alike, else one for each.
fn moved(before: &Amount, after: &Amount, units: System) -> Option<String> {
    let (old, new) = (ends(before, units)?, ends(after, units)?);
    if old.unit != new.unit {
        return None;
    }
    let by = |old: Option<f64>, now: Option<f64>| Some((now? - old?) * new.factor);
    told((by(old.low, new.low), by(old.high, new.high)), new.unit)
}

/// Two differences in words; none where there is nothing to tell.
pub(super) fn told(by: (Option<f64>, Option<f64>), unit: &str) -> Option<String> {
    let one = |by: f64| {
        let sign = if by < 0.0 { "\u{2212}" } else { "+" };
        let number = crate::figures::working::number(by.abs(), 2);
        format!("{sign}{number} {unit}").trim_end().to_owned()
    };
    match by {
        (Some(low), Some(high)) if (low - high).abs() < 0.005 => Some(one(low)),
        (Some(low), Some(high)) if low.abs() < 0.005 => Some(format!("upper end {}", one(high))),
        (Some(low), Some(high)) if high.abs() < 0.005 => Some(format!("lower end {}", one(low))),
        (Some(low), Some(high)) => Some(format!("lower end {}, upper end {}", one(low), one(high))),
        (Some(low), None) => Some(one(low)),
        (None, Some(high)) => Some(one(high)),
        (None, None) => None,
    }
}

/// Whether a limit lets more pass than it did: what must never be passed went up or away, what is the least went down or away.
fn loosened(name: &str, before: Option<&Amount>, after: Option<&Amount>) -> bool {
    let is_ceiling = name.ends_with("never_above") || name.ends_with("ceiling");
    let is_floor = name.ends_with("critical_low");
    if !is_ceiling && !is_floor {
        return false;
    }
    let Some(after) = after else { return true };
    let end =
        |amount: &Amount| ends(amount, System::Metric).and_then(|ends| ends.high.or(ends.low));
    let (Some(old), Some(new)) = (before.and_then(end), end(after)) else { return false };
    if is_ceiling { new > old } else { new < old }
}

/// Prints one value of the animal's own in both systems.
pub(super) fn print_own<Q: Quantity>(range: &Range<Q>, units: System) -> String {
    range.print(units, Rounding::Nearest).to_string()
}

#[cfg(test)]
mod tests {
    use super::told;

    #[test]
    fn a_difference_is_told_once_where_both_ends_moved_alike() {
        assert_eq!(told((Some(2.0), Some(2.0)), "°C").as_deref(), Some("+2 °C"));
        assert_eq!(told((None, Some(-5.0)), "°C").as_deref(), Some("\u{2212}5 °C"));
        assert_eq!(
            told((Some(1.0), Some(-1.5)), "days").as_deref(),
            Some("lower end +1 days, upper end \u{2212}1.5 days")
        );
        assert_eq!(told((Some(0.0), Some(3.0)), "cm").as_deref(), Some("upper end +3 cm"));
    }
}
