//! The text of a figure, cut into numbers, words and dashes.

use super::fault::{Fault, FaultKind, Place};

/// What a piece is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Kind {
    /// A number with its sign.
    Number(f64),
    /// A unit, or a word such as "to".
    Word,
    /// The dash between two ends.
    Dash,
    /// A comparison sign: true if it opens upwards, as `>=` does.
    Compare(bool),
}

/// A piece of the text and where it stands.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Piece {
    pub(super) kind: Kind,
    pub(super) at: Place,
}

/// Units whose square or cube is written with a digit behind.
const POWERED: [&str; 5] = ["mm", "cm", "m", "ft", "in"];

fn is_dash(c: char) -> bool {
    matches!(c, '-' | '\u{2010}'..='\u{2015}' | '\u{2212}')
}

fn is_word(c: char) -> bool {
    c.is_alphabetic() || "°º˚%²³'\"′″’”/^€$£×".contains(c)
}

/// Cuts `text` into pieces.
pub(super) fn pieces(text: &str) -> Result<Vec<Piece>, Fault> {
    let mut found: Vec<Piece> = Vec::new();
    let mut at = 0;
    while let Some(c) = text[at..].chars().next() {
        let start = at;
        let next = text[at + c.len_utf8()..].chars().next();
        let starts_number = |c: char, next: Option<char>| {
            c.is_ascii_digit() || (c == '.' && next.is_some_and(|n| n.is_ascii_digit()))
        };
        let kind = if c.is_whitespace() {
            at += c.len_utf8();
            continue;
        } else if starts_number(c, next) {
            at = number_end(text, at)?;
            read_number(text, start..at, 1.0)?
        } else if is_dash(c) {
            at += c.len_utf8();
            let opens = found.last().is_none_or(|piece| opens_an_end(text, piece));
            if opens && next.is_some_and(|n| n.is_ascii_digit()) {
                let digits = at;
                at = number_end(text, at)?;
                read_number(text, digits..at, -1.0)?
            } else {
                Kind::Dash
            }
        } else if matches!(c, '<' | '>' | '≤' | '≥') {
            at += c.len_utf8();
            if matches!(c, '<' | '>') && next == Some('=') {
                at += 1;
            }
            Kind::Compare(matches!(c, '>' | '≥'))
        } else if is_word(c) {
            at = word_end(text, at);
            Kind::Word
        } else {
            return Err(Fault::new(
                FaultKind::Unreadable,
                start..start + c.len_utf8(),
                format!("`{}` has no place in a figure", c.escape_debug()),
                "write numbers with their units only",
            ));
        };
        found.push(Piece { kind, at: start..at });
    }
    Ok(found)
}

/// Whether a dash behind this piece is a sign and not the dash of a range.
fn opens_an_end(text: &str, piece: &Piece) -> bool {
    match piece.kind {
        Kind::Dash | Kind::Compare(_) => true,
        Kind::Word => {
            const OPENERS: [&str; 8] =
                ["to", "least", "most", "over", "under", "above", "below", "than"];
            OPENERS.iter().any(|word| text[piece.at.clone()].eq_ignore_ascii_case(word))
        }
        Kind::Number(_) => false,
    }
}

/// Where the number that starts at `start` ends.
fn number_end(text: &str, start: usize) -> Result<usize, Fault> {
    let digits = |from: usize| {
        let rest = &text[from..];
        from + rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(rest.len())
    };
    let mut end = digits(start);
    if text[end..].starts_with('.') && digits(end + 1) > end + 1 {
        end = digits(end + 1);
    }
    if text[end..].starts_with(',') && digits(end + 1) > end + 1 {
        let whole = &text[start..end];
        let behind = &text[end + 1..digits(end + 1)];
        let help = if behind.len() == 3 {
            format!("write \"{whole}{behind}\" for thousands, or \"{whole}.{behind}\" with a point")
        } else {
            format!("write \"{whole}.{behind}\" with a point")
        };
        let at = start..digits(end + 1);
        let message = format!("`{}` has a comma in it", &text[at.clone()]);
        return Err(Fault::new(FaultKind::Unreadable, at, message, help));
    }
    Ok(end)
}

fn read_number(text: &str, digits: Place, sign: f64) -> Result<Kind, Fault> {
    match text[digits.clone()].parse::<f64>() {
        Ok(value) if value.is_finite() => Ok(Kind::Number(sign * value)),
        _ => Err(Fault::new(
            FaultKind::Unreadable,
            digits,
            "the number is too long to be read",
            "write it with a few digits only",
        )),
    }
}

/// Where the word that starts at `start` ends.
fn word_end(text: &str, start: usize) -> usize {
    let mut end = start;
    while let Some(c) = text[end..].chars().next() {
        let rest = &text[end + c.len_utf8()..];
        let next = rest.chars().next();
        let times = matches!(c, 'x' | 'X' | '×')
            && rest.trim_start().starts_with(|n: char| n.is_ascii_digit());
        if times && end > start {
            break;
        }
        let power = matches!(c, '2' | '3')
            && !next.is_some_and(|n| n.is_alphanumeric() || n == '.')
            && POWERED.contains(&text[start..end].trim_end_matches('^'));
        let abbreviated = c == '.' && end > start && !next.is_some_and(char::is_alphanumeric);
        if !(is_word(c) || power || abbreviated) {
            break;
        }
        end += c.len_utf8();
        if times || power || abbreviated {
            break;
        }
    }
    end
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cut(text: &str) -> Vec<&str> {
        pieces(text).unwrap().into_iter().map(|piece| &text[piece.at]).collect()
    }

    #[test]
    fn numbers_words_and_dashes_come_apart_without_spaces() {
        assert_eq!(cut("26-28C"), ["26", "-", "28", "C"]);
        assert_eq!(cut("4ft6in"), ["4", "ft", "6", "in"]);
        assert_eq!(cut("4ft2in"), ["4", "ft", "2", "in"]);
        assert_eq!(cut("4'6\""), ["4", "'", "6", "\""]);
        assert_eq!(cut("120x60x60cm"), ["120", "x", "60", "x", "60", "cm"]);
        assert_eq!(cut("120cm×60cm"), ["120", "cm", "×", "60", "cm"]);
        assert_eq!(cut("0.5 m2"), ["0.5", "m2"]);
        assert_eq!(cut("6 in. to 8 in."), ["6", "in.", "to", "8", "in."]);
    }

    #[test]
    fn a_dash_before_a_number_is_a_sign_only_where_an_end_begins() {
        assert_eq!(cut("-5 to -2 C"), ["-5", "to", "-2", "C"]);
        assert_eq!(cut("-5--2 C"), ["-5", "-", "-2", "C"]);
        assert_eq!(cut("5 -2 C"), ["5", "-", "2", "C"]);
        assert_eq!(cut("at least -2 C"), ["at", "least", "-2", "C"]);
    }
}
