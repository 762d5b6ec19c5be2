//! What is wrong with a figure and what was probably meant, in words.

use super::fault::{Fault, FaultKind, Place};
use super::parse::{Bound, Part, Typed, plain};
use super::range::Range;
use super::scale::{Rounding, System};
use super::unit::{Quantity, Unit};
use super::{
    Area, Energy, Humidity, Latitude, Length, Mass, Multiple, PerHour, PerYear, Power, Span,
    Temperature, TemperatureDifference, UvIndex, Volume,
};

/// Every quantity with units of its own, so that a unit in the wrong place can be named.
const QUANTITIES: [(&str, &[Unit]); 15] = [
    (Temperature::NAME, Temperature::UNITS),
    (TemperatureDifference::NAME, TemperatureDifference::UNITS),
    (Length::NAME, Length::UNITS),
    (Area::NAME, Area::UNITS),
    (Volume::NAME, Volume::UNITS),
    (Mass::NAME, Mass::UNITS),
    (Humidity::NAME, Humidity::UNITS),
    (Power::NAME, Power::UNITS),
    (Energy::NAME, Energy::UNITS),
    (Span::NAME, Span::UNITS),
    (UvIndex::NAME, UvIndex::UNITS),
    (PerYear::NAME, PerYear::UNITS),
    (PerHour::NAME, PerHour::UNITS),
    (Latitude::NAME, Latitude::UNITS),
    (Multiple::NAME, Multiple::UNITS),
];

/// The place of `text` without the space around it.
pub(super) fn trimmed(text: &str) -> Place {
    let start = text.len() - text.trim_start().len();
    start..(start + text.trim().len())
}

/// "a temperature", "an area".
fn with_article(name: &str) -> String {
    let article = if name.starts_with(['a', 'e', 'i', 'o']) { "an" } else { "a" };
    format!("{article} {name}")
}

pub(super) fn unreadable<Q: Quantity>(text: &str, at: Place) -> Fault {
    let help = format!("write it like \"{}\"", Q::EXAMPLE);
    let message = if text.trim().is_empty() {
        format!("the {} is empty", Q::NAME)
    } else {
        format!("`{}` cannot be read as {}", &text[at.clone()], with_article(Q::NAME))
    };
    Fault::new(FaultKind::Unreadable, at, message, help)
}

pub(super) fn bare_number<Q: Quantity>(typed: &Typed<'_>, part: &Part) -> Fault {
    let nothing_has_one = typed.ends.iter().flatten().all(|part| part.unit.is_none());
    let (at, help) = if nothing_has_one {
        let last = typed.ends.last().and_then(|end| end.last()).unwrap_or(part);
        let first = typed.ends.first().and_then(|end| end.first()).unwrap_or(part);
        let proposed: Vec<String> = Q::UNITS
            .iter()
            .filter(|unit| unit.usual)
            .filter_map(|unit| {
                let (figure, range) = proposal::<Q>(typed, unit)?;
                // Read in the other system, it shows which of the two can be meant.
                let other = match unit.system.filter(|_| !Q::IMPERIAL.is_empty()) {
                    Some(System::Metric) => set(&range, System::Imperial),
                    Some(System::Imperial) => set(&range, System::Metric),
                    None => return Some(figure),
                };
                Some(format!("{figure} ({other})"))
            })
            .collect();
        (first.number.start..last.number.end, format!("write {}", listed(&proposed, Q::EXAMPLE)))
    } else {
        let unit = typed.ends.iter().flatten().find_map(|part| part.unit.clone());
        let unit = unit.map_or("", |at| &typed.text[at]);
        let single = typed.ends.iter().all(|end| end.len() == 1);
        let figure = if single { figure(typed, unit) } else { format!("\"{}\"", Q::EXAMPLE) };
        (part.number.clone(), format!("write {figure}"))
    };
    let message = format!("`{}` has no unit", &typed.text[at.clone()]);
    Fault::new(FaultKind::BareNumber, at, message, help)
}

pub(super) fn unknown_unit<Q: Quantity>(typed: &Typed<'_>, part: &Part, at: &Place) -> Fault {
    let word = &typed.text[at.clone()];
    let number = &typed.text[part.number.clone()];
    let fault = |message: String, help: String| {
        Fault::new(FaultKind::UnknownUnit, at.clone(), message, help)
    };
    if Q::BARE {
        let message = format!("`{word}` does not belong in {}", with_article(Q::NAME));
        return fault(message, format!("write the number alone: {}", figure(typed, "").trim()));
    }
    let plain_word = plain(word);
    let owner =
        QUANTITIES.iter().find(|(_, units)| units.iter().any(|unit| unit.is_spelled(&plain_word)));
    if let Some((name, _)) = owner {
        let message = format!("`{word}` is a unit of {name}, not of {}", Q::NAME);
        return fault(message, format!("write it like \"{}\"", Q::EXAMPLE));
    }
    let message = format!("`{word}` is not a unit of {}", Q::NAME);
    // Degrees of which kind is just what is missing, so no single likeness may be picked.
    if matches!(plain_word.to_lowercase().as_str(), "°" | "deg" | "degree" | "degrees") {
        let usual = Q::UNITS.iter().filter(|unit| unit.usual);
        let meant: Vec<String> =
            usual.map(|unit| format!("\"{number} {}\"", unit.spelling())).collect();
        return fault(message, format!("write {}", listed(&meant, Q::EXAMPLE)));
    }
    match nearest(&plain_word, Q::UNITS) {
        Some(spelling) => fault(message, format!("did you mean \"{number} {spelling}\"?")),
        None => {
            let known: Vec<String> = Q::UNITS.iter().map(|unit| unit.spelling().into()).collect();
            fault(message, format!("known units are {}", known.join(", ")))
        }
    }
}

/// The spelling of one of `units` that `word` most resembles, if it resembles any.
fn nearest(word: &str, units: &[Unit]) -> Option<&'static str> {
    let lower = word.to_lowercase();
    let within = 1.max(lower.chars().count() / 3);
    units
        .iter()
        .flat_map(|unit| unit.spellings)
        .map(|spelling| (strsim::osa_distance(&plain(spelling).to_lowercase(), &lower), *spelling))
        // A unit of one letter resembles every other letter, which is no likeness.
        .filter(|(steps, spelling)| *steps <= within && *steps < spelling.chars().count())
        .min_by_key(|(steps, _)| *steps)
        .map(|(_, spelling)| spelling)
}

pub(super) fn reversed(typed: &Typed<'_>) -> Fault {
    let place = |end: &[Part]| {
        let start = end.first().map_or(0, |part| part.number.start);
        start..end.last().map_or(start, |part| part.unit.as_ref().unwrap_or(&part.number).end)
    };
    let (low, high) = match typed.ends.as_slice() {
        [low, high, ..] => (place(low), place(high)),
        _ => (trimmed(typed.text), trimmed(typed.text)),
    };
    let message = format!(
        "the low end `{}` lies above the high end `{}`",
        &typed.text[low.clone()],
        &typed.text[high.clone()]
    );
    let mut turned = typed.clone();
    turned.ends.reverse();
    let units: Vec<&str> = typed
        .ends
        .iter()
        .flatten()
        .filter_map(|part| Some(&typed.text[part.unit.clone()?]))
        .collect();
    let help = match units.as_slice() {
        [unit] if typed.ends.iter().all(|end| end.len() == 1) => figure(&turned, unit),
        _ => format!("\"{} to {}\"", &typed.text[high.clone()], &typed.text[low.clone()]),
    };
    Fault::new(FaultKind::Reversed, low.start..high.end, message, format!("write {help}"))
}

/// Refuses a value that no living animal or real enclosure could have; `values` are the ends, in order.
pub(super) fn refuse_unbearable<Q: Quantity>(typed: &Typed<'_>, values: &[Q]) -> Result<(), Fault> {
    let (least, most) = Q::BEARABLE;
    // A hair's breadth of room, because a limit typed in another unit does not convert without remainder.
    let room = 1e-9 * (1.0 + most.abs());
    let bad = |value: &Q| !(least - room..=most + room).contains(&value.base());
    let Some(index) = values.iter().position(bad) else { return Ok(()) };
    let end = &typed.ends[index];
    let own = typed.ends.iter().rev().flatten().find_map(|part| part.unit.clone());
    let own = own.map(|at| plain(&typed.text[at])).unwrap_or_default();
    let own_unit = Q::UNITS.iter().find(|unit| unit.is_spelled(&own));
    let start = end[0].number.start;
    let last = &end[end.len() - 1];
    let at = start..last.unit.as_ref().unwrap_or(&last.number).end;
    let shown = match (end.as_slice(), own_unit) {
        ([part], Some(unit)) => format!("{} {}", &typed.text[part.number.clone()], unit.symbol),
        _ => typed.text[at.clone()].to_owned(),
    };
    let side = if values[index].base() > most { "more" } else { "less" };
    let single = typed.ends.iter().all(|end| end.len() == 1);
    let others = Q::UNITS.iter().filter(|unit| Some(*unit) != own_unit && single);
    let help = match others.filter_map(|unit| proposal::<Q>(typed, unit)).next() {
        Some((figure, range)) => {
            format!("was {figure} meant? that is {}", set(&range, System::Metric))
        }
        None => {
            let limits = Range::between(Q::from_base(least), Q::from_base(most))
                .map_or(String::new(), |range| set(&range, System::Metric));
            format!("{} lies in {limits}", with_article(Q::NAME))
        }
    };
    let message = format!("{} is {side} than any animal or enclosure bears", shown.trim());
    Err(Fault::new(FaultKind::Unbearable, at, message, help))
}

/// The figure written with `unit`, in words and as a range, if it is bearable so.
fn proposal<Q: Quantity>(typed: &Typed<'_>, unit: &Unit) -> Option<(String, Range<Q>)> {
    let values: Vec<f64> =
        typed.ends.iter().flatten().map(|part| unit.to_base(part.value)).collect();
    let (least, most) = Q::BEARABLE;
    if values.len() != typed.ends.len() || values.iter().any(|v| !(least..=most).contains(v)) {
        return None;
    }
    let first = Q::from_base(*values.first()?);
    let last = Q::from_base(*values.last()?);
    let range = Range::between(first, last).ok()?;
    Some((figure(typed, unit.spelling()), range))
}

/// The range in one system, with the spaces and the minus sign one can type.
fn set<Q: Quantity>(range: &Range<Q>, system: System) -> String {
    range.print(system, Rounding::Nearest).first.replace('\u{a0}', " ").replace('\u{2212}', "-")
}

/// The figure as one would write it, in quotes: the numbers as typed, with `unit`.
fn figure(typed: &Typed<'_>, unit: &str) -> String {
    let numbers: Vec<&str> =
        typed.ends.iter().flatten().map(|part| &typed.text[part.number.clone()]).collect();
    let negative = typed.ends.iter().flatten().any(|part| part.value.is_sign_negative());
    let numbers = numbers.join(if negative { " to " } else { "-" });
    let opening = match typed.bound {
        Bound::Between => "",
        Bound::AtLeast => "at least ",
        Bound::AtMost => "at most ",
    };
    let gap = if unit.is_empty() { "" } else { " " };
    format!("\"{opening}{numbers}{gap}{unit}\"")
}

/// "a", "a or b", "a, b or c"; `example` in quotes if there is none.
fn listed(words: &[String], example: &str) -> String {
    match words {
        [] => format!("it like \"{example}\""),
        [one] => one.clone(),
        [most @ .., last] => format!("{} or {last}", most.join(", ")),
    }
}
