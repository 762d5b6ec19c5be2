//! The built-in files against the tables, row by row.

use std::collections::BTreeMap;

use wardsheet::model::law::{Item, Jurisdiction};
use wardsheet::model::word::{Kind, Word};
use wardsheet::quantity::{Length, Mass, Span, parse_one};

use super::{root, site};

fn laws() -> BTreeMap<String, Jurisdiction> {
    site("", &[]).1.model.laws
}

/// The rows of a table, each cell by its heading.
fn rows(name: &str) -> Vec<BTreeMap<String, String>> {
    let path = root().join("tests/checks").join(name);
    let mut reader =
        csv::ReaderBuilder::new().comment(Some(b'#')).from_path(path).expect("the table is there");
    let head = reader.headers().expect("it has headings").clone();
    let rows = reader.records().map(|row| {
        let row = row.expect("a row");
        head.iter().map(str::to_owned).zip(row.iter().map(str::to_owned)).collect()
    });
    rows.collect()
}

/// The item that a row of the table is about.
fn item(printed: &str) -> Item {
    let all = [
        ("scientific", Item::Names),
        ("life", Item::LifeExpectancy),
        ("adult", Item::AdultSize),
        ("housing", Item::Housing),
        ("environment", Item::Environment),
        ("feeding", Item::Feeding),
        ("general", Item::GeneralCare),
        ("handling", Item::Handling),
        ("cleaning", Item::Cleaning),
        ("equipment", Item::Equipment),
        ("movement", Item::Movement),
        ("enrichment", Item::Enrichment),
        ("social", Item::SocialLife),
        ("behaviour", Item::Behaviour),
        ("danger", Item::Danger),
        ("reproduction", Item::Reproduction),
        ("signs", Item::SignsOfIllness),
        ("veterinary", Item::VeterinaryCare),
        ("yearly", Item::YearlyCost),
        ("protection", Item::ProtectionStatus),
        ("legal", Item::LegalBasis),
        ("no-release", Item::NoRelease),
        ("health", Item::HealthOnTheDay),
        ("country", Item::Particulars),
    ];
    let found = all.iter().find(|(start, _)| printed.starts_with(start));
    found.unwrap_or_else(|| panic!("no item is called `{printed}`")).1
}

#[test]
fn every_cell_of_the_table_of_items_is_what_the_files_say() {
    let laws = laws();
    let rows = rows("law_items.csv");
    assert_eq!(rows.len(), 24, "every row of the table is copied");
    let mut held = 0;
    for row in &rows {
        let item = item(&row["item"]);
        for (place, cell) in row.iter().filter(|(place, _)| *place != "item") {
            let law = laws.get(place).unwrap_or_else(|| panic!("{place} has no file"));
            let ask = law.items.get(&item);
            let said = ask.map(|ask| (ask.ground.from_memory, ask.wider));
            let printed = match cell.as_str() {
                "" => None,
                "m" => Some((true, false)),
                cell if cell.starts_with("(x)") => Some((false, true)),
                cell if cell.starts_with('X') => Some((false, false)),
                other => panic!("`{other}` means nothing"),
            };
            assert_eq!(said, printed, "{place}, {}: from memory, by a wider word", row["item"]);
            if item == Item::Feeding {
                let also = [(Item::DailyRation, "daily ration"), (Item::Watering, "watering")];
                for (further, words) in also {
                    let asked = law.items.contains_key(&further);
                    assert_eq!(asked, cell.contains(words), "{place}, {words}");
                }
            }
            let set = ask.is_some_and(|ask| ask.wording_set);
            assert_eq!(set, cell.contains("wording set"), "{place}, {}", row["item"]);
            held += usize::from(ask.is_some());
        }
    }
    assert!(held > 70, "{held} cells say something");
}

#[test]
fn every_notice_names_the_ages_of_the_table_and_no_other_place_has_one() {
    let laws = laws();
    let rows = rows("law_notices.csv");
    for row in &rows {
        let notice = laws[&row["jurisdiction"]].notice.as_ref().expect("it has a notice");
        let ages: Vec<f64> =
            row["ages"].split(' ').map(|age| age.parse().expect("an age")).collect();
        let said: Vec<f64> =
            notice.ages.iter().map(|age| (age.about.days() / 365.25).round()).collect();
        assert_eq!(said, ages, "{}", row["jurisdiction"]);
        assert_eq!(notice.wall.is_some(), row["wall"] == "yes", "{}", row["jurisdiction"]);
        assert_eq!(notice.binding, row["binding"] == "yes", "{}", row["jurisdiction"]);
    }
    let with: usize = laws.values().filter(|law| law.notice.is_some()).count();
    assert_eq!(with, rows.len());
}

fn one<Q: wardsheet::quantity::Quantity>(text: &str) -> Q {
    parse_one::<Q>(text).unwrap_or_else(|_| panic!("`{text}` is a quantity"))
}

#[test]
fn every_age_block_paper_and_record_is_what_the_table_says() {
    let laws = laws();
    for row in rows("law_rules.csv") {
        let (place, rule, value) = (&row["jurisdiction"], &row["rule"], row["value"].as_str());
        let law = &laws[place];
        let mut memory = false;
        let agrees = match rule.as_str() {
            "buyer" => law.buyer.as_ref().is_some_and(|rule| {
                memory = rule.ground.from_memory;
                rule.about == one::<Span>(value)
            }),
            "treatment" => {
                law.treatment.as_ref().is_some_and(|rule| rule.about.spelling() == value)
            }
            "size" => {
                law.sizes.iter().any(|rule| rule.about.shell_below == Some(one::<Length>(value)))
            }
            "paper below" => {
                law.papers.iter().any(|rule| rule.about.1.shell_below == Some(one::<Length>(value)))
            }
            "mark from length" => {
                law.marks.iter().any(|rule| rule.about.1.shell_from == Some(one::<Length>(value)))
            }
            "mark from mass" => law.marks.iter().any(|rule| {
                !rule.about.1.kinds.contains(&Kind::Tortoise)
                    && rule.about.1.mass_from == Some(one::<Mass>(value))
            }),
            "mark from mass of tortoises" => law.marks.iter().any(|rule| {
                rule.about.1.kinds == [Kind::Tortoise]
                    && rule.about.1.mass_from == Some(one::<Mass>(value))
            }),
            "records" => law.records.as_ref().is_some_and(|rule| rule.about == one::<Span>(value)),
            "language" => law
                .delivery
                .as_ref()
                .is_some_and(|rule| rule.about.language.as_deref() == Some(value)),
            "on paper" => law.delivery.as_ref().is_some_and(|rule| rule.about.paper),
            "paper" => law.papers.iter().any(|rule| rule.about.0 == value),
            other => panic!("`{other}` means nothing"),
        };
        assert!(agrees, "{place}, {rule}: should be {value}");
        assert_eq!(memory, row["provenance"] == "memory", "{place}, {rule}");
    }
}

#[test]
fn every_row_rests_on_a_source_and_says_when_it_was_read() {
    let (_, checked) = site("", &[]);
    assert_eq!(checked.model.laws.len(), 17, "ten of the table and those beside it");
    for (name, law) in &checked.model.laws {
        assert!(law.read.is_some() && law.state.is_some(), "{name} says when and what was read");
        for ground in law.grounds() {
            let source = ground.source.as_ref().unwrap_or_else(|| panic!("{name}: no source"));
            assert!(checked.model.sources.contains_key(&source.name), "{name}: {}", source.name);
        }
    }
}
