//! Every figure that names a source, against what that source prints.

use std::collections::BTreeSet;

use wardsheet::model::Named;
use wardsheet::model::stated::{Amount, Stated};

use crate::table::{Ends, Row, rows};
use crate::{library, none};

/// What a row must be about to speak for a figure: the beginnings of the figures' names, the first that fits.
const ABOUT: &[(&str, &[&str])] = &[
    ("size.birth_mass", &["birth mass"]),
    ("size.birth", &["birth length"]),
    ("size.mass", &["adult mass"]),
    ("size.", &["adult length"]),
    ("growth.matures", &["maturity"]),
    ("life.years", &["life"]),
    ("temperature.brumation_weeks", &["brumation weeks"]),
    ("temperature.brumation", &["brumation"]),
    ("temperature.water", &["water", "air"]),
    ("temperature.night", &["night", "air", "water"]),
    ("temperature.never_above", &["basking", "air", "water"]),
    ("temperature.", &["basking", "air", "night", "water"]),
    ("humidity.", &["humidity"]),
    ("light.hours", &["hours"]),
    ("fasting.normal", &["fast"]),
    ("feeding.", &["feeding", "share"]),
];

/// Sources whose rows are checked elsewhere: the papers on ultraviolet, by the bands of their zones.
const BY_ZONE: &[&str] = &["uv-ferguson-2010", "uv-baines-2016"];

/// One thing that a species file says on somebody's authority: its own figure, or what it says that another gives.
struct Claim<'a> {
    amount: &'a Amount,
    sources: &'a [Named],
}

fn claims<'a>(stated: &'a Stated<'a>) -> Vec<Claim<'a>> {
    let own = Claim { amount: &stated.amount, sources: stated.sources };
    let others = stated.others.iter().map(|(amount, sources)| Claim { amount, sources });
    std::iter::once(own).chain(others).filter(|claim| !claim.sources.is_empty()).collect()
}

/// Whether a row that was printed for one sex alone is left aside for a figure of the other.
fn other_sex(row: &Row, figure: &str) -> bool {
    let printed = &row["printed_for"];
    let for_female = printed.contains("female");
    let for_male =
        printed.replace("female", "").split_whitespace().any(|word| word.starts_with("male"));
    let female = figure.ends_with("female");
    let male = !female && figure.ends_with("male");
    (male && for_female) || (female && for_male && !for_female)
}

/// The rows that speak for a claim.
fn speaking<'r>(all: &'r [Row], species: &str, figure: &str, claim: &Claim<'_>) -> Vec<&'r Row> {
    let about = ABOUT.iter().find(|(start, _)| figure.starts_with(start)).map(|(_, about)| *about);
    let about = about.unwrap_or_default();
    all.iter()
        .filter(|row| {
            row["species"] == species
                && claim.sources.iter().any(|named| named.name == row["key"])
                && about.contains(&row["about"].as_str())
                && !other_sex(row, figure)
        })
        .collect()
}

/// Whether a claim is what its sources print: one of them, or something between them.
fn agrees(claim: &Claim<'_>, speaking: &[&Row]) -> bool {
    let Some(ends) = Ends::stated(claim.amount) else { return true };
    let printed: Vec<Ends> = speaking.iter().map(|row| Ends::printed(row, claim.amount)).collect();
    printed.iter().any(|row| ends.same(row) || ends.within(row))
        || Ends::hull(&printed).is_some_and(|hull| ends.within(&hull))
}

#[test]
fn a_figure_that_names_a_source_says_what_the_source_says_or_explains_itself() {
    let model = library();
    let published = rows("species_published.csv");
    let explained = rows("species_explained.csv");
    let mut used = BTreeSet::new();
    let mut faults = Vec::new();
    let mut compared = 0;
    for (key, species) in &model.species {
        for stated in species.stated() {
            for claim in claims(&stated) {
                let by_zone =
                    claim.sources.iter().all(|named| BY_ZONE.contains(&named.name.as_str()));
                if by_zone || Ends::stated(claim.amount).is_none() {
                    continue;
                }
                compared += 1;
                if agrees(&claim, &speaking(&published, key, &stated.name, &claim)) {
                    continue;
                }
                let allowed = explained.iter().position(|row| {
                    row["species"] == *key
                        && row["figure"] == stated.name
                        && Ends::written(&row["stated"], claim.amount)
                            == Ends::stated(claim.amount).expect("a measured range")
                });
                match allowed {
                    Some(row) if stated.note.is_some() => _ = used.insert(row),
                    Some(_) => faults.push(format!("{key}: {} has no note", stated.name)),
                    None => {
                        let names: Vec<&str> =
                            claim.sources.iter().map(|named| named.name.as_str()).collect();
                        faults.push(format!(
                            "{key}: {} is {:?}, and {names:?} say otherwise",
                            stated.name, claim.amount
                        ));
                    }
                }
            }
        }
    }
    for (number, row) in explained.iter().enumerate().filter(|(number, _)| !used.contains(number)) {
        faults.push(format!("row {number} explains what needs no explanation: {row:?}"));
    }
    none(&faults);
    assert!(compared > 450, "{compared} figures are compared");
}

/// Baines F. et al., How much UV-B does my reptile need?, 2016, after Ferguson G. W. et al., 2010: mean exposure by zone.
#[test]
fn the_ultraviolet_index_is_the_band_of_the_zone() {
    let bands = rows("uv_zones.csv");
    for (key, species) in &library().species {
        let zone = species.light.zone.as_ref().unwrap_or_else(|| panic!("{key} has no zone"));
        let uvi = species.light.uvi.as_ref().unwrap_or_else(|| panic!("{key} has no index"));
        let band = bands.iter().find(|row| row["zone"] == zone.value.to_string()).expect("a zone");
        let ends = Ends::stated(&Amount::UvIndex(uvi.value)).expect("a range");
        let printed =
            [&band["mean_uvi_lo"], &band["mean_uvi_hi"]].map(|end| end.parse::<f64>().ok());
        assert_eq!([ends.low, ends.high], printed, "{key}, zone {}", zone.value);
    }
}

/// Newspaper summary of Ferguson zones, 2022: the zone that it prints for a species or its family.
#[test]
fn the_zone_is_the_one_that_was_printed_for_the_species() {
    let published = rows("species_published.csv");
    let mut compared = 0;
    for (key, species) in &library().species {
        let Some(zone) = &species.light.zone else { continue };
        for row in published.iter().filter(|row| row["species"] == *key && row["about"] == "zone") {
            let printed: u8 = row["low"].parse().expect("a zone");
            let said =
                std::iter::once(zone.value).chain(zone.others.iter().map(|other| other.value));
            assert!(said.clone().any(|said| said == printed), "{key}: zone {printed} is printed");
            compared += 1;
        }
    }
    assert!(compared >= 7, "{compared} zones are compared");
}

#[test]
fn every_row_has_its_title_issuer_and_year_as_the_bibliography_has_them() {
    let model = library();
    for row in rows("species_published.csv") {
        let source = model.sources.get(&row["key"]).unwrap_or_else(|| panic!("{}", row["key"]));
        assert_eq!(
            [&source.title, &source.issuer, &source.year],
            [&row["title"], &row["issuer"], &row["year"]]
        );
    }
}
