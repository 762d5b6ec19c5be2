//! Whatever stands in a file, it is told as findings: nothing panics, hangs or runs out of stack.
//!
//! `PROPTEST_CASES=20000 cargo test --release --test strength` looks longer; `cargo test --release --test strength -- --ignored`
//! adds the longest lines that fit into a file that is read.

#[path = "strength/real.rs"]
mod real;
// The fuzzer takes in this file too, so its path is written out.
#[path = "strength/readers.rs"]
mod readers;
#[path = "strength/spoil.rs"]
mod spoil;

use proptest::prelude::*;
use readers::{BASE, read_all};
use spoil::{spoil, spoilt};

const DEEP: usize = 100_000;

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

/// A site of many species takes a thousand times as long as the small one: fewer cases, unless more are asked for.
fn fewer() -> ProptestConfig {
    let asked = ProptestConfig::default();
    let cases = if std::env::var_os("PROPTEST_CASES").is_some() { asked.cases } else { 8 };
    ProptestConfig { cases, failure_persistence: None, ..asked }
}

proptest! {
    #![proptest_config(fewer())]

    #[test]
    fn a_file_of_a_whole_site_that_was_spoilt_is_told_as_findings(
        file in any::<prop::sample::Index>(), other in any::<prop::sample::Index>(), some in 0..real::SHARES,
        spoils in prop::collection::vec(spoil(), 1..8),
    ) {
        let site = real::site();
        let (file, other) = (file.get(site.files()), other.get(site.files()));
        let start = site.bytes(file).to_vec();
        let bytes = spoils.iter().fold(start, |bytes, one| spoilt(bytes, site.bytes(other), one));
        real::read_all(site, file, bytes, some);
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
fn a_line_of_a_hundred_megabytes_is_not_read() {
    for (path, _) in BASE {
        let found = read_all(path, vec![b'['; 100_000_000]);
        assert!(found.contains(&"file-too-large"), "{path}: {found:?}");
    }
}

#[test]
#[ignore = "takes minutes without optimisation"]
fn the_longest_line_that_is_read_is_told_as_findings() {
    let length = 60_000_000;
    let long = |head: &str, tail: &str| format!("{head}{}{tail}", "a".repeat(length)).into_bytes();
    read_all("animals/juniper.csv", long("date,what,value,outcome,note\n2026-01-01,note,", ",,\n"));
    read_all("animals/juniper.toml", long("name = \"", "\"\n"));
    read_all("sources.toml", long("[", "]\n"));
    for words in ["a", "[a](", "> ", "- ", "*a **a ", "| ", "<b>", "{{", "![", "&amp;", "`` ` "] {
        let text = words.repeat(4_000_000 / words.len());
        read_all("species/testing-snake.md", text.clone().into_bytes());
        read_all("pages/quarantine.md", format!("# A\n\n{text}\n").into_bytes());
    }
}
