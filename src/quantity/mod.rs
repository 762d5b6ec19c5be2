//! Measured things: temperatures, lengths, masses, humidities, spans of time and their like.
//!
//! The flow is text, pieces, ends, range, text again. [`parse_range`] cuts a figure into pieces (`pieces`), reads its
//! ends with their units (`parse`), and refuses what no living animal could be meant by; what is wrong comes back as a
//! [`Fault`] that says at which bytes and what was probably meant (`suggest`). A [`Range`] is then an ordinary value, and
//! [`Range::print`] sets it for the page in both systems, never with more precision than it was given. Nothing here
//! knows an animal.
//!
//! ```
//! use wardsheet::quantity::{Rounding, System, Temperature, parse_range};
//! let warm = parse_range::<Temperature>("26-28 C").unwrap();
//! let printed = warm.print(System::Metric, Rounding::Inward);
//! assert_eq!(printed.to_string().replace('\u{a0}', " "), "26–28 °C (79–82 °F)");
//! assert_eq!(parse_range::<Temperature>("28").unwrap_err().message, "`28` has no unit");
//! ```

mod fault;
mod unit;

mod decimals;
mod dimensions;
mod energy;
mod latitude;
mod length;
mod mass;
mod parse;
mod pieces;
mod price;
mod print;
mod range;
mod rate;
mod scale;
mod share;
mod span;
mod suggest;
mod temperature;
pub use decimals::decimals;
pub use dimensions::{Dimensions, parse_dimensions};
pub use energy::{Energy, Power};
pub use fault::{Fault, FaultKind, Place};
pub use latitude::Latitude;
pub use length::{Area, Length, Volume};
pub use mass::Mass;
pub use parse::{parse_one, parse_range};
pub use price::{Money, Price, PriceUnit, parse_money, parse_price};
pub use print::{Printed, print_one};
pub use range::{Range, Reversed};
pub use rate::{PerHour, PerYear};
pub use scale::{Rounding, Scale, System};
pub use share::{Count, Humidity, Multiple, Share, UvIndex};
pub use span::Span;
pub use temperature::{Temperature, TemperatureDifference};
pub use unit::{Quantity, Unit};

#[cfg(test)]
mod faults_told;
#[cfg(test)]
mod figures_printed;
#[cfg(test)]
mod figures_read;
#[cfg(test)]
mod laws;
