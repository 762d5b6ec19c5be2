//! Findings for programs: one document on standard output, as JSON or as a SARIF log that keeps to its schema.

#![expect(clippy::disallowed_methods, reason = "these tests lay out a site and read a schema")]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use serde_json::{Value, json};

/// A new site with two faults in its animal: a temperature without its unit, after characters of more than one byte, and
/// figures that no longer agree with the built-in species.
fn faulty(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder can be made");
    assert!(run(&folder, &["start", "."]).status.success());
    let animal = folder.join("animals/sample.toml");
    let text = fs::read_to_string(&animal).expect("the animal is there");
    let line = text.lines().find(|line| line.starts_with("night = ")).expect("it has a probe");
    let (before, after) = text.split_once(line).expect("the line is there");
    fs::write(&animal, format!("{before}night = \"50 °C\"{after}")).expect("it can be written");
    let site = folder.join("wardsheet.toml");
    let text = fs::read_to_string(&site).expect("the site's file is there");
    fs::write(site, format!("\"größe\" = 5 # µ\n{text}")).expect("it can be written");
    folder
}

fn run(folder: &Path, arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_wardsheet"))
        .args(arguments)
        .current_dir(folder)
        .env_remove("SOURCE_DATE_EPOCH")
        .output()
        .expect("the program runs")
}

/// What a command prints on standard output, as one document, and its standard error.
fn document(folder: &Path, command: &str, format: &str) -> (Value, String) {
    let run = run(folder, &[command, "--format", format, "--as-of", "2026-11-25"]);
    let out = String::from_utf8(run.stdout).expect("UTF-8");
    let parsed = serde_json::from_str(&out).unwrap_or_else(|fault| panic!("{fault}: {out}"));
    (parsed, String::from_utf8(run.stderr).expect("UTF-8"))
}

fn schema() -> jsonschema::Validator {
    let place = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/schema/sarif-2.1.0-rtm.5.json");
    let text = fs::read_to_string(place).expect("the schema is there");
    let mut schema: Value = serde_json::from_str(&text).expect("the schema is JSON");
    // As printed one pattern has a bracket too many, which only some readers put up with; nothing here has a language.
    for part in ["run", "toolComponent"] {
        schema["definitions"][part]["properties"]["language"]["pattern"] =
            json!("^[a-zA-Z]{2}(-[a-zA-Z]{2})?$");
    }
    jsonschema::validator_for(&schema).expect("the schema is a schema")
}

#[track_caller]
fn keeps_to(schema: &jsonschema::Validator, log: &Value) {
    let faults: Vec<String> = schema
        .iter_errors(log)
        .map(|fault| format!("{}: {fault}", fault.instance_path()))
        .collect();
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn json_is_one_list_with_the_place_of_each_finding() {
    let folder = faulty("format-json");
    let (found, told) = document(&folder, "proof", "json");
    let found = found.as_array().expect("a list");
    let unknown = found.iter().find(|one| one["code"] == "key-unknown").expect("it is found");
    assert_eq!(unknown["file"], "wardsheet.toml");
    assert_eq!(unknown["severity"], "error");
    // Two quotes and five characters, two of them of two bytes each.
    let place = ["line", "column", "end_line", "end_column"].map(|key| unknown[key].clone());
    assert_eq!(place, [json!(1), json!(1), json!(1), json!(8)]);
    for one in found {
        let keys: Vec<&str> =
            one.as_object().expect("a table").keys().map(String::as_str).collect();
        assert_eq!(
            keys,
            [
                "code",
                "severity",
                "message",
                "help",
                "file",
                "line",
                "column",
                "end_line",
                "end_column",
                "related"
            ]
        );
    }
    assert!(found.iter().any(|one| one["related"] != json!([])), "a figure is set beside its rule");
    assert!(told.contains("wardsheet explain"), "the count stays on standard error: {told}");
    assert!(!told.contains("-->"), "nothing is drawn beside a document: {told}");
}

#[test]
fn sarif_keeps_to_its_schema() {
    let folder = faulty("format-sarif");
    let schema = schema();
    for command in ["proof", "compile"] {
        let (log, _) = document(&folder, command, "sarif");
        keeps_to(&schema, &log);
        let run = &log["runs"][0];
        let rules = run["tool"]["driver"]["rules"].as_array().expect("a list of rules");
        let names: Vec<&str> = wardsheet::proof::codes().into_keys().collect();
        assert_eq!(rules.iter().filter_map(|rule| rule["id"].as_str()).collect::<Vec<_>>(), names);
        let results = run["results"].as_array().expect("a list of results");
        assert!(!results.is_empty());
        for result in results {
            let index = result["ruleIndex"].as_u64().expect("an index");
            assert_eq!(rules[usize::try_from(index).expect("small")]["id"], result["ruleId"]);
        }
        let unknown = results.iter().find(|one| one["ruleId"] == "key-unknown").expect("found");
        let physical = &unknown["locations"][0]["physicalLocation"];
        assert_eq!(physical["artifactLocation"], json!({ "uri": "wardsheet.toml" }));
        assert_eq!(
            physical["region"],
            json!({ "startLine": 1, "startColumn": 1, "endLine": 1, "endColumn": 8 })
        );
        let built_in = results
            .iter()
            .flat_map(|one| one["relatedLocations"].as_array().into_iter().flatten())
            .find(|place| place["physicalLocation"]["artifactLocation"]["uriBaseId"] == "BUILTIN");
        assert!(built_in.is_some(), "a rule of the built-in species is pointed at");
    }
}

#[test]
fn a_log_that_breaks_the_schema_is_caught() {
    let folder = faulty("format-broken");
    let (mut log, _) = document(&folder, "proof", "sarif");
    log["runs"][0]["results"][0]["level"] = json!("fatal");
    assert!(!schema().is_valid(&log));
}

#[test]
fn a_site_without_findings_is_a_document_too() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("format-clean");
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder can be made");
    assert!(run(&folder, &["start", "."]).status.success());
    let (log, _) = document(&folder, "proof", "sarif");
    keeps_to(&schema(), &log);
    let (found, told) = document(&folder, "compile", "json");
    assert!(found.is_array());
    assert!(told.contains("the site:"), "what was written is said beside the document: {told}");
    assert!(folder.join("out/public/index.html").is_file());
}
