//! What the law owes a reader: the built-in files agree with the tables of the reading notes, notices are never joined, and nothing
//! that the law holds back is handed over in silence.

#![expect(clippy::disallowed_methods, reason = "the tables and the base site lie on the disk")]

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::Command;

use wardsheet::compile::{Checked, before_handover, check, compile};
use wardsheet::figures::owed::in_force;
use wardsheet::model::law::{Item, Jurisdiction};
use wardsheet::model::word::{Kind, Word};
use wardsheet::quantity::{Length, Mass, Span, parse_one};
use wardsheet::sheets::blocks::Caution;
use wardsheet::sheets::{Sheet, Wanted, build, plan};
use wardsheet::source::library::{add_look, add_species};
use wardsheet::source::{Layer, Role, Sources};

const AS_OF: &str = "2026-11-25";

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// The built-in library under a site that names these jurisdictions, with further files.
fn site(jurisdictions: &str, files: &[(&str, Role, &str, &str)]) -> (Sources, Checked) {
    let mut sources = Sources::default();
    let text = format!("title = \"Quillmere\"\njurisdictions = [{jurisdictions}]\n");
    sources.add("wardsheet.toml", Role::Site, "wardsheet", Layer::Own, text);
    for (path, role, name, text) in files {
        sources.add(*path, *role, name, Layer::Own, (*text).to_owned());
    }
    add_species(&mut sources);
    add_look(&mut sources);
    let checked = check(&sources, Vec::new(), AS_OF.parse().expect("a day"));
    (sources, checked)
}

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

fn cautions(checked: &Checked, wanted: &Wanted) -> Vec<Caution> {
    match build(&checked.model, &checked.figures, wanted).expect("the page is there") {
        Sheet::Care(sheet) => sheet.cautions,
        Sheet::Card(sheet) => sheet.cautions,
        Sheet::Handover(sheet) => sheet.cautions,
        other => panic!("it has no cautions: {other:?}"),
    }
}

const PIP: (&str, Role, &str, &str) = (
    "animals/pip.toml",
    Role::Animal,
    "pip",
    "name = \"Pip\"\nspecies = \"corn-snake\"\norigin = \"Invented\"\nhatched = 2023-01-01\nunder_treatment = true\n",
);

#[test]
fn two_places_with_different_ages_give_two_notices_that_are_never_joined() {
    let (_, checked) = site("\"new-york\", \"cleveland\"", &[PIP]);
    let key = || "corn-snake".to_owned();
    for wanted in [Wanted::Care(key()), Wanted::Card(key()), Wanted::Handover("pip".to_owned())] {
        let all = cautions(&checked, &wanted);
        let of = |place: &str| {
            let found: Vec<&Caution> =
                all.iter().filter(|caution| caution.title.ends_with(place)).collect();
            assert_eq!(found.len(), 1, "{wanted:?}: one notice for {place}");
            found[0].text.clone()
        };
        let (york, cleveland) = (of("New York"), of("Cleveland, Ohio"));
        let federal = of("nited States");
        assert!(york.contains("under 1") && !york.contains("elderly"), "{york}");
        assert!(cleveland.contains("elderly") && !cleveland.contains("under 1"), "{cleveland}");
        assert!(federal.contains("over 65") && !federal.contains("under 1"), "{federal}");
        assert!(!york.contains("over 65") && !cleveland.contains("over 65"));
        assert!(
            [&york, &cleveland, &federal]
                .iter()
                .all(|text| text.contains("read by 25 November 2026"))
        );
        // What stands beside them draws no line of its own.
        let general = all.iter().find(|caution| caution.title == "Salmonella").expect("hygiene");
        assert!(!general.text.contains("five") && !general.text.contains("65"), "{}", general.text);
    }
}

#[test]
fn without_jurisdictions_the_general_caution_stands_and_there_is_no_page_on_law() {
    let (_, checked) = site("", &[]);
    let all = cautions(&checked, &Wanted::Care("corn-snake".to_owned()));
    let general = all.iter().find(|caution| caution.title == "Salmonella").expect("it stands");
    assert!(general.text.contains("Children under five"));
    assert!(!all.iter().any(|caution| caution.title.contains("Public-health")));
    assert!(!plan(&checked.model).contains(&Wanted::Law));
}

#[test]
fn a_notice_for_reptiles_stands_on_no_sheet_of_an_amphibian() {
    let (_, checked) = site("\"cleveland\"", &[]);
    let all = cautions(&checked, &Wanted::Care("axolotl".to_owned()));
    assert!(!all.iter().any(|caution| caution.title.contains("Cleveland")));
    assert!(all.iter().any(|caution| caution.title.contains("United States")));
}

#[test]
fn a_place_brings_the_larger_ones_that_it_lies_within_once_each() {
    let (_, checked) = site("\"new-york\", \"california\"", &[]);
    let keys: Vec<&str> = in_force(&checked.model).iter().map(|found| found.key).collect();
    assert_eq!(keys, ["new-york", "us-federal", "california"]);
}

#[test]
fn every_sheet_says_that_local_law_decides() {
    for jurisdictions in ["", "\"england\""] {
        let (sources, checked) = site(jurisdictions, &[PIP]);
        let mut sheets = 0;
        for file in compile(&sources, &checked).expect("it compiles") {
            let owed = (file.path.starts_with("public/species/")
                && file.path.ends_with("index.html"))
                || file.path.ends_with("handover.html");
            if owed {
                let text = String::from_utf8(file.bytes).expect("text").to_lowercase();
                assert!(text.contains("local law decides"), "{}", file.path);
                sheets += 1;
            }
        }
        assert!(sheets > 20, "{sheets} sheets");
    }
}

#[test]
fn the_page_on_law_lists_each_item_with_article_source_day_and_place_on_the_sheet() {
    let (_, checked) = site("\"england\"", &[]);
    let Some(Sheet::Law(page)) = build(&checked.model, &checked.figures, &Wanted::Law) else {
        panic!("there is a page on law");
    };
    let england = page.chapters.iter().find(|chapter| chapter.id == "england").expect("England");
    let rows = &england.tables[0].rows;
    assert_eq!(rows.len(), checked.model.laws["england"].items.len());
    let row = |label: &str| {
        rows.iter().find(|row| row[0].first.starts_with(label)).unwrap_or_else(|| panic!("{label}"))
    };
    assert_eq!(row("life expectancy")[1].first, "Schedule 3, paragraph 3, (e) to (g)");
    assert!(row("life expectancy")[2].first.contains("In ten seconds"));
    assert!(row("feeding")[1].first.ends_with("from memory, not read"));
    assert!(row("origin")[2].first.starts_with("handover sheet: Identity"));
    let read = england.facts.iter().find(|fact| fact.label == "Read").expect("when");
    assert!(read.value.first.starts_with("read by 25 November 2026"));
    assert!(!england.facts[0].sources.is_empty(), "the act names its source");
}

#[test]
fn an_animal_under_treatment_is_held_up_where_that_is_forbidden_and_where_there_are_conditions() {
    for (place, says) in [("england", "may not be sold"), ("scotland", "only on conditions")] {
        let (sources, checked) = site(&format!("\"{place}\""), &[PIP]);
        let found = before_handover(&sources, &checked, "pip");
        assert!(
            found.iter().any(|finding| finding.code.name == "handed-on-under-treatment"
                && finding.message.contains(says)),
            "{place}: {found:?}"
        );
    }
    let (sources, checked) = site("\"ireland\"", &[PIP]);
    let found = before_handover(&sources, &checked, "pip");
    assert!(found.iter().all(|finding| finding.code.name != "handed-on-under-treatment"));
}

/// A tortoise of a species that needs a certificate, with a shell of this length.
fn tortoise(length: &str, papers: &str, chip: &str) -> Vec<String> {
    let animal = format!(
        "name = \"Tile\"\nspecies = \"hermanns-tortoise\"\nsex = \"female\"\norigin = \"Invented\"\nhatched = 2024-01-01\n{chip}papers = [{papers}]\n"
    );
    let log = format!("date,what,value,outcome,note\n2026-11-01,length,{length},,\n");
    let files = [
        ("animals/tile.toml", Role::Animal, "tile", animal.as_str()),
        ("animals/tile.csv", Role::Log, "tile", log.as_str()),
    ];
    let (sources, checked) = site("\"england\", \"us-federal\"", &files);
    let found = before_handover(&sources, &checked, "tile");
    found.into_iter().map(|finding| finding.message).collect()
}

#[test]
fn certificates_chips_and_sizes_follow_the_length_of_the_shell() {
    let has = |found: &[String], words: &str| found.iter().any(|message| message.contains(words));
    let small = tortoise("55 mm", "", "");
    assert!(has(&small, "one-transaction certificate"), "{small:?}");
    assert!(!has(&small, "microchip") && has(&small, "none below"), "{small:?}");
    let larger = tortoise("120 mm", "\"A letter\"", "");
    assert!(has(&larger, "`Article 10 certificate`") && has(&larger, "microchip"), "{larger:?}");
    assert!(!has(&larger, "one-transaction") && !has(&larger, "none below"), "{larger:?}");
    let papered = tortoise("120 mm", "\"Article 10 certificate, 2025\"", "chip = \"1\"\n");
    assert!(!has(&papered, "certificate") && !has(&papered, "microchip"), "{papered:?}");
}

#[test]
fn wardsheet_handover_says_what_holds_an_animal_back_and_the_sheet_carries_it() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("law-handover");
    let _ = std::fs::remove_dir_all(&folder);
    let put = |path: &str, text: &str| {
        let place = folder.join(path);
        std::fs::create_dir_all(place.parent().expect("a folder")).expect("a folder");
        std::fs::write(place, text).expect("a file");
    };
    put("wardsheet.toml", "title = \"Quillmere\"\njurisdictions = [\"england\"]\n");
    put("animals/pip.toml", PIP.3);
    let run = || {
        Command::new(env!("CARGO_BIN_EXE_wardsheet"))
            .args(["handover", "pip", "--as-of", AS_OF, "--site"])
            .arg(&folder)
            .output()
            .expect("the program runs")
    };
    let ran = run();
    let said = String::from_utf8_lossy(&ran.stderr).into_owned();
    assert!(ran.status.success(), "{said}");
    assert!(said.contains("handed-on-under-treatment"), "{said}");
    assert_eq!(said.matches("is under treatment; in England").count(), 1, "{said}");
    let sheet = std::fs::read_to_string(folder.join("out/private/animals/pip/handover.html"))
        .expect("the sheet is written");
    assert!(sheet.contains("Before it goes") && sheet.contains("may not be sold"));
    // An animal that seeks a home is told of by proof; it is not said twice.
    put("animals/pip.toml", &format!("{}status = \"seeking a home\"\n", PIP.3));
    let said = String::from_utf8_lossy(&run().stderr).into_owned();
    assert_eq!(said.matches("is under treatment; in England").count(), 1, "{said}");
}
