//! The tables of fields in README.md, held against what the program reads.

use std::collections::BTreeSet;

use wardsheet::finding::Finding;
use wardsheet::source::{Layer, Role, Sources};

use super::{code_spans, document, section};

/// A file of each kind with a field `qqqqqq` in every table: nobody knows it, and the finding says which ones are known.
pub(super) const UNKNOWN_EVERYWHERE: [(&str, Role, &str); 9] = [
    (
        "wardsheet.toml",
        Role::Site,
        "qqqqqq = 1\ntitle = \"x\"\n[wording.NAME]\nqqqqqq = 1\n[prices]\nqqqqqq = 1\n[lights]\nqqqqqq = 1\n\
         [[disinfectant]]\nname = \"x\"\none_part_in = 1\nbucket = \"1 l\"\nqqqqqq = 1\n\
         [[strip]]\nname = \"x\"\nrating = \"1 W\"\nqqqqqq = 1\n[[room]]\nname = \"x\"\nqqqqqq = 1\n",
    ),
    ("private.toml", Role::Private, "qqqqqq = 1\n[keeper]\nqqqqqq = 1\n"),
    ("sources.toml", Role::Bibliography, "[x]\ntitle = \"x\"\nissuer = \"x\"\nqqqqqq = 1\n"),
    (
        "animals/NAME.toml",
        Role::Animal,
        "qqqqqq = 1\nname = \"x\"\nspecies = \"x\"\nenclosure = { qqqqqq = 1 }\nheater = [{ kind = \"mat\", qqqqqq = 1 }]\n\
         lamp = [{ qqqqqq = 1, reading = [{ distance = \"1 cm\", uvi = \"1 UVI\", qqqqqq = 1 }] }]\nprobe = [{ name = \"x\", qqqqqq = 1 }]\nhide = [{ qqqqqq = 1 }]\nlogger = [{ readings = \"x\", map = \"x\", qqqqqq = 1 }]\nfeeding = { qqqqqq = 1 }\n\
         quarantine = { started = 2026-01-01, qqqqqq = 1 }\nhistory = [{ what = \"x\", qqqqqq = 1 }]\nnotes = { qqqqqq = 1 }\n",
    ),
    (
        "maps/NAME.toml",
        Role::Map,
        "qqqqqq = 1\ntime = \"x\"\nprobe = [{ name = \"x\", qqqqqq = 1 }]\nlog = { qqqqqq = 1 }\nunits = { qqqqqq = 1 }\n",
    ),
    (
        "species/NAME.toml",
        Role::Species,
        "qqqqqq = 1\nname = \"x\"\nscientific = \"x\"\nkind = \"snake\"\nhabit = \"ground\"\ndiet = \"carnivore\"\n\
         size = { adult = \"1 m\", qqqqqq = 1, forms = { NAME = { qqqqqq = 1 } } }\norigin = { qqqqqq = 1 }\n\
         energy = { qqqqqq = 1 }\ngrowth = { qqqqqq = 1 }\nlife = { qqqqqq = 1 }\ntemperature = { qqqqqq = 1 }\nhumidity = { qqqqqq = 1 }\n\
         light = { qqqqqq = 1 }\nenclosure = { STANDARD = { row = \"x\", qqqqqq = 1 } }\nfittings = { qqqqqq = 1 }\n\
         feeding = [{ stage = \"x\", qqqqqq = 1 }]\nfasting = { qqqqqq = 1 }\nhandling = { qqqqqq = 1 }\n\
         sign = [{ sign = \"x\", urgency = \"now\", qqqqqq = 1 }]\n\
         legal = { qqqqqq = 1, rule = [{ where = \"x\", says = \"x\", qqqqqq = 1 }] }\n",
    ),
    (
        "species/NAME.override.toml",
        Role::Override,
        "qqqqqq = 1\n[[figure]]\nname = \"x\"\nvalue = \"1 C\"\nreason = \"x\"\nby = \"x\"\nqqqqqq = 1\n",
    ),
    (
        "species/standards/NAME.toml",
        Role::Standard,
        "qqqqqq = 1\ntitle = \"x\"\nissuer = \"x\"\n[row.NAME]\nqqqqqq = 1\n[[row.NAME.class]]\nqqqqqq = 1\n\
         further = { qqqqqq = 1 }\nor = { qqqqqq = 1 }\n",
    ),
    (
        "species/law/NAME.toml",
        Role::Law,
        "qqqqqq = 1\nname = \"x\"\ntitle = \"x\"\nissuer = \"x\"\nitem = { qqqqqq = 1, names = { qqqqqq = 1 } }\n\
         notice = { says = \"x\", qqqqqq = 1, age = [{ under = \"1 year\", qqqqqq = 1 }] }\n\
         buyer = { at_least = \"1 year\", qqqqqq = 1 }\ntreatment = { sale = \"forbidden\", qqqqqq = 1 }\n\
         size = [{ shell_below = \"1 cm\", qqqqqq = 1 }]\npaper = [{ paper = \"x\", qqqqqq = 1 }]\n\
         mark = [{ mark = \"x\", qqqqqq = 1 }]\nrecords = { keep = \"1 year\", qqqqqq = 1 }\n\
         delivery = { qqqqqq = 1 }\nfurther = [{ qqqqqq = 1 }]\n",
    ),
];

/// What is found in one file.
pub(super) fn findings_of(kind: &str, role: Role, text: &str) -> Vec<Finding> {
    let name = kind.trim_end_matches(".toml");
    let mut sources = Sources::default();
    sources.add(kind, role, name, Layer::Own, text.to_owned());
    wardsheet::parse::parse(&sources).1
}

/// Every field that a kind of file may hold, learnt from the findings themselves.
fn known_fields(kind: &str, role: Role, text: &str) -> BTreeSet<String> {
    let findings = findings_of(kind, role, text);
    let mut known = BTreeSet::new();
    for finding in &findings {
        let help = finding.help.as_deref().unwrap_or_default();
        let fields = help
            .strip_prefix("known here: ")
            .unwrap_or_else(|| panic!("unexpected: {}", finding.message));
        known.extend(fields.split(", ").map(str::to_owned));
    }
    assert_eq!(findings.len(), text.matches("qqqqqq").count(), "every table is one that is read");
    known
}

#[test]
fn the_readme_explains_every_field_and_no_other() {
    let readme = document("README.md");
    for (kind, role, text) in UNKNOWN_EVERYWHERE {
        let table = section(&readme, &format!("### Every field of {kind}"));
        let rows =
            table.lines().filter(|line| line.starts_with("| ") && !line.starts_with("| field"));
        let first_cells: String = rows.filter_map(|row| row.split('|').nth(1)).collect();
        let spans = code_spans(&first_cells);
        // A table stands as `[size.forms.NAME]` or `[[sign]]`; each of its parts is a field of what is around it.
        let explained: BTreeSet<String> = spans
            .iter()
            .flat_map(|span| span.trim_matches(['[', ']']).split('.'))
            .map(str::to_owned)
            .collect();
        let mut known = known_fields(kind, role, text);
        for name in ["NAME", "STANDARD"] {
            known.extend(explained.get(name).cloned());
        }
        assert_eq!(
            explained, known,
            "the table of fields of {kind} in the README (left) and what is read (right)"
        );
    }
}
