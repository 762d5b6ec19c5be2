//! `wardsheet.toml` and `private.toml`.

use std::collections::BTreeMap;

use crate::finding::{FileId, Finding, Severity, did_you_mean};
use crate::model::site::{Contact, Paper, Wording};
use crate::model::word::Word;
use crate::model::{Named, Private, Site};
use crate::quantity::{self, Price, System};
use crate::source::{SourceFile, is_language_tag};

use super::codes;
use super::store;
use super::table::{self, Table};

impl Word for System {
    const ALL: &'static [(System, &'static str)] =
        &[(System::Metric, "metric"), (System::Imperial, "imperial")];
}

impl Word for Severity {
    const ALL: &'static [(Severity, &'static str)] =
        &[(Severity::Error, "error"), (Severity::Warning, "warning"), (Severity::Note, "note")];
}

/// Reads from `wardsheet.toml` which libraries the rest of the reading needs; without a word, the built-in one.
pub fn libraries(text: &str) -> Vec<String> {
    table::read(FileId(0), text, list_of_libraries).0
}

fn list_of_libraries(top: &Table<'_, '_>) -> Vec<String> {
    match top.value("libraries") {
        None => Site::default().libraries,
        Some(_) => top.list("libraries").into_iter().map(|named| named.name).collect(),
    }
}

pub(super) fn site(file: &SourceFile) -> (Site, Vec<Finding>) {
    table::read(file.id, &file.text, |top| {
        top.missing(
            "title",
            "the site's name: title = \"Quillmere Reptile and Amphibian Society\"",
        );
        let standing = Site::default();
        let prices = top.table("prices");
        let lights = top.table("lights");
        let site = Site {
            file: file.id,
            title: top.text("title").unwrap_or_default(),
            footer: top.text("footer"),
            language: top.text("language").unwrap_or(standing.language),
            languages: languages(top),
            units: top.word("units").map_or(standing.units, |(units, _)| units),
            paper: top.word::<Paper>("paper").map_or(standing.paper, |(paper, _)| paper),
            address: top.text("address"),
            standards: top.list("standards"),
            jurisdictions: top.list("jurisdictions"),
            wordings: top.table("wording").map(|table| wordings(&table)).unwrap_or_default(),
            libraries: list_of_libraries(top),
            review_every: top.one("review_every").map_or(standing.review_every, |(span, _)| span),
            vet: top.text("vet"),
            take_back: top.text("take_back"),
            electricity: prices
                .as_ref()
                .and_then(|table| table.parsed("electricity", quantity::parse_price)),
            food_prices: prices_of(prices.as_ref(), "food"),
            lamp_prices: prices_of(prices.as_ref(), "lamps"),
            prey: top.table("prey").map(|table| store::prey(&table)).unwrap_or_default(),
            lights_on: lights.as_ref().and_then(|table| store::hour(table, "on")),
            lights_centre: lights
                .as_ref()
                .and_then(|table| store::hour(table, "centre"))
                .unwrap_or(standing.lights_centre),
            disinfectants: top
                .tables("disinfectant")
                .iter()
                .filter_map(store::disinfectant)
                .collect(),
            strips: top.tables("strip").iter().filter_map(store::strip).collect(),
            rooms: top.tables("room").iter().filter_map(store::room).collect(),
            figures_need_source: top.list("figures_need_source"),
            severities: top.table("findings").map(|table| severities(&table)).unwrap_or_default(),
        };
        [prices, lights].iter().flatten().for_each(Table::close);
        site
    })
}

/// Further languages. Each names a folder of the output, so that nothing but a tag will do.
fn languages(top: &Table<'_, '_>) -> Vec<Named> {
    let mut all = top.list("languages");
    all.retain(|named| {
        let is_tag = is_language_tag(&named.name);
        if !is_tag {
            let message =
                format!("`languages` has `{}`, which is not a language's tag", named.name);
            let finding = Finding::new(&codes::WORD_UNKNOWN, named.place, message);
            top.report(finding.help("write two or three letters, such as \"de\" or \"pt-BR\""));
        }
        is_tag
    });
    all
}

/// `[wording.NAME]`: the words that the law of a jurisdiction sets.
fn wordings(table: &Table<'_, '_>) -> Vec<Wording> {
    let one = |named: Named| {
        let words = table.table(&named.name)?;
        let wording =
            Wording { named, notice: words.text("notice"), release: words.text("release") };
        words.close();
        Some(wording)
    };
    table.names().into_iter().filter_map(one).collect()
}

fn prices_of(prices: Option<&Table<'_, '_>>, key: &str) -> BTreeMap<String, Price> {
    let Some(table) = prices.and_then(|prices| prices.table(key)) else { return BTreeMap::new() };
    let priced = |named: crate::model::Named| {
        let (price, _) = table.parsed(&named.name, quantity::parse_price)?;
        Some((named.name, price))
    };
    table.names().into_iter().filter_map(priced).collect()
}

/// `"code" = "warning"` raises or lowers a code; `"off"` silences it.
fn severities(table: &Table<'_, '_>) -> Vec<(crate::model::Named, Option<Severity>)> {
    let mut severities = Vec::new();
    for code in table.names() {
        let Some(named) = table.named(&code.name) else { continue };
        let word = Severity::ALL.iter().find(|(_, spelling)| *spelling == named.name);
        match word {
            Some((severity, _)) => severities.push((code, Some(*severity))),
            None if named.name == "off" => severities.push((code, None)),
            None => {
                let message = format!("`{}` is not a severity", named.name);
                let near = did_you_mean(&named.name, ["error", "warning", "note", "off"])
                    .unwrap_or_default();
                let help = format!("{near} It is one of: error, warning, note, off");
                table.report(
                    Finding::new(&codes::WORD_UNKNOWN, named.place, message).help(help.trim()),
                );
            }
        }
    }
    severities
}

pub(super) fn private(file: &SourceFile) -> (Private, Vec<Finding>) {
    table::read(file.id, &file.text, |top| Private {
        keeper: contact(top, "keeper"),
        second: contact(top, "second"),
        vet: contact(top, "vet"),
        vet_out_of_hours: contact(top, "vet_out_of_hours"),
        house: top.table("house").map(|table| house(&table)).unwrap_or_default(),
    })
}

fn contact(top: &Table<'_, '_>, key: &str) -> Contact {
    let Some(table) = top.table(key) else { return Contact::default() };
    let contact = Contact {
        name: table.text("name"),
        phone: table.text("phone"),
        address: table.text("address"),
        email: table.text("email"),
    };
    table.close();
    contact
}

/// The house's own headings are kept, in the order of the file: `fuse_box = "…"` becomes "Fuse box".
fn house(table: &Table<'_, '_>) -> Vec<(String, String)> {
    let names = table.names();
    names
        .into_iter()
        .filter_map(|named| {
            let text = table.text(&named.name)?;
            let words = named.name.replace(['_', '-'], " ");
            let mut letters = words.chars();
            let heading = letters
                .next()
                .map(|first| first.to_uppercase().chain(letters).collect())
                .unwrap_or_default();
            Some((heading, text))
        })
        .collect()
}
