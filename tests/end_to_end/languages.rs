//! A site in several languages: every public page stands in each of them, names its counterparts, and says nothing in English
//! that there is a label for.

use std::collections::BTreeSet;

use wardsheet::language::Catalogue;

use crate::html::{elements, text_of};
use crate::site::{Site, TODAY, Tree, tree};

const FURTHER: [&str; 3] = ["de", "es", "fr"];

/// The example in all languages.
fn compiled(name: &str) -> (Site, Tree) {
    let site = Site::example(name);
    site.edit("wardsheet.toml", |settings| {
        settings.insert("languages".to_owned(), toml::Value::from(FURTHER.to_vec()));
    });
    site.compile();
    let files = tree(&site.out());
    (site, files)
}

fn page<'a>(files: &'a Tree, path: &str) -> &'a str {
    let bytes = files.get(path).unwrap_or_else(|| panic!("there is no {path}"));
    std::str::from_utf8(bytes).expect("a page is UTF-8")
}

/// The public pages of a language by their paths in it; without one, those of the site's own.
fn public(files: &Tree, language: &str) -> BTreeSet<String> {
    let folder = format!("public/{language}").trim_end_matches('/').to_owned() + "/";
    let inside = files.keys().filter_map(|path| path.strip_prefix(folder.as_str()));
    let pages = inside.filter(|path| path.ends_with(".html") && *path != "404.html");
    let further = |path: &str| FURTHER.iter().any(|tag| path.starts_with(&format!("{tag}/")));
    pages.filter(|path| !further(path)).map(str::to_owned).collect()
}

#[test]
fn every_public_page_stands_in_every_language() {
    let (_, files) = compiled("languages-all");
    let own = public(&files, "");
    assert!(own.len() > 90, "only {} pages were found", own.len());
    for language in FURTHER {
        assert_eq!(public(&files, language), own, "{language}");
        let private = files.keys().find(|path| path.starts_with(&format!("private/{language}/")));
        assert_eq!(private, None, "private sheets are in the language of the site");
    }
}

#[test]
fn every_page_says_its_language_and_names_its_counterparts() {
    let (_, files) = compiled("languages-named");
    let home = "https://example.org/quillmere/";
    for language in ["", "de", "es", "fr"] {
        let folder = if language.is_empty() { String::new() } else { format!("{language}/") };
        for path in public(&files, language) {
            let all = elements(page(&files, &format!("public/{folder}{path}")));
            let html = all.iter().find(|one| one.name == "html").expect("a root");
            let tag = if language.is_empty() { "en" } else { language };
            assert_eq!(html.attribute("lang"), Some(tag), "{folder}{path}");
            let named: BTreeSet<(String, String)> = all
                .iter()
                .filter(|one| one.name == "link" && one.attribute("hreflang").is_some())
                .map(|one| {
                    let value = |name| one.attribute(name).expect("it is there").to_owned();
                    (value("hreflang"), value("href"))
                })
                .collect();
            let place = path.trim_end_matches("index.html");
            let others = ["en", "de", "es", "fr"].into_iter().filter(|other| *other != tag);
            let wanted: BTreeSet<(String, String)> = others
                .map(|other| {
                    let folder = if other == "en" { String::new() } else { format!("{other}/") };
                    (other.to_owned(), format!("{home}{folder}{place}"))
                })
                .collect();
            assert_eq!(named, wanted, "{folder}{path}");
        }
    }
}

/// Phrases that people also write in the data themselves, down to the headings of a house, and one that a working, which is in English, begins with.
const PHRASES: [&str; 7] = [
    "active-",
    "cites-",
    "company-",
    "habit-",
    "urgency-",
    "handover-next-meal",
    "sitter-where-things-are",
];

/// The labels of English that are long enough to be told apart from words of the data, and that are set as they stand.
fn sentences() -> Vec<(String, String)> {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("languages/en");
    let mut found = Vec::new();
    for (_, bytes) in tree(&folder) {
        let text = String::from_utf8(bytes).expect("UTF-8");
        for line in text.lines() {
            let Some((name, says)) = line.split_once(" = ") else { continue };
            if PHRASES.iter().any(|phrase| name.starts_with(phrase)) {
                continue;
            }
            let plain = !says.contains(['{', '<', '[', '*']) && !line.starts_with([' ', '#']);
            if plain && says.split(' ').count() >= 3 {
                found.push((name.to_owned(), says.to_owned()));
            }
        }
    }
    found
}

#[test]
fn no_label_is_in_english_on_a_page_in_another_language() {
    let (_, files) = compiled("languages-labels");
    let sentences = sentences();
    assert!(sentences.len() > 100, "only {} sentences were found", sentences.len());
    for language in FURTHER {
        let mut left = BTreeSet::new();
        for path in public(&files, language) {
            // Workings are in English, and the words of data files may be.
            if path.ends_with("working.html") || path.starts_with("pages/") {
                continue;
            }
            let text = text_of(page(&files, &format!("public/{language}/{path}")));
            for (name, says) in &sentences {
                if text.contains(says.as_str()) {
                    left.insert(format!("{name} on {path}"));
                }
            }
        }
        assert!(left.is_empty(), "{language}: {left:#?}");
    }
}

#[test]
fn the_list_of_pages_names_every_page_in_every_language() {
    let (_, files) = compiled("languages-sitemap");
    let list = page(&files, "public/sitemap.xml");
    let home = "https://example.org/quillmere/";
    let pages = public(&files, "");
    assert_eq!(list.matches("<url>").count(), 4 * pages.len());
    for language in ["", "de/", "es/", "fr/"] {
        let place = format!("{home}{language}species/leopard-gecko/");
        let one = list.split("<url>").find(|one| one.starts_with(&format!("<loc>{place}</loc>")));
        let one = one.unwrap_or_else(|| panic!("{place} is not listed"));
        for (tag, folder) in [("en", ""), ("de", "de/"), ("es", "es/"), ("fr", "fr/")] {
            let link = format!("hreflang=\"{tag}\" href=\"{home}{folder}species/leopard-gecko/\"");
            assert!(one.contains(&link), "{place} lacks {link}");
        }
    }
}

#[test]
fn a_species_has_the_name_the_words_and_the_numbers_of_the_language() {
    let (_, files) = compiled("languages-words");
    let german = page(&files, "public/de/species/leopard-gecko/index.html");
    let text = text_of(german);
    assert!(text.contains("Leopardgecko"));
    assert!(text.contains("Auf einen Blick") && !text.contains("At a glance"));
    assert!(text.contains("45–80\u{a0}g (1,6–2,8\u{a0}oz)"), "a decimal comma");
    assert!(text.contains("25. November 2026"), "the day in the form of the language");
    assert!(page(&files, "public/de/index.html").contains("Leopardgecko"));
    assert!(page(&files, "public/species/leopard-gecko/index.html").contains("1.6–2.8\u{a0}oz"));
    // A page has its words in German, an animal's story has none.
    let about = page(&files, "public/de/pages/about/index.html");
    assert!(
        text_of(about).contains("Über den Verein") && text_of(about).contains("vierzig Halter")
    );
    assert!(page(&files, "public/de/index.html").contains("Über den Verein"));
    let policy = page(&files, "public/de/pages/quarantine-policy/index.html");
    let story = page(&files, "public/de/animals/bellrope/index.html");
    for foreign in [policy, story] {
        let marked = elements(foreign).into_iter().any(|one| {
            ["article", "div"].contains(&one.name.as_str()) && one.attribute("lang") == Some("en")
        });
        assert!(marked, "what is in English says so");
    }
    // Nobody has written the boa's words in German: they stand in English and say so, to screen readers too.
    let boa = page(&files, "public/de/species/boa-constrictor/index.html");
    let words = elements(boa).into_iter().filter(|one| one.attribute("class") == Some("words"));
    let tongues: BTreeSet<Option<String>> =
        words.map(|one| one.attribute("lang").map(str::to_owned)).collect();
    assert_eq!(tongues, BTreeSet::from([Some("en".to_owned())]));
    let german = Catalogue::of("de").expect("there is a German catalogue");
    let remark = german.tell("care-foreign-words", [("language", "Englisch".into())]);
    assert!(text_of(boa).contains(&remark), "{remark}");
}

#[test]
fn a_sheet_that_is_asked_for_comes_in_the_language_that_is_asked_for() {
    let site = Site::example("languages-asked");
    let run = |arguments: &[&str]| {
        let (verb, words) = arguments.split_first().expect("a command");
        let language = ["--as-of", TODAY, "--language", "de"];
        let output =
            site.command(verb).args(words).args(language).output().expect("the program runs");
        assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    };
    run(&["handover", "juniper"]);
    run(&["sitter", "--from", "2026-12-19", "--until", "2026-12-23"]);
    run(&["round"]);
    for path in [
        "animals/juniper/handover.html",
        "sitter/2026-12-19_2026-12-23.html",
        "round/2026-11-23.html",
    ] {
        let page = site.text(&format!("out/private/de/{path}"));
        assert!(page.contains("<html lang=de") || page.contains("<html lang=\"de\""), "{path}");
        let text = text_of(&page);
        for (name, says) in sentences() {
            assert!(!text.contains(&says), "{path} has {name} in English: {says}");
        }
    }
    let refused = site.command("round").args(["--language", "tlh"]).output().expect("it runs");
    assert_eq!(refused.status.code(), Some(2));
    let said = String::from_utf8_lossy(&refused.stderr).into_owned();
    assert!(said.contains("de, en, es, fr"), "{said}");
}

#[test]
fn a_language_without_labels_is_told_of_and_a_text_that_is_none_is_refused() {
    let site = Site::example("languages-unknown");
    let with = |languages: &[&str]| {
        site.edit("wardsheet.toml", |settings| {
            settings.insert("languages".to_owned(), toml::Value::from(languages.to_vec()));
        });
        let output =
            site.command("proof").args(["--as-of", TODAY]).output().expect("the program runs");
        (output.status.code(), String::from_utf8_lossy(&output.stderr).into_owned())
    };
    let (status, said) = with(&["nl"]);
    assert_eq!(status, Some(0));
    assert!(said.contains("warning[language-without-labels]"), "{said}");
    let (status, said) = with(&["../../elsewhere"]);
    assert_eq!(status, Some(1));
    assert!(
        said.contains("error[word-unknown]") && said.contains("not a language's tag"),
        "{said}"
    );
}
