//! The range in which a formula holds, and what is said when an argument lies outside it.

use std::fmt;

/// Names an argument that lies outside the range in which a formula holds.
///
/// The bounds are in the unit that the argument's name ends with.
///
/// ```
/// use wardsheet::figures::formula::domain::within;
///
/// let refused = within("temperature_c", 250.0, -100.0, 200.0).unwrap_err();
/// assert_eq!(refused.to_string(), "temperature_c is 250, outside -100 to 200");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutOfRange {
    /// The argument's name, with its unit.
    pub argument: &'static str,
    /// What was given.
    pub value: f64,
    /// The least value for which the formula holds.
    pub low: f64,
    /// The greatest value for which the formula holds.
    pub high: f64,
}

impl fmt::Display for OutOfRange {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { argument, value, low, high } = self;
        if high.is_finite() {
            write!(f, "{argument} is {value}, outside {low} to {high}")
        } else {
            write!(f, "{argument} is {value}, below {low}")
        }
    }
}

impl std::error::Error for OutOfRange {}

/// Returns `value` when it lies between `low` and `high`, both included.
///
/// # Errors
///
/// [`OutOfRange`] when it does not; a value that is not a finite number never does.
pub fn within(argument: &'static str, value: f64, low: f64, high: f64) -> Result<f64, OutOfRange> {
    if value.is_finite() && value >= low && value <= high {
        Ok(value)
    } else {
        Err(OutOfRange { argument, value, low, high })
    }
}

/// Returns `value` when it is a finite number of at least `low`.
///
/// # Errors
///
/// [`OutOfRange`] when it is less, infinite or not a number.
pub fn at_least(argument: &'static str, value: f64, low: f64) -> Result<f64, OutOfRange> {
    within(argument, value, low, f64::INFINITY)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_bounds_themselves_are_inside() {
        assert_eq!(within("x_m", 1.0, 1.0, 2.0), Ok(1.0));
        assert_eq!(within("x_m", 2.0, 1.0, 2.0), Ok(2.0));
    }

    #[test]
    fn what_is_not_a_number_is_never_inside() {
        assert!(within("x_m", f64::NAN, 0.0, 1.0).is_err());
        assert!(at_least("x_m", f64::INFINITY, 0.0).is_err());
    }

    #[test]
    fn a_bound_on_one_side_only_is_said_as_such() {
        let refused = at_least("mass_g", -2.0, 0.0).expect_err("negative");
        assert_eq!(refused.to_string(), "mass_g is -2, below 0");
    }
}
