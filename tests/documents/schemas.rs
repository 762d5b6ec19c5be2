//! The schemas that `wardsheet schema` prints, held against what the program reads and against the files there are.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use serde_json::{Map, Value};
use wardsheet::schema::FILE_KINDS;
use wardsheet::source::library::role_of;
use wardsheet::source::{Layer, Role, Sources};

use super::fields::{UNKNOWN_EVERYWHERE, findings_of};
use super::{lay_out_printed_site, printed, root};

fn schema(kind: &str) -> Value {
    serde_json::from_str(&printed(&["schema", kind])).expect("a schema is JSON")
}

/// The kind of file, by the word on the command line, that a role is.
fn kind_of(role: Role) -> Option<&'static str> {
    match role {
        Role::Species => Some("species"),
        Role::Override => Some("override"),
        Role::Animal => Some("animal"),
        Role::Map => Some("map"),
        Role::Site => Some("site"),
        Role::Private => Some("private"),
        Role::Bibliography => Some("sources"),
        Role::Standard => Some("standard"),
        Role::Law => Some("law"),
        _ => None,
    }
}

/// The tables that a schema's value may be: itself, the items of a list, or what stands under names of one's own.
fn table(schema: &Value) -> &Value {
    if let Some(either) = schema.get("anyOf").and_then(Value::as_array) {
        return either.iter().find(|one| one["type"] == "object").expect("one of them is a table");
    }
    schema
}

#[test]
fn a_schema_is_a_valid_schema() {
    for kind in FILE_KINDS {
        let schema = schema(kind.name);
        if let Err(fault) = jsonschema::meta::validate(&schema) {
            panic!("{}: {fault}", kind.name);
        }
    }
}

#[test]
fn a_schema_knows_every_field_and_no_other() {
    for (file, role, text) in UNKNOWN_EVERYWHERE {
        let schema = schema(kind_of(role).expect("the kind has a schema"));
        for finding in findings_of(file, role, text) {
            let (_, home) = finding.message.split_once("is not a field").expect("an unknown field");
            let path = home.trim_start_matches(" in ").trim_matches('`');
            let mut at = &schema;
            for part in path.split('.').filter(|part| !part.is_empty()) {
                let inside = table(at);
                at = inside["properties"].get(part).unwrap_or(&inside["additionalProperties"]);
            }
            let known: BTreeSet<&str> = finding
                .help
                .as_deref()
                .and_then(|help| help.strip_prefix("known here: "))
                .expect("the help says which are known")
                .split(", ")
                .collect();
            let fields = table(at)["properties"].as_object().expect("a table has fields");
            let said: BTreeSet<&str> = fields.keys().map(String::as_str).collect();
            assert_eq!(said, known, "{file}, `{path}`: the schema (left) and what is read (right)");
            assert_eq!(table(at)["additionalProperties"], false, "{file}, `{path}`");
            for (key, field) in fields {
                let what = field["description"].as_str().unwrap_or_default();
                assert!(what.len() > 3, "{file}, `{path}`: `{key}` is not described");
            }
        }
    }
}

/// A TOML value as a schema sees it: a date is text.
fn as_json(value: &toml::Value) -> Value {
    match value {
        toml::Value::Datetime(date) => Value::String(date.to_string()),
        toml::Value::Array(items) => items.iter().map(as_json).collect(),
        toml::Value::Table(fields) => {
            fields.iter().map(|(key, value)| (key.clone(), as_json(value))).collect()
        }
        other => serde_json::to_value(other).expect("a plain value"),
    }
}

/// Holds every file of a folder to the schema of its kind; returns how many there were.
fn hold_to_schema(folder: &Path, inside: &str) -> usize {
    let walk = walkdir::WalkDir::new(folder.join(inside)).sort_by_file_name();
    let mut held = 0;
    for entry in walk.into_iter().filter_map(Result::ok).filter(|entry| entry.path().is_file()) {
        let path = entry.path().strip_prefix(folder).expect("it lies below").to_string_lossy();
        let path = path.replace('\\', "/");
        let Some(kind) = role_of(&path).and_then(|(role, _)| kind_of(role)) else { continue };
        let text = fs::read_to_string(entry.path()).expect("it is text");
        let value: toml::Value = toml::from_str(&text).expect("it is TOML");
        let validator = jsonschema::validator_for(&schema(kind)).expect("it is a schema");
        let value = as_json(&value);
        let faults: Vec<String> = validator
            .iter_errors(&value)
            .map(|fault| format!("{}: {fault}", fault.instance_path()))
            .collect();
        assert!(faults.is_empty(), "{path}: {}", faults.join("\n"));
        held += 1;
    }
    held
}

#[test]
fn every_file_that_comes_with_the_program_keeps_to_its_schema() {
    let library = hold_to_schema(&root(), "species");
    assert!(library > 30, "the library has {library} files");
    assert!(hold_to_schema(&root().join("site-example"), "") > 10);
    assert!(hold_to_schema(&root().join("src/command/start"), "") >= 4);
    assert!(hold_to_schema(&root().join("tests/base"), "") >= 4);
    let printed_site = Path::new(env!("CARGO_TARGET_TMPDIR")).join("readme-site-for-schemas");
    let _ = fs::remove_dir_all(&printed_site);
    lay_out_printed_site(&printed_site);
    assert!(hold_to_schema(&printed_site, "") >= 6);
}

/// A document made of the examples of a schema, the `turn`th of each.
fn example(whole: &Value, schema: &Value, turn: usize) -> toml::Value {
    if let Some(name) = schema["$ref"].as_str() {
        let definition = whole.pointer(name.trim_start_matches('#')).expect("it is defined");
        return example(whole, definition, turn);
    }
    let pick = |list: &Vec<Value>| list[turn % list.len()].clone();
    if let Some(either) = schema["anyOf"].as_array() {
        return example(whole, &pick(either), turn / 2);
    }
    let plain = |value: Value| toml::Value::try_from(value).expect("a plain value");
    if let Some(words) = schema["enum"].as_array() {
        return plain(pick(words));
    }
    match schema["type"].as_str() {
        Some("object") => {
            let empty = Map::new();
            let fields = schema["properties"].as_object().unwrap_or(&empty);
            // What others say is a figure again; one level of it is enough.
            let fields = fields.iter().filter(|(key, _)| *key != "also");
            let mut made: toml::Table =
                fields.map(|(key, field)| (key.clone(), example(whole, field, turn))).collect();
            if schema["additionalProperties"].is_object() {
                let inner = example(whole, &schema["additionalProperties"], turn);
                made.insert("some-name".to_owned(), inner);
            }
            made.into()
        }
        Some("array") => vec![example(whole, &schema["items"], turn)].into(),
        Some("boolean") => turn.is_multiple_of(2).into(),
        _ if schema["format"] == "date" => {
            let date = schema["examples"][0].as_str().expect("an example");
            toml::Value::Datetime(date.parse().expect("a date"))
        }
        _ => plain(pick(schema["examples"].as_array().expect("an example is given"))),
    }
}

#[test]
fn the_examples_of_a_schema_are_read_without_a_fault() {
    for (file, role, _) in UNKNOWN_EVERYWHERE {
        let schema = schema(kind_of(role).expect("the kind has a schema"));
        for turn in 0..12 {
            let document = example(&schema, &schema, turn);
            let text = toml::to_string(&document).expect("it can be written");
            let mut sources = Sources::default();
            sources.add(file, role, file.trim_end_matches(".toml"), Layer::Own, text.clone());
            let (_, findings) = wardsheet::parse::parse(&sources);
            let faults: Vec<&str> =
                findings.iter().map(|finding| finding.message.as_str()).collect();
            assert_eq!(faults, Vec::<&str>::new(), "{file}:\n{text}");
        }
    }
}

#[test]
fn a_misspelt_field_and_a_figure_without_a_unit_break_the_schema() {
    let validator = jsonschema::validator_for(&schema("animal")).expect("it is a schema");
    let sound =
        serde_json::json!({ "name": "Pip", "species": "x", "enclosure": { "room_day": "21 C" } });
    assert!(validator.is_valid(&sound));
    for (key, value) in [("room_dya", "21 C"), ("room_day", "21")] {
        let mut broken = sound.clone();
        broken["enclosure"] = serde_json::json!({ key: value });
        assert!(!validator.is_valid(&broken), "{key} = {value}");
    }
}
