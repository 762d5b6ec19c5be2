//! Numbers that are spelt out, `ten`, `eighty-five`, as digits in the same place.

/// Numbers below twenty, each at its own place.
const UNITS: [&str; 20] = [
    "nought",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
];
/// The tens from twenty on.
const TENS: [&str; 8] =
    ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

/// Puts digits in the place of every number from one to ninety-nine that is spelt out, with spaces behind them, so that every
/// byte around them stays where it is.
pub(super) fn in_digits(text: String) -> String {
    let mut plain = String::with_capacity(text.len());
    let mut rest = text.as_str();
    while let Some(start) = rest.find(|c: char| c.is_ascii_alphabetic()) {
        let word_end = rest[start..]
            .find(|c: char| !(c.is_alphanumeric() || c == '-' || c == '_'))
            .map_or(rest.len(), |end| start + end);
        let word = &rest[start..word_end];
        let joined = rest[..start].ends_with(|c: char| c.is_alphanumeric() || c == '-' || c == '_');
        plain.push_str(&rest[..start]);
        match value(word).filter(|_| !joined) {
            Some(value) => plain.push_str(&format!("{value:<width$}", width = word.len())),
            None => plain.push_str(word),
        }
        rest = &rest[word_end..];
    }
    plain.push_str(rest);
    plain
}

/// The value of a word, where it is a number from one to ninety-nine.
fn value(word: &str) -> Option<usize> {
    let word = word.to_ascii_lowercase();
    let below_twenty =
        |word: &str| UNITS.iter().position(|unit| *unit == word).filter(|at| *at > 0);
    if let Some(value) = below_twenty(&word) {
        return Some(value);
    }
    let (ten, unit) = word.split_once('-').unwrap_or((&word, ""));
    let tens = (TENS.iter().position(|own| *own == ten)? + 2) * 10;
    match unit {
        "" if !word.contains('-') => Some(tens),
        unit => below_twenty(unit).filter(|unit| *unit < 10).map(|unit| tens + unit),
    }
}

#[cfg(test)]
mod tests {
    use super::in_digits;

    #[test]
    fn every_byte_around_a_number_stays_where_it_is() {
        assert_eq!(in_digits("Every ten days".to_owned()), "Every 10  days");
        assert_eq!(in_digits("ninety-nine, Twelve".to_owned()), "99         , 12    ");
        for same in ["often", "tens", "ten-year", "twenty-", "some-one", "nought", "ninety-twelve"]
        {
            assert_eq!(in_digits(same.to_owned()), same);
        }
    }
}
