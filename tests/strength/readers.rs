//! One file of a small sound site replaced by other bytes, and everything done with the site that a compile does.

use std::convert::Infallible;
use std::sync::OnceLock;

use jiff::civil::date;
use wardsheet::compile::{Pages, check};
use wardsheet::finding::{draw, json, stops};
use wardsheet::render::Look;
use wardsheet::source::{Layer, Sources, library};

/// The files of the small site, by their paths.
pub(crate) const BASE: [(&str, &str); 9] = [
    ("animals/juniper.csv", include_str!("../base/animals/juniper.csv")),
    ("animals/juniper.toml", include_str!("../base/animals/juniper.toml")),
    ("pages/quarantine.md", include_str!("../base/pages/quarantine.md")),
    ("private.toml", include_str!("../base/private.toml")),
    ("sources.toml", include_str!("../base/sources.toml")),
    ("species/standards/testing.toml", include_str!("../base/species/standards/testing.toml")),
    ("species/testing-snake.md", include_str!("../base/species/testing-snake.md")),
    ("species/testing-snake.toml", include_str!("../base/species/testing-snake.toml")),
    ("wardsheet.toml", include_str!("../base/wardsheet.toml")),
];

/// Reads the site with one of its files replaced, checks it, tells what was found, and sets its pages where nothing stops them.
/// Returns the codes of the findings.
pub(crate) fn read_all(replaced: &str, bytes: Vec<u8>) -> Vec<&'static str> {
    let mut sources = Sources::default();
    let mut read = Vec::new();
    for (path, text) in BASE {
        let bytes = if path == replaced { bytes.clone() } else { text.as_bytes().to_vec() };
        let (_, found) =
            sources.add_bytes(path, Layer::Own, bytes).expect("every file of the site has a role");
        read.extend(found);
    }
    library::add_look(&mut sources);
    let checked = check(&sources, read, date(2026, 11, 25));
    let drawn = draw::draw(&checked.findings, false, &|file| sources.shown(file));
    let told = json::json(&checked.findings, &|file| sources.shown(file));
    assert_eq!(drawn.is_empty(), checked.findings.is_empty());
    assert_eq!(told.as_array().map_or(0, Vec::len), checked.findings.len());
    if !stops(&checked.findings) {
        // The templates are those of every other run, and reading them would take most of the time.
        static LOOK: OnceLock<Look> = OnceLock::new();
        let look = LOOK.get_or_init(|| Look::new(&sources).expect("the built-in templates"));
        let pages =
            Pages::new(&sources, &checked, look).each(|_| true, |_| Ok::<(), Infallible>(()));
        assert!(pages.is_ok(), "the built-in templates set whatever passes the checks");
    }
    checked.findings.iter().map(|finding| finding.code.name).collect()
}
