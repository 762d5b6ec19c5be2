//! Figures: text with units, bare or with its sources beside it.

use toml::Spanned;
use toml::de::DeValue;

use crate::finding::{Finding, Place};
use crate::model::Cited;
use crate::model::species::Figure;
use crate::quantity::{self, Count, Fault, FaultKind, Quantity, Range};

use super::codes;
use super::table::Table;

impl<'t, 'i> Table<'t, 'i> {
    /// Takes a figure: `"26-28 C"`, or a table with `value`, `source`, `note` and what others say under `also`.
    pub(crate) fn figure<Q: Quantity>(&self, key: &str) -> Figure<Q> {
        self.cited(key, quantity::parse_range::<Q>)
    }

    /// Takes a cited value of any kind that is written as text.
    pub(crate) fn cited<T>(
        &self,
        key: &str,
        parse: impl Fn(&str) -> Result<T, Fault>,
    ) -> Option<Cited<T>> {
        let value = self.value(key)?;
        match value.get_ref() {
            DeValue::Table(fields) => {
                let table = self.inner(fields, value, key);
                cited_in(&table, &parse)
            }
            _ => {
                let (value, place) = self.read_text(key, value, &parse)?;
                Some(Cited::common_practice(value, place))
            }
        }
    }

    /// Takes an ultraviolet zone: `1` to `4`, or a table with `value`, `source`, `note` and `also`.
    pub(crate) fn zone(&self, key: &str) -> Option<Cited<u8>> {
        let value = self.value(key)?;
        let DeValue::Table(fields) = value.get_ref() else {
            let (number, place) = self.number(key)?;
            return self
                .known_zone(key, number, place)
                .map(|zone| Cited::common_practice(zone, place));
        };
        let table = self.inner(fields, value, key);
        let number = table.number("value");
        let (sources, note) = (table.list("source"), table.text("note"));
        let also = table.tables("also");
        let others = also.iter().filter_map(|other| {
            let number = other.number("value");
            let (sources, note) = (other.list("source"), other.text("note"));
            other.close();
            let (number, place) = number?;
            let value = self.known_zone(key, number, place)?;
            Some(Cited { value, place, sources, note, others: Vec::new() })
        });
        let others = others.collect();
        drop(also);
        table.close();
        let (number, place) = number?;
        Some(Cited { value: self.known_zone(key, number, place)?, place, sources, note, others })
    }

    fn known_zone(&self, key: &str, number: u32, place: Place) -> Option<u8> {
        let zone = u8::try_from(number).ok().filter(|zone| (1..=4).contains(zone));
        if zone.is_none() {
            let message =
                format!("`{}` is {number}, and there are zones 1 to 4", self.full_name(key));
            let help = "write a zone from 1 (shade) to 4 (full sun)";
            self.report(Finding::new(&codes::WORD_UNKNOWN, place, message).help(help));
        }
        zone
    }

    /// Takes a bare range without sources.
    pub(crate) fn range<Q: Quantity>(&self, key: &str) -> Option<(Range<Q>, Place)> {
        self.parsed(key, quantity::parse_range::<Q>)
    }

    /// Takes a single value without sources.
    pub(crate) fn one<Q: Quantity>(&self, key: &str) -> Option<(Q, Place)> {
        self.parsed(key, quantity::parse_one::<Q>)
    }

    /// Takes a value that is written as text.
    pub(crate) fn parsed<T>(
        &self,
        key: &str,
        parse: impl Fn(&str) -> Result<T, Fault>,
    ) -> Option<(T, Place)> {
        let value = self.value(key)?;
        self.read_text(key, value, &parse)
    }

    fn read_text<T>(
        &self,
        key: &str,
        value: &Spanned<DeValue<'_>>,
        parse: &impl Fn(&str) -> Result<T, Fault>,
    ) -> Option<(T, Place)> {
        let place = self.place_of(value);
        // A bare number reaches the quantity's own parser, which knows what was probably meant.
        let (text, inside) = match value.get_ref() {
            DeValue::String(text) => (text.to_string(), 1),
            DeValue::Integer(number) => (number.as_str().to_owned(), 0),
            DeValue::Float(number) => (number.as_str().to_owned(), 0),
            _ => {
                self.wrong_kind(key, value, "a figure with its unit, in quotes");
                return None;
            }
        };
        match parse(&text) {
            Ok(parsed) => Some((parsed, place)),
            Err(fault) => {
                self.report(figure_fault(&self.full_name(key), place, inside, fault));
                None
            }
        }
    }
}

fn cited_in<T>(
    table: &Table<'_, '_>,
    parse: &impl Fn(&str) -> Result<T, Fault>,
) -> Option<Cited<T>> {
    let value = table.parsed("value", parse);
    let sources = table.list("source");
    let note = table.text("note");
    let others = table.tables("also").iter().filter_map(|other| cited_in(other, parse)).collect();
    table.close();
    let Some((value, place)) = value else {
        table.missing("value", "the figure itself: value = \"26-28 C\"");
        return None;
    };
    Some(Cited { value, place, sources, note, others })
}

/// Turns a quantity's fault into a finding; `inside` is how many bytes of the place stand before the text.
pub(crate) fn figure_fault(name: &str, place: Place, inside: usize, fault: Fault) -> Finding {
    let code = match fault.kind {
        FaultKind::BareNumber => &codes::FIGURE_WITHOUT_UNIT,
        FaultKind::UnknownUnit => &codes::UNIT_UNKNOWN,
        FaultKind::Reversed => &codes::RANGE_REVERSED,
        FaultKind::Unbearable => &codes::FIGURE_UNBEARABLE,
        FaultKind::Unreadable => &codes::FIGURE_UNREADABLE,
    };
    let at = place.part(fault.at.start + inside..fault.at.end + inside);
    let at = if at.start == at.end { place } else { at };
    let message =
        if name.is_empty() { fault.message } else { format!("{name}: {}", fault.message) };
    Finding::new(code, at, message).help(fault.help)
}

/// Reads how many there are of something, `"5"` or `"5-10"`; open ends count as the other.
pub(crate) fn whole_numbers(text: &str) -> Result<(u32, u32), Fault> {
    let range = quantity::parse_range::<Count>(text)?;
    let low = range.low().or(range.high()).map_or(0, |count| count.number() as u32);
    Ok((low, range.high().map_or(low, |count| count.number() as u32)))
}
