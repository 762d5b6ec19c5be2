//! How heavy a care sheet is: everything that a browser loads to show it.

use std::collections::BTreeSet;

use crate::html::elements;
use crate::site::{Site, Tree, tree};

/// What a care sheet without photos may weigh in all, in bytes as they go over the line without compression.
const HEAVIEST: usize = 60_000;

/// The bold face is for sheets that are read from a metre away; no care sheet uses it.
const NOT_LOADED: &str = "figures-bold.woff2";

/// Every file that a page of that path loads, itself among them.
fn loaded(files: &Tree, path: &str) -> BTreeSet<String> {
    let page = String::from_utf8_lossy(&files[path]).into_owned();
    let linked = elements(&page).into_iter().filter(|one| one.name == "link");
    let mut all: BTreeSet<String> = linked
        .filter(|one| ["stylesheet", "icon"].iter().any(|rel| one.attribute("rel") == Some(rel)))
        .filter_map(|one| Some(one.attribute("href")?.replace("../", "")))
        .map(|inside| format!("public/{inside}"))
        .collect();
    for sheet in all.clone().iter().filter(|path| path.ends_with(".css")) {
        let css = String::from_utf8_lossy(&files[sheet]).into_owned();
        let faces = css.split("url(").skip(1).filter_map(|rest| rest.split(')').next());
        all.extend(faces.map(|face| format!("public/assets/{face}")));
    }
    all.retain(|path| !path.ends_with(NOT_LOADED));
    all.insert(path.to_owned());
    all
}

#[test]
fn a_care_sheet_weighs_at_most_sixty_thousand_bytes_with_all_it_loads() {
    let site = Site::example("weight");
    site.compile();
    let files = tree(&site.out());
    let sheets = files
        .keys()
        .filter(|path| path.starts_with("public/species/") && path.ends_with("/index.html"));
    let mut weighed = Vec::new();
    for sheet in sheets {
        let all = loaded(&files, sheet);
        assert!(all.iter().any(|path| path.ends_with("words.woff2")), "{all:?}");
        assert!(all.iter().any(|path| path.ends_with("figures.woff2")), "{all:?}");
        weighed.push((all.iter().map(|path| files[path].len()).sum::<usize>(), sheet));
    }
    weighed.sort();
    assert!(weighed.len() > 20, "only {} care sheets were found", weighed.len());
    let heavy: Vec<_> = weighed.iter().filter(|(bytes, _)| *bytes > HEAVIEST).collect();
    assert!(heavy.is_empty(), "{heavy:?}");
}

#[test]
fn a_care_sheet_uses_no_face_in_bold() {
    let site = Site::example("weight-faces");
    site.compile();
    for sheet in ["ink.css", "sheet.css", "paper.css"] {
        let css = site.text(&format!("out/public/assets/{sheet}"));
        let bold = css.split(['{', ';', '}']).filter(|rule| {
            rule.contains("bold") || ["600", "700"].iter().any(|weight| rule.contains(weight))
        });
        let bold: Vec<_> = bold.filter(|rule| !rule.contains("url(")).collect();
        // The face itself.
        assert!(bold.iter().all(|rule| rule.contains("font-weight:700")), "{sheet}: {bold:?}");
        assert!(bold.len() <= 1, "{sheet}: {bold:?}");
    }
}
