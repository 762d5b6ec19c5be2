//! The enclosure over an animal's lifetime: at which length the present one no longer does, and when that is.

use jiff::civil::Date;

use super::growth::{GrowthFigures, ReachDates, reach};
use super::space::{Need, join, satisfied};

/// When the present enclosure is outgrown.
#[derive(Debug, Clone, PartialEq)]
pub struct Outgrown {
    /// At this length, cm.
    pub at_cm: f64,
    /// On these days.
    pub dates: ReachDates,
}

/// How finely the length is found, cm.
const FINE_CM: f64 = 0.05;
/// How many steps the way to the top of the interval is searched in: a rule may ask for less just past a breakpoint, so the
/// first length that is too long is looked for from below.
const STEPS: u32 = 200;

/// Finds the length and the days at which an enclosure of `inside_cm` no longer satisfies what `needs` ask for.
///
/// `needs` gives what every standard in force asks for at a length. Lengths in cm, searched from the present one to the top of
/// the interval of the adult length.
///
/// # Errors
/// Why there is no such day: it is too small already, or does for the longest that is expected.
pub fn outgrown(
    inside_cm: [f64; 3],
    length_cm: f64,
    growth: &GrowthFigures,
    needs: impl Fn(f64) -> Vec<Need>,
    as_of: Date,
) -> Result<Outgrown, String> {
    let does = |length_cm: f64| {
        join(needs(length_cm)).is_none_or(|space| satisfied(inside_cm, &space).is_ok())
    };
    let top_cm =
        growth.adult.map(|adult| adult.high_cm.max(length_cm)).ok_or("no adult length is known")?;
    if !does(length_cm) {
        return Err("it is too small already".to_owned());
    }
    let step = (top_cm - length_cm) / f64::from(STEPS);
    let mut low = length_cm;
    let mut high = None;
    for number in 1..=STEPS {
        let at = length_cm + step * f64::from(number);
        if !does(at) {
            high = Some(at);
            break;
        }
        low = at;
    }
    let Some(mut high) = high else {
        return Err("it does for the longest adult that is expected".to_owned());
    };
    while high - low > FINE_CM {
        let middle = (low + high) / 2.0;
        if does(middle) { low = middle } else { high = middle }
    }
    let dates = reach(growth, high, as_of).unwrap_or_default();
    Ok(Outgrown { at_cm: high, dates })
}
