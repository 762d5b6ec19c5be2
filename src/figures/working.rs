//! How a figure was worked out, and why one could not be.

use std::collections::BTreeMap;

use crate::quantity::{self, Quantity, Range};

/// The two ends of a range in the unit of the figure; an open end is absent.
pub type Ends = (Option<f64>, Option<f64>);

/// The ends of a range in its base unit.
pub fn ends<Q: Quantity>(range: &Range<Q>) -> Ends {
    (range.low().map(Q::base), range.high().map(Q::base))
}

/// Both ends of a range, where neither is open.
pub fn both(ends: Ends) -> Option<(f64, f64)> {
    ends.0.zip(ends.1)
}

/// The middle of a range; of a bound, the bound.
pub fn middle(ends: Option<Ends>) -> Option<f64> {
    let (low, high) = ends?;
    Some((low.or(high)? + high.or(low)?) / 2.0)
}

/// Why figures are absent, by the name of the figure.
pub type Why = BTreeMap<String, String>;

/// Notes why a figure is absent.
pub fn absent(why: &mut Why, name: &str, reason: &str) {
    why.insert(name.to_owned(), reason.to_owned());
}

/// How a derived figure was worked out: enough to do it again by hand.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Working {
    /// What was worked out.
    pub title: String,
    /// The formula in words and signs.
    pub formula: String,
    /// The formula with the numbers put in, a line a step.
    pub steps: Vec<String>,
    /// What was taken for granted.
    pub assumptions: Vec<String>,
    /// Who published the formula.
    pub publication: String,
}

impl Working {
    /// Starts a working.
    pub fn new(
        title: impl Into<String>,
        formula: impl Into<String>,
        publication: impl Into<String>,
    ) -> Working {
        Working {
            title: title.into(),
            formula: formula.into(),
            publication: publication.into(),
            ..Working::default()
        }
    }

    /// Adds a line with numbers put in.
    pub fn step(&mut self, line: impl Into<String>) {
        self.steps.push(line.into());
    }

    /// Adds something taken for granted.
    pub fn assume(&mut self, line: impl Into<String>) {
        self.assumptions.push(line.into());
    }
}

/// Writes a number with at most so many decimals and no trailing zeros.
///
/// # Examples
/// ```
/// use wardsheet::figures::working::number;
/// assert_eq!((number(12.50, 2), number(3.0, 1), number(-0.04, 1)), ("12.5".into(), "3".into(), "0".into()));
/// ```
pub fn number(value: f64, decimals: usize) -> String {
    let written = quantity::decimals(value, decimals);
    if written == "-0" { "0".to_owned() } else { written }
}
