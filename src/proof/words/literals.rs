//! Figures that words give as literals, and the figures of the species that each could mean.

use std::ops::Range as Bytes;

use crate::model::Species;
use crate::model::stated::{Amount, Stated};
use crate::quantity::{Humidity, Length, Quantity, Range, Span, Temperature, parse_range};

use super::spelt::in_digits;

/// A figure written out in words: `26-28 °C`, `85 %`, `5 to 7 days`.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Literal<'a> {
    /// Its value.
    pub(super) amount: Amount,
    /// Its bytes.
    pub(super) span: Bytes<usize>,
    /// The heading it stands under.
    pub(super) section: &'a str,
    /// The sentence it stands in.
    pub(super) sentence: &'a str,
}

/// The units that are looked for, the longer spelling before the shorter.
const UNITS: [&str; 29] = [
    "degrees Celsius",
    "degrees Fahrenheit",
    "degrees C",
    "degrees F",
    "°C",
    "°F",
    "C",
    "F",
    "per cent",
    "percent",
    "%",
    "cm",
    "mm",
    "metres",
    "metre",
    "inches",
    "inch",
    "feet",
    "ft",
    "hours",
    "hour",
    "days",
    "day",
    "weeks",
    "week",
    "months",
    "month",
    "years",
    "year",
];

/// Finds every figure of a temperature, a humidity, a length or a span of time.
pub(super) fn literals(text: &str) -> Vec<Literal<'_>> {
    let plain = in_digits(masked(text));
    let mut found = Vec::new();
    let mut section = "";
    let mut start = 0;
    for line in text.split_inclusive('\n') {
        if let Some(title) = line.strip_prefix("## ") {
            section = title.trim();
        }
        let mut at = start;
        while let Some(digit) = next_number(&plain, at, start + line.len()) {
            at = digit + 1;
            let Some((end, unit)) = figure_end(&plain, digit) else { continue };
            at = end;
            if let Some(amount) = read(&plain[digit..end], unit) {
                let sentence = sentence(text, start..start + line.len(), digit);
                found.push(Literal { amount, span: digit..end, section, sentence });
            }
        }
        start += line.len();
    }
    found
}

/// The text with quotations, code and the targets of links blanked, byte for byte.
fn masked(text: &str) -> String {
    let mut plain = text.to_owned();
    // The longer fence of code comes first: two signs side by side hold nothing.
    let masks = [
        ("{{", "}}"),
        ("](", ")"),
        ("```", "```"),
        ("``", "``"),
        ("`", "`"),
        ("<!--", "-->"),
        ("<http", ">"),
    ];
    for (open, close) in masks {
        let mut from = 0;
        while let Some(start) = plain[from..].find(open).map(|at| from + at) {
            let inside = start + open.len();
            let Some(end) = plain[inside..].find(close).map(|at| inside + at + close.len()) else {
                break;
            };
            plain.replace_range(start..end, &" ".repeat(end - start));
            from = end;
        }
    }
    plain
}

/// Where the next number begins that does not belong to a word or another number.
fn next_number(plain: &str, from: usize, to: usize) -> Option<usize> {
    let mut at = from;
    while at < to {
        at += plain[at..to].find(|c: char| c.is_ascii_digit())?;
        let before = plain[..at].chars().next_back();
        if before.is_none_or(|c| !(c.is_alphanumeric() || ".-–−,/".contains(c))) {
            return Some(at);
        }
        at += plain[at..].find(|c: char| !c.is_ascii_digit()).unwrap_or(plain.len() - at);
    }
    None
}

/// Where a figure ends that begins at `start`: a number or two with a unit behind, and the unit.
fn figure_end(plain: &str, start: usize) -> Option<(usize, &'static str)> {
    let number = |from: usize| {
        let rest = &plain[from..];
        let end = rest.find(|c: char| !(c.is_ascii_digit() || c == '.')).unwrap_or(rest.len());
        (end > 0).then(|| from + rest[..end].trim_end_matches('.').len())
    };
    let spaces =
        |from: usize| plain.len() - plain[from..].trim_start_matches([' ', '\u{a0}']).len();
    let unit = |from: usize| {
        let from = spaces(from);
        UNITS.into_iter().find_map(|unit| {
            let rest = plain[from..].strip_prefix(unit)?;
            let ends = !rest.starts_with(|c: char| c.is_alphanumeric());
            ends.then_some((from + unit.len(), unit))
        })
    };
    let first = number(start)?;
    if let Some(one) = unit(first) {
        // "26 °C to 28 °C": the second end with its own unit.
        // "26 °C and 50 cm" are two figures.
        let second = joint(plain, spaces(one.0), &TO);
        let second = second.and_then(|from| number(spaces(from))).and_then(unit);
        return Some(second.unwrap_or(one));
    }
    unit(number(spaces(joint(plain, spaces(first), &BETWEEN)?))?)
}

/// What joins the two ends of a range, each with its unit or without.
const TO: [&str; 5] = ["to ", "-", "–", "−", "—"];
/// What joins two ends that share one unit: "between 26 and 28 °C".
const BETWEEN: [&str; 7] = ["to ", "and ", "or ", "-", "–", "−", "—"];

/// The end of what joins the two ends of a range.
fn joint(plain: &str, from: usize, words: &[&str]) -> Option<usize> {
    let joint = words.iter().find(|joint| plain[from..].starts_with(**joint))?;
    Some(from + joint.len())
}

fn read(figure: &str, unit: &str) -> Option<Amount> {
    let figure = figure.replace('—', "-").replace(" and ", " to ").replace(" or ", " to ");
    Some(match unit {
        "%" | "percent" | "per cent" => Amount::Humidity(parse_range::<Humidity>(&figure).ok()?),
        "cm" | "mm" | "metres" | "metre" | "inches" | "inch" | "feet" | "ft" => {
            Amount::Length(parse_range::<Length>(&figure).ok()?)
        }
        "hours" | "hour" | "days" | "day" | "weeks" | "week" | "months" | "month" | "years"
        | "year" => Amount::Span(parse_range::<Span>(&figure).ok()?),
        _ => Amount::Temperature(parse_range::<Temperature>(&figure).ok()?),
    })
}

/// How far a sentence reaches to either side of its figure, in bytes: a line of many megabytes may hold no full stop.
const REACH: usize = 600;

fn sentence(text: &str, line: Bytes<usize>, at: usize) -> &str {
    let from = text.floor_char_boundary(at.saturating_sub(REACH)).max(line.start);
    let to = text.ceil_char_boundary(at + REACH).min(line.end);
    let start = text[from..at].rfind(". ").map_or(from, |dot| from + dot + 2);
    let end = text[at..to].find(". ").map_or(to, |dot| at + dot + 1);
    text[start..end].trim()
}

/// The figures of a species that a literal in this place could mean; none where the words may speak of something else.
pub(super) fn could_mean<'a>(literal: &Literal<'_>, species: &'a Species) -> Vec<Stated<'a>> {
    let section = literal.section;
    let speaks_of = |word: &str| literal.sentence.to_lowercase().contains(word);
    let prefixes: &[&str] = match literal.amount {
        // Water for thawing and for cleaning has temperatures of its own.
        Amount::Temperature(_) if !matches!(section, "Feeding" | "Cleaning" | "Health") => {
            &["temperature."]
        }
        Amount::Humidity(_) if speaks_of("humid") => &["humidity."],
        Amount::Length(_) if matches!(section, "At a glance" | "Breeding and growth") => &["size."],
        Amount::Span(_) if section == "Feeding" => &["feeding.", "fasting.", "handling."],
        Amount::Span(_) if section == "At a glance" => &["life.", "growth.matures"],
        Amount::Span(_) if section == "Heat and light" && speaks_of("light") => &["light.hours"],
        _ => return Vec::new(),
    };
    let kind = std::mem::discriminant(&literal.amount);
    species
        .stated()
        .into_iter()
        .filter(|stated| prefixes.iter().any(|prefix| stated.name.starts_with(prefix)))
        .filter(|stated| std::mem::discriminant(&stated.amount) == kind)
        .collect()
}

/// Both ends of an amount in its base unit; an open end stands where the other does.
pub(super) fn ends(amount: &Amount) -> Option<(f64, f64)> {
    fn of<Q: Quantity>(range: &Range<Q>) -> Option<(f64, f64)> {
        let (low, high) = (range.low().or(range.high())?, range.high().or(range.low())?);
        Some((low.base(), high.base()))
    }
    match amount {
        Amount::Temperature(range) => of(range),
        Amount::Humidity(range) => of(range),
        Amount::Length(range) => of(range),
        Amount::Span(range) => of(range),
        _ => None,
    }
}

/// How far two amounts may differ and still be one, in the base unit: what a change of units and a rounding leave.
fn slack(amount: &Amount, value: f64) -> f64 {
    match amount {
        Amount::Temperature(_) => 0.6,
        Amount::Humidity(_) => 0.5,
        _ => value * 0.03,
    }
}

/// Whether a literal says the same as a figure.
pub(super) fn same(literal: &Amount, figure: &Amount) -> bool {
    let near = |a: f64, b: f64| (a - b).abs() <= slack(literal, b);
    ends(literal).zip(ends(figure)).is_some_and(|(a, b)| near(a.0, b.0) && near(a.1, b.1))
}

/// Whether a literal and a figure have a value in common.
pub(super) fn agree(literal: &Amount, figure: &Amount) -> bool {
    ends(literal).zip(ends(figure)).is_some_and(|((low, high), (least, most))| {
        low <= most + slack(literal, most) && high >= least - slack(literal, least)
    })
}

/// Whether a literal agrees with a figure or with what another of its sources says.
pub(super) fn agrees_with(literal: &Amount, stated: &Stated<'_>) -> bool {
    agree(literal, &stated.amount) || stated.others.iter().any(|(other, _)| agree(literal, other))
}

/// The figure that a literal probably means: one that its sentence names, `cool` or `night`, before any other, and of
/// several the nearest.
pub(super) fn nearest<'s, 'a>(
    literal: &Literal<'_>,
    stated: &'s [Stated<'a>],
) -> Option<&'s Stated<'a>> {
    let middle = |amount: &Amount| ends(amount).map(|(low, high)| f64::midpoint(low, high));
    let own = middle(&literal.amount)?;
    let sentence = literal.sentence.to_lowercase();
    let rank = |stated: &Stated<'_>| {
        let named = stated.name.rsplit('.').next().is_some_and(|last| sentence.contains(last));
        let apart = middle(&stated.amount).map_or(f64::MAX, |other| (own - other).abs());
        (!named, apart)
    };
    stated.iter().min_by(|a, b| {
        let (a, b) = (rank(a), rank(b));
        a.0.cmp(&b.0).then(a.1.total_cmp(&b.1))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(text: &str) -> Vec<String> {
        literals(text).into_iter().map(|literal| text[literal.span].to_owned()).collect()
    }

    #[test]
    fn a_figure_is_found_with_its_range_and_its_unit() {
        let text = "Keep it at 26-28 °C, or 79 to 82 F, for 5–7 days, below 85 % and 90 cm long.";
        assert_eq!(found(text), ["26-28 °C", "79 to 82 F", "5–7 days", "85 %", "90 cm"]);
        assert_eq!(found("from 26 °C to 28 °C"), ["26 °C to 28 °C"]);
    }

    #[test]
    fn a_number_in_words_is_read_like_one_in_digits() {
        let text = "Every ten days, then ten to fourteen days; eighty-five per cent at thirty degrees C. One day.";
        assert_eq!(
            found(text),
            [
                "ten days",
                "ten to fourteen days",
                "eighty-five per cent",
                "thirty degrees C",
                "One day"
            ]
        );
        assert_eq!(
            found("between 26 and 28.5 °C, or 26 - 28 °C"),
            ["26 and 28.5 °C", "26 - 28 °C"]
        );
        // A word that only ends or begins like a number is none.
        assert_eq!(found("often days pass; the weight of ninety-nined days"), Vec::<String>::new());
    }

    #[test]
    fn a_figure_is_found_in_a_table_and_in_a_list_and_not_in_a_block_of_code() {
        assert_eq!(
            found("| warm | 85 % |\n|---|---|\n- 90 °F by day\n* 5–7 days"),
            ["85 %", "90 °F", "5–7 days"]
        );
        assert_eq!(
            found("```\nnever_above = 85 %\n```\nand `85 %`, ``90 %``"),
            Vec::<String>::new()
        );
    }

    #[test]
    fn quotations_code_links_and_names_are_no_figures() {
        let text =
            "{{ feeding.stage-5-days.every }} `20 C` [a](https://x.org/20-C) UV5 C, at-2004 days";
        assert_eq!(found(text), Vec::<String>::new());
    }

    #[test]
    fn a_bare_number_is_no_figure() {
        assert_eq!(found("In 1997 there were 12 Cats and 3 dogs"), Vec::<String>::new());
    }
}
