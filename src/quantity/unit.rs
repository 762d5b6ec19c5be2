//! What a quantity is, and the units it may be written in.

use super::range::Range;
use super::scale::{Rounding, Scale, System};

/// A measured thing: one number in a base unit, with the units it is written and printed in.
///
/// The base unit is the one named by the type's own accessor (degrees Celsius for
/// [`Temperature`](crate::quantity::Temperature)).
pub trait Quantity:
    Copy + PartialEq + PartialOrd + std::fmt::Debug + Send + Sync + 'static
{
    /// What it is called in a message, without an article: "temperature".
    const NAME: &'static str;
    /// A figure as one writes it, for the help of a fault: "26-28 C".
    const EXAMPLE: &'static str;
    /// Every unit it may be written in, the usual one first.
    const UNITS: &'static [Unit];
    /// The least and the greatest value, in the base unit, that a living animal or a real enclosure could have.
    const BEARABLE: (f64, f64);
    /// Whether a number without a unit is complete.
    const BARE: bool = false;
    /// Whether only whole numbers make sense.
    const WHOLE: bool = false;
    /// Whether the two ends may come in either order, as latitudes south of the equator do.
    const EITHER_ORDER: bool = false;
    /// How it is printed in metric units, by rising size.
    const METRIC: &'static [Scale];
    /// How it is printed in imperial units, by rising size; empty where it has no second system.
    const IMPERIAL: &'static [Scale] = &[];

    /// The quantity of this many base units.
    fn from_base(value: f64) -> Self;

    /// How many base units it is.
    fn base(self) -> f64;

    /// The scale among `scales` on which these ends, in the base unit, are printed: the first they fit below.
    ///
    /// Returns `None` only if there is no scale at all.
    fn scale(scales: &'static [Scale], ends: &[f64]) -> Option<&'static Scale> {
        let size = ends.iter().fold(0.0, |most: f64, end| most.max(end.abs()));
        scales.iter().find(|scale| size < scale.below - 1e-9).or(scales.last())
    }

    /// The range set in one system, or `None` where the quantity has no units in it.
    fn printed(range: &Range<Self>, system: System, rounding: Rounding) -> Option<String> {
        super::print::set_range(range, system, rounding)
    }
}

/// A unit in which a quantity may be written.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unit {
    /// How messages show it: "°C".
    pub symbol: &'static str,
    /// Every accepted spelling, the one to recommend first. Spaces inside are ignored, and so is case where the
    /// meaning is not in doubt.
    pub spellings: &'static [&'static str],
    /// How many base units one of it is.
    pub factor: f64,
    /// What is added after multiplying: `base = factor * x + offset`.
    pub offset: f64,
    /// The system it belongs to; `None` where both use it.
    pub system: Option<System>,
    /// Whether it is proposed when the unit is missing.
    pub usual: bool,
}

impl Unit {
    /// A metric unit of `factor` base units.
    pub const fn metric(
        symbol: &'static str,
        factor: f64,
        spellings: &'static [&'static str],
    ) -> Self {
        Unit { symbol, spellings, factor, offset: 0.0, system: Some(System::Metric), usual: false }
    }

    /// An imperial unit of `factor` base units.
    pub const fn imperial(
        symbol: &'static str,
        factor: f64,
        spellings: &'static [&'static str],
    ) -> Self {
        Unit {
            symbol,
            spellings,
            factor,
            offset: 0.0,
            system: Some(System::Imperial),
            usual: false,
        }
    }

    /// A unit that both systems use.
    pub const fn common(
        symbol: &'static str,
        factor: f64,
        spellings: &'static [&'static str],
    ) -> Self {
        Unit { symbol, spellings, factor, offset: 0.0, system: None, usual: false }
    }

    /// The same unit with its zero moved to `offset` base units.
    pub const fn offset(self, offset: f64) -> Self {
        Unit { offset, ..self }
    }

    /// The same unit, proposed when a unit is missing.
    pub const fn usual(self) -> Self {
        Unit { usual: true, ..self }
    }

    /// The value in the base unit of `x` of this unit.
    pub fn to_base(&self, x: f64) -> f64 {
        self.factor * x + self.offset
    }

    /// The spelling to recommend.
    pub fn spelling(&self) -> &'static str {
        self.spellings.first().copied().unwrap_or(self.symbol)
    }

    /// Whether `typed`, already stripped of spaces, is a spelling of this unit.
    ///
    /// Case is ignored, except that a capital M is never taken for milli or metre: it may stand for mega.
    pub fn is_spelled(&self, typed: &str) -> bool {
        let mega = typed == "M" || (typed.starts_with('M') && typed[1..].starts_with(['g', 'm']));
        self.spellings.iter().any(|spelling| {
            let spelling: String = spelling.chars().filter(|c| *c != ' ').collect();
            spelling == typed || (!mega && spelling.eq_ignore_ascii_case(typed))
        })
    }
}
