//! The figures that are worked out, compared leaf by leaf in the document that programs read.

use std::collections::BTreeMap;

use serde_json::Value;

use crate::figures::document::document;

use super::stated::told;
use super::{Change, Changes, State, Weight, Whose};

/// Figures of the document that only repeat what a file states; they are told where they are stated.
const REPEATS: [&str; 16] = [
    "gradient.basking_c",
    "gradient.warm_c",
    "gradient.cool_c",
    "gradient.night_c",
    "gradient.water_c",
    "humidity.range_percent",
    "humidity.ceiling_percent",
    "light.uvi",
    "light.zone",
    "commitment.years",
    "commitment.currency",
    "growth.basis",
    "growth.measurements",
    "feeding.next_due",
    "feeding.due_until",
    "fast.days",
];

/// Ends of names and the unit that each stands for.
const UNITS: [(&str, &str); 17] = [
    ("_percent", "%"),
    ("_days", "days"),
    ("days", "days"),
    ("_hours", "hours"),
    ("_kg", "kg"),
    ("_g", "g"),
    ("_cm", "cm"),
    ("_m2", "m²"),
    ("_ml", "ml"),
    ("_ml_per_day", "ml a day"),
    ("_l", "l"),
    ("_w", "W"),
    ("kwh_per_month", "kWh a month"),
    ("meals_per_year", "meals a year"),
    ("room_c", "K"),
    ("span_c", "K"),
    ("_c", "°C"),
];

type Leaves = BTreeMap<String, Value>;

pub(super) fn all(changes: &mut Changes, old: State<'_>, new: State<'_>) {
    let (before, after) = (document(old.figures, &[]), document(new.figures, &[]));
    for (part, whose) in [("species", Whose::Species), ("animals", Whose::Animal)] {
        let empty = serde_json::Map::new();
        let entries = |document: &Value| document[part].as_object().cloned().unwrap_or_default();
        let (before, after) = (entries(&before), entries(&after));
        for (key, was) in &before {
            let Some(is) = after.get(key) else { continue };
            if was == is {
                continue;
            }
            let animals = match whose {
                Whose::Animal => vec![key.clone()],
                Whose::Species => moved_animals(old, new, key),
            };
            let (was, is) = (
                leaves(was.as_object().unwrap_or(&empty)),
                leaves(is.as_object().unwrap_or(&empty)),
            );
            let mut names: Vec<&String> = was.keys().chain(is.keys()).collect();
            names.sort();
            names.dedup();
            for name in names {
                let (was, is) = (was.get(name), is.get(name));
                if was != is && !repeats(whose, name) {
                    changes.figures.push(change(whose, key, name, (was, is), &animals));
                }
            }
        }
    }
}

/// The animals of a species whose own figures differ with it.
fn moved_animals(old: State<'_>, new: State<'_>, species: &str) -> Vec<String> {
    let kept = new.model.animals.iter().filter(|(name, animal)| {
        animal.species.name == species
            && animal.is_kept()
            && old.figures.animals.get(*name) != new.figures.animals.get(*name)
    });
    kept.map(|(name, _)| name.clone()).collect()
}

fn repeats(whose: Whose, name: &str) -> bool {
    let stated = whose == Whose::Species
        && name.starts_with("feeding.")
        && [".interval_days", ".mass_g"].iter().any(|end| name.ends_with(end));
    stated || REPEATS.contains(&name)
}

fn change(
    whose: Whose,
    key: &str,
    name: &str,
    (before, after): (Option<&Value>, Option<&Value>),
    animals: &[String],
) -> Change {
    let unit = UNITS
        .iter()
        .filter(|(end, _)| name.ends_with(end))
        .max_by_key(|(end, _)| end.len())
        .map_or("", |(_, unit)| *unit);
    let shown = |value: Option<&Value>| {
        value.filter(|value| !value.is_null()).map(|value| with_unit(&plain(value), unit))
    };
    let by = before.zip(after).and_then(|(old, new)| {
        let ((old_low, old_high), (low, high)) = (ends(old)?, ends(new)?);
        told((Some(low - old_low), Some(high - old_high)), unit)
    });
    let grows = before.zip(after).and_then(|(old, new)| Some(ends(new)?.1 > ends(old)?.1));
    Change {
        weight: Weight::of(name),
        loosened: name.ends_with("at_most_percent") && grows.unwrap_or(after.is_none()),
        whose,
        key: key.to_owned(),
        figure: name.to_owned(),
        label: "worked out".to_owned(),
        before: shown(before),
        after: shown(after),
        by,
        sources: None,
        animals: animals.to_vec(),
    }
}

fn with_unit(number: &str, unit: &str) -> String {
    if unit.is_empty() { number.to_owned() } else { format!("{number}\u{a0}{unit}") }
}

/// A number, or the two ends of a range.
fn ends(value: &Value) -> Option<(f64, f64)> {
    match value {
        Value::Number(number) => number.as_f64().map(|number| (number, number)),
        Value::Array(items) => match items.as_slice() {
            [low, high] => Some((low.as_f64()?, high.as_f64()?)),
            _ => None,
        },
        _ => None,
    }
}

fn plain(value: &Value) -> String {
    let number = |value: &Value| match value {
        Value::Number(number) => {
            number.as_f64().map_or_else(String::new, |n| crate::figures::working::number(n, 2))
        }
        Value::String(text) => text.clone(),
        Value::Null => "open".to_owned(),
        Value::Bool(true) => "yes".to_owned(),
        Value::Bool(false) => "no".to_owned(),
        other => other.to_string(),
    };
    match value {
        Value::Array(items) if items.len() == 2 => {
            format!("{}–{}", number(&items[0]), number(&items[1]))
        }
        Value::Array(items) => items.iter().map(number).collect::<Vec<_>>().join(" × "),
        other => number(other),
    }
}

/// Every value of an entry by its dotted name; an item of a list goes by what it is about, not by its place.
fn leaves(entry: &serde_json::Map<String, Value>) -> Leaves {
    let mut found = Leaves::new();
    for (key, value) in entry.iter().filter(|(key, _)| *key != "why") {
        walk(key, value, &mut found);
    }
    found
}

fn walk(name: &str, value: &Value, found: &mut Leaves) {
    match value {
        Value::Object(fields) => {
            fields.iter().for_each(|(key, value)| walk(&format!("{name}.{key}"), value, found));
        }
        Value::Array(items) if items.iter().any(Value::is_object) => {
            for (place, item) in items.iter().enumerate() {
                let about = ["zone", "probe", "stage", "standard", "for"].iter();
                let about: Vec<String> = about
                    .filter_map(|key| item.get(key)?.as_str())
                    .map(|word| word.replace([' ', '.'], "-"))
                    .collect();
                let about =
                    if about.is_empty() { (place + 1).to_string() } else { about.join("/") };
                walk(&format!("{name}.{about}"), item, found);
            }
        }
        other => drop(found.insert(name.to_owned(), other.clone())),
    }
}
