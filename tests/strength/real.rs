//! One file of a whole site, the built-in library and the look among them, replaced by other bytes.

use std::path::Path;
use std::sync::OnceLock;

use jiff::civil::date;
use wardsheet::compile::{Pages, check};
use wardsheet::finding::{draw, stops};
use wardsheet::render::Look;
use wardsheet::source::{Folder, Role, SourceFile, Sources};

/// Into how many shares the pages of the site are divided; one of them is set.
pub(crate) const SHARES: usize = 16;

/// The example site with everything it is compiled from.
pub(crate) fn site() -> &'static Sources {
    static SITE: OnceLock<Sources> = OnceLock::new();
    SITE.get_or_init(|| {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("site-example");
        let folder = Folder::find(Some(&path), &path).expect("the example is a site");
        let (sources, found) =
            folder.read(&["builtin".to_owned()]).expect("its library is built in");
        assert!(found.is_empty(), "{found:?}");
        sources
    })
}

/// Reads the site with one of its files replaced, checks it, draws what was found, and sets a share of its pages where nothing
/// stops them.
pub(crate) fn read_all(site: &Sources, replaced: &SourceFile, bytes: Vec<u8>, share: usize) {
    let mut sources = Sources::default();
    let mut read = Vec::new();
    for file in site.files() {
        let bytes = if file.id == replaced.id { bytes.clone() } else { site.bytes(file).to_vec() };
        let inside = file.path.strip_prefix("built-in ").unwrap_or(&file.path);
        let (_, found) =
            sources.add_bytes(inside, file.layer, bytes).expect("every file of a site has a role");
        read.extend(found);
    }
    let checked = check(&sources, read, date(2026, 11, 25));
    let drawn = draw::draw(&checked.findings, false, &|file| sources.shown(file));
    assert_eq!(drawn.is_empty(), checked.findings.is_empty());
    if stops(&checked.findings) {
        return;
    }
    let Ok(look) = Look::new(&sources) else {
        assert_eq!(replaced.role, Role::Template, "the built-in templates can be read");
        return;
    };
    let pages = Pages::new(&sources, &checked, &look);
    for wanted in pages.plan().iter().skip(share).step_by(SHARES) {
        let page = pages.page(wanted);
        let is_set = page.is_none_or(|page| page.is_ok());
        assert!(
            is_set || replaced.role == Role::Template,
            "{} passes and cannot be set",
            wanted.path()
        );
    }
}
