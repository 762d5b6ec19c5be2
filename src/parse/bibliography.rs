//! `sources.toml`: the bibliography.

use std::collections::BTreeMap;

use crate::finding::Finding;
use crate::model::Source;
use crate::model::source::Followed;
use crate::model::word::Word;
use crate::source::SourceFile;

use super::table::{self, Table};

impl Word for Followed {
    const ALL: &'static [(Followed, &'static str)] = &[
        (Followed::Read, "read"),
        (Followed::Secondary, "read (secondary)"),
        (Followed::Memory, "memory"),
    ];
}

pub(super) fn bibliography(file: &SourceFile) -> (BTreeMap<String, Source>, Vec<Finding>) {
    table::read(file.id, &file.text, |top| {
        let mut sources = BTreeMap::new();
        for key in top.names() {
            let Some(table) = top.table(&key.name) else { continue };
            if let Some(mut source) = source(&table) {
                source.place = key.place;
                sources.insert(key.name, source);
            }
            table.close();
        }
        sources
    })
}

fn source(table: &Table<'_, '_>) -> Option<Source> {
    let title = table.text("title");
    let issuer = table.text("issuer");
    let source = Source {
        title: title.clone().unwrap_or_default(),
        issuer: issuer.clone().unwrap_or_default(),
        year: year(table),
        address: table.text("address"),
        read: table.word("read").map_or(Followed::Read, |(read, _)| read),
        note: table.text("note"),
        place: table.place(),
    };
    if title.is_none() {
        table.missing("title", "the publication's title: title = \"…\"");
    }
    if issuer.is_none() {
        table.missing("issuer", "the author or issuer: issuer = \"…\"");
    }
    (title.is_some() && issuer.is_some()).then_some(source)
}

/// A year may be written as a number or as text: `1997`, `"1997"`, `"n.d."`.
pub(super) fn year(table: &Table<'_, '_>) -> String {
    match table.value("year").map(|value| value.get_ref()) {
        Some(toml::de::DeValue::Integer(year)) => year.as_str().to_owned(),
        Some(_) => table.text("year").unwrap_or_default(),
        None => "n.d.".to_owned(),
    }
}
