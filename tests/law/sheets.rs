//! What the sheets and the page on law say.

use wardsheet::compile::{Checked, check, compile};
use wardsheet::figures::owed::in_force;
use wardsheet::sheets::blocks::Caution;
use wardsheet::sheets::{Sheet, Wanted, build, plan};
use wardsheet::source::library::add_species;
use wardsheet::source::{Layer, Role, Sources};

use super::{AS_OF, PIP, site};

fn cautions(checked: &Checked, wanted: &Wanted) -> Vec<Caution> {
    match build(&checked.model, &checked.figures, wanted).expect("the page is there") {
        Sheet::Care(sheet) => sheet.cautions,
        Sheet::Card(sheet) => sheet.cautions,
        Sheet::Handover(sheet) => sheet.cautions,
        other => panic!("it has no cautions: {other:?}"),
    }
}

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
fn words_that_the_site_has_taken_from_the_law_are_printed_as_they_stand() {
    let mut sources = Sources::default();
    let text = "title = \"Quillmere\"\njurisdictions = [\"cleveland\", \"france\"]\n\
        [wording.cleveland]\nnotice = \"Invented words of a notice.\"\n\
        [wording.france]\nrelease = \"Invented words on release.\"\n";
    sources.add("wardsheet.toml", Role::Site, "wardsheet", Layer::Own, text.to_owned());
    add_species(&mut sources);
    let checked = check(&sources, Vec::new(), AS_OF.parse().expect("a day"));
    let open = checked.findings.iter().filter(|found| found.code.name == "wording-not-taken");
    assert_eq!(open.count(), 0, "both are given");
    let all = cautions(&checked, &Wanted::Care("corn-snake".to_owned()));
    let notice = all.iter().find(|caution| caution.title.contains("Cleveland")).expect("it stands");
    assert!(notice.text.starts_with("Invented words of a notice."), "{}", notice.text);
    assert!(!notice.text.contains("Ages:") && !notice.text.contains("our words"));
    let wanted = Wanted::Care("corn-snake".to_owned());
    let Some(Sheet::Care(care)) = build(&checked.model, &checked.figures, &wanted) else {
        panic!("the sheet is there");
    };
    let law = care.chapters.iter().find(|chapter| chapter.id == "law").expect("the chapter on law");
    let release = law.facts.iter().find(|fact| fact.label == "Release, France").expect("it stands");
    assert_eq!(release.value.first, "Invented words on release.");
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
