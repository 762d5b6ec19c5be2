//! `species/standards/NAME.toml`: a published standard as data.

use std::collections::BTreeMap;

use crate::finding::Finding;
use crate::model::Standard;
use crate::model::standard::{
    Area, Edges, Extent, Further, HeightCap, Increment, Layout, Measure, Row, SizeClass, Space,
    WaterDepth,
};
use crate::model::word::Word;
use crate::quantity::{self, Fault, FaultKind, Length, Multiple, Share, Span, Volume};
use crate::source::SourceFile;

use super::bibliography::year;
use super::table::{self, Table};

impl Word for Measure {
    const ALL: &'static [(Measure, &'static str)] = &[
        (Measure::TotalLength, "total length"),
        (Measure::SnoutVentLength, "snout-vent length"),
        (Measure::CarapaceLength, "carapace length"),
        (Measure::CarapaceWidth, "carapace width"),
    ];
}

impl Word for Edges {
    const ALL: &'static [(Edges, &'static str)] =
        &[(Edges::Shared, "shared"), (Edges::UpTo, "up to")];
}

const REQUIRED: [(&str, &str); 3] = [
    ("title", "its title as published"),
    ("issuer", "who issued it"),
    ("row", "its rows: [row.NAME]"),
];

pub(super) fn standard(name: &str, file: &SourceFile) -> (Option<Standard>, Vec<Finding>) {
    table::read(file.id, &file.text, |top| {
        for (key, what) in REQUIRED {
            top.missing(key, what);
        }
        let defaults = Defaults::take(top, &Defaults::default());
        let rows = top.table("row").map(|table| rows(&table, &defaults)).unwrap_or_default();
        let (where_, status) = (top.text("where"), top.text("status"));
        let (source, note, year) = (top.text("source"), top.text("note"), year(top));
        Some(Standard {
            name: name.to_owned(),
            title: top.text("title")?,
            issuer: top.text("issuer")?,
            year,
            where_: where_.unwrap_or_default(),
            status: status.unwrap_or_default(),
            source: source.unwrap_or_default(),
            note,
            rows,
        })
    })
}

/// What a row takes from the standard where it says nothing itself.
struct Defaults {
    animals: u32,
    measure: Measure,
    measure_assumed: bool,
    edges: Edges,
    height_cap_cm: Option<f64>,
    floor_grows: bool,
    singly: bool,
    tolerance_share: Option<f64>,
}

impl Default for Defaults {
    fn default() -> Defaults {
        Defaults {
            animals: 1,
            measure: Measure::TotalLength,
            measure_assumed: true,
            edges: Edges::Shared,
            height_cap_cm: None,
            floor_grows: false,
            singly: false,
            tolerance_share: None,
        }
    }
}

impl Defaults {
    fn take(table: &Table<'_, '_>, above: &Defaults) -> Defaults {
        let flag = |key, above| table.flag(key).map_or(above, |(flag, _)| flag);
        let measure = table.word::<Measure>("measure");
        let assumed = above.measure_assumed && measure.is_none();
        Defaults {
            animals: table.number("animals").map_or(above.animals, |(animals, _)| animals).max(1),
            measure: measure.map_or(above.measure, |(measure, _)| measure),
            measure_assumed: flag("measure_assumed", assumed),
            edges: table.word("edges").map_or(above.edges, |(edges, _)| edges),
            height_cap_cm: cm(table, "height_cap").or(above.height_cap_cm),
            floor_grows: flag("floor_grows", above.floor_grows),
            singly: flag("singly", above.singly),
            tolerance_share: share(table, "tolerance").or(above.tolerance_share),
        }
    }
}

fn cm(table: &Table<'_, '_>, key: &str) -> Option<f64> {
    table.one::<Length>(key).map(|(length, _)| length.cm())
}

fn share(table: &Table<'_, '_>, key: &str) -> Option<f64> {
    table.one::<Share>(key).map(|(share, _)| share.fraction())
}

fn litres(table: &Table<'_, '_>, key: &str) -> Option<f64> {
    table.one::<Volume>(key).map(|(volume, _)| volume.litres())
}

fn rows(table: &Table<'_, '_>, defaults: &Defaults) -> BTreeMap<String, Row> {
    let mut rows = BTreeMap::new();
    for name in table.names() {
        let Some(inner) = table.table(&name.name) else { continue };
        let own = Defaults::take(&inner, defaults);
        let row = Row {
            taxon: inner.text("taxon").unwrap_or_else(|| name.name.clone()),
            printed: inner.text("printed"),
            note: inner.text("note"),
            animals: own.animals,
            measure: own.measure,
            measure_assumed: own.measure_assumed,
            edges: own.edges,
            height_cap: own
                .height_cap_cm
                .map(|height_cm| HeightCap { height_cm, floor_grows: own.floor_grows }),
            singly: own.singly,
            tolerance_share: own.tolerance_share,
            classes: inner.tables("class").iter().map(class).collect(),
        };
        if row.classes.is_empty() {
            inner.missing("class", &format!("at least one [[row.{}.class]]", name.name));
        } else {
            rows.insert(name.name, row);
        }
        inner.close();
    }
    table.close();
    rows
}

fn class(table: &Table<'_, '_>) -> SizeClass {
    let mut layouts = vec![layout(table)];
    for other in table.tables("or") {
        layouts.push(layout(&other));
        other.close();
    }
    let class = SizeClass {
        from_cm: cm(table, "from"),
        up_to_cm: cm(table, "up_to"),
        up_to_months: table.one::<Span>("up_to_age").map(|(span, _)| span.years() * 12.0),
        adult: table.flag("adult").is_some_and(|(adult, _)| adult),
        over: table.flag("over").is_some_and(|(over, _)| over),
        space: Space {
            layouts,
            least_side: extent(table, "least_side"),
            water_l: litres(table, "water"),
            water_floor: area(table, "water_floor"),
            water_depth: water_depth(table),
            land: area(table, "land"),
            group_floor_m2: table
                .one::<quantity::Area>("group_floor")
                .map(|(area, _)| area.square_metres()),
        },
        further: table.tables("further").iter().map(further).collect(),
    };
    table.close();
    class
}

fn layout(table: &Table<'_, '_>) -> Layout {
    Layout {
        length: extent(table, "length"),
        width: extent(table, "width"),
        height: extent(table, "height"),
        floor: area(table, "floor"),
    }
}

fn water_depth(table: &Table<'_, '_>) -> Option<WaterDepth> {
    let most = extent(table, "water_depth_at_most");
    let of = table.word("water_depth_of").map(|(measure, _)| measure);
    extent(table, "water_depth").map(|least| WaterDepth { least, most, of })
}

fn further(table: &Table<'_, '_>) -> Further {
    let further = Further {
        from: table.number("from").map(|(from, _)| from),
        to: table.number("to").map(|(to, _)| to),
        floor: table.parsed("floor", parse_increment).map(|(increment, _)| increment),
        volume_share: share(table, "volume"),
        height_cm: cm(table, "height"),
        water_l: litres(table, "water"),
        land: area(table, "land"),
        water_floor: area(table, "water_floor"),
        compounding: table.flag("compounding").is_some_and(|(compounding, _)| compounding),
    };
    table.close();
    further
}

fn extent(table: &Table<'_, '_>, key: &str) -> Option<Extent> {
    table.parsed(key, parse_extent).map(|(extent, _)| extent)
}

fn area(table: &Table<'_, '_>, key: &str) -> Option<Area> {
    table.parsed(key, parse_area).map(|(area, _)| area)
}

/// A length, or a multiple of the animal's: `"120 cm"`, `"0.75 x"`, `"1/3 x"`.
fn parse_extent(text: &str) -> Result<Extent, Fault> {
    if !text.trim_end().ends_with(['x', '×']) {
        return quantity::parse_one::<Length>(text).map(|length| Extent::Centimetres(length.cm()));
    }
    match text.trim_end().trim_end_matches(['x', '×']).split_once('/') {
        Some((over, under)) => match (over.trim().parse::<f64>(), under.trim().parse::<f64>()) {
            (Ok(over), Ok(under)) if under > 0.0 => Ok(Extent::Multiple(over / under)),
            _ => Err(unreadable(text, "write \"1/3 x\" or \"0.75 x\"")),
        },
        None => {
            quantity::parse_one::<Multiple>(text).map(|multiple| Extent::Multiple(multiple.times()))
        }
    }
}

/// An area, or so many times the square of the animal's length: `"0.3 m2"`, `"50 x2"`.
fn parse_area(text: &str) -> Result<Area, Fault> {
    match text.trim_end().strip_suffix("x2").or_else(|| text.trim_end().strip_suffix("x²")) {
        Some(number) => match number.trim().parse() {
            Ok(times) => Ok(Area::SquaredMultiple(times)),
            Err(_) => Err(unreadable(text, "write \"50 x2\"")),
        },
        None => quantity::parse_one::<quantity::Area>(text)
            .map(|area| Area::SquareMetres(area.square_metres())),
    }
}

/// A share of the base floor, or an area.
fn parse_increment(text: &str) -> Result<Increment, Fault> {
    if text.trim_end().ends_with('%') {
        return quantity::parse_one::<Share>(text).map(|share| Increment::Share(share.fraction()));
    }
    parse_area(text).map(Increment::Area)
}

fn unreadable(text: &str, help: &str) -> Fault {
    let message = format!("`{}` cannot be read as a multiple", text.trim());
    Fault { kind: FaultKind::Unreadable, message, help: help.to_owned(), at: 0..text.len() }
}
