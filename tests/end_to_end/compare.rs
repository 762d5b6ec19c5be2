//! The pages that help to choose: the comparison in its orders, what fits in a space, and the document of all sheets.

use std::collections::BTreeSet;

use crate::html::{Element, elements};
use crate::site::Site;

const ORDERS: [&str; 5] = ["index", "by-space", "by-length", "by-years", "by-cost"];

fn page(site: &Site, path: &str) -> String {
    site.text(&format!("out/public/{path}"))
}

/// The species that a page links to, in order.
fn linked(page: &str) -> Vec<String> {
    let all = elements(page);
    let links = all.iter().filter(|element| element.name == "a");
    let species = links.filter_map(|link| link.attribute("href")?.strip_prefix("../species/"));
    species.map(|rest| rest.trim_end_matches("/index.html").to_owned()).collect()
}

/// The number that a text begins with; infinite where it begins with none.
fn number(text: &str) -> f64 {
    let end = text.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(text.len());
    text[..end].parse().unwrap_or(f64::INFINITY)
}

/// The numbers that the cells of a heading begin with, row by row; infinite where there is none.
fn column(page: &str, heading: &str) -> Vec<f64> {
    let mark = format!("data-label=\"{heading}\">");
    let bare = format!("data-label={heading}>");
    let cells = page.split(if page.contains(&mark) { &mark } else { &bare }).skip(1);
    cells.map(number).collect()
}

#[test]
fn every_order_holds_every_species_once_in_each_table() {
    let site = Site::example("compare-orders");
    site.compile();
    let mut orders = BTreeSet::new();
    let mut first: Option<BTreeSet<String>> = None;
    for order in ORDERS {
        let order = linked(&page(&site, &format!("compare/{order}.html")));
        let species: BTreeSet<String> = order.iter().cloned().collect();
        assert!(species.len() > 15, "{species:?}");
        let tables: Vec<&[String]> = order.chunks(species.len()).collect();
        assert_eq!(tables.len(), 3, "every table holds every species once");
        assert!(tables.iter().all(|table| *table == tables[0]), "all tables stand in one order");
        assert_eq!(first.get_or_insert(species.clone()), &species);
        orders.insert(order);
    }
    assert_eq!(orders.len(), ORDERS.len(), "each page has an order of its own");
}

#[test]
fn species_by_space_begin_with_the_smallest_floor_and_end_with_what_is_not_known() {
    let site = Site::example("compare-space");
    site.compile();
    let floors = column(&page(&site, "compare/by-space.html"), "Floor");
    assert!(floors.len() > 15 && floors[0] < 1.0, "{floors:?}");
    assert!(floors.is_sorted(), "{floors:?}");
    // The example's crested gecko is covered by no standard in force: it must not pass for one that needs little.
    assert_eq!(floors.last(), Some(&f64::INFINITY));
}

#[test]
fn a_species_fits_under_the_smallest_floor_that_is_enough() {
    let site = Site::example("compare-fits");
    site.compile();
    let fits = page(&site, "compare/fits.html");
    let species = linked(&fits);
    let once: BTreeSet<&String> = species.iter().collect();
    assert_eq!(once.len(), species.len(), "each stands once");
    let mut smaller = 0.0;
    let mut groups = 0;
    for group in fits.split("aria-labelledby=floor-").skip(1) {
        let heading = group.split("-title>").skip(1).map(number).find(|floor| floor.is_finite());
        let floor = heading.unwrap_or(f64::INFINITY);
        for needed in column(group.split("</section>").next().unwrap_or_default(), "Floor") {
            assert!(needed == f64::INFINITY || needed > smaller, "{needed} fits on {smaller} m²");
            assert!(needed <= floor, "{needed} m² stands under {floor} m²");
        }
        (smaller, groups) = (floor, groups + 1);
    }
    assert!(groups >= 5, "only {groups} groups");
}

#[test]
fn a_tighter_site_moves_species_to_larger_floors() {
    let site = Site::example("compare-standards");
    let of_corn = |site: &Site| {
        let page = page(site, "compare/index.html");
        let row = page.split("corn-snake/index.html").nth(1).expect("the corn snake").to_owned();
        column(&row, "Floor")[0]
    };
    let with = |site: &Site, standards: &[&str]| {
        let list: Vec<toml::Value> =
            standards.iter().map(|name| toml::Value::from(*name)).collect();
        site.edit("wardsheet.toml", |table| {
            table.insert("standards".to_owned(), list.into());
        });
        site.compile();
        of_corn(site)
    };
    let (german, austrian) = (with(&site, &["de-1997"]), with(&site, &["at-2004"]));
    let both = with(&site, &["de-1997", "at-2004"]);
    assert!(both >= german.max(austrian), "{both} satisfies {german} and {austrian}");
    assert_ne!(german, austrian, "the standards differ for a corn snake");
}

/// The levels of a page's headings, in order.
fn levels(all: &[Element]) -> Vec<u32> {
    let level = |element: &Element| element.name.strip_prefix('h')?.parse().ok();
    all.iter().filter_map(level).collect()
}

#[test]
fn the_document_of_all_sheets_holds_each_sheet_once_with_its_headings_in_order() {
    let site = Site::example("binder");
    site.put("species/corn-snake.md", "## Heat and light\n\nSee [the boa](../boa-constrictor/index.html) and [above](#seconds).\n\n### More\n\nText.\n");
    site.own_species("corn-snake", |_| {});
    site.compile();
    let binder = page(&site, "binder.html");
    let all = elements(&binder);
    let sheets = all
        .iter()
        .filter(|element| element.name == "article" && element.attribute("class") == Some("bound"));
    let bound: Vec<&str> = sheets.filter_map(|sheet| sheet.attribute("id")).collect();
    let compared: BTreeSet<String> =
        linked(&page(&site, "compare/index.html")).into_iter().collect();
    assert_eq!(bound.iter().map(|key| (*key).to_owned()).collect::<BTreeSet<_>>(), compared);
    assert_eq!(bound.len(), compared.len());
    let contents: Vec<&str> = all
        .iter()
        .filter_map(|element| element.attribute("href")?.strip_prefix('#'))
        .filter(|anchor| compared.contains(*anchor))
        .collect();
    assert_eq!(contents, bound, "the contents stand in the order of the sheets");
    for pair in levels(&all).windows(2) {
        assert!(
            pair[1] <= pair[0] + 1,
            "a heading of level {} follows one of {}",
            pair[1],
            pair[0]
        );
    }
    assert!(binder.contains("<h4>More</h4>"), "words go down with their sheet");
    for link in ["species/corn-snake/../boa-constrictor/index.html", "#corn-snake-seconds"] {
        assert!(all.iter().any(|element| element.attribute("href") == Some(link)), "{link}");
    }
}
