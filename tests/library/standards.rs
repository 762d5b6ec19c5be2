//! Every species against what published standards and veterinary tables print of warmth, damp and light.
//!
//! The other way round from `published`: there a figure asks its sources, here each printed row asks the species. A row may
//! not be passed over in silence, however the species file names its sources.

use wardsheet::model::Species;
use wardsheet::model::stated::Stated;

use crate::table::{Ends, Row, rows};
use crate::{library, none};

/// The figures that a row can be held to, by what it is about.
const FIGURES: &[(&str, &[&str])] = &[
    ("basking", &["temperature.basking", "temperature.never_above", "temperature.warm"]),
    (
        "air",
        &[
            "temperature.warm",
            "temperature.cool",
            "temperature.basking",
            "temperature.water",
            "temperature.night",
        ],
    ),
    ("night", &["temperature.night", "temperature.critical_low"]),
    ("water", &["temperature.water"]),
    ("humidity", &["humidity.range", "humidity.ceiling"]),
    ("hours", &["light.hours"]),
    ("brumation", &["temperature.brumation"]),
    ("brumation weeks", &["temperature.brumation_weeks"]),
];

/// Whether a figure takes a row up: says the same, lies inside it, holds it, or names its source and tells what it says.
fn takes_up(stated: &Stated<'_>, row: &Row) -> bool {
    let Some(own) = Ends::stated(&stated.amount) else { return false };
    let printed = Ends::printed(row, &stated.amount);
    let agrees = own.same(&printed) || own.within(&printed) || printed.within(&own);
    let own_source = stated.sources.iter().any(|named| named.name == row["key"]);
    let told = stated
        .others
        .iter()
        .any(|(_, sources)| sources.iter().any(|named| named.name == row["key"]));
    agrees || ((own_source || told) && stated.note.is_some())
}

/// Whether the gradient, from the cool side to the basking spot, offers the whole of a zone.
fn offered(of: &[&Stated<'_>], row: &Row) -> bool {
    let zones: Vec<Ends> = of.iter().filter_map(|stated| Ends::stated(&stated.amount)).collect();
    let Some(like) = of.first() else { return false };
    Ends::hull(&zones).is_some_and(|hull| Ends::printed(row, &like.amount).within(&hull))
}

fn passed_over(key: &str, species: &Species, row: &Row) -> Option<String> {
    let (_, names) =
        FIGURES.iter().find(|(about, _)| *about == row["about"]).expect("a known subject");
    let stated = species.stated();
    let of: Vec<&Stated<'_>> =
        stated.iter().filter(|stated| names.contains(&stated.name.as_str())).collect();
    // A general table may speak of a winter rest, or of damp air, that this kind is not given.
    if of.is_empty() || of.iter().any(|stated| takes_up(stated, row)) {
        return None;
    }
    let gradient = ["temperature.warm", "temperature.cool", "temperature.basking"];
    let zones: Vec<&Stated<'_>> =
        of.iter().copied().filter(|stated| gradient.contains(&stated.name.as_str())).collect();
    let is_offered = row["about"] == "air" && offered(&zones, row);
    (!is_offered).then(|| {
        format!(
            "{key}: {} {}-{} {} ({}, {}) is passed over",
            row["about"], row["low"], row["high"], row["unit"], row["key"], row["printed_for"]
        )
    })
}

#[test]
fn no_printed_figure_of_warmth_damp_or_light_is_passed_over() {
    let model = library();
    let printed = rows("standards_climate.csv");
    let faults: Vec<String> = printed
        .iter()
        .filter_map(|row| passed_over(&row["species"], &model.species[&row["species"]], row))
        .collect();
    none(&faults);
    let compared: std::collections::BTreeSet<&str> =
        printed.iter().map(|row| row["species"].as_str()).collect();
    // Nothing was printed for these two by any of them; they stand on clinics' pages and on a related species.
    let left: Vec<&String> =
        model.species.keys().filter(|key| !compared.contains(key.as_str())).collect();
    assert_eq!(left, ["crested-gecko", "panther-chameleon"]);
}

/// Source: the second Tierhaltungsverordnung, Federal Ministry of Health and Women, Austria, 2004. A ceiling of a species
/// never lies above the ordinance's local maximum without a word.
#[test]
fn no_place_may_grow_warmer_than_the_ordinance_lets_the_basking_spot_be() {
    let model = library();
    for row in rows("standards_climate.csv") {
        if row["key"] != "at-2thv" || row["about"] != "basking" {
            continue;
        }
        let species = &model.species[&row["species"]];
        let stated = species.stated();
        let ceiling = stated
            .iter()
            .find(|stated| stated.name == "temperature.never_above")
            .expect("a ceiling");
        let printed = Ends::printed(&row, &ceiling.amount);
        let own = Ends::stated(&ceiling.amount).expect("a range");
        let above = own.high > printed.high;
        assert!(
            !above || ceiling.note.is_some(),
            "{}: {:?} is above {}",
            row["species"],
            ceiling.amount,
            row["high"]
        );
    }
}
