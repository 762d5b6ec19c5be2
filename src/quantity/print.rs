//! A range, set for the page.

use super::range::Range;
use super::scale::{Rounding, Scale, Side, System, TOLERANCE, lies_on, number, steps_of};
use super::unit::Quantity;

/// A figure as the page shows it: in the reader's system, and in the other where there is one.
///
/// Numbers and units are joined by no-break spaces and ranges by an en dash. [`Display`](std::fmt::Display) puts the
/// second in brackets behind the first.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Printed {
    /// In the system asked for, or in the only one there is.
    pub first: String,
    /// In the other system; `None` where both use the same unit.
    pub second: Option<String>,
}

impl std::fmt::Display for Printed {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match &self.second {
            Some(second) => write!(out, "{} ({second})", self.first),
            None => out.write_str(&self.first),
        }
    }
}

impl Printed {
    /// Puts the two systems in the order asked for.
    pub(super) fn ordered(first: System, metric: Option<String>, imperial: Option<String>) -> Self {
        let (first, second) =
            if first == System::Metric { (metric, imperial) } else { (imperial, metric) };
        match first {
            Some(first) => Printed { first, second },
            None => Printed { first: second.unwrap_or_default(), second: None },
        }
    }
}

impl<Q: Quantity> Range<Q> {
    /// Sets the range in both systems, the reader's `first`.
    ///
    /// No end shows more precision than it was given with: a value exact in one system is rounded in the other to the
    /// usual step. If that would make two ends alike, or if a value is hardly larger than the step, a finer step is taken, and at
    /// last the nearest value on the finest.
    ///
    /// ```
    /// use wardsheet::quantity::{Humidity, Rounding, System, parse_range};
    /// let ceiling = parse_range::<Humidity>("at most 80 %").unwrap();
    /// assert_eq!(ceiling.print(System::Metric, Rounding::Inward).first, "at most 80\u{a0}%");
    /// ```
    pub fn print(&self, first: System, rounding: Rounding) -> Printed {
        let set = |system| Q::printed(self, system, rounding);
        Printed::ordered(first, set(System::Metric), set(System::Imperial))
    }
}

/// Sets one value in both systems.
pub fn print_one<Q: Quantity>(value: Q, first: System, rounding: Rounding) -> Printed {
    Range::exactly(value).print(first, rounding)
}

/// The scales of a quantity in one system.
fn scales<Q: Quantity>(system: System) -> &'static [Scale] {
    if system == System::Metric { Q::METRIC } else { Q::IMPERIAL }
}

/// The scale of these values in a system, and the steps they may be rounded to there.
///
/// The values were given in the system where they lie on the coarser step; there they keep it. In the other they were
/// converted, and start at that system's usual step.
pub(super) fn scale_and_steps<Q: Quantity>(
    bases: &[f64],
    system: System,
) -> Option<(&'static Scale, &'static [f64])> {
    let other = if system == System::Metric { System::Imperial } else { System::Metric };
    let own = Q::scale(scales::<Q>(system), bases)?;
    let other = Q::scale(scales::<Q>(other), bases).and_then(|scale| scale.exact_step(bases));
    let start = match (own.exact_step(bases), other) {
        (Some(own), Some(other)) if own > other => 0,
        (own, _) => own.unwrap_or(0),
    };
    Some((own, &own.steps[start..]))
}

/// Sets a range in one system on the quantity's own scales.
pub(super) fn set_range<Q: Quantity>(
    range: &Range<Q>,
    system: System,
    rounding: Rounding,
) -> Option<String> {
    let (scale, steps) = scale_and_steps::<Q>(&range.bases(), system)?;
    let low = range.low().map(|end| scale.of(end.base()));
    let high = range.high().map(|end| scale.of(end.base()));
    let (low_side, high_side) = match rounding {
        Rounding::Inward if range.is_exact() => (Side::Nearest, Side::Nearest),
        Rounding::Nearest => (Side::Nearest, Side::Nearest),
        Rounding::Inward => (Side::Up, Side::Down),
        Rounding::Up => (Side::Up, Side::Up),
        Rounding::Down => (Side::Down, Side::Down),
    };
    let on = |step: f64, low_side, high_side| {
        (low.map(|x| steps_of(x, step, low_side)), high.map(|x| steps_of(x, step, high_side)))
    };
    // A step that is a large part of the value itself says too little of it, unless the zero is only a convention.
    let from_nothing = Q::BEARABLE.0 >= 0.0;
    let coarse = |x: Option<f64>, step: f64| {
        let small = |x: f64| x.abs() > 1e-9 && x.abs() < 3.0 * step * (1.0 - TOLERANCE);
        from_nothing && x.is_some_and(|x| small(x) && !lies_on(x, step))
    };
    let apart =
        |l: Option<f64>, h: Option<f64>| range.is_exact() || l.zip(h).is_none_or(|(l, h)| l < h);
    let safe = |step: f64| {
        let (l, h) = on(step, low_side, high_side);
        apart(l, h).then_some((step, l, h))
    };
    let finest = *steps.last()?;
    let chosen = steps
        .iter()
        .filter(|step| !coarse(low, **step) && !coarse(high, **step))
        .find_map(|step| safe(*step))
        .or_else(|| safe(finest));
    // Ends that stay alike even so are nearer to each other than the finest step shows.
    let (step, low, high) = chosen.unwrap_or_else(|| {
        let (l, h) = on(finest, Side::Nearest, Side::Nearest);
        (finest, l, h)
    });
    Some(worded(scale, step, low, high))
}

/// The words of two ends given in whole steps.
fn worded(scale: &Scale, step: f64, low: Option<f64>, high: Option<f64>) -> String {
    match (low, high) {
        (Some(low), Some(high)) if low == high => one(scale, step, low),
        (Some(low), Some(high)) => two(scale, step, low, high),
        (Some(low), None) => format!("at least {}", one(scale, step, low)),
        (None, Some(high)) => format!("at most {}", one(scale, step, high)),
        (None, None) => String::new(),
    }
}

/// One end with its unit.
pub(super) fn one(scale: &Scale, step: f64, steps: f64) -> String {
    let Some((larger, per)) = scale.larger else {
        let text = number(steps, step);
        let symbol = if text == "1" { scale.singular } else { scale.symbol };
        return joined(&text, symbol);
    };
    let amount = steps * step;
    let whole = (amount.abs() / per + 1e-9).floor();
    let rest = ((amount.abs() - whole * per) / step).round();
    let sign = if amount < 0.0 { "\u{2212}" } else { "" };
    let wholes = joined(&number(whole, 1.0), larger);
    let rests = joined(&number(rest, step), scale.symbol);
    match (whole > 0.0, rest > 0.0) {
        (true, true) => format!("{sign}{wholes}\u{a0}{rests}"),
        (true, false) => format!("{sign}{wholes}"),
        _ => format!("{sign}{rests}"),
    }
}

/// Two ends with the unit behind the second, or behind both where they are set in two units.
fn two(scale: &Scale, step: f64, low: f64, high: f64) -> String {
    if let Some((larger, per)) = scale.larger {
        let whole = |steps: f64| (steps * step / per).fract().abs() < 1e-9 && steps >= 0.0;
        if whole(low) && whole(high) {
            let count = |steps: f64| number((steps * step / per).round(), 1.0);
            return joined(&format!("{}–{}", count(low), count(high)), larger);
        }
        return format!("{} – {}", one(scale, step, low), one(scale, step, high));
    }
    let dash = if low < 0.0 { " to " } else { "–" };
    joined(&format!("{}{dash}{}", number(low, step), number(high, step)), scale.symbol)
}

/// A number and its unit with a no-break space between them.
pub(super) fn joined(number: &str, symbol: &str) -> String {
    if symbol.is_empty() { number.to_owned() } else { format!("{number}\u{a0}{symbol}") }
}
