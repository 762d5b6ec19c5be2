//! Figures that words quote by name: `{{ humidity.ceiling }}`.

use std::ops::Range as Bytes;

use crate::model::Species;
use crate::model::stated::Amount;
use crate::quantity::{
    Printed, Range, Rounding, System, Temperature, TemperatureDifference, print_one,
};

use super::SpeciesFigures;

/// A quotation found in a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Quote<'a> {
    /// The name between the braces.
    pub name: &'a str,
    /// The bytes of the whole, braces among them.
    pub span: Bytes<usize>,
}

/// Finds every `{{ name }}` of a text, in order.
///
/// # Examples
/// ```
/// let found = wardsheet::figures::quoting::quotes("below {{ humidity.ceiling }} always");
/// assert_eq!((found[0].name, found[0].span.clone()), ("humidity.ceiling", 6..28));
/// ```
pub fn quotes(text: &str) -> Vec<Quote<'_>> {
    let mut found = Vec::new();
    let mut from = 0;
    while let Some(open) = text[from..].find("{{").map(|at| from + at) {
        let Some(close) = text[open..].find("}}").map(|at| open + at) else { break };
        found.push(Quote { name: text[open + 2..close].trim(), span: open..close + 2 });
        from = close + 2;
    }
    found
}

/// A figure that words may quote.
#[derive(Debug, Clone, PartialEq)]
pub struct Quotable {
    /// Its name.
    pub name: String,
    value: Value,
}

#[derive(Debug, Clone, PartialEq)]
enum Value {
    Stated(Amount, Rounding),
    Span(Range<TemperatureDifference>),
    DewPoint(f64),
    Word(String),
}

impl Quotable {
    /// Prints it as it stands in a sentence: the system that the site puts first, the other in brackets.
    pub fn print(&self, first: System) -> Printed {
        match &self.value {
            Value::Stated(amount, rounding) => amount.print(first, *rounding),
            Value::Span(range) => range.print(first, Rounding::Nearest),
            Value::DewPoint(celsius) => {
                print_one(Temperature::from_celsius(*celsius), first, Rounding::Up)
            }
            Value::Word(word) => Printed { first: word.clone(), second: None },
        }
    }
}

/// Every figure that the words of a species may quote: what it states, and what is derived from that.
pub fn quotable(species: &Species, figures: Option<&SpeciesFigures>) -> Vec<Quotable> {
    let stated = species.stated().into_iter().map(|stated| Quotable {
        name: stated.name,
        value: Value::Stated(stated.amount, stated.rounding),
    });
    let words = species
        .stated_words()
        .into_iter()
        .map(|(name, word)| Quotable { name: name.to_owned(), value: Value::Word(word) });
    let mut all: Vec<Quotable> = stated.chain(words).collect();
    if let Some((narrowest, widest)) = figures.and_then(|figures| figures.gradient.span_c) {
        let ends = [narrowest, widest].map(TemperatureDifference::from_kelvin);
        if let Ok(range) = Range::between(ends[0], ends[1]) {
            all.push(Quotable { name: "gradient.span".to_owned(), value: Value::Span(range) });
        }
    }
    if let Some(celsius) = figures.and_then(|figures| figures.humidity.dew_point_c) {
        all.push(Quotable {
            name: "humidity.dew_point".to_owned(),
            value: Value::DewPoint(celsius),
        });
    }
    all
}
