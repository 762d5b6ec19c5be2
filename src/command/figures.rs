//! `wardsheet figures [NAME…]`: the derived figures, as a table or as JSON.

use clap::{Args, ValueEnum};
use serde_json::Value;

use crate::figures::document::document;
use crate::figures::working::Working;
use crate::figures::{AnimalFigures, SpeciesFigures};
use crate::finding::{self, Finding, did_you_mean};

use super::open::open;
use super::{Ended, Failure, Outcome, Outside, Whereabouts};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// Species and animals by the names of their files; without one, all of them
    names: Vec<String>,
    /// When each figure that the named species state was last written, told from git
    #[arg(long)]
    history: bool,
    /// How the figures are printed
    #[arg(long, value_enum, default_value_t = Form::Table)]
    format: Form,
    #[command(flatten)]
    at: Whereabouts,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Form {
    /// A table for people, with the working of the figures that were asked for by name
    Table,
    /// One JSON document
    Json,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let opened = open(&arguments.at, outside)?;
    let figures = &opened.checked.figures;
    for name in &arguments.names {
        if !figures.species.contains_key(name) && !figures.animals.contains_key(name) {
            let known = figures.species.keys().chain(figures.animals.keys()).map(String::as_str);
            let near =
                did_you_mean(name, known).unwrap_or_else(|| "give the name of its file".to_owned());
            return Err(Failure::Said(format!("there is no species or animal `{name}`; {near}")));
        }
    }
    if arguments.history {
        return super::history::run(
            &opened,
            &arguments.names,
            arguments.format == Form::Json,
            outside,
        );
    }
    // An unsafe set-up has figures like any other, and they are what its keeper needs; what cannot be read has none.
    let findings = &opened.checked.findings;
    if finding::stops(findings) {
        opened.tell(findings, outside)?;
        if findings.iter().any(Finding::is_meaningless) {
            return Ok(Outcome::Stopped);
        }
    }
    let document = document(figures, &arguments.names);
    if arguments.format == Form::Json {
        let text = serde_json::to_string_pretty(&document).unwrap_or_default();
        writeln!(outside.out, "{text}")?;
        return Ok(Outcome::Done);
    }
    let mut text = String::new();
    for part in ["species", "animals"] {
        let Some(Value::Object(entries)) = document.get(part) else { continue };
        for (name, entry) in entries {
            text.push_str(&format!("{name}\n"));
            let mut lines = Vec::new();
            flatten("", entry, &mut lines);
            let width = lines.iter().map(|(key, _)| key.len()).max().unwrap_or(0);
            for (key, value) in &lines {
                text.push_str(&format!("  {key:width$}  {value}\n"));
            }
            text.push('\n');
        }
    }
    if let Some(store) = document.get("store").filter(|_| arguments.names.is_empty()) {
        let mut lines = Vec::new();
        flatten("", store, &mut lines);
        let width = lines.iter().map(|(key, _)| key.len()).max().unwrap_or(0);
        text.push_str("store\n");
        lines.iter().for_each(|(key, value)| text.push_str(&format!("  {key:width$}  {value}\n")));
        text.push('\n');
    }
    for name in &arguments.names {
        let species = figures.species.get(name).map(SpeciesFigures::workings);
        let animal = figures.animals.get(name).map(AnimalFigures::workings);
        for working in species.into_iter().chain(animal).flatten() {
            text.push_str(&worked(name, working));
        }
    }
    write!(outside.out, "{text}")?;
    Ok(Outcome::Done)
}

fn worked(name: &str, working: &Working) -> String {
    let mut text = format!("{name}: {}\n  {}\n", working.title, working.formula);
    for step in &working.steps {
        text.push_str(&format!("    {step}\n"));
    }
    for assumption in &working.assumptions {
        text.push_str(&format!("  taken for granted: {assumption}\n"));
    }
    text.push_str(&format!("  source: {}\n\n", working.publication));
    text
}

/// Turns nested figures into lines of a name and a value; a range of two numbers stays together.
fn flatten(prefix: &str, value: &Value, lines: &mut Vec<(String, String)>) {
    let name =
        |key: &str| if prefix.is_empty() { key.to_owned() } else { format!("{prefix}.{key}") };
    match value {
        Value::Object(entries) => {
            entries.iter().for_each(|(key, value)| flatten(&name(key), value, lines))
        }
        Value::Array(items) if items.iter().any(Value::is_object) => {
            items
                .iter()
                .enumerate()
                .for_each(|(place, item)| flatten(&name(&(place + 1).to_string()), item, lines));
        }
        _ => lines.push((prefix.to_owned(), plain(value))),
    }
}

fn plain(value: &Value) -> String {
    match value {
        Value::Null => "–".to_owned(),
        Value::String(text) => text.clone(),
        Value::Number(number) => number
            .as_f64()
            .map_or_else(String::new, |number| crate::figures::working::number(number, 3)),
        Value::Array(items) => match items.as_slice() {
            [low, high] => format!("{}–{}", plain(low), plain(high)),
            items => items.iter().map(plain).collect::<Vec<_>>().join(" "),
        },
        other => other.to_string(),
    }
}
