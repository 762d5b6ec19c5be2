//! The figures as a JSON document. Its shape is a contract: names, units and nulls stand in the design.

use serde_json::{Map, Value, json};

use super::Figures;
use super::animal::AnimalFigures;
use super::enclosure::Minimum;
use super::humidity::HumidityFigures;
use super::space::Space;
use super::species::SpeciesFigures;
use super::working::{Ends, Why};

/// Builds the document for the species and animals whose names pass; every one where `names` is empty.
pub fn document(figures: &Figures, names: &[String]) -> Value {
    let wanted = |name: &String| names.is_empty() || names.contains(name);
    let species: Map<String, Value> = figures
        .species
        .iter()
        .filter(|(name, _)| wanted(name))
        .map(|(name, of)| (name.clone(), species(of)))
        .collect();
    let animals: Map<String, Value> = figures
        .animals
        .iter()
        .filter(|(name, _)| wanted(name))
        .map(|(name, of)| (name.clone(), animal(of)))
        .collect();
    json!({
        "wardsheet": env!("CARGO_PKG_VERSION"),
        "as_of": figures.as_of.to_string(),
        "species": species,
        "animals": animals,
    })
}

/// A number to six decimals, whole numbers without any; what is not finite is null.
fn number(value: f64) -> Value {
    let rounded = (value * 1e6).round() / 1e6;
    if !rounded.is_finite() {
        Value::Null
    } else if rounded == rounded.trunc() && rounded.abs() < 1e15 {
        Value::from(rounded as i64)
    } else {
        Value::from(rounded)
    }
}

fn maybe(value: Option<f64>) -> Value {
    value.map_or(Value::Null, number)
}

fn range(ends: Option<Ends>) -> Value {
    ends.map_or(Value::Null, |(low, high)| json!([maybe(low), maybe(high)]))
}

fn whole_range(ends: Option<Ends>) -> Value {
    range(ends.map(|(low, high)| (low.map(f64::round), high.map(f64::round))))
}

fn list(values: &[f64]) -> Value {
    Value::Array(values.iter().copied().map(number).collect())
}

fn date(date: Option<jiff::civil::Date>) -> Value {
    date.map_or(Value::Null, |date| Value::String(date.to_string()))
}

fn why(why: &Why) -> Value {
    let mut document = Map::new();
    for (name, reason) in why {
        document.insert(name.clone(), Value::String(reason.clone()));
    }
    Value::Object(document)
}

fn species(of: &SpeciesFigures) -> Value {
    let gradient = &of.gradient;
    let enclosure: Vec<Value> = of
        .enclosure
        .iter()
        .map(|need| {
            let mut entry = json!({
                "for": need.for_whom,
                "animals": need.animals,
                "reference_length_cm": number(need.reference_length_cm),
                "standard": need.standard,
            });
            extend(&mut entry, least(need.least.as_ref().ok()));
            extend(&mut entry, json!({ "build_cm": need.build.as_ref().map_or(Value::Null, |build| list(&build.inside_cm)) }));
            entry
        })
        .collect();
    let feeding: Vec<Value> = of
        .feeding
        .iter()
        .map(|row| {
            json!({
                "stage": row.stage,
                "interval_days": range(row.interval_days),
                "meal": row.meal,
                "mass_g": range(row.mass_g),
                "meals_per_year": whole_range(row.meals_per_year),
            })
        })
        .collect();
    json!({
        "gradient": {
            "basking_c": range(gradient.basking_c),
            "warm_c": range(gradient.warm_c),
            "cool_c": range(gradient.cool_c),
            "night_c": range(gradient.night_c),
            "water_c": range(gradient.water_c),
            "span_c": gradient.span_c.map_or(Value::Null, |(narrowest, widest)| list(&[narrowest, widest])),
        },
        "humidity": humidity(&of.humidity),
        "enclosure": enclosure,
        "feeding": feeding,
        "light": {
            "uvi": range(of.light.uvi),
            "zone": of.light.zone,
            "day_hours": of.light.day_hours.map_or(Value::Null, |hours| list(&hours)),
        },
        "commitment": { "years": range(of.years) },
        "why": why(&of.why),
    })
}

fn humidity(of: &HumidityFigures) -> Value {
    let readings: Vec<Value> = of
        .readings
        .iter()
        .map(|reading| {
            json!({
                "zone": reading.zone,
                "temperature_c": number(reading.temperature_c),
                "at_most_percent": number(reading.at_most_percent),
            })
        })
        .collect();
    json!({
        "range_percent": range(of.range_percent),
        "ceiling_percent": maybe(of.ceiling_percent),
        "dew_point_c": maybe(of.dew_point_c),
        "readings": readings,
    })
}

fn least(least: Option<&Minimum>) -> Value {
    json!({
        "minimum_cm": least.and_then(Minimum::sides_cm).map_or(Value::Null, |sides| list(&sides)),
        "floor_m2": maybe(least.and_then(Minimum::floor_m2)),
        "height_cm": maybe(least.and_then(Minimum::height_cm)),
        "water_l": maybe(least.and_then(|least| least.water_l)),
    })
}

fn extend(entry: &mut Value, more: Value) {
    if let (Value::Object(entry), Value::Object(more)) = (entry, more) {
        entry.extend(more);
    }
}

fn space(space: Option<&Space>) -> Value {
    let Some(space) = space else { return Value::Null };
    let strictest = space.strictest();
    let mut entry = json!({ "standard": strictest.standard });
    extend(&mut entry, least(strictest.least.as_ref().ok()));
    entry
}

fn animal(of: &AnimalFigures) -> Value {
    let growth = &of.growth;
    let adult_length = growth.adult.map_or(Value::Null, |adult| {
        json!({
            "estimate": number(adult.estimate_cm),
            "low": number(adult.low_cm),
            "high": number(adult.high_cm),
            "level": adult.level,
        })
    });
    let mut now = space(of.now.as_ref());
    extend(&mut now, json!({ "fits": of.fits.as_ref().map(Result::is_ok) }));
    let mut grown = space(of.grown.as_ref());
    let build = of.grown.as_ref().and_then(|space| space.build.as_ref());
    extend(
        &mut grown,
        json!({ "build_cm": build.map_or(Value::Null, |build| list(&build.inside_cm)) }),
    );
    let zones: Vec<Value> = of
        .zones
        .iter()
        .map(|zone| {
            json!({ "zone": zone.zone, "at_cm": maybe(zone.at_cm), "day_c": maybe(zone.day_c), "night_c": maybe(zone.night_c) })
        })
        .collect();
    json!({
        "growth": { "basis": growth.basis, "measurements": growth.measurements, "adult_length_cm": adult_length },
        "enclosure": { "now": now, "adult": grown },
        "gradient": { "span_c": maybe(of.span_c), "zones": zones },
        "humidity": humidity(&of.humidity),
        "feeding": {
            "stage": of.feeding.stage_name,
            "next_due": date(of.feeding.next_due),
            "meal": of.feeding.meal,
            "mass_g": range(of.feeding.mass_g),
        },
        "quarantine": { "until": date(of.quarantine_until) },
        "why": why(&of.why),
    })
}
