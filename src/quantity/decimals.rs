//! Numbers in decimals, without idle zeros.

/// What so many decimals multiply a number by.
const TENS: [f64; 7] = [1.0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6];
/// Below it a product with one of the [`TENS`] is right to a ten-millionth.
const EXACT_BELOW: f64 = 1e9;
/// How near to the middle between two numbers a product may be and still tell to which of them the value itself is nearer.
const NEAR_MIDDLE: f64 = 1e-6;

/// Writes a number with at most `places` decimals and no zeros at its end.
///
/// It is rounded as the standard library rounds it, by its exact value. That is slow, and thousands of numbers stand on a page;
/// only where the exact value is needed to tell which way to round is it left to the standard library.
///
/// # Examples
/// ```
/// use wardsheet::quantity::decimals;
/// assert_eq!((decimals(12.50, 2), decimals(3.0, 1), decimals(0.125, 2)), ("12.5".into(), "3".into(), "0.12".into()));
/// ```
pub fn decimals(value: f64, places: usize) -> String {
    let scaled = TENS.get(places).map_or(f64::INFINITY, |tens| value.abs() * tens);
    let from_middle = scaled - scaled.floor() - 0.5;
    // Not a number is neither below nor above.
    if !(scaled < EXACT_BELOW && from_middle.abs() > NEAR_MIDDLE) {
        let text = format!("{value:.places$}");
        return if text.contains('.') {
            text.trim_end_matches('0').trim_end_matches('.').to_owned()
        } else {
            text
        };
    }
    let sign = if value.is_sign_negative() { "-" } else { "" };
    let mut digits = scaled.round() as u64;
    let mut places = places;
    while places > 0 && digits.is_multiple_of(10) {
        digits /= 10;
        places -= 1;
    }
    let tens = TENS[places] as u64;
    let (whole, rest) = (digits / tens, digits % tens);
    if places == 0 { format!("{sign}{whole}") } else { format!("{sign}{whole}.{rest:0places$}") }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn by_the_standard_library(value: f64, places: usize) -> String {
        let text = format!("{value:.places$}");
        match text.contains('.') {
            true => text.trim_end_matches('0').trim_end_matches('.').to_owned(),
            false => text,
        }
    }

    proptest! {
        #[test]
        fn a_number_is_written_as_the_standard_library_does(value in -1e4..1e4_f64, places in 0_usize..9) {
            prop_assert_eq!(decimals(value, places), by_the_standard_library(value, places));
        }

        #[test]
        fn a_number_halfway_is_rounded_as_the_standard_library_does(steps in -100_000_i32..100_000, places in 0_usize..5) {
            for part in [2.0, 8.0, 10.0, 20.0, 200.0, 2000.0] {
                let value = f64::from(steps) / part;
                prop_assert_eq!(decimals(value, places), by_the_standard_library(value, places));
            }
        }
    }

    #[test]
    fn what_is_no_usual_number_is_written_too() {
        for value in [0.0, -0.0, 1e9, 1e300, 1e-300, -0.04, f64::INFINITY, f64::NAN] {
            for places in [0, 1, 6, 7] {
                assert_eq!(decimals(value, places), by_the_standard_library(value, places));
            }
        }
    }
}
