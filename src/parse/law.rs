//! `species/law/NAME.toml`: what the law of a place asks, as data.

use std::collections::BTreeMap;

use crate::finding::Finding;
use crate::model::law::{Ask, Concerns, Delivery, Ground, Item, Jurisdiction, Notice, Rule, Sale};
use crate::model::word::Word;
use crate::quantity::Span;
use crate::source::SourceFile;

use super::bibliography::year;
use super::table::{self, Table};

const REQUIRED: [(&str, &str); 3] = [
    ("name", "the place: name = \"Quillmere\""),
    ("title", "the act or order: title = \"…\""),
    ("issuer", "who issued it: issuer = \"…\""),
];

pub(super) fn law(file: &SourceFile) -> (Option<Jurisdiction>, Vec<Finding>) {
    table::read(file.id, &file.text, |top| {
        for (key, what) in REQUIRED {
            top.missing(key, what);
        }
        let ground = ground(top, &Ground::default());
        let one = |key: &str| top.table(key);
        let law = Jurisdiction {
            file: file.id,
            name: top.text("name").unwrap_or_default(),
            title: top.text("title").unwrap_or_default(),
            issuer: top.text("issuer").unwrap_or_default(),
            year: year(top),
            read: top.date("read").map(|(date, _)| date),
            state: top.text("state"),
            applies_to: top.text("applies_to"),
            within: top.list("within"),
            places: top.list("places").into_iter().map(|named| named.name).collect(),
            items: one("item").map(|table| items(&table, &ground)).unwrap_or_default(),
            notice: one("notice").and_then(|table| notice(&table, &ground)),
            buyer: one("buyer").and_then(|table| {
                rule(&table, &ground, "at_least = \"16 years\"", |table| span(table, "at_least"))
            }),
            treatment: one("treatment").and_then(|table| {
                rule(&table, &ground, "sale = \"forbidden\"", |table| {
                    table.word::<Sale>("sale").map(|(sale, _)| sale)
                })
            }),
            sizes: rules(top, "size", &ground, "shell_below = \"4 in\"", |table| {
                Some(concerns(table)).filter(|concerns| concerns.shell_below.is_some())
            }),
            papers: rules(top, "paper", &ground, "paper = \"…\"", |table| {
                Some((table.text("paper"), concerns(table))).and_then(named)
            }),
            marks: rules(top, "mark", &ground, "mark = \"microchip\"", |table| {
                Some((table.text("mark"), concerns(table))).and_then(named)
            }),
            records: one("records").and_then(|table| {
                rule(&table, &ground, "keep = \"3 years\"", |table| span(table, "keep"))
            }),
            delivery: one("delivery").and_then(|table| {
                rule(&table, &ground, "says = \"…\"", |table| {
                    let paper = table.flag("paper").is_some_and(|(paper, _)| paper);
                    Some(Delivery { paper, language: table.text("language") })
                })
            }),
            further: rules(top, "further", &ground, "says = \"…\"", |_| Some(())),
            ground: ground.clone(),
        };
        let whole = [&law.name, &law.title, &law.issuer].iter().all(|text| !text.is_empty());
        whole.then_some(law)
    })
}

fn named((name, concerns): (Option<String>, Concerns)) -> Option<(String, Concerns)> {
    name.map(|name| (name, concerns))
}

fn span(table: &Table<'_, '_>, key: &str) -> Option<Span> {
    table.one::<Span>(key).map(|(span, _)| span)
}

/// What a row rests on: its own words, and the file's where it has none.
fn ground(table: &Table<'_, '_>, of_file: &Ground) -> Ground {
    Ground {
        article: table.text("article").or_else(|| of_file.article.clone()),
        source: table.named("source").or_else(|| of_file.source.clone()),
        from_memory: table.flag("from_memory").map_or(of_file.from_memory, |(from, _)| from),
        note: table.text("note"),
    }
}

/// One row, closed; reported where what it is about is missing.
fn rule<T>(
    table: &Table<'_, '_>,
    of_file: &Ground,
    example: &str,
    about: impl Fn(&Table<'_, '_>) -> Option<T>,
) -> Option<Rule<T>> {
    let about = about(table);
    if about.is_none() {
        let key = example.split(' ').next().unwrap_or_default();
        table.missing(key, example);
    }
    let rule = Rule { about: about?, says: table.text("says"), ground: ground(table, of_file) };
    table.close();
    Some(rule)
}

fn rules<T>(
    top: &Table<'_, '_>,
    key: &str,
    of_file: &Ground,
    example: &str,
    about: impl Fn(&Table<'_, '_>) -> Option<T>,
) -> Vec<Rule<T>> {
    let tables = top.tables(key);
    tables.iter().filter_map(|table| rule(table, of_file, example, &about)).collect()
}

fn concerns(table: &Table<'_, '_>) -> Concerns {
    Concerns {
        kinds: table.words("kinds"),
        protected: table.flag("protected").map(|(protected, _)| protected),
        with_paper: table.text("with_paper"),
        shell_below: table.one("shell_below").map(|(length, _)| length),
        shell_from: table.one("shell_from").map(|(length, _)| length),
        mass_from: table.one("mass_from").map(|(mass, _)| mass),
    }
}

fn items(table: &Table<'_, '_>, of_file: &Ground) -> BTreeMap<Item, Ask> {
    let mut items = BTreeMap::new();
    for (item, spelling) in Item::ALL {
        let Some(row) = table.table(spelling) else { continue };
        let ask = Ask {
            wider: row.flag("wider").is_some_and(|(wider, _)| wider),
            wording_set: row.flag("wording_set").is_some_and(|(set, _)| set),
            wording: row.text("wording"),
            ground: ground(&row, of_file),
        };
        row.close();
        items.insert(*item, ask);
    }
    table.close();
    items
}

fn notice(table: &Table<'_, '_>, of_file: &Ground) -> Option<Notice> {
    let ground = ground(table, of_file);
    table.missing("says", "what the notice says, in words of your own: says = \"…\"");
    let ages = rules(
        table,
        "age",
        &Ground { note: None, ..ground.clone() },
        "under = \"5 years\"",
        |age| span(age, "under"),
    );
    let says = table.text("says");
    let notice = Notice {
        binding: table.flag("binding").is_none_or(|(binding, _)| binding),
        title: table.text("title"),
        kinds: table.words("kinds"),
        says: says.clone().unwrap_or_default(),
        ages,
        given_to: table.text("given_to"),
        wall: table.text("wall"),
        wording_set: table.flag("wording_set").is_some_and(|(set, _)| set),
        wording: table.text("wording"),
        ground,
    };
    table.close();
    says.map(|_| notice)
}
