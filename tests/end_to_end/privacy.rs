//! Nothing private reaches the public part, and contributed words cannot run in a reader's browser.

use toml::{Table, Value};

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

    fn plant(&mut self, table: &mut Table, key: &str, what: &str) {
        let mark = self.mark(&format!("{what} {key}"));
        table.insert(key.to_owned(), Value::String(mark));
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

    fn in_animal(&mut self, animal: &mut Table, name: &str) {
        for key in ["chip", "temperament", "origin", "sex_basis"] {
            self.plant(animal, key, name);
        }
        for key in ["notes", "history", "papers"] {
            let mut value =
                animal.remove(key).expect("the example's animals have notes, a history and papers");
            self.everywhere(&mut value, &format!("{name} {key}"));
            animal.insert(key.to_owned(), value);
        }
        let enclosure = animal["enclosure"].as_table_mut().expect("an enclosure");
        self.plant(enclosure, "fallback", name);
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
                if ["move", "illness", "treatment", "death"].contains(&cells[1].as_str()) {
                    cells[2] = self.mark(&format!("{name} log {}", cells[1]));
                }
            }
            marked.write_record(&cells).expect("memory can be written to");
        }
        String::from_utf8(marked.into_inner().expect("memory can be written to")).expect("UTF-8")
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
            site.edit(&path, |animal| planting.in_animal(animal, &name));
        }
    }
    site.put("animals/zqmark-hidden.toml", site.text("animals/juniper.toml"));
    site.put("animals/zqmark-hidden.csv", site.text("animals/juniper.csv"));
    site.edit("animals/zqmark-hidden.toml", |animal| {
        animal.insert("publish".to_owned(), Value::Boolean(false));
        for key in ["name", "story", "chip"] {
            planting.plant(animal, key, "the unpublished animal's");
        }
    });
    site.edit("private.toml", |private| {
        for (key, value) in private.iter_mut() {
            planting.everywhere(value, &format!("private.toml {key}"));
        }
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
        "bellrope.toml notes keeper",
        "bellrope.toml chip",
        "the unpublished animal's name",
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
