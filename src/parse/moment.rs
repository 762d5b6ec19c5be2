//! Moments written in a form that a map names: `DD.MM.YYYY hh:mm`.

use jiff::civil::Date;

use crate::model::map::{DateForm, Piece};

/// The pieces that a form may hold, longest first.
const PIECES: [(&str, Piece); 9] = [
    ("YYYY", Piece::Year),
    ("YY", Piece::ShortYear),
    ("MM", Piece::Month),
    ("DD", Piece::Day),
    ("hh", Piece::Hour),
    ("mm", Piece::Minute),
    ("ss", Piece::Second),
    ("AM", Piece::HalfDay),
    ("PM", Piece::HalfDay),
];

/// Reads the form itself.
///
/// # Errors
/// One sentence: it has no year, month or day.
pub(super) fn form(written: &str) -> Result<DateForm, String> {
    let mut pieces = Vec::new();
    let mut rest = written;
    while let Some(letter) = rest.chars().next() {
        let known = PIECES.iter().find(|(sign, _)| rest.starts_with(sign));
        let (piece, length) = match known {
            Some((sign, piece)) => (*piece, sign.len()),
            None => (Piece::Mark(letter), letter.len_utf8()),
        };
        pieces.push(piece);
        rest = &rest[length..];
    }
    let has = |piece: Piece| pieces.contains(&piece);
    let year = has(Piece::Year) || has(Piece::ShortYear);
    if !(year && has(Piece::Month) && has(Piece::Day)) {
        return Err(format!("`{written}` does not say where year, month and day stand"));
    }
    Ok(DateForm { written: written.to_owned(), pieces })
}

/// A moment as its day and the seconds since midnight.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Moment {
    pub(super) date: Date,
    pub(super) seconds: i64,
}

/// Reads a moment; none where it is not of that form. Leading noughts may be left out.
pub(super) fn read(form: &DateForm, text: &str) -> Option<Moment> {
    let mut rest = text.trim().as_bytes();
    let (mut year, mut month, mut day) = (0_i64, 0_i64, 0_i64);
    let (mut hour, mut minute, mut second) = (0_i64, 0_i64, 0_i64);
    let mut half = None;
    for piece in &form.pieces {
        match piece {
            Piece::Mark(mark) => {
                let mut bytes = [0; 4];
                rest = rest.strip_prefix(mark.encode_utf8(&mut bytes).as_bytes())?;
            }
            Piece::HalfDay => {
                half = Some(rest.first()?.eq_ignore_ascii_case(&b'p'));
                rest = rest.get(2..)?;
            }
            Piece::Year => year = digits(&mut rest, 4)?,
            Piece::ShortYear => year = 2000 + digits(&mut rest, 2)?,
            Piece::Month => month = digits(&mut rest, 2)?,
            Piece::Day => day = digits(&mut rest, 2)?,
            Piece::Hour => hour = digits(&mut rest, 2)?,
            Piece::Minute => minute = digits(&mut rest, 2)?,
            Piece::Second => {
                second = digits(&mut rest, 2)?;
                while let [b'.' | b'0'..=b'9', after @ ..] = rest {
                    rest = after;
                }
            }
        }
    }
    if let Some(afternoon) = half {
        hour = hour % 12 + if afternoon { 12 } else { 0 };
    }
    if !rest.is_empty() || hour > 23 || minute > 59 || second > 60 {
        return None;
    }
    let small = |number: i64| i8::try_from(number).ok();
    let date = Date::new(i16::try_from(year).ok()?, small(month)?, small(day)?).ok()?;
    Some(Moment { date, seconds: hour * 3600 + minute * 60 + second })
}

/// Takes at most so many digits, and one at the least.
fn digits(rest: &mut &[u8], most: usize) -> Option<i64> {
    let count = rest.iter().take(most).take_while(|byte| byte.is_ascii_digit()).count();
    let (number, after) = rest.split_at(count);
    *rest = after;
    (count > 0).then(|| number.iter().fold(0, |sum, byte| sum * 10 + i64::from(byte - b'0')))
}

/// Days from the first day of 1970 to a date of the Gregorian calendar.
///
/// Source: counted from 1 March, so that the leap day ends a year, as in E. G. Richards, "Mapping Time" (1998), chapter 25.
pub(super) fn day_number(date: Date) -> i64 {
    let (month, day) = (i64::from(date.month()), i64::from(date.day()));
    let year = i64::from(date.year()) - i64::from(month <= 2);
    let era = year.div_euclid(400);
    let of_era = year.rem_euclid(400);
    let of_year = (153 * ((month + 9) % 12) + 2) / 5 + day - 1;
    era * 146_097 + of_era * 365 + of_era / 4 - of_era / 100 + of_year - 719_468
}

#[cfg(test)]
mod tests {
    use super::{day_number, form, read};
    use jiff::civil::{Date, date};

    fn moment(pattern: &str, text: &str) -> Option<(Date, i64)> {
        read(&form(pattern).expect("a form"), text).map(|moment| (moment.date, moment.seconds))
    }

    #[test]
    fn the_forms_that_spreadsheets_write() {
        let noon = Some((date(2026, 11, 5), 12 * 3600 + 30 * 60));
        assert_eq!(moment("YYYY-MM-DDThh:mm:ss", "2026-11-05T12:30:00"), noon);
        assert_eq!(moment("DD.MM.YYYY hh:mm", "5.11.2026 12:30"), noon);
        assert_eq!(moment("MM/DD/YY hh:mm AM", "11/05/26 12:30 PM"), noon);
        assert_eq!(
            moment("MM/DD/YY hh:mm AM", "11/05/26 12:30 AM"),
            Some((date(2026, 11, 5), 30 * 60))
        );
        assert_eq!(moment("DD/MM/YYYY", "05/11/2026"), Some((date(2026, 11, 5), 0)));
    }

    #[test]
    fn what_is_not_of_the_form_is_not_read() {
        for text in ["", "31.02.2026", "2026-11-05", "05.11.2026 12:30", "05.11.", "aa.bb.cccc"] {
            assert_eq!(moment("DD.MM.YYYY", text), None, "{text}");
        }
        assert_eq!(moment("DD.MM.YYYY hh:mm", "05.11.2026 24:30"), None);
        assert!(form("hh:mm").is_err());
    }

    #[test]
    fn days_are_counted_from_1970() {
        assert_eq!(day_number(date(1970, 1, 1)), 0);
        assert_eq!(day_number(date(2000, 3, 1)), 11_017);
        let mut last = day_number(date(1899, 12, 31));
        let mut day = date(1900, 1, 1);
        while day < date(2101, 1, 1) {
            assert_eq!(day_number(day), last + 1, "{day}");
            last += 1;
            day = day.tomorrow().expect("a day");
        }
    }
}
