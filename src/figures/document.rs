//! The figures as a JSON document. Its shape is a contract: names, units and nulls stand in the design.

use serde_json::{Map, Value, json};

use super::Figures;
use super::animal::{AnimalFigures, ZoneReading};
use super::enclosure::Minimum;
use super::growth::GrowthFigures;
use super::heat::HeatFigures;
use super::humidity::{HumidityFigures, Reading};
use super::logger::{LoggerFigures, Shares, Spell};
use super::overriding::Overriding;
use super::space::Space;
use super::species::SpeciesFigures;
use super::store::StoreFigures;
use super::upkeep::clock;
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
        "store": store(&figures.store),
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
                "energy_ratio": pair(row.energy_ratio),
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
        "commitment": {
            "years": range(of.years),
            "running_cost_per_year": pair(of.cost.as_ref().map(|cost| cost.per_year)),
            "currency": of.cost.as_ref().map(|cost| cost.currency.clone()),
        },
        "overrides": of.overrides.iter().map(overriding).collect::<Vec<Value>>(),
        "why": why(&of.why),
    })
}

/// A figure that stands in place of a farther folder's, with what that folder says. The texts are those of the files.
fn overriding(entry: &Overriding) -> Value {
    json!({
        "figure": entry.figure,
        "value": entry.value,
        "before": entry.before,
        "by": entry.by,
        "reason": entry.reason,
        "on": date(entry.on),
        "sources": entry.sources,
        "before_sources": entry.before_sources,
    })
}

fn readings(readings: &[Reading]) -> Vec<Value> {
    let reading = |reading: &Reading| {
        json!({
            "zone": reading.zone,
            "temperature_c": number(reading.temperature_c),
            "at_most_percent": number(reading.at_most_percent),
        })
    };
    readings.iter().map(reading).collect()
}

fn humidity(of: &HumidityFigures) -> Value {
    json!({
        "range_percent": range(of.range_percent),
        "ceiling_percent": maybe(of.ceiling_percent),
        "dew_point_c": maybe(of.dew_point_c),
        "readings": readings(&of.readings),
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
    let strictest = space.map(Space::strictest);
    let mut entry = json!({ "standard": strictest.map(|need| need.standard.clone()) });
    extend(&mut entry, least(strictest.and_then(|need| need.least.as_ref().ok())));
    entry
}

fn pair(pair: Option<(f64, f64)>) -> Value {
    pair.map_or(Value::Null, |(low, high)| list(&[low, high]))
}

fn animal(of: &AnimalFigures) -> Value {
    json!({
        "growth": growth(&of.growth),
        "enclosure": enclosure(of),
        "gradient": { "span_c": maybe(of.span_c), "zones": zones(of) },
        "humidity": own_humidity(of),
        "loggers": of.loggers.iter().map(logger).collect::<Vec<_>>(),
        "heat": heat(of.heat.as_ref()),
        "moisture": {
            "water_ml_per_day": maybe(of.moisture.as_ref().map(|moisture| moisture.water_ml_per_day)),
            "spray_ml": maybe(of.moisture.as_ref().and_then(|moisture| moisture.spray_ml)),
        },
        "feeding": {
            "stage": of.feeding.stage_name,
            "next_due": date(of.feeding.next_due),
            "due_until": date(of.feeding.due_until),
            "meal": of.feeding.meal,
            "prey_class": of.feeding.prey_class,
            "mass_g": range(of.feeding.mass_g),
            "energy_ratio": pair(of.energy.as_ref().map(|(ratio, _)| *ratio)),
        },
        "weight": { "change_percent": {
            "days_30": maybe(of.upkeep.weight_percent[0]),
            "days_90": maybe(of.upkeep.weight_percent[1]),
        } },
        "fast": { "days": of.upkeep.fast_days, "limit_days": maybe(of.upkeep.fast_limit_days) },
        "hide": { "footprint_cm": { "now": maybe(of.upkeep.coil_cm[0]), "adult": maybe(of.upkeep.coil_cm[1]) } },
        "furniture": { "branch_load_kg": {
            "now": maybe(of.upkeep.branch_kg[0]),
            "adult": maybe(of.upkeep.branch_kg[1]),
        } },
        "quarantine": { "until": date(of.quarantine_until) },
        "light": {
            "on": of.upkeep.lights_h.map(|(on, _)| clock(on)),
            "off": of.upkeep.lights_h.map(|(_, off)| clock(off)),
            "uv_distance_cm": of.lamps.iter().flatten().map(|lamp| list(&[lamp.nearest_cm, lamp.farthest_cm])).collect::<Vec<_>>(),
        },
        "commitment": {
            "until": of.upkeep.until.map(|(first, last)| json!([first, last])),
            "running_cost_per_year": pair(of.cost.as_ref().map(|cost| cost.per_year)),
            "currency": of.cost.as_ref().map(|cost| cost.currency.clone()),
        },
        "why": why(&of.why),
    })
}

fn growth(growth: &GrowthFigures) -> Value {
    let adult_length = growth.adult.map_or(Value::Null, |adult| {
        json!({
            "estimate": number(adult.estimate_cm),
            "low": number(adult.low_cm),
            "high": number(adult.high_cm),
            "level": adult.level,
        })
    });
    json!({
        "basis": growth.basis,
        "measurements": growth.measurements,
        "adult_length_cm": adult_length,
        "still_to_come_cm": maybe(growth.still_to_come_cm),
        "not_enough_yet": growth.not_enough_yet,
    })
}

fn enclosure(of: &AnimalFigures) -> Value {
    let mut now = space(of.now.as_ref());
    extend(&mut now, json!({ "fits": of.fits.as_ref().map(Result::is_ok) }));
    let with_build = |of: Option<&Space>| {
        let mut entry = space(of);
        let build = of.and_then(|space| space.build.as_ref());
        extend(
            &mut entry,
            json!({ "build_cm": build.map_or(Value::Null, |build| list(&build.inside_cm)) }),
        );
        entry
    };
    let dates = of.outgrown.as_ref().map(|outgrown| outgrown.dates).unwrap_or_default();
    let outgrown = json!({
        "earliest": date(dates.earliest),
        "expected": date(dates.expected),
        "latest": date(dates.latest),
        "at_length_cm": maybe(of.outgrown.as_ref().map(|outgrown| outgrown.at_cm)),
    });
    json!({
        "now": now,
        "adult": with_build(of.grown.as_ref()),
        "adult_at_most": with_build(of.grown_at_most.as_ref()),
        "outgrown": outgrown,
    })
}

fn zones(of: &AnimalFigures) -> Vec<Value> {
    let zone = |zone: &ZoneReading| {
        json!({
            "zone": zone.zone,
            "at_cm": maybe(zone.at_cm),
            "day_c": maybe(zone.day_c),
            "night_c": maybe(zone.night_c),
            "humidity_percent": maybe(zone.humidity_percent),
        })
    };
    of.zones.iter().map(zone).collect()
}

fn logger(of: &LoggerFigures) -> Value {
    let share = |of: Option<(Ends, Shares)>| {
        of.and_then(|(_, shares)| shares.percent()).map_or(Value::Null, |share| list(&share))
    };
    let spell = |spell: Option<Spell>| {
        json!({
            "from": spell.map(|spell| spell.from.to_string()),
            "hours": maybe(spell.map(|spell| spell.hours)),
            "highest": maybe(spell.map(|spell| spell.highest)),
        })
    };
    json!({
        "probe": of.probe,
        "from": of.ends.0.to_string(),
        "until": of.ends.1.to_string(),
        "readings": of.readings,
        "step_minutes": number(of.step_min),
        "day_share_percent": share(of.day),
        "night_share_percent": share(of.night),
        "humidity_share_percent": share(of.humidity),
        "ceiling_percent": maybe(of.ceiling_percent),
        "above_ceiling": spell(of.above_ceiling),
        "never_above_c": maybe(of.never_above_c),
        "above_never": spell(of.above_never),
        "coldest_night": date(of.coldest_night.map(|(evening, _)| evening)),
        "coldest_night_c": maybe(of.coldest_night.map(|(_, lowest)| lowest)),
        "widest_swing_k": maybe(of.widest_swing.map(|(_, swing)| swing)),
        "usual_swing_k": maybe(of.usual_swing),
        "gaps": of.gaps.0,
        "gap_hours": number(of.gaps.1),
    })
}

fn own_humidity(of: &AnimalFigures) -> Value {
    let mut entry = humidity(&of.humidity);
    extend(
        &mut entry,
        json!({ "condenses_below_c": maybe(of.condenses_below_c), "night_readings": readings(&of.humidity.night_readings) }),
    );
    entry
}

fn store(of: &StoreFigures) -> Value {
    let food: Map<String, Value> = of
        .food
        .iter()
        .map(|(name, food)| {
            let entry = json!({ "meals": food.meals, "pieces": number(food.pieces), "mass_g": number(food.mass_g) });
            (name.clone(), entry)
        })
        .collect();
    let mixtures: Map<String, Value> = of
        .mixtures
        .iter()
        .map(|(name, mixture)| {
            let entry = match mixture {
                Ok(mixture) => json!({ "bottle_ml": number(mixture.bottle_ml), "water_ml": number(mixture.water_ml) }),
                Err(reason) => json!({ "why": reason.to_string() }),
            };
            (name.clone(), entry)
        })
        .collect();
    json!({ "weeks": of.weeks, "food": food, "disinfectants": mixtures })
}

fn heat(of: Option<&HeatFigures>) -> Value {
    let figure = |figure: fn(&HeatFigures) -> Option<f64>| maybe(of.and_then(figure));
    json!({
        "loss_w": of.map_or(Value::Null, |heat| json!({
            "typical": number(heat.typical_w),
            "worst": number(heat.worst_w),
            "night": number(heat.night_w),
        })),
        "installed_w": figure(|heat| Some(heat.installed_w)),
        "duty_percent": figure(|heat| heat.duty_percent),
        "kwh_per_month": figure(|heat| Some(heat.kwh_per_month)),
        "cost_per_month": figure(|heat| heat.cost_per_month.as_ref().map(|(amount, _)| *amount)),
        "hours_without_power": figure(|heat| heat.hours_without_power),
        "all_off_above_room_c": figure(|heat| heat.all_off_above_room_c),
    })
}
