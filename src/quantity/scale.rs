//! The scales on which quantities are printed, and rounding on them.

/// The system of units a reader is used to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum System {
    /// Degrees Celsius, centimetres, grams, litres.
    Metric,
    /// Degrees Fahrenheit, feet and inches, pounds and ounces, US gallons.
    Imperial,
}

/// To which side a printed figure may depart from the figure itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rounding {
    /// To whichever is nearer.
    Nearest,
    /// A low end up and a high end down, so that no bound moves to the unsafe side. One exact value has no unsafe side
    /// and goes to the nearer.
    Inward,
    /// Up, for least sizes.
    Up,
    /// Down, for greatest sizes.
    Down,
}

/// A unit to print in, the sizes it is used for, and the steps it is rounded to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    /// It is used for sizes below this, in the base unit.
    pub below: f64,
    /// The unit behind the number; empty for a bare number.
    pub symbol: &'static str,
    /// The unit behind a single 1.
    pub singular: &'static str,
    /// How many base units one of the unit is.
    pub factor: f64,
    /// `base = factor * x + offset`
    pub offset: f64,
    /// A larger unit that takes the whole multiples, and how many of this unit it holds: ("ft", 12).
    pub larger: Option<(&'static str, f64)>,
    /// The steps to round to, coarsest first. The first serves converted values; finer ones serve values that were
    /// given so finely, or that would print alike.
    pub steps: &'static [f64],
}

impl Scale {
    /// A scale for sizes below `below`, in a unit of `factor` base units.
    pub const fn new(below: f64, symbol: &'static str, factor: f64, steps: &'static [f64]) -> Self {
        Scale { below, symbol, singular: symbol, factor, offset: 0.0, larger: None, steps }
    }

    /// The same scale with its zero at `offset` base units.
    pub const fn offset(self, offset: f64) -> Self {
        Scale { offset, ..self }
    }

    /// The same scale with another word behind a single 1.
    pub const fn singular(self, singular: &'static str) -> Self {
        Scale { singular, ..self }
    }

    /// The same scale, whole multiples of `per` being set in the unit `symbol`.
    pub const fn larger(self, symbol: &'static str, per: f64) -> Self {
        Scale { larger: Some((symbol, per)), ..self }
    }

    /// How many of this unit a value in the base unit is.
    pub(super) fn of(&self, base: f64) -> f64 {
        (base - self.offset) / self.factor
    }

    /// The coarsest step on which all these values, in the base unit, lie exactly.
    pub(super) fn exact_step(&self, bases: &[f64]) -> Option<usize> {
        self.steps.iter().position(|step| bases.iter().all(|base| lies_on(self.of(*base), *step)))
    }
}

/// How far from a whole step a value may lie and still be on it: a conversion there and back leaves this much.
pub(super) const TOLERANCE: f64 = 1e-6;

/// Whether `x` is a whole number of steps but for a conversion there and back.
pub(super) fn lies_on(x: f64, step: f64) -> bool {
    let steps = x / step;
    (steps - steps.round()).abs() < TOLERANCE
}

/// The side a single end is rounded to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Side {
    Nearest,
    Up,
    Down,
}

/// `x` rounded to a whole number of steps, as that number.
pub(super) fn steps_of(x: f64, step: f64, side: Side) -> f64 {
    let steps = x / step;
    if side == Side::Nearest || lies_on(x, step) {
        steps.round()
    } else if side == Side::Up {
        steps.ceil()
    } else {
        steps.floor()
    }
}

/// A number that is a whole number of steps, with no more decimals than the step has and no trailing zeros.
pub(super) fn number(steps: f64, step: f64) -> String {
    let decimals = (0..6)
        .find(|decimals| {
            let scaled = step * [1.0, 10.0, 100.0, 1e3, 1e4, 1e5][*decimals];
            (scaled - scaled.round()).abs() < 1e-9
        })
        .unwrap_or(6);
    let text = super::decimals((steps * step).abs(), decimals);
    // U+2212, the minus sign, so that it is not taken for the dash of a range.
    if steps < 0.0 && text != "0" { format!("\u{2212}{text}") } else { text }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_carries_no_more_decimals_than_its_step() {
        let cases = [
            (26.0, 1.0, "26"),
            (53.0, 0.5, "26.5"),
            (52.0, 0.5, "26"),
            (9.0, 0.25, "2.25"),
            (-5.0, 1.0, "−5"),
            (-0.0, 1.0, "0"),
            (3.0, 0.1, "0.3"),
            (40.0, 10.0, "400"),
            (1.0, 0.001, "0.001"),
        ];
        for (steps, step, text) in cases {
            assert_eq!(number(steps, step), text);
        }
    }

    #[test]
    fn what_lies_on_a_step_but_for_a_conversion_stays_there() {
        assert_eq!(steps_of(79.000_000_01, 1.0, Side::Up), 79.0);
        assert_eq!(steps_of(78.999_999_99, 1.0, Side::Down), 79.0);
        assert_eq!(steps_of(78.8, 1.0, Side::Up), 79.0);
        assert_eq!(steps_of(82.4, 1.0, Side::Down), 82.0);
        assert_eq!(steps_of(-17.2, 1.0, Side::Up), -17.0);
    }
}
