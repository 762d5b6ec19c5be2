//! The rows of the published standards that the species name, class by class, as the texts print them.

use wardsheet::model::standard::{
    Area, Extent, Further, Increment, Layout, Row as StandardRow, SizeClass,
};

use crate::table::{Row, rows};
use crate::{library, none};

/// The class of a row that a printed class stands for.
fn class<'a>(row: &'a StandardRow, printed: &str) -> Option<Vec<&'a SizeClass>> {
    let classes = &row.classes;
    let found: Vec<&SizeClass> = match printed {
        "grown" | "over" => vec![classes.last()?],
        "adult" => vec![classes.iter().find(|class| class.adult).or(classes.last())?],
        up_to => {
            let cm: f64 = up_to.strip_prefix("up to ")?.strip_suffix(" cm")?.parse().ok()?;
            vec![
                classes
                    .iter()
                    .find(|class| class.up_to_cm.is_some_and(|up_to| (up_to - cm).abs() < 1e-9))?,
            ]
        }
    };
    Some(found)
}

fn area(area: Option<Area>) -> Option<(f64, &'static str)> {
    area.map(|area| match area {
        Area::SquareMetres(square_metres) => (square_metres, "m2"),
        Area::SquaredMultiple(times) => (times, "x2"),
    })
}

fn extent(extent: Option<Extent>) -> Option<(f64, &'static str)> {
    extent.map(|extent| match extent {
        Extent::Multiple(times) => (times, "x"),
        Extent::Centimetres(cm) => (cm, "cm"),
    })
}

fn further(
    class: &SizeClass,
    of: impl Fn(&Further) -> Option<(f64, &'static str)>,
) -> Vec<(f64, &'static str)> {
    class.further.iter().filter_map(of).collect()
}

/// What the library's class says of a printed figure, in any of its layouts.
fn said(class: &SizeClass, what: &str) -> Vec<(f64, &'static str)> {
    let layouts = |of: &dyn Fn(&Layout) -> Option<(f64, &'static str)>| {
        class.space.layouts.iter().filter_map(of).collect()
    };
    let one = |value: Option<(f64, &'static str)>| value.into_iter().collect();
    match what {
        "floor" => layouts(&|layout| area(layout.floor)),
        "length" => layouts(&|layout| extent(layout.length)),
        "width" => layouts(&|layout| extent(layout.width)),
        "height" => layouts(&|layout| extent(layout.height)),
        "water" => one(class.space.water_l.map(|litres| (litres, "l"))),
        "land" => one(area(class.space.land)),
        "water floor" => one(area(class.space.water_floor)),
        "group floor" => one(class.space.group_floor_m2.map(|square_metres| (square_metres, "m2"))),
        "further floor" => further(class, |further| match further.floor {
            Some(Increment::Area(added)) => area(Some(added)),
            Some(Increment::Share(share)) => Some((share * 100.0, "%")),
            None => None,
        }),
        "further height" => further(class, |further| further.height_cm.map(|cm| (cm, "cm"))),
        "further water" => further(class, |further| further.water_l.map(|litres| (litres, "l"))),
        "further land" => further(class, |further| area(further.land)),
        "further water floor" => further(class, |further| area(further.water_floor)),
        other => panic!("nothing is known of {other}"),
    }
}

fn unit(printed: &str) -> &str {
    if printed.starts_with('%') { "%" } else { printed }
}

fn fault(printed: &Row, row: &StandardRow) -> Option<String> {
    let value: f64 = printed["value"].parse().expect("a number");
    let name = format!(
        "{} {}, {}: {}",
        printed["standard"], printed["row"], printed["class"], printed["what"]
    );
    let Some(classes) = class(row, &printed["class"]) else {
        return Some(format!("{name}: no such class"));
    };
    let said: Vec<_> =
        classes.into_iter().flat_map(|class| said(class, &printed["what"])).collect();
    let agrees = said.iter().any(|(said, in_unit)| {
        *in_unit == unit(&printed["unit"]) && (said - value).abs() <= 1e-6 * value
    });
    (!agrees).then(|| {
        format!("{name} {value} {} is printed, the library says {said:?}", printed["unit"])
    })
}

#[test]
fn the_rows_that_species_name_are_as_printed() {
    let model = library();
    let printed = rows("standards_space.csv");
    let faults: Vec<String> = printed
        .iter()
        .filter_map(|row| fault(row, &model.standards[&row["standard"]].rows[&row["row"]]))
        .collect();
    none(&faults);
    for row in &printed {
        let standard = &model.standards[&row["standard"]];
        assert_eq!(
            [&standard.title, &standard.issuer, &standard.year],
            [&row["title"], &row["issuer"], &row["year"]]
        );
    }
}

#[test]
fn every_rule_that_a_species_names_was_compared() {
    let printed = rows("standards_space.csv");
    for (key, species) in &library().species {
        for (standard, rule) in &species.enclosure {
            let compared = printed
                .iter()
                .any(|row| row["standard"] == *standard && row["row"] == rule.row.name);
            assert!(
                compared,
                "{key}: nothing printed is at hand for {standard}, {}",
                rule.row.name
            );
        }
    }
}
