//! A range of a quantity: two ends, or one.

use super::temperature::{Temperature, TemperatureDifference};
use super::unit::Quantity;

/// The low end was above the high end, or one of them was not a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reversed;

impl std::fmt::Display for Reversed {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.write_str("the low end lies above the high end")
    }
}

impl std::error::Error for Reversed {}

/// A range of a quantity. It always has at least one end, and never a low end above its high end.
///
/// ```
/// use wardsheet::quantity::{Range, Temperature};
/// let warm = Range::between(Temperature::from_celsius(26.0), Temperature::from_celsius(28.0)).unwrap();
/// assert!(warm.contains(Temperature::from_celsius(27.0)));
/// assert_eq!(warm.middle(), Some(Temperature::from_celsius(27.0)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range<Q> {
    low: Option<Q>,
    high: Option<Q>,
}

impl<Q: Quantity> Range<Q> {
    /// The range that holds one value only.
    pub fn exactly(value: Q) -> Self {
        Range { low: Some(value), high: Some(value) }
    }

    /// The range from `low` to `high`, both included.
    ///
    /// # Errors
    /// [`Reversed`] if `low` is above `high`.
    pub fn between(low: Q, high: Q) -> Result<Self, Reversed> {
        if low <= high { Ok(Range { low: Some(low), high: Some(high) }) } else { Err(Reversed) }
    }

    /// The range from `low` upwards: a floor.
    pub fn at_least(low: Q) -> Self {
        Range { low: Some(low), high: None }
    }

    /// The range up to `high`: a ceiling.
    pub fn at_most(high: Q) -> Self {
        Range { low: None, high: Some(high) }
    }

    /// The low end, if there is one.
    pub fn low(&self) -> Option<Q> {
        self.low
    }

    /// The high end, if there is one.
    pub fn high(&self) -> Option<Q> {
        self.high
    }

    /// Whether it holds one value only.
    pub fn is_exact(&self) -> bool {
        self.low.is_some() && self.low == self.high
    }

    /// The value halfway between the ends, or `None` if an end is missing.
    pub fn middle(&self) -> Option<Q> {
        let (low, high) = (self.low?, self.high?);
        Some(Q::from_base(f64::midpoint(low.base(), high.base())))
    }

    /// Whether `value` lies in it, the ends included.
    pub fn contains(&self, value: Q) -> bool {
        self.low.is_none_or(|low| low <= value) && self.high.is_none_or(|high| value <= high)
    }

    /// Whether all of `other` lies in it.
    pub fn covers(&self, other: &Self) -> bool {
        let low = match (self.low, other.low) {
            (Some(own), Some(theirs)) => own <= theirs,
            (own, _) => own.is_none(),
        };
        let high = match (self.high, other.high) {
            (Some(own), Some(theirs)) => theirs <= own,
            (own, _) => own.is_none(),
        };
        low && high
    }

    /// Whether the two have a value in common, touching ends included.
    pub fn overlaps(&self, other: &Self) -> bool {
        let below =
            |high: Option<Q>, low: Option<Q>| matches!((high, low), (Some(h), Some(l)) if h < l);
        !below(self.high, other.low) && !below(other.high, self.low)
    }

    /// The range of what `f` makes of each end.
    ///
    /// `f` has to rise with its argument, as unit conversions and sums do; if it makes the low end the greater of two,
    /// they change places.
    pub fn map<R: Quantity>(&self, f: impl Fn(Q) -> R) -> Range<R> {
        let (low, high) = (self.low.map(&f), self.high.map(&f));
        match (low, high) {
            (Some(l), Some(h)) if l > h => Range { low: high, high: low },
            _ => Range { low, high },
        }
    }

    /// The ends there are, low before high, in the base unit.
    pub(super) fn bases(&self) -> Vec<f64> {
        self.low.iter().chain(self.high.iter()).map(|end| end.base()).collect()
    }
}

impl Range<Temperature> {
    /// How far the ends lie apart, or `None` if one is missing.
    pub fn span(&self) -> Option<TemperatureDifference> {
        Some(self.high? - self.low?)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Length;

    fn cm(value: f64) -> Length {
        Length::from_cm(value)
    }

    #[test]
    fn ends_in_the_wrong_order_make_no_range() {
        assert_eq!(Range::between(cm(2.0), cm(1.0)), Err(Reversed));
        assert_eq!(Range::between(cm(f64::NAN), cm(1.0)), Err(Reversed));
        assert!(Range::between(cm(1.0), cm(1.0)).is_ok_and(|range| range.is_exact()));
    }

    #[test]
    fn an_open_end_has_no_middle_and_no_limit() {
        let floor = Range::at_least(cm(10.0));
        assert_eq!(floor.middle(), None);
        assert!(floor.contains(cm(1e6)) && floor.contains(cm(10.0)) && !floor.contains(cm(9.9)));
        assert!(!Range::at_most(cm(10.0)).contains(cm(10.1)));
    }

    #[test]
    fn ranges_that_touch_overlap() {
        let range = |low, high| Range::between(cm(low), cm(high)).unwrap();
        assert!(range(1.0, 2.0).overlaps(&range(2.0, 3.0)));
        assert!(!range(1.0, 2.0).overlaps(&range(2.1, 3.0)));
        assert!(Range::at_least(cm(5.0)).overlaps(&Range::at_most(cm(5.0))));
        assert!(!Range::at_least(cm(5.0)).overlaps(&Range::at_most(cm(4.9))));
    }

    #[test]
    fn covering_needs_both_ends_inside() {
        let range = |low, high| Range::between(cm(low), cm(high)).unwrap();
        assert!(range(1.0, 4.0).covers(&range(2.0, 4.0)));
        assert!(!range(1.0, 4.0).covers(&range(2.0, 4.1)));
        assert!(!range(1.0, 4.0).covers(&Range::at_least(cm(2.0))));
        assert!(Range::at_least(cm(1.0)).covers(&range(1.0, 9.0)));
    }

    #[test]
    fn a_falling_map_changes_the_ends_over() {
        let range = Range::between(cm(1.0), cm(3.0)).unwrap();
        let mirrored = range.map(|length| cm(10.0 - length.cm()));
        assert_eq!((mirrored.low(), mirrored.high()), (Some(cm(7.0)), Some(cm(9.0))));
    }

    #[test]
    fn the_span_of_temperatures_is_a_difference() {
        let range =
            Range::between(Temperature::from_celsius(22.0), Temperature::from_celsius(32.0));
        assert_eq!(range.unwrap().span(), Some(TemperatureDifference::from_kelvin(10.0)));
    }
}
