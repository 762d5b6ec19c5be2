//! Money and prices, in whatever currency the keeper pays in.

use super::fault::{Fault, FaultKind, Place};
use super::parse::plain;
use super::pieces::{Kind, Piece, pieces};
use super::suggest::trimmed;

/// What a price is paid for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum PriceUnit {
    /// A kilowatt-hour.
    KilowattHour,
    /// A kilogram.
    Kilogram,
    /// A gram.
    Gram,
    /// A single thing.
    Each,
}

impl PriceUnit {
    /// How it reads behind the currency: "per kWh".
    pub const fn words(self) -> &'static str {
        match self {
            PriceUnit::KilowattHour => "per\u{a0}kWh",
            PriceUnit::Kilogram => "per\u{a0}kg",
            PriceUnit::Gram => "per\u{a0}g",
            PriceUnit::Each => "each",
        }
    }

    fn from_word(word: &str) -> Option<Self> {
        let word = word.to_ascii_lowercase();
        match word.as_str() {
            "perkwh" | "/kwh" => Some(PriceUnit::KilowattHour),
            "perkg" | "/kg" => Some(PriceUnit::Kilogram),
            "perg" | "/g" => Some(PriceUnit::Gram),
            "each" | "apiece" | "/each" | "pereach" => Some(PriceUnit::Each),
            _ => None,
        }
    }
}

/// An amount of money.
#[derive(Clone, Debug, PartialEq)]
pub struct Money {
    /// How much, in the currency's main unit; not negative if it was typed.
    pub amount: f64,
    /// The currency as its three capital letters (ISO 4217).
    pub currency: String,
}

/// A price: an amount of money for a unit of something.
#[derive(Clone, Debug, PartialEq)]
pub struct Price {
    /// How much, in the currency's main unit; not negative.
    pub amount: f64,
    /// The currency as its three capital letters (ISO 4217).
    pub currency: String,
    /// What it is paid for.
    pub per: PriceUnit,
}

/// Reads an amount of money, such as "1200 EUR".
///
/// # Errors
/// A [`Fault`] of the first thing that is wrong.
pub fn parse_money(text: &str) -> Result<Money, Fault> {
    const EXAMPLE: &str = "1200 EUR";
    let (amount, behind) = amount(text, EXAMPLE)?;
    let (currency, rest) = currency(text, &behind, EXAMPLE)?;
    if rest.is_empty() { Ok(Money { amount, currency }) } else { Err(unknown(text, rest, EXAMPLE)) }
}

/// Reads a price, such as "0.31 EUR per kWh", "4 EUR/kg" or "2.20 EUR each".
///
/// # Errors
/// A [`Fault`] of the first thing that is wrong.
///
/// ```
/// use wardsheet::quantity::{PriceUnit, parse_price};
/// let price = parse_price("0.31 EUR/kWh").unwrap();
/// assert_eq!((price.amount, price.per), (0.31, PriceUnit::KilowattHour));
/// assert_eq!(price.to_string().replace('\u{a0}', " "), "0.31 EUR per kWh");
/// ```
pub fn parse_price(text: &str) -> Result<Price, Fault> {
    const EXAMPLE: &str = "0.31 EUR per kWh";
    let (amount, behind) = amount(text, EXAMPLE)?;
    let (currency, rest) = currency(text, &behind, EXAMPLE)?;
    if rest.is_empty() {
        return Err(Fault::new(
            FaultKind::BareNumber,
            trimmed(text),
            format!("`{}` does not say what it is paid for", text.trim()),
            format!(
                "write \"{0} per kWh\", \"{0} per kg\", \"{0} per g\" or \"{0} each\"",
                text.trim()
            ),
        ));
    }
    match PriceUnit::from_word(&plain(&text[rest.clone()])) {
        Some(per) => Ok(Price { amount, currency, per }),
        None => Err(unknown(text, rest, EXAMPLE)),
    }
}

/// The number in front, and the place of everything behind it.
fn amount(text: &str, example: &str) -> Result<(f64, Place), Fault> {
    let unreadable = |at: Place| {
        let message = if text.trim().is_empty() {
            "the price is empty".to_owned()
        } else {
            format!("`{}` cannot be read as a price", &text[at.clone()])
        };
        Fault::new(FaultKind::Unreadable, at, message, format!("write it like \"{example}\""))
    };
    let pieces = pieces(text)?;
    let Some((Piece { kind: Kind::Number(amount), at }, rest)) = pieces.split_first() else {
        return Err(unreadable(pieces.first().map_or(0..text.len(), |piece| piece.at.clone())));
    };
    if let Some(other) = rest.iter().find(|piece| piece.kind != Kind::Word) {
        return Err(unreadable(other.at.clone()));
    }
    if amount.is_sign_negative() {
        let message = format!("`{}` is less than nothing", &text[at.clone()]);
        let help = format!("write it like \"{example}\"");
        return Err(Fault::new(FaultKind::Unbearable, at.clone(), message, help));
    }
    let behind = match (rest.first(), rest.last()) {
        (Some(first), Some(last)) => first.at.start..last.at.end,
        _ => {
            let message = format!("`{}` has no currency", &text[at.clone()]);
            let help = format!("write it with three letters, like \"{example}\"");
            return Err(Fault::new(FaultKind::BareNumber, at.clone(), message, help));
        }
    };
    Ok((*amount, behind))
}

/// The three letters of the currency, and the place of what follows them.
fn currency(text: &str, behind: &Place, example: &str) -> Result<(String, Place), Fault> {
    let words = &text[behind.clone()];
    let end = words.find(|c: char| c.is_whitespace() || c == '/').unwrap_or(words.len());
    let code = &words[..end];
    if code.len() != 3 || !code.chars().all(|c| c.is_ascii_alphabetic()) {
        let shown = if code.is_empty() { words } else { code };
        return Err(Fault::new(
            FaultKind::UnknownUnit,
            behind.start..behind.start + shown.len(),
            format!("`{shown}` is not the three letters of a currency"),
            format!("write it like \"{example}\""),
        ));
    }
    let gap = words[end..].len() - words[end..].trim_start().len();
    Ok((code.to_ascii_uppercase(), behind.start + end + gap..behind.end))
}

fn unknown(text: &str, at: Place, example: &str) -> Fault {
    let message = format!("`{}` does not say what is paid for", &text[at.clone()]);
    Fault::new(FaultKind::UnknownUnit, at, message, format!("write it like \"{example}\""))
}

/// An amount without trailing zeros if it is whole, else with two decimals, or as many more up to four as it has.
fn digits(amount: f64) -> String {
    let hundredths = amount * 100.0;
    if (amount - amount.round()).abs() < 1e-9 {
        format!("{amount:.0}")
    } else if (hundredths - hundredths.round()).abs() < 1e-6 {
        format!("{amount:.2}")
    } else {
        format!("{amount:.4}").trim_end_matches('0').to_owned()
    }
}

impl std::fmt::Display for Money {
    /// With two decimals below 100 unless it is whole, and without any from there.
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let whole = self.amount.abs() >= 100.0 || self.amount.fract() == 0.0;
        let decimals = if whole { 0 } else { 2 };
        write!(out, "{:.decimals$}\u{a0}{}", self.amount, self.currency)
    }
}

impl std::fmt::Display for Price {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "{}\u{a0}{} {}", digits(self.amount), self.currency, self.per.words())
    }
}
