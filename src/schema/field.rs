//! A field of a file, and what it becomes in a schema.

use serde_json::{Map, Value, json};

use crate::model::word::Word;

use super::quantities::Kind;

/// A field.
#[derive(Debug)]
pub(super) struct Field {
    /// Its key.
    pub(super) key: &'static str,
    /// What it holds.
    pub(super) what: &'static str,
    /// How it is written.
    pub(super) form: Form,
    /// Whether it must be there.
    pub(super) must: bool,
}

/// How a field is written.
#[derive(Debug)]
pub(super) enum Form {
    /// Text.
    Text(&'static [&'static str]),
    /// A text, or a list of texts.
    Texts(&'static [&'static str]),
    /// One of a few words.
    Word(fn() -> Vec<&'static str>),
    /// One of a few words, or a list of them.
    Words(fn() -> Vec<&'static str>),
    /// A number or text: a year.
    Year,
    /// A date.
    Date,
    /// True or false.
    Flag,
    /// A whole number.
    Whole,
    /// An ultraviolet zone, alone or with its sources.
    Zone,
    /// Text with its unit, one value.
    One(&'static Kind),
    /// Text with its unit, a range or one value.
    Range(&'static Kind),
    /// A range with its unit, alone or with its sources.
    Figure(&'static Kind),
    /// A table.
    Table(&'static [Field]),
    /// A list of tables; one table alone counts as a list of one.
    Tables(&'static [Field]),
    /// Tables under names of one's own.
    Named(&'static [Field]),
    /// Values under names of one's own.
    Entries(&'static Form),
}

/// A field that may be left out.
pub(super) const fn may(key: &'static str, what: &'static str, form: Form) -> Field {
    Field { key, what, form, must: false }
}

/// A field that must be there.
pub(super) const fn must(key: &'static str, what: &'static str, form: Form) -> Field {
    Field { key, what, form, must: true }
}

/// The spellings of a list of words.
pub(super) fn spellings<W: Word>() -> Vec<&'static str> {
    W::ALL.iter().map(|(_, spelling)| *spelling).collect()
}

/// The schema of a table with these fields and no others.
pub(super) fn object(fields: &[Field]) -> Value {
    let properties: Map<String, Value> = fields
        .iter()
        .map(|field| {
            let mut schema = field.form.schema();
            schema["description"] = match schema.get("description").and_then(Value::as_str) {
                Some(written) => json!(format!("{}. {written}", field.what)),
                None => json!(format!("{}.", field.what)),
            };
            (field.key.to_owned(), schema)
        })
        .collect();
    let required: Vec<&str> =
        fields.iter().filter(|field| field.must).map(|field| field.key).collect();
    let mut schema =
        json!({ "type": "object", "properties": properties, "additionalProperties": false });
    if !required.is_empty() {
        schema["required"] = json!(required);
    }
    schema
}

/// Either one of something or a list of it.
fn one_or_list(one: Value) -> Value {
    json!({ "anyOf": [{ "type": "array", "items": one }, one] })
}

impl Form {
    /// What the form is in a schema.
    pub(super) fn schema(&self) -> Value {
        let text = |examples: &[&str]| json!({ "type": "string", "examples": examples });
        match self {
            Form::Text(examples) => text(examples),
            Form::Texts(examples) => one_or_list(text(examples)),
            Form::Word(words) => json!({ "enum": words() }),
            Form::Words(words) => one_or_list(json!({ "enum": words() })),
            Form::Year => json!({ "type": ["integer", "string"], "examples": ["1997", "n.d."] }),
            Form::Date => json!({
                "type": "string",
                "format": "date",
                "examples": ["2026-11-25"],
                "description": "Year, month and day, without quotes",
            }),
            Form::Flag => json!({ "type": "boolean" }),
            Form::Whole => json!({ "type": "integer", "minimum": 0, "examples": [2] }),
            Form::Zone => json!({ "$ref": "#/$defs/zone" }),
            Form::One(kind) => kind.one(),
            Form::Range(kind) => kind.range(),
            Form::Figure(kind) => json!({ "$ref": format!("#/$defs/{}", kind.key()) }),
            Form::Table(fields) => object(fields),
            Form::Tables(fields) => one_or_list(object(fields)),
            Form::Named(fields) => {
                json!({ "type": "object", "additionalProperties": object(fields) })
            }
            Form::Entries(form) => {
                json!({ "type": "object", "additionalProperties": form.schema() })
            }
        }
    }

    fn fields(&self) -> &'static [Field] {
        match self {
            Form::Table(fields) | Form::Tables(fields) | Form::Named(fields) => fields,
            _ => &[],
        }
    }
}

/// The figures with sources that occur in a form, each defined once.
pub(super) fn definitions(form: &Form) -> Map<String, Value> {
    let mut found = Map::new();
    for field in form.fields() {
        match &field.form {
            Form::Figure(kind) => {
                found.insert(kind.key(), with_sources(&kind.key(), &kind.range()));
            }
            Form::Zone => {
                let zone =
                    json!({ "type": "integer", "minimum": 1, "maximum": 4, "examples": [1] });
                found.insert("zone".to_owned(), with_sources("zone", &zone));
            }
            inner => found.extend(definitions(inner)),
        }
    }
    found.sort_keys();
    found
}

/// A value, or a table with the value and where it comes from.
fn with_sources(name: &str, value: &Value) -> Value {
    let keys = one_or_list(json!({ "type": "string", "examples": ["example-book"] }));
    let mut source = keys;
    source["description"] = json!("A key of a sources.toml, or a list of keys.");
    let this = format!("#/$defs/{name}");
    json!({ "anyOf": [value, {
        "type": "object",
        "properties": {
            "value": value,
            "source": source,
            "note": { "type": "string", "description": "One sentence more.", "examples": ["Lower by night."] },
            "also": {
                "type": "array",
                "items": { "$ref": this },
                "description": "What others say.",
            },
        },
        "required": ["value"],
        "additionalProperties": false,
    }] })
}
