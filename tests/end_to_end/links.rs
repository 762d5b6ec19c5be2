//! Every link, anchor and asset of every page leads somewhere, inside the page's own part of the output.

use std::collections::{BTreeMap, BTreeSet};

use crate::html::{Element, elements};
use crate::site::{Site, TODAY, Tree, tree};

/// The attributes by which a page names another file.
const ADDRESSES: [&str; 8] =
    ["href", "src", "srcset", "poster", "data", "action", "formaction", "background"];

/// Where the example site would stand.
const HOME: &str = "https://example.org/quillmere/";

struct Page {
    path: String,
    text: String,
    elements: Vec<Element>,
}

fn pages(files: &Tree) -> Vec<Page> {
    let pages = files.iter().filter(|(path, _)| path.ends_with(".html"));
    let read = pages.map(|(path, bytes)| {
        let text = String::from_utf8(bytes.clone()).expect("a page is UTF-8");
        Page { path: path.clone(), elements: elements(&text), text }
    });
    read.collect()
}

/// The path that an address leads to from a page, or what is wrong with it.
fn resolved(page: &str, address: &str) -> Result<String, String> {
    if address.starts_with('/') {
        return Err("starts at the root of a server".to_owned());
    }
    let mut parts: Vec<&str> = page.split('/').collect();
    if !address.is_empty() {
        parts.pop();
    }
    for part in address.split('/').filter(|part| !part.is_empty()) {
        match part {
            "." => {}
            ".." => _ = parts.pop().ok_or("leads out of the output")?,
            part => parts.push(part),
        }
    }
    if address.ends_with('/') {
        return Err("names a folder, which a stick shows as a list of files".to_owned());
    }
    Ok(parts.join("/"))
}

fn part(path: &str) -> &str {
    path.split('/').next().unwrap_or(path)
}

/// Whether an address has a scheme, and which.
fn scheme(address: &str) -> Option<String> {
    let plain: String = address.chars().filter(|c| !c.is_whitespace() && !c.is_control()).collect();
    let end = plain.find([':', '/', '?', '#'])?;
    plain[end..].starts_with(':').then(|| plain[..end].to_ascii_lowercase())
}

/// Every address that an element holds. A list of sizes holds one before each width.
fn addresses(element: &Element) -> Vec<(&str, &str)> {
    let own = element.attributes.iter().filter(|(name, _)| ADDRESSES.contains(&name.as_str()));
    let split = own.flat_map(|(name, value)| -> Vec<(&str, &str)> {
        if name != "srcset" {
            return vec![(name, value)];
        }
        let first = |size: &str| size.split_whitespace().next().unwrap_or_default().len();
        let sizes = value.split(',').map(str::trim);
        sizes.map(|size| (name.as_str(), &size[..first(size)])).collect()
    });
    split.collect()
}

fn check(files: &Tree) -> (usize, Vec<String>) {
    let pages = pages(files);
    let ids: BTreeMap<&str, BTreeSet<&str>> = pages
        .iter()
        .map(|page| {
            (
                page.path.as_str(),
                page.elements.iter().filter_map(|element| element.attribute("id")).collect(),
            )
        })
        .collect();
    let (mut links, mut broken) = (0, Vec::new());
    for page in &pages {
        for element in &page.elements {
            for (name, address) in addresses(element) {
                links += 1;
                // A host shows this page at every depth, so its links are full addresses: they are followed from the root.
                let own = address.strip_prefix(HOME).filter(|_| page.path == "public/404.html");
                let address = own.unwrap_or(address);
                let mut report = |what: &str| {
                    broken
                        .push(format!("{}: <{} {name}={address}> {what}", page.path, element.name))
                };
                let told = element.attribute("rel") == Some("canonical")
                    || element.attribute("hreflang").is_some();
                let canonical = element.name == "link" && told;
                match scheme(address).as_deref() {
                    Some("https") if canonical => {} // Told to search engines, never loaded.
                    Some("http" | "https") if address.starts_with(HOME) => {
                        report("is a link to its own site")
                    }
                    Some("http" | "https" | "mailto" | "tel") if element.name == "a" => continue,
                    Some(_) => report("loads from elsewhere"),
                    None if address.starts_with("//") => report("loads from elsewhere"),
                    None => {
                        let (file, anchor) = address.split_once('#').unwrap_or((address, ""));
                        match resolved(&page.path, file) {
                            Err(what) => report(&what),
                            Ok(target)
                                if part(&target) == "private" && part(&page.path) == "public" =>
                            {
                                report("leads into the private part")
                            }
                            Ok(target) if !files.contains_key(&target) => report("leads nowhere"),
                            Ok(target)
                                if part(&target) != part(&page.path) && element.name != "a" =>
                            {
                                report("needs the other part")
                            }
                            Ok(target)
                                if !anchor.is_empty()
                                    && !ids
                                        .get(target.as_str())
                                        .is_some_and(|ids| ids.contains(anchor)) =>
                            {
                                report("names an anchor that is not there");
                            }
                            Ok(_) => {}
                        }
                    }
                }
            }
        }
    }
    (links, broken)
}

#[track_caller]
fn none(broken: &[String]) {
    assert!(
        broken.is_empty(),
        "{} broken:\n{}",
        broken.len(),
        broken[..broken.len().min(40)].join("\n")
    );
}

#[test]
fn every_link_and_asset_is_there() {
    let site = Site::example("links");
    site.compile();
    for words in [&["sitter", "--from", "2026-12-01", "--until", "2026-12-05"][..], &["round"]] {
        let asked = site.command(words[0]).args(&words[1..]).args(["--as-of", TODAY]).output();
        crate::site::succeeds(&asked.expect("the program runs"));
    }
    let files = tree(&site.out());
    let (links, broken) = check(&files);
    none(&broken);
    assert!(links > 1000, "only {links} links were found");
}

#[test]
fn style_sheets_load_nothing_from_elsewhere() {
    let site = Site::example("style-sheets");
    site.compile();
    let files = tree(&site.out());
    let sheets: Vec<_> = files.iter().filter(|(path, _)| path.ends_with(".css")).collect();
    assert!(!sheets.is_empty(), "there is no style sheet");
    for (path, bytes) in sheets {
        let text = String::from_utf8_lossy(bytes);
        assert!(!text.contains("http:") && !text.contains("https:"), "{path} names an address");
        for (start, _) in text.match_indices("url(") {
            let inside = text[start + 4..].split(')').next().unwrap_or_default();
            let inside = inside.trim_matches(['"', '\'', ' ']);
            if scheme(inside).as_deref() == Some("data") || inside.starts_with('#') {
                continue;
            }
            let target = resolved(path, inside).expect("an address inside the part");
            assert!(files.contains_key(&target), "{path}: url({inside}) leads nowhere");
        }
    }
}

#[test]
fn pages_work_without_scripts_and_name_every_place_once() {
    let site = Site::example("no-scripts");
    site.compile();
    for page in pages(&tree(&site.out())) {
        let text = page.text.to_ascii_lowercase();
        assert!(
            !text.contains("<script") && !text.contains("javascript:"),
            "{} holds a script",
            page.path
        );
        let mut seen = BTreeSet::new();
        for element in &page.elements {
            let runs = element.attributes.keys().find(|name| name.starts_with("on"));
            assert_eq!(runs, None, "{}: <{}> runs something", page.path, element.name);
            let foreign =
                ["iframe", "object", "embed", "base", "form"].contains(&element.name.as_str());
            assert!(!foreign, "{}: <{}>", page.path, element.name);
            if let Some(id) = element.attribute("id") {
                assert!(seen.insert(id.to_owned()), "{}: the id `{id}` stands twice", page.path);
            }
        }
    }
}

/// Whether an element is the title of a drawing, which its drawing refers to.
fn names_a_drawing(element: &Element) -> bool {
    element.name == "title" && element.attribute("id").is_some()
}

#[test]
fn every_page_has_one_title_one_heading_and_its_language() {
    let site = Site::example("headings");
    site.compile();
    for page in pages(&tree(&site.out())) {
        let count = |name: &str| {
            page.elements
                .iter()
                .filter(|element| element.name == name && !names_a_drawing(element))
                .count()
        };
        assert_eq!(
            (count("title"), count("h1"), count("main")),
            (1, 1, 1),
            "{}: title, h1, main",
            page.path
        );
        let language = page
            .elements
            .iter()
            .find(|element| element.name == "html")
            .and_then(|html| html.attribute("lang"));
        let wanted = if page.path.starts_with("public/de/") { "de" } else { "en" };
        assert_eq!(language, Some(wanted), "{}", page.path);
        for image in page.elements.iter().filter(|element| element.name == "img") {
            assert!(image.attribute("alt").is_some(), "{}: a picture without words", page.path);
        }
    }
}

#[test]
fn a_broken_link_is_seen() {
    let page = |body: &str| -> Tree {
        let files = [
            ("public/a/index.html", body),
            ("public/b.html", "<p id=here>"),
            ("private/c.html", ""),
        ];
        files.map(|(path, text)| (path.to_owned(), text.as_bytes().to_vec())).into()
    };
    for sound in [
        "<a href=../b.html>",
        "<a href=../b.html#here>",
        "<a href=https://example.com/>",
        "<a href=#x id=x>",
        "<link rel=canonical href=https://example.org/quillmere/a/>",
    ] {
        none(&check(&page(sound)).1);
    }
    let cases = [
        ("<a href=../d.html>", "leads nowhere"),
        ("<a href=../b.html#there>", "anchor"),
        ("<a href=../../private/c.html>", "private part"),
        ("<a href=../>", "names a folder"),
        ("<a href=/b.html>", "root of a server"),
        ("<a href=../../../b.html>", "leads out of the output"),
        ("<img src=https://example.com/x.png>", "loads from elsewhere"),
        ("<link href=//example.com/x.css>", "loads from elsewhere"),
        ("<a href=javascript:x>", "loads from elsewhere"),
        ("<a href=https://example.org/quillmere/b.html>", "its own site"),
    ];
    for (body, expected) in cases {
        let (_, broken) = check(&page(body));
        assert!(broken.len() == 1 && broken[0].contains(expected), "{body}: {broken:?}");
    }
}
