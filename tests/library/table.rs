//! Reads a table of `tests/checks/`, and brings what is printed there into base units.

use std::collections::BTreeMap;
use std::path::Path;

use wardsheet::model::stated::Amount;
use wardsheet::quantity::{
    Fault, Humidity, Length, Mass, Quantity, Range, Share, Span, Temperature, parse_range,
};

/// A row: the cell under each heading.
pub(crate) type Row = BTreeMap<String, String>;

/// All rows of a table.
pub(crate) fn rows(name: &str) -> Vec<Row> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/checks").join(name);
    let mut reader =
        csv::Reader::from_path(&path).unwrap_or_else(|fault| panic!("{name}: {fault}"));
    let rows: Vec<Row> = reader
        .deserialize()
        .map(|row| row.unwrap_or_else(|fault| panic!("{name}: {fault}")))
        .collect();
    assert!(!rows.is_empty(), "{name} is empty");
    rows
}

/// A range in base units (degrees Celsius, centimetres, grams, days, per cent), open where an end is not given, and how far
/// two ends may lie apart and still be one figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Ends {
    pub(crate) low: Option<f64>,
    pub(crate) high: Option<f64>,
    slack: Slack,
}

/// How far two figures may lie apart because one of them was rounded.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Slack {
    /// Half a degree: a source in Fahrenheit meets a sheet in whole degrees Celsius.
    HalfADegree,
    /// 4 %: data files print four digits and a sheet two; a month is told as four weeks and a bit.
    Digits,
    /// None.
    Exact,
}

impl Ends {
    fn of<Q: Quantity>(range: &Range<Q>, slack: Slack, value: impl Fn(Q) -> f64) -> Ends {
        Ends { low: range.low().map(&value), high: range.high().map(&value), slack }
    }

    /// A stated figure; none for one that is no measured range.
    pub(crate) fn stated(amount: &Amount) -> Option<Ends> {
        Some(match amount {
            Amount::Temperature(range) => Ends::of(range, Slack::HalfADegree, Temperature::celsius),
            Amount::Length(range) => Ends::of(range, Slack::Digits, Length::cm),
            Amount::Mass(range) => Ends::of(range, Slack::Digits, Mass::grams),
            Amount::Span(range) => Ends::of(range, Slack::Digits, Span::days),
            Amount::Humidity(range) => Ends::of(range, Slack::Exact, |humidity| humidity.base()),
            Amount::Share(range) => Ends::of(range, Slack::Exact, |share| share.base()),
            Amount::UvIndex(range) => Ends::of(range, Slack::Exact, |index| index.base()),
            _ => return None,
        })
    }

    /// What a row prints, read as the quantity of a stated figure.
    pub(crate) fn printed(row: &Row, like: &Amount) -> Ends {
        let (low, high, unit) = (&row["low"], &row["high"], &row["unit"]);
        let text = match (low.as_str(), high.as_str()) {
            ("", high) => format!("at most {high} {unit}"),
            (low, "") => format!("at least {low} {unit}"),
            (low, high) if low == high => format!("{low} {unit}"),
            (low, high) => format!("{low}-{high} {unit}"),
        };
        read(&text, like).unwrap_or_else(|fault| panic!("{text:?} in {row:?}: {}", fault.message))
    }

    /// A figure written as in a species file, read as the quantity of a stated figure.
    pub(crate) fn written(text: &str, like: &Amount) -> Ends {
        read(text, like).unwrap_or_else(|fault| panic!("{text:?}: {}", fault.message))
    }

    /// Whether two ranges are the same figure.
    pub(crate) fn same(&self, other: &Ends) -> bool {
        let same = |one: Option<f64>, other: Option<f64>| match (one, other) {
            (Some(one), Some(other)) => self.near(one, other),
            (one, other) => one == other,
        };
        same(self.low, other.low) && same(self.high, other.high)
    }

    /// Whether this range lies within another. A range with one end counts by that end.
    pub(crate) fn within(&self, other: &Ends) -> bool {
        let (Some(low), Some(high)) = (self.low.or(self.high), self.high.or(self.low)) else {
            return false;
        };
        other.low.is_none_or(|least| low >= least || self.near(low, least))
            && other.high.is_none_or(|most| high <= most || self.near(high, most))
    }

    /// The range from the lowest to the highest that several say; an end that one of them leaves open is open.
    pub(crate) fn hull(all: &[Ends]) -> Option<Ends> {
        let first = *all.first()?;
        Some(all.iter().fold(first, |hull, next| Ends {
            low: hull.low.zip(next.low).map(|(one, other)| one.min(other)),
            high: hull.high.zip(next.high).map(|(one, other)| one.max(other)),
            slack: first.slack,
        }))
    }

    fn near(&self, one: f64, other: f64) -> bool {
        let apart = (one - other).abs();
        match self.slack {
            Slack::HalfADegree => apart <= 0.5 + 1e-9,
            Slack::Digits => apart <= 0.04 * other.abs() + 1e-9,
            Slack::Exact => apart <= 1e-9,
        }
    }
}

fn read(text: &str, like: &Amount) -> Result<Ends, Fault> {
    let amount = match like {
        Amount::Temperature(_) => Amount::Temperature(parse_range(text)?),
        Amount::Length(_) => Amount::Length(parse_range(text)?),
        Amount::Mass(_) => Amount::Mass(parse_range(text)?),
        Amount::Span(_) => Amount::Span(parse_range(text)?),
        Amount::Humidity(_) => Amount::Humidity(parse_range::<Humidity>(text)?),
        Amount::Share(_) => Amount::Share(parse_range::<Share>(text)?),
        Amount::UvIndex(_) => Amount::UvIndex(parse_range(text)?),
        other => panic!("{other:?} is no measured range"),
    };
    Ok(Ends::stated(&amount).expect("a measured range"))
}
