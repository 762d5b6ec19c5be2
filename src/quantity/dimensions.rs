//! Length, width and height of an enclosure.

use super::fault::{Fault, FaultKind};
use super::length::{Area, Length, Volume};
use super::parse::{base, typed, unit_of};
use super::pieces::{Kind, pieces};
use super::print::{Printed, joined, one, scale_and_steps};
use super::scale::{Rounding, Side, System, number, steps_of};
use super::suggest;
use super::unit::Quantity;

/// The inside measures of an enclosure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dimensions {
    /// The longer side of the floor, as a rule.
    pub length: Length,
    /// The other side of the floor.
    pub width: Length,
    /// From floor to roof.
    pub height: Length,
}

const EXAMPLE: &str = "120 x 60 x 60 cm";

/// Reads length, width and height, such as "120 x 60 x 60 cm", "1.2 m x 60 cm x 60 cm" or "4 × 2 × 2 ft".
///
/// A measure without a unit has that of the next one that has one.
///
/// # Errors
/// A [`Fault`] of the first thing that is wrong.
///
/// ```
/// let tank = wardsheet::quantity::parse_dimensions("120 x 60 x 60 cm").unwrap();
/// assert_eq!(tank.volume().litres(), 432.0);
/// ```
pub fn parse_dimensions(text: &str) -> Result<Dimensions, Fault> {
    let unreadable = |message: String| {
        let help = format!("write length, width and height, like \"{EXAMPLE}\"");
        Fault::new(FaultKind::Unreadable, suggest::trimmed(text), message, help)
    };
    let times: Vec<_> = pieces(text)?
        .into_iter()
        .filter(|piece| {
            piece.kind == Kind::Word && matches!(&text[piece.at.clone()], "x" | "X" | "×")
        })
        .map(|piece| piece.at)
        .collect();
    let [first, second] = times.as_slice() else {
        let found = if text.trim().is_empty() { 0 } else { times.len() + 1 };
        let plural = if found == 1 { "measure" } else { "measures" };
        return Err(unreadable(format!("{found} {plural} where three are needed")));
    };
    let places = [0..first.start, first.end..second.start, second.end..text.len()];
    let mut lengths = [Length::from_cm(0.0); 3];
    let mut shared = None;
    for (length, place) in lengths.iter_mut().zip(&places).rev() {
        let part = &text[place.clone()];
        let shift = |fault: Fault| Fault {
            at: fault.at.start + place.start..fault.at.end + place.start,
            ..fault
        };
        let typed = typed::<Length>(part).map_err(shift)?;
        let [end] = typed.ends.as_slice() else {
            return Err(shift(Fault::new(
                FaultKind::Unreadable,
                suggest::trimmed(part),
                format!("`{}` is a range where one measure is needed", part.trim()),
                format!("write one measure each, like \"{EXAMPLE}\""),
            )));
        };
        if end.iter().all(|part| part.unit.is_none()) && shared.is_none() {
            let at = suggest::trimmed(part);
            return Err(shift(Fault::new(
                FaultKind::BareNumber,
                at.clone(),
                format!("`{}` has no unit", &part[at]),
                format!("write \"{} cm\" or \"{} in\"", text.trim(), text.trim()),
            )));
        }
        *length = Length::from_cm(base::<Length>(&typed, end, shared).map_err(shift)?);
        suggest::refuse_unbearable(&typed, &[*length]).map_err(shift)?;
        shared = unit_of::<Length>(&typed, end).or(shared);
    }
    let [length, width, height] = lengths;
    Ok(Dimensions { length, width, height })
}

impl Dimensions {
    /// The area of the floor.
    pub fn floor(&self) -> Area {
        Area::from_square_metres(self.length.cm() * self.width.cm() / 1e4)
    }

    /// The volume inside.
    pub fn volume(&self) -> Volume {
        Volume::from_litres(self.length.cm() * self.width.cm() * self.height.cm() / 1000.0)
    }

    /// Sets the measures in both systems, the reader's `first`: "120 × 60 × 60 cm (3 ft 11 in × 2 ft × 2 ft)".
    ///
    /// `Inward` is taken as `Nearest`, for there is no range; use `Up` for least sizes.
    pub fn print(&self, first: System, rounding: Rounding) -> Printed {
        let set = |system| self.set(system, rounding);
        Printed::ordered(first, set(System::Metric), set(System::Imperial))
    }

    fn set(&self, system: System, rounding: Rounding) -> Option<String> {
        let bases = [self.length, self.width, self.height].map(Quantity::base);
        let (scale, steps) = scale_and_steps::<Length>(&bases, system)?;
        let side = match rounding {
            Rounding::Nearest | Rounding::Inward => Side::Nearest,
            Rounding::Up => Side::Up,
            Rounding::Down => Side::Down,
        };
        let step = *steps.first()?;
        let counts = bases.map(|base| steps_of(scale.of(base), step, side));
        if scale.larger.is_some() {
            return Some(counts.map(|count| one(scale, step, count)).join(" × "));
        }
        let numbers = counts.map(|count| number(count, step)).join(" × ");
        Some(joined(&numbers, scale.symbol))
    }
}
