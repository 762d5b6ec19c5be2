//! Nothing private reaches the public part, and contributed words cannot run in a reader's browser.

use toml::{Table, Value};

use wardsheet::schema::FILE_KINDS;

use crate::html::elements;
use crate::site::{Site, Tree, ends_with, tree};

/// Stands in every planted value; nothing else in the site or the library holds it.
const MARK: &str = "zqmark";

/// Hands out values that can be told apart.
#[derive(Default)]
struct Planting(Vec<String>);

impl Planting {
    fn mark(&mut self, what: &str) -> String {
        let mark = format!("{MARK}{}x", self.0.len());
        self.0.push(what.to_owned());
        mark
    }

    /// Replaces every text of a table, at any depth.
    fn everywhere(&mut self, value: &mut Value, what: &str) {
        match value {
            Value::String(text) => *text = self.mark(what),
            Value::Array(items) => items.iter_mut().for_each(|item| self.everywhere(item, what)),
            Value::Table(table) => table
                .iter_mut()
                .for_each(|(key, value)| self.everywhere(value, &format!("{what} {key}"))),
            _ => {}
        }
    }

    /// Puts a mark into every text field that the schema of a kind of file knows, but for those named. A field that the file
    /// does not have is added, in every entry of a list.
    fn by_schema(&mut self, kind: &str, table: &mut Table, file: &str, but: &[&str]) {
        for path in texts(kind) {
            if !but.contains(&path.as_str()) {
                let steps: Vec<&str> = path.split('.').collect();
                self.at(table, &steps, &format!("{file} {path}"));
            }
        }
    }

    fn at(&mut self, table: &mut Table, steps: &[&str], what: &str) {
        let [step, rest @ ..] = steps else { return };
        if rest.is_empty() {
            let mark = self.mark(what);
            // A probe's name begins with its zone.
            let zone = table.get(*step).and_then(Value::as_str).filter(|_| what.contains("probe"));
            let zone = zone.and_then(|name| name.split_whitespace().next());
            let mark = zone.map_or_else(|| mark.clone(), |zone| format!("{zone} {mark}"));
            table.insert((*step).to_owned(), Value::String(mark));
            return;
        }
        let (key, listed) = step.strip_suffix("[]").map_or((*step, false), |key| (key, true));
        if listed {
            for entry in table.get_mut(key).and_then(Value::as_array_mut).into_iter().flatten() {
                self.at(entry.as_table_mut().expect("a list of tables"), rest, what);
            }
        } else if let Some(inner) = table.get_mut(key) {
            self.at(inner.as_table_mut().expect("a table"), rest, what);
        }
    }

    /// Puts marks into a log: every note, and every value that is words.
    fn in_log(&mut self, text: &str, name: &str) -> String {
        let mut marked = csv::Writer::from_writer(Vec::new());
        for record in
            csv::ReaderBuilder::new().has_headers(false).from_reader(text.as_bytes()).records()
        {
            let record = record.expect("the example's logs can be read");
            let mut cells: Vec<String> = record.iter().map(str::to_owned).collect();
            if cells[0] != "date" {
                cells[4] = self.mark(&format!("{name} log note"));
                let words = ["move", "illness", "treatment", "death", "joined", "note"];
                if words.contains(&cells[1].as_str()) {
                    cells[2] = self.mark(&format!("{name} log {}", cells[1]));
                } else if cells[1] == "meal" {
                    cells[2] = format!("{} 26 g", self.mark(&format!("{name} log meal")));
                }
            }
            marked.write_record(&cells).expect("memory can be written to");
        }
        String::from_utf8(marked.into_inner().expect("memory can be written to")).expect("UTF-8")
    }
}

/// Every field of a kind of file that holds free text, by its dotted path; `[]` stands behind a list of tables.
fn texts(kind: &str) -> Vec<String> {
    let kind = FILE_KINDS.iter().find(|known| known.name == kind).expect("a kind of file");
    let mut found = Vec::new();
    gather(&kind.schema(), "", &mut found);
    found
}

fn gather(schema: &serde_json::Value, path: &str, found: &mut Vec<String>) {
    // One or a list of them: the list says the same.
    let listed = schema["anyOf"].as_array().and_then(|either| {
        either.iter().find_map(|one| one["items"].is_object().then(|| &one["items"]))
    });
    if let Some(items) = listed {
        let table = items["properties"].is_object();
        gather(items, &if table { format!("{path}[]") } else { path.to_owned() }, found);
        return;
    }
    for (key, inner) in schema["properties"].as_object().into_iter().flatten() {
        let dot = if path.is_empty() { "" } else { "." };
        gather(inner, &format!("{path}{dot}{key}"), found);
    }
    // A measured thing has a pattern and a day a format; what has neither is words.
    if schema["type"] == "string" && schema["pattern"].is_null() && schema["format"].is_null() {
        found.push(path.to_owned());
    }
}

/// Fields of an animal that name something which must be there: a file, another animal, a material. Their names are none of
/// its own, and the name of a photo has a test of its own.
const NAMES: [&str; 18] = [
    "species",
    "form",
    "with",
    "photo",
    "enclosure.walls",
    "enclosure.front",
    "enclosure.back",
    "enclosure.sides",
    "enclosure.top",
    "enclosure.floor",
    "enclosure.substrate",
    "lamp[].kind",
    "enclosure.room",
    "heater[].probe",
    "heater[].strip",
    "lamp[].strip",
    "logger[].readings",
    "logger[].map",
];
/// Fields that are public where the animal is, as the README's table says. Everything else is private: a new field is, until it
/// is named here.
const PUBLIC: [&str; 4] = ["name", "story", "photo_shows", "feeding.meal"];
/// Fields of the site's own file that are public, or that name something.
const PUBLIC_OF_SITE: [&str; 14] = [
    "title",
    "footer",
    "language",
    "languages",
    "address",
    "standards",
    "jurisdictions",
    "room[].name",
    "strip[].name",
    "figures_need_source",
    "libraries",
    "vet",
    "lights.on",
    "lights.centre",
];

/// Lets each heater go by the probe that it went by before that was given another name.
fn follow_probes(animal: &mut Table) {
    let probes = animal.get("probe").and_then(Value::as_array).into_iter().flatten();
    let names: Vec<String> =
        probes.filter_map(|probe| Some(probe.get("name")?.as_str()?.to_owned())).collect();
    for heater in animal.get_mut("heater").and_then(Value::as_array_mut).into_iter().flatten() {
        let Some(Value::String(probe)) = heater.get_mut("probe") else { continue };
        let zone = probe.split_whitespace().next().unwrap_or_default();
        let now = names.iter().find(|name| name.split_whitespace().next() == Some(zone));
        *probe = now.expect("the example's heaters go by probes of their own").clone();
    }
}

/// The example with a mark in every private field, and with an animal that nobody outside may hear of.
fn planted(site: &Site) -> Planting {
    let mut planting = Planting::default();
    for path in tree(&site.folder).into_keys().filter(|path| path.starts_with("animals/")) {
        let name = path.trim_start_matches("animals/").to_owned();
        if name.ends_with(".csv") {
            site.put(&path, planting.in_log(&site.text(&path), &name));
        } else {
            let but = [NAMES.as_slice(), &PUBLIC].concat();
            site.edit(&path, |animal| {
                planting.by_schema("animal", animal, &name, &but);
                follow_probes(animal);
            });
        }
    }
    site.put("animals/zqmark-hidden.toml", site.text("animals/juniper.toml"));
    site.put("animals/zqmark-hidden.csv", site.text("animals/juniper.csv"));
    site.edit("animals/zqmark-hidden.toml", |animal| {
        animal.insert("publish".to_owned(), Value::Boolean(false));
        planting.by_schema("animal", animal, "the unpublished animal's", &NAMES);
        follow_probes(animal);
    });
    site.edit("private.toml", |private| {
        planting.by_schema("private", private, "private.toml", &[]);
        for (key, value) in private.iter_mut() {
            planting.everywhere(value, &format!("private.toml {key}"));
        }
    });
    site.edit("wardsheet.toml", |settings| {
        planting.by_schema("site", settings, "wardsheet.toml", &PUBLIC_OF_SITE);
    });
    planting
}

fn holding<'a>(files: &'a Tree, part: &str, mark: &str) -> Vec<&'a str> {
    let part = files.iter().filter(|(path, _)| path.starts_with(part));
    let holds = |bytes: &[u8]| {
        bytes.windows(mark.len()).any(|window| window.eq_ignore_ascii_case(mark.as_bytes()))
    };
    part.filter(|(path, bytes)| path.contains(mark) || holds(bytes))
        .map(|(path, _)| path.as_str())
        .collect()
}

#[test]
fn nothing_private_reaches_the_public_part() {
    let site = Site::example("planted");
    let planting = planted(&site);
    assert!(planting.0.len() > 500, "only {} marks were planted", planting.0.len());
    site.compile();
    let files = tree(&site.out());
    let told: Vec<&str> = holding(&files, "public/", MARK);
    let which =
        planting.0.iter().enumerate().filter(|(number, _)| {
            !holding(&files, "public/", &format!("{MARK}{number}x")).is_empty()
        });
    let which: Vec<&String> = which.map(|(_, what)| what).take(20).collect();
    assert!(told.is_empty(), "private values stand in {told:?}: {which:?}");
}

#[test]
fn every_private_text_field_of_every_kind_of_file_is_planted() {
    let site = Site::example("planted-all");
    let planting = planted(&site);
    let is_planted = |path: &str, file: &str| {
        let end = format!(" {path}");
        planting.0.iter().any(|what| what.contains(file) && what.ends_with(&end))
    };
    for path in texts("animal") {
        let planted = is_planted(&path, "");
        assert_eq!(planted, !NAMES.contains(&path.as_str()), "animals/NAME.toml {path}");
    }
    for path in texts("private") {
        assert!(is_planted(&path, "private.toml"), "private.toml {path}");
    }
    for path in texts("site") {
        let planted = is_planted(&path, "wardsheet.toml");
        let public = PUBLIC_OF_SITE.contains(&path.as_str());
        assert!(planted != public || path.contains("[]"), "wardsheet.toml {path}");
    }
    // Of what cites and what is published nothing is private: species, overrides, sources, standards and laws. A map names
    // columns.
    let kinds: Vec<&str> = FILE_KINDS.iter().map(|kind| kind.name).collect();
    assert_eq!(
        kinds,
        ["species", "override", "animal", "map", "site", "private", "sources", "standard", "law"]
    );
}

#[test]
fn the_planted_marks_do_reach_the_private_sheets() {
    let site = Site::example("planted-private");
    let planting = planted(&site);
    site.compile();
    let files = tree(&site.out());
    let told = |what: &str| {
        let number = planting
            .0
            .iter()
            .position(|planted| planted == what)
            .unwrap_or_else(|| panic!("{what} was not planted"));
        !holding(&files, "private/", &format!("{MARK}{number}x")).is_empty()
    };
    for what in [
        "private.toml keeper phone",
        "bellrope.toml notes.keeper",
        "bellrope.toml chip",
        "the unpublished animal's name",
        "wardsheet.toml take_back",
    ] {
        assert!(told(what), "{what} is on no private sheet");
    }
}

#[test]
fn words_cannot_run_in_a_readers_browser() {
    let site = Site::example("hostile-words");
    let attack = "<script>alert(1)</script>\n\n<img src=x onerror=alert(1)> <a href=\"javascript:alert(1)\">one</a>\n\n\
        [two](javascript:alert(1)) [three](JaVaScRiPt:alert(1)) [four](&#106;avascript:alert(1)) [five](data:text/html;base64,eA==)\n\n\
        ![six](javascript:alert(1)) <javascript:alert(1)> [seven](vbscript:x) [eight](<java\tscript:alert(1)>)\n\n\
        [nine][reference] `<script>` \\<script>alert(1)\\</script> <svg onload=alert(1)> <iframe src=//example.com></iframe>\n\n\
        [reference]: javascript:alert(1)\n";
    site.put("pages/hostile.md", format!("# Hostile <script>alert(1)</script>\n\n{attack}"));
    site.put("species/corn-snake.md", format!("## Enclosure\n\n{attack}"));
    let quoted =
        "\"'></title></textarea></style></p><script>alert(1)</script><img src=x onerror=alert(1)>";
    for path in ["animals/bellrope.toml", "animals/juniper.toml"] {
        site.edit(path, |animal| {
            for key in ["name", "story", "origin", "temperament", "chip"] {
                animal.insert(
                    key.to_owned(),
                    Value::String(format!("{path} {key} {quoted} {attack}")),
                );
            }
        });
    }
    site.edit("wardsheet.toml", |settings| {
        for key in ["title", "footer", "vet"] {
            settings.insert(key.to_owned(), Value::String(format!("{quoted} {attack}")));
        }
    });
    ends_with(&site.try_compile(), 0);
    for (path, bytes) in tree(&site.out()) {
        if !path.ends_with(".html") {
            continue;
        }
        for element in elements(&String::from_utf8_lossy(&bytes)) {
            assert!(
                !["script", "iframe", "object", "embed"].contains(&element.name.as_str()),
                "{path}: <{}>",
                element.name
            );
            for (name, value) in &element.attributes {
                assert!(!name.starts_with("on"), "{path}: <{} {name}>", element.name);
                let value: String =
                    value.chars().filter(|c| !c.is_whitespace() && !c.is_control()).collect();
                let runs = ["javascript:", "data:text", "vbscript:"]
                    .iter()
                    .any(|scheme| value.to_lowercase().starts_with(scheme));
                assert!(
                    !runs || !matches!(name.as_str(), "href" | "src"),
                    "{path}: <{} {name}={value}>",
                    element.name
                );
            }
        }
    }
}
