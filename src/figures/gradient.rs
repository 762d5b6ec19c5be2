//! The thermal gradient of a species: its zones, and the span from the basking spot to the cool side.

use crate::model::species::Temperatures;
use crate::quantity::{Range, Temperature};

use super::working::{Ends, Why, Working, ends, number};

/// The zones of a species in °C, and the span between them in kelvin.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Gradient {
    /// The surface at the basking spot.
    pub basking_c: Option<Ends>,
    /// The warm side.
    pub warm_c: Option<Ends>,
    /// The cool side.
    pub cool_c: Option<Ends>,
    /// By night.
    pub night_c: Option<Ends>,
    /// The water, for kinds that live in it.
    pub water_c: Option<Ends>,
    /// Basking top minus cool floor: its narrowest and its widest reading.
    pub span_c: Option<(f64, f64)>,
    /// How the span was worked out.
    pub working: Option<Working>,
}

/// Works out the gradient.
///
/// Temperatures in °C; the span is a difference of temperatures. Its narrowest reading is the basking spot's (or, for a
/// kind without one, the warm side's) low end minus the cool side's high end, its widest the high end minus the low end.
/// Absent, with the reason, where either zone is not given or open. Source: definition.
///
/// # Examples
/// A basking spot of 30–32 °C over a cool side of 22–24 °C spans 30 − 24 = 6 to 32 − 22 = 10 °C.
pub fn gradient(temperature: &Temperatures, why: &mut Why) -> Gradient {
    let zone = |figure: &Option<crate::model::Cited<Range<Temperature>>>| {
        figure.as_ref().map(|cited| ends(&cited.value))
    };
    let mut gradient = Gradient {
        basking_c: zone(&temperature.basking),
        warm_c: zone(&temperature.warm),
        cool_c: zone(&temperature.cool),
        night_c: zone(&temperature.night),
        water_c: zone(&temperature.water),
        span_c: None,
        working: None,
    };
    let (name, top) = match gradient.basking_c {
        Some(ends) => ("basking spot", Some(ends)),
        None => ("warm side", gradient.warm_c),
    };
    match span(top, gradient.cool_c) {
        Ok((narrowest, widest, [top_low, top_high, cool_low, cool_high])) => {
            let mut working = Working::new(
                "Gradient span",
                format!(
                    "narrowest = {name} low − cool side high; widest = {name} high − cool side low"
                ),
                "definition",
            );
            let n = |value| number(value, 2);
            working.step(format!(
                "narrowest: {} − {} = {} °C",
                n(top_low),
                n(cool_high),
                n(narrowest)
            ));
            working.step(format!("widest: {} − {} = {} °C", n(top_high), n(cool_low), n(widest)));
            if gradient.basking_c.is_none() {
                working
                    .assume("This kind has no basking spot; the warm side is its warmest place.");
            }
            gradient.span_c = Some((narrowest, widest));
            gradient.working = Some(working);
        }
        Err(reason) => {
            why.insert("gradient.span_c".to_owned(), reason.to_owned());
        }
    }
    gradient
}

type Span = (f64, f64, [f64; 4]);

fn span(top: Option<Ends>, cool: Option<Ends>) -> Result<Span, &'static str> {
    let (top_low, top_high) = top.ok_or("neither a basking spot nor a warm side is given")?;
    let (cool_low, cool_high) = cool.ok_or("no cool side is given")?;
    let (Some(top_low), Some(top_high)) = (top_low, top_high) else {
        return Err("the warm end is given as a bound, not as a range");
    };
    let (Some(cool_low), Some(cool_high)) = (cool_low, cool_high) else {
        return Err("the cool side is given as a bound, not as a range");
    };
    Ok((top_low - cool_high, top_high - cool_low, [top_low, top_high, cool_low, cool_high]))
}
