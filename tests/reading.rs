//! What reading a site's folder finds where no text can show it: each is a finding at its place or one plain sentence, and
//! never a panic.

#![expect(clippy::disallowed_methods, reason = "the sites of these tests lie on the disk")]
#![expect(clippy::disallowed_types, reason = "a file of 64 MB is made without writing 64 MB")]

use std::path::{Path, PathBuf};

use wardsheet::finding::place::line_and_column;
use wardsheet::finding::{Finding, Severity};
use wardsheet::source::{Folder, Sources};

/// A site in a temporary folder of its own, removed at the end.
struct Site(PathBuf);

impl Site {
    fn new(name: &str) -> Site {
        let folder =
            std::env::temp_dir().join(format!("wardsheet-reading-{}-{name}", std::process::id()));
        let site = Site(folder);
        site.write("wardsheet.toml", b"title = \"Quillmere\"\nlibraries = []\n");
        site
    }

    fn write(&self, path: &str, bytes: &[u8]) -> &Site {
        let path = self.0.join(path);
        std::fs::create_dir_all(path.parent().expect("it lies in the site")).expect("a folder");
        std::fs::write(path, bytes).expect("a file");
        self
    }

    fn read(&self) -> (Sources, Vec<Finding>) {
        let folder = Folder::find(Some(&self.0), Path::new("/")).expect("a site");
        folder.read(&[]).expect("no library is missing")
    }
}

impl Drop for Site {
    fn drop(&mut self) {
        // A temporary folder that stays behind harms nobody.
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

/// Asserts that one thing is found, an error of this code at the start of this file, and says what the message holds.
fn check(site: &Site, code: &str, path: &str, says: &str) {
    let (sources, found) = site.read();
    let [finding] = found.as_slice() else { panic!("one finding was expected: {found:#?}") };
    assert_eq!((finding.code.name, finding.severity), (code, Severity::Error));
    let place = finding.place.expect("a place");
    let shown = sources.shown(place.file);
    assert_eq!((shown.path, line_and_column(shown.text, place.start)), (path, (1, 1)));
    assert!(finding.message.contains(says), "`{}` does not say `{says}`", finding.message);
}

/// Whether this user may read whatever the permissions say, as root may.
fn reads_everything(site: &Site) -> bool {
    std::fs::read(site.0.join("animals/juniper.toml")).is_ok()
}

#[cfg(unix)]
fn forbid(path: &Path) {
    use std::os::unix::fs::PermissionsExt;
    std::fs::set_permissions(path, std::fs::Permissions::from_mode(0o000)).expect("permissions");
}

#[test]
#[cfg(unix)]
fn a_file_that_may_not_be_read_is_found() {
    let site = Site::new("unreadable");
    site.write("animals/juniper.toml", b"name = \"Juniper\"\n");
    forbid(&site.0.join("animals/juniper.toml"));
    if !reads_everything(&site) {
        check(&site, "file-unreadable", "animals/juniper.toml", "permission denied");
    }
}

#[test]
#[cfg(unix)]
fn a_link_that_leads_nowhere_is_found() {
    let site = Site::new("nowhere");
    site.write("animals/tansy.toml", b"name = \"Tansy\"\n");
    let link = site.0.join("animals/juniper.toml");
    std::os::unix::fs::symlink(site.0.join("gone.toml"), link).expect("a link");
    check(&site, "file-unreadable", "animals/juniper.toml", "a link leads nowhere");
}

#[test]
#[cfg(unix)]
fn a_link_to_a_folder_above_it_is_found_and_not_followed() {
    let site = Site::new("loop");
    site.write("species/snakes/testing-snake.toml", b"name = \"Testing snake\"\n");
    let link = site.0.join("species/snakes/more");
    std::os::unix::fs::symlink(site.0.join("species"), link).expect("a link");
    check(&site, "link-loop", "species/snakes/more", "leads back to a folder above it");
}

#[test]
fn a_file_of_another_encoding_is_found_at_its_line() {
    let site = Site::new("latin");
    site.write(
        "animals/juniper.toml",
        b"name = \"Juniper\"\nspecies = \"testing-snake\"\nstory = \"caf\xe9\"\n",
    );
    check(&site, "not-utf8", "animals/juniper.toml", "line 3 of this file is not UTF-8");
}

#[test]
fn a_byte_order_mark_is_no_fault() {
    let site = Site::new("mark");
    site.write("animals/juniper.toml", b"\xef\xbb\xbfname = \"Juniper\"\n");
    let (sources, found) = site.read();
    assert!(found.is_empty(), "{found:#?}");
    let read = sources.files().iter().find(|file| file.path == "animals/juniper.toml");
    assert_eq!(read.map(|file| file.text.as_str()), Some("name = \"Juniper\"\n"));
}

#[test]
fn a_file_far_too_large_is_found_and_not_read() {
    let site = Site::new("large");
    site.write("animals/juniper.csv", b"");
    let file = std::fs::File::create(site.0.join("animals/juniper.csv")).expect("a file");
    file.set_len(64 * 1024 * 1024 + 1).expect("room for a file of nothing");
    check(&site, "file-too-large", "animals/juniper.csv", "over 64 MB");
    let (sources, _) = site.read();
    assert!(sources.files().iter().all(|file| file.text.len() < 1024 * 1024));
}

#[test]
fn words_as_long_as_a_thousand_pages_are_found_and_not_read() {
    let site = Site::new("novel");
    let page = |length| vec![b'a'; length];
    site.write("pages/quarantine.md", &page(4 * 1024 * 1024 + 1));
    check(&site, "file-too-large", "pages/quarantine.md", "over 4 MB");
    let (sources, read) = site.read();
    let checked = wardsheet::compile::check(&sources, read, jiff::civil::date(2026, 11, 25));
    let of_the_page =
        checked.findings.iter().filter(|finding| finding.code.name.starts_with("file-"));
    assert_eq!(of_the_page.count(), 1, "what was not read is not said to be empty");
    site.write("pages/quarantine.md", &page(4 * 1024 * 1024));
    assert!(site.read().1.is_empty());
}

#[test]
fn two_files_that_claim_one_name_are_found() {
    let site = Site::new("twice");
    site.write("species/new/testing-snake.toml", b"name = \"New\"\n");
    site.write("species/old/testing-snake.toml", b"name = \"Old\"\n");
    check(
        &site,
        "name-taken-twice",
        "species/old/testing-snake.toml",
        "species/new/testing-snake.toml",
    );
    let (sources, found) = site.read();
    let (first, why) = found[0].related.first().expect("the file that has the name");
    assert_eq!(
        (sources.shown(first.file).path, why.as_str()),
        ("species/new/testing-snake.toml", "taken here")
    );
}

#[test]
fn a_species_and_its_words_share_a_name() {
    let site = Site::new("shared");
    site.write("species/testing-snake.toml", b"name = \"Testing snake\"\n");
    site.write("species/testing-snake.md", b"## At a glance\n");
    site.write("animals/testing-snake.toml", b"name = \"Testing snake\"\n");
    assert_eq!(site.read().1, []);
}

#[test]
fn a_name_that_would_leave_the_output_folder_is_found() {
    // Each is a file that a disk holds and that would name a page `.` or `..` in the written site.
    for path in ["pages/..md", "pages/...md", "animals/...toml"] {
        let site = Site::new("leaving");
        site.write(path, b"name = \"Leaving\"\n");
        check(&site, "name-unusable", path, "cannot be a name");
    }
}

#[test]
fn a_name_that_another_system_reads_otherwise_is_found_and_one_is_offered() {
    for (path, offered) in [
        ("animals/Juniper.toml", "`juniper`"),
        ("animals/juniper two.toml", "`juniper-two`"),
        ("animals/j\u{fc}niper.toml", "`j-niper`"),
        ("animals/con.toml", "`con-1`"),
    ] {
        let site = Site::new("capitals");
        site.write(path, b"name = \"Juniper\"\n");
        check(&site, "name-unusable", path, "cannot be a name");
        let help = site.read().1.swap_remove(0).help.expect("help");
        assert!(help.contains(offered), "{path}: {help}");
    }
}

#[test]
fn an_empty_file_is_read_and_its_parsing_says_so() {
    let site = Site::new("empty");
    site.write("animals/juniper.toml", b"  \n");
    let (sources, found) = site.read();
    assert!(found.is_empty(), "{found:#?}");
    let (model, found) = wardsheet::parse::parse(&sources);
    let [finding] = found.as_slice() else { panic!("one finding was expected: {found:#?}") };
    assert_eq!(finding.code.name, "file-empty");
    assert_eq!(finding.message, "animal `juniper` has nothing in it");
    let place = finding.place.expect("a place");
    assert_eq!(sources.shown(place.file).path, "animals/juniper.toml");
    assert!(model.animals.is_empty());
}

#[test]
fn a_folder_that_is_not_there_or_no_site_is_said_in_one_sentence() {
    let site = Site::new("none");
    let gone = site.0.join("gone");
    let said = Folder::find(Some(&gone), &site.0).expect_err("no folder").to_string();
    assert_eq!(said, format!("there is no folder {}", gone.display()));

    site.write("animals/juniper.toml", b"");
    let animals = site.0.join("animals");
    let said = Folder::find(Some(&animals), &site.0).expect_err("no site").to_string();
    assert!(said.contains("holds no wardsheet.toml") && said.contains("wardsheet start"), "{said}");
    assert!(!said.contains('\n'), "{said}");
}

#[test]
fn the_nearest_site_upwards_is_found() {
    let site = Site::new("upwards");
    site.write("animals/juniper.toml", b"");
    let found = Folder::find(None, &site.0.join("animals")).expect("a site");
    assert_eq!(found.path(), site.0);
}

#[test]
fn a_library_that_is_not_there_is_said_in_one_sentence() {
    let site = Site::new("library");
    let folder = Folder::find(Some(&site.0), &site.0).expect("a site");
    let said = folder.read(&["../club".to_owned()]).expect_err("no library").to_string();
    assert_eq!(said, "wardsheet.toml names the library `../club`, and there is no such folder");
}

#[test]
fn a_library_lends_its_species_and_keeps_its_animals() {
    let site = Site::new("lending");
    site.write("species/own.toml", b"name = \"Own\"\n");
    site.write("club/species/lent.toml", b"name = \"Lent\"\n");
    site.write("club/animals/kept.toml", b"name = \"Kept\"\n");
    let folder = Folder::find(Some(&site.0), &site.0).expect("a site");
    let (sources, found) = folder.read(&["club".to_owned()]).expect("a library");
    assert_eq!(found, []);
    let paths: Vec<&str> = sources.files().iter().map(|file| file.path.as_str()).collect();
    assert!(paths.contains(&"club/species/lent.toml") && paths.contains(&"species/own.toml"));
    assert!(!paths.iter().any(|path| path.contains("kept")), "{paths:?}");
}
