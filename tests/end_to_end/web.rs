//! What hosts, search engines and feed readers find: the page for what is not there, the list of pages and the feed.

use crate::html::{decoded, elements};
use crate::site::{Site, Tree, tree};

/// Checks that a text is well-formed XML as far as this program writes it, and gives its elements with their texts.
fn read_xml(text: &str) -> Vec<(String, String)> {
    let rest = text.strip_prefix("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
    let mut rest = rest.expect("the XML declaration comes first");
    let (mut open, mut found): (Vec<String>, Vec<(String, String)>) = (Vec::new(), Vec::new());
    while let Some(start) = rest.find('<') {
        let said = &rest[..start];
        for reference in said.split('&').skip(1) {
            let name = reference.split(';').next().unwrap_or_default();
            let known =
                ["amp", "lt", "gt", "quot", "apos"].contains(&name) || name.starts_with('#');
            assert!(known, "&{name}; is not XML");
        }
        let end = rest[start..].find('>').map(|end| start + end).expect("a tag ends");
        let tag = &rest[start + 1..end];
        if let Some(name) = tag.strip_prefix('/') {
            assert_eq!(open.pop().as_deref(), Some(name), "tags close in their order");
            found.push((name.to_owned(), decoded(said)));
        } else if !tag.ends_with('/') {
            open.push(tag.split(char::is_whitespace).next().unwrap_or_default().to_owned());
        }
        rest = &rest[end + 1..];
    }
    assert!(open.is_empty(), "{open:?} stay open");
    found
}

fn texts<'a>(found: &'a [(String, String)], name: &str) -> Vec<&'a str> {
    found.iter().filter(|(other, _)| other == name).map(|(_, text)| text.as_str()).collect()
}

fn text(files: &Tree, path: &str) -> String {
    String::from_utf8(files[path].clone()).expect("a page is UTF-8")
}

/// The file that an address of the example's site leads to.
fn file_of(address: &str) -> String {
    let inside =
        address.strip_prefix("https://example.org/quillmere/").expect("the site's address");
    let index = if inside.is_empty() || inside.ends_with('/') { "index.html" } else { "" };
    format!("public/{inside}{index}")
}

#[test]
fn the_list_of_pages_holds_every_public_page_once() {
    let site = Site::example("sitemap");
    site.compile();
    let files = tree(&site.out());
    let found = read_xml(&text(&files, "public/sitemap.xml"));
    let mut listed: Vec<String> = texts(&found, "loc").into_iter().map(file_of).collect();
    listed.sort();
    let pages = files.keys().filter(|path| path.starts_with("public/") && path.ends_with(".html"));
    let pages: Vec<String> = pages.filter(|path| *path != "public/404.html").cloned().collect();
    assert_eq!(listed, pages);
}

#[test]
fn the_feed_holds_each_reviewed_sheet_with_the_day_of_its_review() {
    let site = Site::example("feed");
    site.own_species("corn-snake", |species| {
        species.insert("reviewed".to_owned(), toml::Value::from("2025-03-04"));
        species.insert("summary".to_owned(), toml::Value::from("Rats & mice, <b>quick</b>."));
    });
    site.edit("wardsheet.toml", |table| {
        table.insert("title".to_owned(), toml::Value::from("Frogs & \"Newts\" <Quillmere>"));
    });
    site.compile();
    let files = tree(&site.out());
    let found = read_xml(&text(&files, "public/feed.xml"));
    let ids = texts(&found, "id");
    let (feed, entries) = ids.split_first().expect("the feed has an identity");
    assert_eq!(*feed, "https://example.org/quillmere/feed.xml");
    assert!(entries.len() > 15 && entries.iter().all(|id| files.contains_key(&file_of(id))));
    let days = texts(&found, "updated");
    assert_eq!(days.len(), ids.len(), "RFC 4287, 4.1.1 and 4.1.2: each has exactly one day");
    assert_eq!(Some(&days[0]), days[1..].iter().max(), "the feed is as new as its newest sheet");
    let corn = entries.iter().position(|id| id.ends_with("/corn-snake/")).expect("the corn snake");
    assert_eq!(days[corn + 1], "2025-03-04T00:00:00Z");
    assert_eq!(texts(&found, "title")[0], "Frogs & \"Newts\" <Quillmere>");
    assert!(texts(&found, "summary").contains(&"Rats & mice, <b>quick</b>."));
}

#[test]
fn a_site_without_an_address_has_neither_and_its_pages_name_none() {
    let site = Site::example("no-address");
    site.edit("wardsheet.toml", |table| drop(table.remove("address")));
    site.compile();
    let files = tree(&site.out());
    assert!(files.keys().all(|path| !path.ends_with(".xml")), "no list and no feed");
    for (path, bytes) in files.iter().filter(|(path, _)| path.ends_with(".html")) {
        let page = String::from_utf8_lossy(bytes);
        assert!(!page.contains("property=") && !page.contains("example.org/quillmere"), "{path}");
        assert!(!page.contains("atom+xml"), "{path} names a feed that is not there");
    }
    assert!(files.contains_key("public/404.html"));
}

#[test]
fn public_pages_say_what_they_are_to_those_who_pass_them_on_and_private_ones_do_not() {
    let site = Site::example("passed-on");
    site.compile();
    for (path, bytes) in tree(&site.out()).iter().filter(|(path, _)| path.ends_with(".html")) {
        let page = elements(&String::from_utf8_lossy(bytes));
        let says = |property: &str| {
            let mut all = page.iter().filter(|one| one.attribute("property") == Some(property));
            all.next().and_then(|one| one.attribute("content")).map(str::to_owned)
        };
        let is_passed_on = path.starts_with("public/") && path != "public/404.html";
        for property in ["og:title", "og:description", "og:type", "og:url"] {
            let said = says(property).is_some_and(|said| !said.is_empty());
            assert_eq!(said, is_passed_on, "{path}: {property}");
        }
    }
}

#[test]
fn the_page_for_what_is_not_there_leads_back_from_any_depth() {
    let site = Site::example("not-found");
    site.compile();
    let files = tree(&site.out());
    let page = elements(&text(&files, "public/404.html"));
    let mut followed = 0;
    for address in page.iter().filter_map(|element| element.attribute("href")) {
        if address != "#main" {
            assert!(files.contains_key(&file_of(address)), "{address}");
            followed += 1;
        }
    }
    assert!(followed > 6, "only {followed} addresses were found");
}

/// The text of the page's own title, before any drawing.
fn title(page: &str) -> String {
    let inside = page.split("<title>").nth(1).and_then(|rest| rest.split("</title>").next());
    decoded(inside.expect("a title"))
}

#[test]
fn titles_and_descriptions_tell_public_pages_apart_and_fit_a_search_result() {
    let site = Site::example("search-results");
    site.compile();
    let mut seen = std::collections::BTreeSet::new();
    let files = tree(&site.out());
    for path in files.keys().filter(|path| path.starts_with("public/") && path.ends_with(".html")) {
        let page = text(&files, path);
        let elements = elements(&page);
        let described = elements.iter().find(|one| one.attribute("name") == Some("description"));
        let described = described.and_then(|one| one.attribute("content")).unwrap_or_default();
        let title = title(&page);
        assert!((10..=60).contains(&title.chars().count()), "{path}: {title}");
        assert!((20..=155).contains(&described.chars().count()), "{path}: {described}");
        // The name of an animal may be the same in every language.
        let language = elements.iter().find_map(|one| one.attribute("lang")).unwrap_or_default();
        let (title, described) = (format!("{language} {title}"), format!("{language} {described}"));
        assert!(seen.insert(title.clone()), "{path}: the title `{title}` stands twice");
        assert!(seen.insert(described.clone()), "{path}: `{described}` stands twice");
    }
}

#[test]
fn a_care_sheet_says_to_search_engines_what_it_is_about_and_how_fresh_it_is() {
    let site = Site::example("structured");
    site.compile();
    let page = elements(&site.text("out/public/species/corn-snake/index.html"));
    let of = |name: &str| page.iter().find(|one| one.attribute("itemprop") == Some(name));
    let types: Vec<_> = page.iter().filter_map(|one| one.attribute("itemtype")).collect();
    assert_eq!(types, ["https://schema.org/Article", "https://schema.org/Taxon"]);
    assert!(of("headline").is_some_and(|one| one.name == "h1"));
    assert!(of("description").is_some() && of("about").is_some());
    let day = of("dateModified").and_then(|one| one.attribute("datetime")).expect("a day");
    assert!(day.parse::<jiff::civil::Date>().is_ok(), "{day}");
}
