//! Whatever stands in a file, it is told as findings: nothing panics, hangs or runs out of stack.
//!
//! `PROPTEST_CASES=20000 cargo test --release --test strength` looks longer; `cargo test --release --test strength -- --ignored`
//! adds lines of 60 MB, the longest that fit into a file that is read.

#[path = "strength/readers.rs"]
mod readers;

use proptest::prelude::*;
use readers::{BASE, read_all};

const DEEP: usize = 100_000;

/// One way of spoiling a file: where, how far, and what.
#[derive(Debug, Clone)]
enum Spoil {
    Flip(usize, u8),
    Delete(usize, usize),
    Double(usize, usize),
    Splice(usize, usize, usize),
    Put(usize, &'static str),
}

/// What is put into files: figures beyond all bounds, and signs that mean something to one of the readers.
const PUT: [&str; 16] = [
    "1e308 C",
    "-1e308 C",
    "1e-308 g",
    "999999-01-01",
    "9999-12-31",
    "-9999-01-01",
    "\"",
    "'''",
    "[[",
    "]]",
    "{{",
    "}}",
    "\n\n",
    "\u{feff}",
    "9999999999999999999999999999999999999999",
    "é",
];

fn spoil() -> impl Strategy<Value = Spoil> {
    let at = 0..6000_usize;
    prop_oneof![
        (at.clone(), any::<u8>()).prop_map(|(at, byte)| Spoil::Flip(at, byte)),
        (at.clone(), 1..200_usize).prop_map(|(at, length)| Spoil::Delete(at, length)),
        (at.clone(), 1..400_usize).prop_map(|(at, length)| Spoil::Double(at, length)),
        (at.clone(), at.clone(), 1..400_usize)
            .prop_map(|(a, b, length)| Spoil::Splice(a, b, length)),
        (at, proptest::sample::select(&PUT[..])).prop_map(|(at, text)| Spoil::Put(at, text)),
    ]
}

/// Does one thing to a file; `other` lends bytes to a splice.
fn spoilt(mut bytes: Vec<u8>, other: &[u8], spoil: &Spoil) -> Vec<u8> {
    let within = |at: usize, length: usize| if length == 0 { 0 } else { at % length };
    match *spoil {
        Spoil::Flip(at, byte) => {
            let at = within(at, bytes.len());
            if let Some(found) = bytes.get_mut(at) {
                *found ^= byte;
            }
        }
        Spoil::Delete(at, length) => {
            let at = within(at, bytes.len());
            bytes.drain(at..(at + length).min(bytes.len()));
        }
        Spoil::Double(at, length) => {
            let at = within(at, bytes.len());
            let part = bytes[at..(at + length).min(bytes.len())].to_vec();
            bytes.splice(at..at, part);
        }
        Spoil::Splice(at, from, length) => {
            let (at, from) = (within(at, bytes.len()), within(from, other.len()));
            let part = other[from..(from + length).min(other.len())].to_vec();
            bytes.splice(at..at, part);
        }
        Spoil::Put(at, text) => {
            let at = within(at, bytes.len());
            bytes.splice(at..at, text.bytes());
        }
    }
    bytes
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_file_of_any_bytes_is_told_as_findings(file in 0..BASE.len(), bytes in prop::collection::vec(any::<u8>(), 0..2000)) {
        read_all(BASE[file].0, bytes);
    }

    #[test]
    fn a_real_file_that_was_spoilt_is_told_as_findings(
        file in 0..BASE.len(), other in 0..BASE.len(), spoils in prop::collection::vec(spoil(), 1..8),
    ) {
        let start = BASE[file].1.as_bytes().to_vec();
        let bytes = spoils.iter().fold(start, |bytes, one| spoilt(bytes, BASE[other].1.as_bytes(), one));
        read_all(BASE[file].0, bytes);
    }
}

fn base(path: &str) -> &'static str {
    BASE.iter().find(|(known, _)| *known == path).expect("a file of the site").1
}

#[test]
fn the_site_is_sound_before_it_is_spoilt() {
    let found = read_all("wardsheet.toml", base("wardsheet.toml").into());
    let codes = wardsheet::proof::codes();
    let grave: Vec<_> = found
        .iter()
        .filter(|name| codes[**name].severity > wardsheet::finding::Severity::Note)
        .collect();
    assert!(grave.is_empty(), "{grave:?}");
}

#[test]
fn toml_a_hundred_thousand_levels_deep_is_not_valid() {
    let animal = base("animals/juniper.toml");
    for deep in [
        format!("x = {}{}\n{animal}", "[".repeat(DEEP), "]".repeat(DEEP)),
        format!("x = {}1{}\n{animal}", "{a=".repeat(DEEP), "}".repeat(DEEP)),
        format!("{} = 1\n{animal}", vec!["a"; DEEP].join(".")),
        format!("{animal}\n[{}]\n", vec!["a"; DEEP].join(".")),
    ] {
        let found = read_all("animals/juniper.toml", deep.into_bytes());
        assert!(found.contains(&"toml-syntax"), "{found:?}");
    }
}

#[test]
fn words_a_hundred_thousand_levels_deep_are_set() {
    for deep in ["> ", "- ", "[", "*a **a ", "[a](", "<b>"] {
        read_all("pages/quarantine.md", format!("# A\n\n{}x\n", deep.repeat(DEEP)).into_bytes());
    }
}

#[test]
fn a_reading_with_a_sign_of_several_bytes_is_read() {
    let reading = |value: &str| {
        let log = format!("date,what,value,outcome,note\n2026-11-01,reading,{value},,\n");
        read_all("animals/juniper.csv", log.into_bytes())
    };
    assert_eq!(reading("warm 28 C\u{a0}50 %"), reading("warm 28 C 50 %"));
    for broken in ["warm 28 C \u{fffd}4 %", "warm 28 C é%", "é9é%"] {
        assert!(!reading(broken).is_empty(), "{broken} passes");
    }
}

#[test]
fn figures_beyond_all_bounds_are_findings() {
    let digits = "9".repeat(400);
    for line in [
        "999999-01-01,length,3 cm,,".to_owned(),
        "2026-01-01,length,1e308 cm,,".to_owned(),
        format!("2026-01-01,length,{digits} cm,,"),
        "-9999-01-02,weight,1e-308 g,,".to_owned(),
    ] {
        let log = format!("date,what,value,outcome,note\n{line}\n");
        let found = read_all("animals/juniper.csv", log.into_bytes());
        assert!(!found.is_empty(), "{line} passes");
    }
    let species = base("species/testing-snake.toml");
    let (before, after) = species.split_once(" C\"").expect("a temperature");
    let start = before.rfind('"').expect("its text") + 1;
    for figure in ["1e308", "-1e308", &digits, "NaN", "inf"] {
        let spoilt = format!("{}{figure} C\"{after}", &before[..start]);
        let found = read_all("species/testing-snake.toml", spoilt.into_bytes());
        assert!(!found.is_empty(), "{figure} C passes");
    }
}

#[test]
fn a_file_where_every_line_is_wrong_is_told_in_a_hundred_findings() {
    let log =
        format!("date,what,value,outcome,note\n{}", "2026-01-01,lenght,1 cm,,\n".repeat(20_000));
    let found = read_all("animals/juniper.csv", log.into_bytes());
    assert_eq!(found.iter().filter(|code| **code == "log-line").count(), 100);
    let animal = base("animals/juniper.toml");
    let keys: String = (0..20_000).map(|number| format!("k{number} = 1\n")).collect();
    let found = read_all("animals/juniper.toml", format!("{keys}{animal}").into_bytes());
    assert_eq!(found.iter().filter(|code| **code == "key-unknown").count(), 100);
    let broken = format!("{animal}\n{}", "= 1\n".repeat(20_000));
    assert!(read_all("animals/juniper.toml", broken.into_bytes()).contains(&"toml-syntax"));
}

#[test]
#[ignore = "takes minutes without optimisation"]
fn a_line_of_sixty_megabytes_is_read() {
    let length = 60_000_000;
    let long = |head: &str, tail: &str| format!("{head}{}{tail}", "a".repeat(length)).into_bytes();
    read_all("animals/juniper.csv", long("date,what,value,outcome,note\n2026-01-01,note,", ",,\n"));
    read_all("animals/juniper.toml", long("name = \"", "\"\n"));
    read_all("pages/quarantine.md", long("# A\n\n", "\n"));
    read_all("sources.toml", long("[", "]\n"));
    read_all("species/testing-snake.md", b"[a](".repeat(length / 4));
}
