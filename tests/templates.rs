//! What becomes of a site's own template that does not work: a finding at its place, and nothing is set.

use jiff::civil::date;
use wardsheet::compile::{check, compile};
use wardsheet::finding::Finding;
use wardsheet::source::{Layer, Role, Sources, library};

fn found(template: &str) -> Vec<Finding> {
    let mut sources = Sources::default();
    sources.add(
        "wardsheet.toml",
        Role::Site,
        "wardsheet",
        Layer::Own,
        "title = \"A site\"\n".to_owned(),
    );
    sources.add(
        "templates/care.html",
        Role::Template,
        "care.html",
        Layer::Own,
        template.to_owned(),
    );
    library::add_species(&mut sources);
    library::add_look(&mut sources);
    let checked = check(&sources, Vec::new(), date(2026, 11, 25));
    compile(&sources, &checked).expect_err("the template is broken")
}

#[test]
fn a_template_that_cannot_be_read_is_found_at_its_place() {
    let found = found("<p>{{ name</p>\n");
    assert_eq!(found[0].code.name, "template-broken");
    let place = found[0].place.expect("a place");
    assert_eq!(place.file.0, 1, "the site's own template");
    assert!(place.start > 0, "not just the start of the file");
}

#[test]
fn a_template_that_asks_for_what_is_not_there_is_found_once_and_not_for_every_page() {
    let found = found("<p>{{ name }}</p>\n<p>{{ weather }}</p>\n");
    assert_eq!(found.len(), 1, "{found:?}");
    assert!(found[0].message.contains("weather"), "{}", found[0].message);
    assert_eq!(found[0].place.map(|place| place.file.0), Some(1));
}
