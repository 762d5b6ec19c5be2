//! The documents say what is so: README.md and DEVELOPERS.md are held against the program and the folder.

#![expect(
    clippy::disallowed_methods,
    reason = "these tests read documents and lay out the site that one of them prints"
)]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use serde_json::Value;
use wardsheet::finding::Code;

#[path = "documents/fields.rs"]
mod fields;
#[path = "documents/schemas.rs"]
mod schemas;

const FINDINGS_FROM: &str = "<!-- findings: made by tests/documents.rs, do not edit by hand -->\n";
const FINDINGS_TO: &str = "<!-- end of findings -->";

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

fn document(name: &str) -> String {
    fs::read_to_string(root().join(name)).expect("the document is there")
}

fn wardsheet(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_wardsheet"))
        .args(arguments)
        .output()
        .expect("the program runs")
}

fn printed(arguments: &[&str]) -> String {
    String::from_utf8(wardsheet(arguments).stdout).expect("the program prints UTF-8")
}

/// The part of a document under a heading, up to the next heading of the same or a higher level.
fn section<'a>(text: &'a str, heading: &str) -> &'a str {
    let start = text
        .find(&format!("\n{heading}\n"))
        .unwrap_or_else(|| panic!("there is no heading `{heading}`"));
    let rest = &text[start + heading.len() + 2..];
    let level = heading.chars().take_while(|letter| *letter == '#').count();
    let ends = (1..=level).filter_map(|level| rest.find(&format!("\n{} ", "#".repeat(level))));
    &rest[..ends.min().unwrap_or(rest.len())]
}

/// The fenced blocks of a document: the word after the fence, and the text.
fn blocks(text: &str) -> Vec<(&str, &str)> {
    let fenced = text.split("\n```").skip(1).step_by(2);
    fenced
        .filter_map(|block| block.split_once('\n'))
        .map(|(kind, block)| (kind.trim(), block))
        .collect()
}

/// The code spans of a text.
fn code_spans(text: &str) -> Vec<&str> {
    text.split('`').skip(1).step_by(2).collect()
}

/// The commands that the program lists, `help` apart.
fn commands() -> Vec<String> {
    let help = printed(&["--help"]);
    let listed = help
        .lines()
        .skip_while(|line| *line != "Commands:")
        .skip(1)
        .take_while(|line| !line.is_empty());
    listed
        .filter_map(|line| line.split_whitespace().next())
        .filter(|name| *name != "help")
        .map(str::to_owned)
        .collect()
}

#[test]
fn the_readme_opens_with_its_two_commands() {
    let readme = document("README.md");
    assert_eq!(
        blocks(&readme).first(),
        Some(&("sh", "cargo run --release -- compile --site site-example\ncargo test"))
    );
}

#[test]
fn the_readme_explains_every_command_and_no_other() {
    let readme = document("README.md");
    let explained: Vec<&str> = section(&readme, "## The commands")
        .lines()
        .filter_map(|line| line.strip_prefix("### "))
        .collect();
    assert_eq!(
        explained,
        commands(),
        "the headings under `The commands` are the commands, in the order of --help"
    );

    let lines = blocks(&readme)
        .into_iter()
        .filter(|(kind, _)| *kind == "sh")
        .flat_map(|(_, block)| block.lines());
    for line in lines.filter_map(|line| line.strip_prefix("wardsheet ")) {
        let name = line.split(' ').next().unwrap_or_default();
        assert!(
            commands().iter().any(|command| command == name),
            "`wardsheet {line}` is no command"
        );
    }
}

#[test]
fn the_readme_names_every_option() {
    let readme = document("README.md");
    let said = section(&readme, "## The commands");
    for command in commands() {
        let help = printed(&[&command, "--help"]);
        let options = help.split_whitespace().filter(|word| word.starts_with("--"));
        for option in options.filter(|option| !matches!(*option, "--help" | "--version")) {
            assert!(
                said.contains(option),
                "`{command}` takes {option}, and the README does not say so"
            );
        }
    }
}

#[test]
fn the_readme_lists_every_finding() {
    let readme = document("README.md");
    let (before, rest) = readme.split_once(FINDINGS_FROM).expect("the README has the first marker");
    let (listed, after) = rest.split_once(FINDINGS_TO).expect("the README has the second marker");
    let made = findings_list();
    if std::env::var_os("RENEW_DOCUMENTS").is_some() {
        let text = format!("{before}{FINDINGS_FROM}{made}{FINDINGS_TO}{after}");
        fs::write(root().join("README.md"), text).expect("the README can be written");
        return;
    }
    assert!(
        listed == made,
        "the README's list of findings is old; renew it with: RENEW_DOCUMENTS=1 cargo test --test documents\n{made}"
    );
}

fn findings_list() -> String {
    let mut by_subject: BTreeMap<_, Vec<&Code>> = BTreeMap::new();
    for code in wardsheet::proof::codes().into_values() {
        by_subject.entry(code.subject).or_default().push(code);
    }
    let mut list = String::new();
    for (subject, codes) in by_subject {
        list.push_str(&format!("\n**{}**\n\n", subject.heading()));
        for code in codes {
            let safety = if code.safety { ", safety" } else { "" };
            list.push_str(&format!(
                "- `{}` ({}{safety}): {}\n",
                code.name,
                code.severity.word(),
                code.summary
            ));
        }
    }
    list.push('\n');
    list
}

/// The path of every value in a document; `[]` stands for any item of a list of tables.
fn paths(prefix: &str, value: &Value, found: &mut BTreeSet<String>) {
    match value {
        Value::Object(fields) if !prefix.ends_with("why") => {
            let join = |key: &String| {
                if prefix.is_empty() { key.clone() } else { format!("{prefix}.{key}") }
            };
            fields.iter().for_each(|(key, value)| paths(&join(key), value, found));
        }
        Value::Array(items) if items.iter().any(Value::is_object) => {
            items.iter().for_each(|item| paths(&format!("{prefix}[]"), item, found));
        }
        // A list of tables may be empty for one and full for another; the full one names its keys.
        Value::Array(items) if items.is_empty() => {}
        _ => drop(found.insert(prefix.to_owned())),
    }
}

#[test]
fn the_readme_explains_every_key_of_the_figures_document() {
    let readme = document("README.md");
    let said = section(&readme, "## The figures document");
    let (species, animals) =
        said.split_once("| `animals.NAME.` |").expect("there is a table for animals");
    let site = root().join("site-example");
    let printed = printed(&[
        "figures",
        "--format",
        "json",
        "--as-of",
        "2026-11-25",
        "--site",
        &site.to_string_lossy(),
    ]);
    let document: Value = serde_json::from_str(&printed).expect("the figures are JSON");
    for (part, said) in [("species", species), ("animals", animals)] {
        let mut found = BTreeSet::new();
        let entries = document[part].as_object().expect("there are entries");
        assert!(!entries.is_empty(), "the example has {part}");
        entries.values().for_each(|entry| paths("", entry, &mut found));
        let rows = said.lines().filter(|line| line.starts_with("| `"));
        let cells: String = rows.filter_map(|row| row.split('|').nth(1)).collect();
        let explained: BTreeSet<String> = code_spans(&cells)
            .into_iter()
            .filter(|span| *span != "species.NAME.")
            .map(str::to_owned)
            .collect();
        let silent: Vec<_> = found.difference(&explained).collect();
        assert!(silent.is_empty(), "the README does not explain these keys of {part}: {silent:?}");
        // Something that may be null as a whole is explained beside its parts, and need not be null in the example.
        let invented = explained
            .difference(&found)
            .filter(|path| !found.iter().any(|found| found.starts_with(*path)));
        assert_eq!(
            invented.collect::<Vec<_>>(),
            Vec::<&String>::new(),
            "the README explains keys of {part} that are not there"
        );
    }
}

/// Lays out the files that README.md prints with their path in the first line.
fn lay_out_printed_site(folder: &Path) -> usize {
    let readme = document("README.md");
    let mut laid_out = 0;
    for (_, block) in blocks(&readme) {
        let first = block.lines().next().unwrap_or_default();
        let path =
            first.trim_start_matches("<!--").trim_end_matches("-->").trim_start_matches('#').trim();
        if !path.ends_with(".toml") && !path.ends_with(".md") && !path.ends_with(".csv") {
            continue;
        }
        let place = folder.join(path);
        fs::create_dir_all(place.parent().expect("a path inside the folder"))
            .expect("a folder can be made");
        fs::write(place, format!("{block}\n")).expect("a file can be written");
        laid_out += 1;
    }
    laid_out
}

#[test]
fn the_site_that_the_readme_prints_has_no_findings() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("readme-site");
    let _ = fs::remove_dir_all(&folder);
    assert_eq!(
        lay_out_printed_site(&folder),
        10,
        "species, words, an override, sources, animal, log, site, private, standard, law"
    );
    let site = folder.to_string_lossy();
    let run = wardsheet(&["proof", "--deny", "warnings", "--as-of", "2026-11-25", "--site", &site]);
    let findings = String::from_utf8_lossy(&run.stderr);
    let own = findings.lines().filter_map(|line| line.trim_start().strip_prefix("--> "));
    let own: Vec<_> = own.filter(|place| !place.starts_with("built-in ")).collect();
    assert_eq!((run.status.code(), own), (Some(0), vec![]), "{findings}");

    let figures: Value = serde_json::from_str(&printed(&[
        "figures",
        "--format",
        "json",
        "--as-of",
        "2026-11-25",
        "--site",
        &site,
    ]))
    .expect("the figures are JSON");
    // What the printed files ask for: food was offered on 24 November and is given every second day.
    assert_eq!(figures["animals"]["pip"]["feeding"]["next_due"], "2026-11-26");
    // The printed rule for a grown animal of 14 cm: 6 times and 3 times its length, and 40 cm high.
    assert_eq!(
        figures["species"]["example-gecko"]["enclosure"][0]["minimum_cm"],
        serde_json::json!([84, 42, 40])
    );
}

#[test]
fn the_readme_links_lead_somewhere() {
    let readme = document("README.md");
    let headings = readme.lines().filter(|line| line.starts_with("##"));
    let anchors: BTreeSet<String> = headings
        .map(|line| {
            format!("#{}", line.trim_start_matches('#').trim().to_lowercase().replace(' ', "-"))
        })
        .collect();
    for link in readme.split("](").skip(1).filter_map(|rest| rest.split(')').next()) {
        let there =
            if link.starts_with('#') { anchors.contains(link) } else { root().join(link).exists() };
        assert!(there, "the README links to {link}, and it is not there");
    }
}

#[test]
fn every_path_that_developers_names_is_there() {
    let developers = document("DEVELOPERS.md");
    let is_path = |span: &&str| {
        let plain = span.chars().all(|c| c.is_ascii_alphanumeric() || "/._-".contains(c));
        let ending = [".rs", ".toml", ".md", ".csv", ".yml", "/"]
            .iter()
            .any(|ending| span.ends_with(ending));
        // A name in capitals stands for any: src/proof/SUBJECT/NAME.rs.
        let stands_for_any = ["NAME", "SUBJECT"].iter().any(|any| span.contains(any));
        plain && ending && !stands_for_any
    };
    let prose: String = developers.split("\n```").step_by(2).collect();
    let named: BTreeSet<&str> = code_spans(&prose).into_iter().filter(is_path).collect();
    assert!(named.len() > 20, "the paths are found: {named:?}");
    let absent: Vec<_> = named.iter().filter(|path| !root().join(path).exists()).collect();
    assert!(absent.is_empty(), "DEVELOPERS.md names what is not there: {absent:?}");
}
