//! Reads the library's standards as they stand, and stops at anything it does not know.

use std::collections::BTreeMap;

use toml::{Table, Value};
use wardsheet::model::standard::{
    Area, Edges, Extent, Further, HeightCap, Increment, Layout, Measure, Row, SizeClass, Space,
    Standard, WaterDepth,
};

macro_rules! texts {
    ($($name:literal),+ $(,)?) => {
        [$(($name, include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/species/standards/", $name, ".toml")))),+]
    };
}

/// Every standard of the library, by name.
pub(crate) fn all() -> BTreeMap<String, Standard> {
    texts![
        "at-2004",
        "barnard-1996",
        "ch-2008",
        "de-1997",
        "de-bna",
        "de-dght",
        "de-petadv",
        "de-tvt",
        "eu-2010-63",
        "nsw-2013",
        "se-2019",
        "uk-rspca",
    ]
    .into_iter()
    .map(|(name, text)| (name.to_owned(), standard(name, text)))
    .collect()
}

/// One row of one standard.
pub(crate) fn row(standard: &str, row: &str) -> Row {
    let all = all();
    all[standard].rows.get(row).unwrap_or_else(|| panic!("{standard} has no row {row}")).clone()
}

fn standard(name: &str, text: &str) -> Standard {
    let mut table: Table = text.parse().expect("valid TOML");
    let rows = take(&mut table, "row").expect("rows");
    let defaults = Defaults::of(&mut table, None);
    let read = Standard {
        name: name.to_owned(),
        title: words(&mut table, "title").expect("title"),
        issuer: words(&mut table, "issuer").expect("issuer"),
        year: take(&mut table, "year").map(|year| year.to_string().replace('"', "")).expect("year"),
        where_: words(&mut table, "where").expect("where"),
        status: words(&mut table, "status").expect("status"),
        source: words(&mut table, "source").expect("source"),
        note: words(&mut table, "note"),
        rows: inner(rows)
            .into_iter()
            .map(|(name, value)| (name, read_row(inner(value), &defaults)))
            .collect(),
    };
    close(table);
    read
}

#[derive(Clone)]
struct Defaults {
    animals: u32,
    measure: Measure,
    measure_assumed: bool,
    edges: Edges,
    height_cap: Option<HeightCap>,
    tolerance_share: Option<f64>,
}

impl Defaults {
    fn of(table: &mut Table, above: Option<&Defaults>) -> Defaults {
        let animals =
            take(table, "animals").map(|value| value.as_integer().expect("a count") as u32);
        let measure = words(table, "measure").map(|text| measure(&text));
        let edges = words(table, "edges").map(|text| match text.as_str() {
            "shared" => Edges::Shared,
            "up to" => Edges::UpTo,
            other => panic!("edges {other}"),
        });
        let floor_grows = flag(table, "floor_grows");
        let cap = words(table, "height_cap")
            .map(|text| HeightCap { height_cm: length_cm(&text), floor_grows });
        Defaults {
            animals: animals.or(above.map(|above| above.animals)).expect("animals"),
            measure: measure.or(above.map(|above| above.measure)).expect("measure"),
            measure_assumed: flag(table, "measure_assumed")
                || above.is_some_and(|above| above.measure_assumed),
            edges: edges.or(above.map(|above| above.edges)).expect("edges"),
            height_cap: cap.or(above.and_then(|above| above.height_cap)),
            tolerance_share: words(table, "tolerance")
                .map(|text| share(&text))
                .or(above.and_then(|above| above.tolerance_share)),
        }
    }
}

fn read_row(mut table: Table, defaults: &Defaults) -> Row {
    let own = Defaults::of(&mut table, Some(defaults));
    let read = Row {
        taxon: words(&mut table, "taxon").expect("taxon"),
        printed: words(&mut table, "printed"),
        note: words(&mut table, "note"),
        animals: own.animals,
        measure: own.measure,
        measure_assumed: own.measure_assumed,
        edges: own.edges,
        height_cap: own.height_cap,
        singly: flag(&mut table, "singly"),
        tolerance_share: own.tolerance_share,
        classes: list(take(&mut table, "class").expect("classes")).into_iter().map(class).collect(),
    };
    close(table);
    read
}

fn class(mut table: Table) -> SizeClass {
    let mut layouts = vec![layout(&mut table)];
    for mut other in take(&mut table, "or").map(list).unwrap_or_default() {
        layouts.push(layout(&mut other));
        close(other);
    }
    let most = words(&mut table, "water_depth_at_most").map(|text| extent(&text));
    let of = words(&mut table, "water_depth_of").map(|text| measure(&text));
    let read = SizeClass {
        from_cm: words(&mut table, "from").map(|text| length_cm(&text)),
        up_to_cm: words(&mut table, "up_to").map(|text| length_cm(&text)),
        up_to_months: words(&mut table, "up_to_age").map(|text| unit(&text, "months")),
        adult: flag(&mut table, "adult"),
        over: flag(&mut table, "over"),
        space: Space {
            layouts,
            least_side: words(&mut table, "least_side").map(|text| extent(&text)),
            water_l: words(&mut table, "water").map(|text| unit(&text, "l")),
            water_floor: words(&mut table, "water_floor").map(|text| area(&text)),
            water_depth: words(&mut table, "water_depth").map(|text| WaterDepth {
                least: extent(&text),
                most,
                of,
            }),
            land: words(&mut table, "land").map(|text| area(&text)),
            group_floor_m2: words(&mut table, "group_floor").map(|text| unit(&text, "m2")),
        },
        further: take(&mut table, "further")
            .map(list)
            .unwrap_or_default()
            .into_iter()
            .map(further)
            .collect(),
    };
    close(table);
    read
}

fn layout(table: &mut Table) -> Layout {
    Layout {
        length: words(table, "length").map(|text| extent(&text)),
        width: words(table, "width").map(|text| extent(&text)),
        height: words(table, "height").map(|text| extent(&text)),
        floor: words(table, "floor").map(|text| area(&text)),
    }
}

fn further(mut table: Table) -> Further {
    let count = |value: Value| value.as_integer().expect("a count") as u32;
    let read = Further {
        from: take(&mut table, "from").map(count),
        to: take(&mut table, "to").map(count),
        floor: words(&mut table, "floor").map(|text| {
            if text.ends_with('%') {
                Increment::Share(share(&text))
            } else {
                Increment::Area(area(&text))
            }
        }),
        volume_share: words(&mut table, "volume").map(|text| share(&text)),
        height_cm: words(&mut table, "height").map(|text| length_cm(&text)),
        water_l: words(&mut table, "water").map(|text| unit(&text, "l")),
        land: words(&mut table, "land").map(|text| area(&text)),
        water_floor: words(&mut table, "water_floor").map(|text| area(&text)),
        compounding: flag(&mut table, "compounding"),
    };
    close(table);
    read
}

fn measure(text: &str) -> Measure {
    [
        Measure::TotalLength,
        Measure::SnoutVentLength,
        Measure::CarapaceLength,
        Measure::CarapaceWidth,
    ]
    .into_iter()
    .find(|measure| measure.to_string() == text)
    .unwrap_or_else(|| panic!("measure {text}"))
}

fn extent(text: &str) -> Extent {
    match text.strip_suffix(" x") {
        Some(factor) => Extent::Multiple(match factor.split_once('/') {
            Some((over, under)) => decimal(over) / decimal(under),
            None => decimal(factor),
        }),
        None => Extent::Centimetres(length_cm(text)),
    }
}

fn area(text: &str) -> Area {
    match text.split_once(' ') {
        Some((value, "m2")) => Area::SquareMetres(decimal(value)),
        Some((value, "cm2")) => Area::SquareMetres(decimal(value) / 10_000.0),
        Some((value, "x2")) => Area::SquaredMultiple(decimal(value)),
        _ => panic!("area {text}"),
    }
}

fn length_cm(text: &str) -> f64 {
    match text.split_once(' ') {
        Some((value, "cm")) => decimal(value),
        Some((value, "m")) => decimal(value) * 100.0,
        _ => panic!("length {text}"),
    }
}

fn share(text: &str) -> f64 {
    unit(text, "%") / 100.0
}

fn unit(text: &str, unit: &str) -> f64 {
    decimal(text.strip_suffix(unit).unwrap_or_else(|| panic!("{text} is not in {unit}")).trim())
}

fn decimal(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("number {text}"))
}

fn take(table: &mut Table, key: &str) -> Option<Value> {
    table.remove(key)
}

fn words(table: &mut Table, key: &str) -> Option<String> {
    take(table, key)
        .map(|value| value.as_str().unwrap_or_else(|| panic!("{key} is not text")).to_owned())
}

fn flag(table: &mut Table, key: &str) -> bool {
    take(table, key).is_some_and(|value| value.as_bool().expect("true or false"))
}

fn list(value: Value) -> Vec<Table> {
    match value {
        Value::Array(items) => items.into_iter().map(inner).collect(),
        one => vec![inner(one)],
    }
}

fn inner(value: Value) -> Table {
    match value {
        Value::Table(table) => table,
        other => panic!("{other} is not a table"),
    }
}

fn close(table: Table) {
    assert!(table.is_empty(), "unknown keys: {:?}", table.keys().collect::<Vec<_>>());
}
