//! Every code's page is its documentation and its test: its example must fire on a clean base site, and its repair must not.
//!
//! The blocks of a page are laid over `tests/base/`, a small invented site with nothing wrong in it. `toml PATH` is merged
//! into the base file, `toml whole PATH`, `csv PATH` and `markdown PATH` take its place, `without PATH` removes dotted keys,
//! and `date` sets the day.

#![expect(
    clippy::disallowed_methods,
    reason = "the base site and the tests' own names lie on the disk"
)]

use std::collections::BTreeMap;
use std::path::Path;

use jiff::civil::Date;
use toml::{Table, Value};
use walkdir::WalkDir;

use wardsheet::compile::check as check_site;
use wardsheet::finding::{Code, Finding, Severity, draw};
use wardsheet::proof::codes;
use wardsheet::source::library::role_of;
use wardsheet::source::{Layer, Photo, Sources};

/// The sections of every page after its first paragraph, in this order.
const SECTIONS: [&str; 4] = ["Why it matters", "Fires", "Put right", "Source"];

/// The day on which the base site is clean.
const AS_OF: &str = "2026-11-25";

/// A site in memory: the text of every file by its path, the photos by their names, and the day.
#[derive(Clone)]
struct Site {
    photos: BTreeMap<String, Vec<u8>>,
    files: BTreeMap<String, String>,
    as_of: Date,
}

impl Site {
    fn base() -> Site {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/base");
        let (mut files, mut photos) = (BTreeMap::new(), BTreeMap::new());
        for entry in WalkDir::new(&folder) {
            let entry = entry.expect("the base site can be walked");
            if entry.file_type().is_file() {
                let path = entry.path().strip_prefix(&folder).expect("it lies in the base site");
                let path = path.to_string_lossy().replace('\\', "/");
                let bytes = std::fs::read(entry.path()).expect("it can be read");
                match path.strip_prefix("photos/") {
                    Some(photo) => _ = photos.insert(photo.to_owned(), bytes),
                    None => {
                        _ = files.insert(path, String::from_utf8(bytes).expect("it is text"));
                    }
                }
            }
        }
        Site { photos, files, as_of: AS_OF.parse().expect("a day") }
    }

    /// Reads, works out and checks the site, as a compile does.
    fn findings(&self) -> (Sources, Vec<Finding>) {
        let mut sources = Sources::default();
        for (path, text) in &self.files {
            let (role, name) =
                role_of(path).unwrap_or_else(|| panic!("{path} is no file of a site"));
            sources.add(path.clone(), role, name, Layer::Own, text.clone());
        }
        for (name, bytes) in &self.photos {
            sources.add_photo(name.clone(), Photo::InMemory(bytes.as_slice().into()));
        }
        let found = check_site(&sources, Vec::new(), self.as_of).findings;
        (sources, found)
    }

    /// Lays the blocks of a section over the site.
    fn with(mut self, section: &str) -> Result<Site, String> {
        for block in blocks(section) {
            let words: Vec<&str> = block.info.split_whitespace().collect();
            match words.as_slice() {
                ["date"] => {
                    let day = block.text.trim();
                    self.as_of = day.parse().map_err(|_| format!("`{day}` is not a day"))?;
                }
                ["toml", path] => self.merge(path, &block.text)?,
                ["toml", "whole", path] | ["csv" | "markdown", path] => {
                    self.files.insert((*path).to_owned(), block.text);
                }
                ["without", path] => self.remove(path, &block.text)?,
                _ => {
                    return Err(format!("a block is marked `{}`, which means nothing", block.info));
                }
            }
        }
        Ok(self)
    }

    fn table(&self, path: &str) -> Result<Table, String> {
        let text = self.files.get(path).map_or("", String::as_str);
        text.parse().map_err(|error| format!("{path}: {error}"))
    }

    fn merge(&mut self, path: &str, text: &str) -> Result<(), String> {
        let mut table = self.table(path)?;
        let over: Table = text.parse().map_err(|error| format!("a block for {path}: {error}"))?;
        merge(&mut table, over);
        self.files.insert(path.to_owned(), table.to_string());
        Ok(())
    }

    fn remove(&mut self, path: &str, keys: &str) -> Result<(), String> {
        let mut table = self.table(path)?;
        for key in keys.lines().filter(|line| !line.trim().is_empty()) {
            let (parents, last) = key.trim().rsplit_once('.').unwrap_or(("", key.trim()));
            let mut inner = &mut table;
            for parent in parents.split('.').filter(|parent| !parent.is_empty()) {
                let found = inner.get_mut(parent).and_then(Value::as_table_mut);
                inner = found.ok_or_else(|| format!("{path} has no table {parents}"))?;
            }
            inner.remove(last).ok_or_else(|| format!("{path} has no key {key}"))?;
        }
        self.files.insert(path.to_owned(), table.to_string());
        Ok(())
    }
}

/// Tables merge; everything else, lists of tables among it, is replaced whole.
fn merge(table: &mut Table, over: Table) {
    for (key, value) in over {
        match (table.get_mut(&key), value) {
            (Some(Value::Table(inner)), Value::Table(over)) => merge(inner, over),
            (_, value) => {
                table.insert(key, value);
            }
        }
    }
}

/// A fenced block: what stands behind its fence, and its text.
struct Block {
    info: String,
    text: String,
}

fn blocks(section: &str) -> Vec<Block> {
    let mut blocks = Vec::new();
    let mut open: Option<Block> = None;
    for line in section.lines() {
        match (line.strip_prefix("```"), &mut open) {
            (Some(_), Some(_)) => blocks.extend(open.take()),
            (Some(info), None) => {
                open = Some(Block { info: info.trim().to_owned(), text: String::new() });
            }
            (None, Some(block)) => {
                block.text.push_str(line);
                block.text.push('\n');
            }
            (None, None) => {}
        }
    }
    assert!(open.is_none(), "a block is never closed:\n{section}");
    blocks
}

/// Cuts a page at its headings, those inside blocks left alone: the first paragraph, then each section with its name.
fn sections(page: &str) -> (String, Vec<(String, String)>) {
    let mut first = String::new();
    let mut sections: Vec<(String, String)> = Vec::new();
    let mut in_block = false;
    for line in page.lines() {
        in_block ^= line.starts_with("```");
        match line.strip_prefix("## ") {
            Some(name) if !in_block => sections.push((name.trim().to_owned(), String::new())),
            _ => {
                let text = sections.last_mut().map_or(&mut first, |(_, text)| text);
                text.push_str(line);
                text.push('\n');
            }
        }
    }
    (first, sections)
}

fn section<'a>(sections: &'a [(String, String)], name: &str) -> &'a str {
    sections.iter().find(|(own, _)| own == name).map_or("", |(_, text)| text)
}

/// The codes that a page says are found beside its own.
fn also_found(fires: &str) -> Vec<String> {
    let lines = fires.lines().filter_map(|line| line.strip_prefix("Also found:"));
    lines.flat_map(|line| line.split('`').skip(1).step_by(2).map(str::to_owned)).collect()
}

/// The test that a page names in place of an example, where no text can show the fault.
fn tried_in(fires: &str) -> Option<&str> {
    let rest = fires.split_once("Tried in `")?.1;
    rest.split_once("`.").map(|(path, _)| path)
}

fn drawn(sources: &Sources, found: &[Finding]) -> String {
    draw::draw(found, false, &|file| sources.shown(file))
}

fn above_a_note(finding: &Finding) -> bool {
    finding.severity > Severity::Note
}

/// Walks every page, and fails with everything that was wrong with any of them.
fn check_every_page(check: impl Fn(&Code, &[(String, String)]) -> Result<(), String>) {
    let mut faults = String::new();
    for (name, code) in codes() {
        if let Err(fault) = check(code, &sections(code.page).1) {
            faults.push_str(&format!("\n=== {name}\n{fault}\n"));
        }
    }
    assert!(faults.is_empty(), "{faults}");
}

#[test]
fn nothing_is_found_on_the_base_site() {
    let (sources, found) = Site::base().findings();
    assert!(found.is_empty(), "{}", drawn(&sources, &found));
}

#[test]
fn every_page_says_what_why_how_and_whence() {
    check_every_page(|code, sections_of_it| {
        let names: Vec<&str> = sections_of_it.iter().map(|(name, _)| name.as_str()).collect();
        let first = sections(code.page).0;
        if first.trim().is_empty() {
            return Err("it does not begin with a paragraph on what it finds".to_owned());
        }
        if names != SECTIONS {
            return Err(format!("its sections are {names:?} and should be {SECTIONS:?}"));
        }
        let empty = sections_of_it.iter().find(|(_, text)| text.trim().is_empty());
        empty.map_or(Ok(()), |(name, _)| Err(format!("`{name}` is empty")))
    });
}

#[test]
fn every_code_is_named_for_the_bad_thing_in_lower_case() {
    for (name, code) in codes() {
        let plain = name.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-');
        assert!(plain && !name.is_empty(), "`{name}` is not lower-case words with hyphens");
        let summary = code.summary;
        assert!(!summary.ends_with('.'), "{name}: the summary ends with a full stop");
        assert!(
            !code.safety || code.severity == Severity::Error,
            "{name}: a safety code is an error"
        );
    }
}

#[test]
fn every_example_fires_and_nothing_beside_it() {
    check_every_page(|code, sections| {
        let fires = section(sections, "Fires");
        if tried_in(fires).is_some() {
            return Ok(());
        }
        let (sources, found) = Site::base().with(fires)?.findings();
        let also = also_found(fires);
        if !found.iter().any(|finding| finding.code.name == code.name) {
            return Err(format!("the example does not fire; found:\n{}", drawn(&sources, &found)));
        }
        let names: Vec<&str> = found.iter().map(|finding| finding.code.name).collect();
        if let Some(missing) = also.iter().find(|name| !names.contains(&name.as_str())) {
            return Err(format!("`{missing}` should also be found, and is not"));
        }
        let mut others = found.clone();
        others.retain(above_a_note);
        others
            .retain(|other| other.code != code && !also.iter().any(|name| name == other.code.name));
        if others.is_empty() { Ok(()) } else { Err(drawn(&sources, &others)) }
    });
}

#[test]
fn every_repair_leaves_nothing_to_find() {
    check_every_page(|code, sections| {
        let (fires, repair) = (section(sections, "Fires"), section(sections, "Put right"));
        if tried_in(fires).is_some() {
            return Ok(());
        }
        if blocks(repair).is_empty() {
            return Err("the repair shows no block".to_owned());
        }
        let (sources, mut found) = Site::base().with(repair)?.findings();
        found.retain(|finding| finding.code == code || above_a_note(finding));
        if found.is_empty() { Ok(()) } else { Err(drawn(&sources, &found)) }
    });
}

#[test]
fn every_message_makes_sense_alone() {
    check_every_page(|code, sections| {
        let fires = section(sections, "Fires");
        if tried_in(fires).is_some() {
            return Ok(());
        }
        let (_, found) = Site::base().with(fires)?.findings();
        for finding in found.iter().filter(|finding| finding.code == code) {
            let message = &finding.message;
            // A name keeps its capital; a sentence of its own does not begin with a capital and an article.
            if message.ends_with('.') || message.contains('\n') || message.trim().is_empty() {
                return Err(format!("`{message}` is not one line without a full stop"));
            }
            if ["The ", "A ", "An ", "This ", "There ", "No "]
                .iter()
                .any(|start| message.starts_with(start))
            {
                return Err(format!("`{message}` does not begin in lower case"));
            }
            if finding.help.as_deref().is_none_or(|help| help.trim().is_empty())
                && code.subject.heading() != "Writing"
            {
                return Err(format!("`{message}` has no help"));
            }
        }
        Ok(())
    });
}

#[test]
fn what_no_text_can_show_is_tried_elsewhere() {
    check_every_page(|_, sections| {
        let Some(path) = tried_in(section(sections, "Fires")) else { return Ok(()) };
        let there = Path::new(env!("CARGO_MANIFEST_DIR")).join(path).is_file();
        if there { Ok(()) } else { Err(format!("there is no {path}")) }
    });
}
