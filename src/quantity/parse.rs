//! The text of a figure, read as a range of a quantity.

use super::fault::{Fault, FaultKind, Place};
use super::pieces::{Kind, Piece, pieces};
use super::range::Range;
use super::suggest;
use super::unit::{Quantity, Unit};

/// How the ends of a figure are to be taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Bound {
    /// As they stand.
    Between,
    /// As a floor.
    AtLeast,
    /// As a ceiling.
    AtMost,
}

/// One number and the unit behind it, if there is one.
#[derive(Clone, Debug)]
pub(super) struct Part {
    pub(super) value: f64,
    pub(super) number: Place,
    pub(super) unit: Option<Place>,
}

/// One end of a figure: "28 C", or "4 ft 6 in" in two parts. Never empty.
pub(super) type End = Vec<Part>;

/// A figure as it was typed, before any unit is understood.
#[derive(Clone, Debug)]
pub(super) struct Typed<'t> {
    pub(super) text: &'t str,
    pub(super) bound: Bound,
    pub(super) ends: Vec<End>,
}

/// The words and signs that open a floor or a ceiling.
const OPENINGS: [(&[&str], Bound); 14] = [
    (&["at", "least"], Bound::AtLeast),
    (&["no", "less", "than"], Bound::AtLeast),
    (&["not", "less", "than"], Bound::AtLeast),
    (&["more", "than"], Bound::AtLeast),
    (&["over"], Bound::AtLeast),
    (&["above"], Bound::AtLeast),
    (&["at", "most"], Bound::AtMost),
    (&["no", "more", "than"], Bound::AtMost),
    (&["not", "more", "than"], Bound::AtMost),
    (&["not", "above"], Bound::AtMost),
    (&["less", "than"], Bound::AtMost),
    (&["up", "to"], Bound::AtMost),
    (&["under"], Bound::AtMost),
    (&["below"], Bound::AtMost),
];

/// Reads a figure as a range.
///
/// Accepted are "26-28 C", "26 to 28 C", "26 C to 28 C", "24 C", "at least 20 C", "up to 80 %", ">= 20 C",
/// "4 ft 6 in" and their like, with any kind of dash and space. A low end without a unit has that of the high end.
///
/// # Errors
/// A [`Fault`] of the first thing that is wrong.
///
/// ```
/// use wardsheet::quantity::{Length, parse_range};
/// let range = parse_range::<Length>("3 ft 6 in - 4 ft 6 in").unwrap();
/// assert_eq!(range.low().unwrap().cm().round(), 107.0);
/// ```
pub fn parse_range<Q: Quantity>(text: &str) -> Result<Range<Q>, Fault> {
    let typed = typed::<Q>(text)?;
    let [first, rest @ ..] = typed.ends.as_slice() else {
        return Err(suggest::unreadable::<Q>(text, 0..text.len()));
    };
    let Some(last) = rest.first() else {
        let value = Q::from_base(base::<Q>(&typed, first, None)?);
        suggest::refuse_unbearable::<Q>(&typed, &[value])?;
        return Ok(match typed.bound {
            Bound::Between => Range::exactly(value),
            Bound::AtLeast => Range::at_least(value),
            Bound::AtMost => Range::at_most(value),
        });
    };
    let high = Q::from_base(base::<Q>(&typed, last, None)?);
    let shared = unit_of::<Q>(&typed, last);
    let low = Q::from_base(base::<Q>(&typed, first, shared)?);
    suggest::refuse_unbearable::<Q>(&typed, &[low, high])?;
    match Range::between(low, high) {
        Ok(range) => Ok(range),
        Err(_) if Q::EITHER_ORDER => Ok(Range::between(high, low).unwrap_or(Range::exactly(low))),
        Err(_) => Err(suggest::reversed(&typed)),
    }
}

/// Reads a figure that has to be one value, such as "24 C".
///
/// # Errors
/// A [`Fault`] of what is wrong; a range or an open end is [`FaultKind::Unreadable`].
pub fn parse_one<Q: Quantity>(text: &str) -> Result<Q, Fault> {
    let range = parse_range::<Q>(text)?;
    match (range.low(), range.is_exact()) {
        (Some(value), true) => Ok(value),
        _ => {
            let at = suggest::trimmed(text);
            Err(Fault::new(
                FaultKind::Unreadable,
                at.clone(),
                format!("`{}` is a range where one value is needed", &text[at]),
                format!("write one {} only", Q::NAME),
            ))
        }
    }
}

/// Reads what is typed, without understanding its units yet.
pub(super) fn typed<Q: Quantity>(text: &str) -> Result<Typed<'_>, Fault> {
    let pieces = pieces(text)?;
    let (bound, skipped) = opening(text, &pieces);
    let is_to = |piece: &Piece| {
        piece.kind == Kind::Dash
            || (piece.kind == Kind::Word && text[piece.at.clone()].eq_ignore_ascii_case("to"))
    };
    let mut ends = Vec::new();
    for stretch in pieces[skipped..].split(is_to) {
        let behind = stretch.first().or(pieces.last()).map_or(0..text.len(), |p| p.at.clone());
        ends.push(end::<Q>(text, stretch, behind)?);
    }
    if ends.len() > 2 {
        return Err(suggest::unreadable::<Q>(text, suggest::trimmed(text)));
    }
    if let (true, Some(opening)) = (ends.len() == 2, pieces[..skipped].last()) {
        let at = pieces.first().map_or(0, |p| p.at.start)..opening.at.end;
        let message = format!("`{}` stands before a range", &text[at.clone()]);
        return Err(Fault::new(
            FaultKind::Unreadable,
            at,
            message,
            "write one value behind it, or the range alone",
        ));
    }
    Ok(Typed { text, bound, ends })
}

/// How the figure opens, and how many pieces that takes.
fn opening(text: &str, pieces: &[Piece]) -> (Bound, usize) {
    if let Some(Piece { kind: Kind::Compare(upwards), .. }) = pieces.first() {
        return (if *upwards { Bound::AtLeast } else { Bound::AtMost }, 1);
    }
    let spells = |words: &[&str]| {
        words.len() <= pieces.len()
            && words.iter().zip(pieces).all(|(word, piece)| {
                piece.kind == Kind::Word && text[piece.at.clone()].eq_ignore_ascii_case(word)
            })
    };
    OPENINGS
        .iter()
        .find(|(words, _)| spells(words))
        .map_or((Bound::Between, 0), |(words, bound)| (*bound, words.len()))
}

/// Reads one end: numbers, each with the words behind it.
fn end<Q: Quantity>(text: &str, pieces: &[Piece], behind: Place) -> Result<End, Fault> {
    let mut parts = End::new();
    for piece in pieces {
        match (piece.kind, parts.last_mut()) {
            (Kind::Number(value), _) => {
                parts.push(Part { value, number: piece.at.clone(), unit: None });
            }
            (Kind::Word, Some(part)) => {
                let start = part.unit.as_ref().map_or(piece.at.start, |unit| unit.start);
                part.unit = Some(start..piece.at.end);
            }
            _ => return Err(suggest::unreadable::<Q>(text, piece.at.clone())),
        }
    }
    if parts.is_empty() { Err(suggest::unreadable::<Q>(text, behind)) } else { Ok(parts) }
}

/// The value of an end in the base unit; `shared` is the unit of the other end, for an end without one.
pub(super) fn base<Q: Quantity>(
    typed: &Typed<'_>,
    end: &[Part],
    shared: Option<&'static Unit>,
) -> Result<f64, Fault> {
    let mut sum = 0.0;
    let mut above: Option<&'static Unit> = None;
    for part in end {
        if Q::WHOLE && part.value.fract() != 0.0 {
            let message = format!("`{}` is not a whole number", &typed.text[part.number.clone()]);
            let help = format!("write a {} in whole numbers", Q::NAME);
            return Err(Fault::new(FaultKind::Unreadable, part.number.clone(), message, help));
        }
        let unit = match (&part.unit, shared) {
            (Some(at), _) => unit_at::<Q>(typed, part, at)?,
            (None, Some(unit)) if end.len() == 1 => unit,
            (None, _) if Q::BARE && end.len() == 1 => &Q::UNITS[0],
            (None, _) => return Err(suggest::bare_number::<Q>(typed, part)),
        };
        if above.is_some_and(|larger| larger.factor <= unit.factor || unit.offset != 0.0) {
            let at = part.number.start..part.unit.as_ref().unwrap_or(&part.number).end;
            return Err(suggest::unreadable::<Q>(typed.text, at));
        }
        above = Some(unit);
        sum += unit.to_base(part.value);
    }
    Ok(sum)
}

/// The unit that an end without one takes over from this end: its first.
pub(super) fn unit_of<Q: Quantity>(typed: &Typed<'_>, end: &[Part]) -> Option<&'static Unit> {
    let part = end.first()?;
    unit_at::<Q>(typed, part, part.unit.as_ref()?).ok()
}

fn unit_at<Q: Quantity>(
    typed: &Typed<'_>,
    part: &Part,
    at: &Place,
) -> Result<&'static Unit, Fault> {
    let word = plain(&typed.text[at.clone()]);
    Q::UNITS
        .iter()
        .find(|unit| unit.is_spelled(&word))
        .ok_or_else(|| suggest::unknown_unit::<Q>(typed, part, at))
}

/// A unit as it is compared: no spaces and no abbreviating points, one kind of degree, prime and quote.
pub(super) fn plain(word: &str) -> String {
    word.chars()
        .filter(|c| !c.is_whitespace() && *c != '.')
        .map(|c| match c {
            'º' | '˚' => '°',
            '′' | '’' => '\'',
            '″' | '”' => '"',
            other => other,
        })
        .collect()
}
