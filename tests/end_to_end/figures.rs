//! The figures document: its names are a contract with whoever reads it.

use serde_json::Value;

use crate::site::{Site, TODAY, succeeds};

const OF_SPECIES: &[&str] = &[
    "gradient.basking_c",
    "gradient.warm_c",
    "gradient.cool_c",
    "gradient.night_c",
    "gradient.span_c",
    "humidity.range_percent",
    "humidity.ceiling_percent",
    "humidity.dew_point_c",
    "light.uvi",
    "light.zone",
    "light.day_hours",
    "commitment.years",
    "commitment.running_cost_per_year",
];

const OF_ANIMAL: &[&str] = &[
    "growth.basis",
    "growth.measurements",
    "growth.adult_length_cm.estimate",
    "growth.adult_length_cm.low",
    "growth.adult_length_cm.high",
    "growth.adult_length_cm.level",
    "enclosure.now.standard",
    "enclosure.now.minimum_cm",
    "enclosure.now.floor_m2",
    "enclosure.now.height_cm",
    "enclosure.now.fits",
    "enclosure.adult.minimum_cm",
    "enclosure.adult.floor_m2",
    "enclosure.adult.height_cm",
    "enclosure.adult.build_cm",
    "enclosure.outgrown.earliest",
    "enclosure.outgrown.expected",
    "enclosure.outgrown.latest",
    "gradient.span_c",
    "humidity.readings",
    "humidity.condenses_below_c",
    "heat.loss_w.typical",
    "heat.loss_w.worst",
    "heat.installed_w",
    "heat.duty_percent",
    "heat.kwh_per_month",
    "heat.cost_per_month",
    "heat.hours_without_power",
    "heat.all_off_above_room_c",
    "moisture.water_ml_per_day",
    "feeding.stage",
    "feeding.next_due",
    "feeding.meal",
    "feeding.mass_g",
    "feeding.energy_ratio",
    "weight.change_percent.days_30",
    "weight.change_percent.days_90",
    "fast.days",
    "hide.footprint_cm",
    "quarantine.until",
    "light.on",
    "light.off",
    "commitment.until",
];

const OF_ITEMS: &[(&str, &[&str])] = &[
    ("humidity.readings", &["zone", "temperature_c", "at_most_percent"]),
    (
        "enclosure",
        &[
            "for",
            "animals",
            "reference_length_cm",
            "standard",
            "minimum_cm",
            "floor_m2",
            "height_cm",
            "water_l",
            "build_cm",
        ],
    ),
    ("feeding", &["stage", "interval_days", "meal", "mass_g", "meals_per_year", "energy_ratio"]),
];

fn document(name: &str) -> Value {
    let output = Site::example(name)
        .command("figures")
        .args(["--format", "json", "--as-of", TODAY])
        .output();
    let output = output.expect("the program runs");
    succeeds(&output);
    serde_json::from_slice(&output.stdout).expect("one JSON document")
}

fn entries<'a>(document: &'a Value, part: &str) -> impl Iterator<Item = (&'a String, &'a Value)> {
    document[part].as_object().expect("a part of the document").iter()
}

/// The value of a name with dots; a parent that is null stands for all below it.
fn figure<'a>(of: &'a Value, name: &str) -> Option<&'a Value> {
    name.split('.')
        .try_fold(of, |value, key| if value.is_null() { Some(value) } else { value.get(key) })
}

fn missing(document: &Value, part: &str, names: &[&str]) -> Vec<String> {
    let mut missing: Vec<String> = Vec::new();
    for name in names {
        let without: Vec<&str> = entries(document, part)
            .filter(|(_, of)| figure(of, name).is_none())
            .map(|(key, _)| key.as_str())
            .collect();
        if !without.is_empty() {
            missing.push(format!("{part}.{name}: {}", without.join(", ")));
        }
    }
    missing
}

#[test]
fn every_species_has_every_figure() {
    let document = document("figures-species");
    assert!(entries(&document, "species").count() > 15, "the library is missing");
    let mut missing = missing(&document, "species", OF_SPECIES);
    for (species, of) in entries(&document, "species") {
        for (name, keys) in OF_ITEMS {
            let Some(items) = figure(of, name).and_then(Value::as_array) else {
                missing.push(format!("{species}: {name} is no list"));
                continue;
            };
            let lacking = |key: &&&str| items.iter().any(|item| item.get(**key).is_none());
            missing.extend(
                keys.iter().filter(lacking).map(|key| format!("{species}: {name}[].{key}")),
            );
        }
    }
    assert!(missing.is_empty(), "not in the document:\n{}", missing.join("\n"));
}

#[test]
fn every_animal_has_every_figure() {
    let document = document("figures-animals");
    assert!(entries(&document, "animals").count() > 10, "the animals are missing");
    let missing = missing(&document, "animals", OF_ANIMAL);
    assert!(missing.is_empty(), "not in the document:\n{}", missing.join("\n"));
}

/// An animal and a species of which hardly anything is known: the most that can be absent.
const BARE_SPECIES: &str = "name = \"Bare\"\nscientific = \"Bare bare\"\nkind = \"snake\"\nhabit = \"ground\"\n\
    diet = \"carnivore\"\n[size]\nmale = \"1 m\"\nfemale = \"1-2 m\"\n";
const BARE_ANIMAL: &str = "name = \"Bare\"\nspecies = \"bare\"\norigin = \"not known\"\n";

/// The dotted names of everything that is null, but for what a standard does not print: that is no failure to work it out.
fn nulls(of: &Value, name: &str, found: &mut Vec<String>) {
    let Some(entries) = of.as_object() else { return };
    let of_standard = entries.get("standard").is_some_and(Value::is_string);
    for (key, value) in entries.iter().filter(|(key, _)| *key != "why") {
        let name = if name.is_empty() { key.clone() } else { format!("{name}.{key}") };
        let unprinted =
            of_standard && ["minimum_cm", "height_cm", "water_l"].contains(&key.as_str());
        if value.is_null() && !unprinted {
            found.push(name);
        } else {
            nulls(value, &name, found);
        }
    }
}

#[test]
fn a_figure_that_cannot_be_worked_out_has_its_reason() {
    let site = Site::example("figures-why");
    site.put("species/bare.toml", BARE_SPECIES);
    site.put("animals/bare.toml", BARE_ANIMAL);
    let output = site.command("figures").args(["--format", "json", "--as-of", TODAY]).output();
    let output = output.expect("the program runs");
    succeeds(&output);
    let document: Value = serde_json::from_slice(&output.stdout).expect("one JSON document");
    let mut silent = Vec::new();
    for part in ["species", "animals"] {
        assert!(entries(&document, part).any(|(key, _)| key == "bare"), "no bare one of {part}");
        for (key, of) in entries(&document, part) {
            let why = of["why"].as_object().unwrap_or_else(|| panic!("{key} has no `why`"));
            let mut absent = Vec::new();
            nulls(of, "", &mut absent);
            for name in absent {
                let told = why.keys().any(|told| {
                    let rest = name.strip_prefix(told.as_str());
                    rest.is_some_and(|rest| rest.is_empty() || rest.starts_with('.'))
                });
                if !told {
                    silent.push(format!("{part}.{key}: {name}"));
                }
            }
        }
    }
    assert!(silent.is_empty(), "null without a reason:\n{}", silent.join("\n"));
}

#[test]
fn the_document_says_its_version_and_its_day() {
    let document = document("figures-day");
    assert_eq!(document["wardsheet"], env!("CARGO_PKG_VERSION"));
    assert_eq!(document["as_of"], TODAY);
}

#[test]
fn ranges_run_from_low_to_high() {
    fn walk(name: &str, value: &Value) {
        match value {
            Value::Object(entries) => {
                entries.iter().for_each(|(key, value)| walk(&format!("{name}.{key}"), value))
            }
            Value::Array(items) => {
                let is_range = !name.ends_with("_cm") && items.len() == 2;
                if let (true, [low, high]) = (is_range, items.as_slice())
                    && let (Some(low), Some(high)) = (low.as_f64(), high.as_f64())
                {
                    assert!(low <= high, "{name}: {low} to {high}");
                }
                items
                    .iter()
                    .enumerate()
                    .for_each(|(place, item)| walk(&format!("{name}.{place}"), item));
            }
            _ => {}
        }
    }
    walk("", &document("figures-ranges"));
}

#[test]
fn a_name_that_is_not_there_is_answered_with_the_nearest() {
    let site = Site::example("figures-name");
    let output = site.command("figures").arg("corn-snaek").output().expect("the program runs");
    assert_eq!(output.status.code(), Some(2));
    assert!(
        crate::site::said(&output).contains("did you mean `corn-snake`"),
        "{}",
        crate::site::said(&output)
    );
}
