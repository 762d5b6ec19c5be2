//! What each kind of file may hold, as a JSON Schema, so that an editor completes the fields and marks a misspelt one.
//!
//! One table per kind of file says its fields; the words that a field may hold come from the model, so that they cannot
//! differ from what is read. A test holds every table to the fields that parsing asks for.

mod animal;
mod field;
mod law;
mod map;
mod overriding;
mod quantities;
mod site;
mod species;
mod standard;

use serde_json::{Value, json};

use field::{Form, definitions, object};

/// A kind of file that has a schema.
#[derive(Debug)]
pub struct FileKind {
    /// The word that names it on the command line.
    pub name: &'static str,
    /// Which files it is for.
    pub files: &'static str,
    form: Form,
}

/// Every kind of file that has a schema.
pub static FILE_KINDS: &[FileKind] = &[
    FileKind { name: "species", files: "species/NAME.toml", form: Form::Table(species::FIELDS) },
    FileKind {
        name: "override",
        files: "species/NAME.override.toml",
        form: Form::Table(overriding::FIELDS),
    },
    FileKind { name: "animal", files: "animals/NAME.toml", form: Form::Table(animal::FIELDS) },
    FileKind { name: "map", files: "maps/NAME.toml", form: Form::Table(map::FIELDS) },
    FileKind { name: "site", files: "wardsheet.toml", form: Form::Table(site::FIELDS) },
    FileKind { name: "private", files: "private.toml", form: Form::Table(site::PRIVATE) },
    FileKind { name: "sources", files: "sources.toml", form: Form::Named(site::SOURCE) },
    FileKind {
        name: "standard",
        files: "species/standards/NAME.toml",
        form: Form::Table(standard::FIELDS),
    },
    FileKind { name: "law", files: "species/law/NAME.toml", form: Form::Table(law::FIELDS) },
];

impl FileKind {
    /// The schema of this kind of file.
    ///
    /// Source: JSON Schema: A Media Type for Describing JSON Documents, draft 2020-12.
    pub fn schema(&self) -> Value {
        let mut schema = json!({
            "$schema": "https://json-schema.org/draft/2020-12/schema",
            "title": format!("wardsheet: {}", self.files),
        });
        let body = match &self.form {
            Form::Table(fields) => object(fields),
            form => form.schema(),
        };
        if let (Value::Object(schema), Value::Object(body)) = (&mut schema, body) {
            schema.extend(body);
            let definitions = definitions(&self.form);
            if !definitions.is_empty() {
                schema.insert("$defs".to_owned(), definitions.into());
            }
        }
        schema
    }
}
