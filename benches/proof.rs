//! How the checking grows with the collection: the time for each animal must stay what it is in a small one.
//!
//! `cargo bench --bench proof` lays out sites of 1 000, 2 000, 4 000 and 10 000 animals with a log of 200 lines each, heated,
//! in pairs and on shared sockets, and checks each of them in one run. The last column is what an animal costs beside what
//! it costs in the smallest site: 1.00 is growth in proportion. The rules that cost most in the largest site follow, each
//! with the same ratio. Other numbers of animals may be given: `cargo bench --bench proof -- 100 1000`.

#![expect(
    clippy::disallowed_methods,
    reason = "a bench lays out a site on the disk and reads its arguments"
)]

mod site;

use std::fmt::Write as _;
use std::io::Write as _;
use std::path::Path;
use std::time::{Duration, Instant};

use wardsheet::compile::check;
use wardsheet::figures::figures;
use wardsheet::parse::parse;
use wardsheet::proof::{Evidence, RULES};
use wardsheet::source::{Folder, Sources};

use site::{TODAY, lay_out};

const ANIMALS: [usize; 4] = [1_000, 2_000, 4_000, 10_000];
/// How many rules are listed.
const LISTED: usize = 8;

fn main() {
    let mut sizes: Vec<usize> =
        std::env::args().skip(1).filter_map(|word| word.parse().ok()).collect();
    if sizes.is_empty() {
        sizes.extend(ANIMALS);
    }
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("bench-proof");
    let mut table =
        format!("{:>8} {:>12} {:>14} {:>8}\n", "animals", "check", "an animal", "ratio");
    let mut first_each = None;
    let mut rules = Vec::new();
    for animals in sizes {
        let _ = std::fs::remove_dir_all(&folder);
        lay_out(&folder, animals);
        equip(&folder, animals);
        let sources = read(&folder);
        let (checked, took) = timed(|| check(&sources, Vec::new(), TODAY));
        let errors: Vec<_> = checked
            .findings
            .iter()
            .filter(|finding| finding.severity == wardsheet::finding::Severity::Error)
            .collect();
        assert!(errors.is_empty(), "the site has faults: {:?}", errors.first());
        let each = took.as_secs_f64() / animals as f64;
        let ratio = each / *first_each.get_or_insert(each);
        writeln!(
            table,
            "{animals:8} {:9.0} ms {:11.3} ms {ratio:8.2}",
            took.as_secs_f64() * 1e3,
            each * 1e3
        )
        .expect("memory");
        rules.push((animals, by_rule(&sources)));
    }
    write_rules(&mut table, &rules);
    let mut out = std::io::stdout().lock();
    write!(out, "{table}").expect("standard output is open");
    let _ = std::fs::remove_dir_all(&folder);
}

fn timed<T>(work: impl FnOnce() -> T) -> (T, Duration) {
    let start = Instant::now();
    let done = work();
    (done, start.elapsed())
}

fn read(folder: &Path) -> Sources {
    let folder = Folder::find(Some(folder), folder).expect("the site has just been laid out");
    folder.read(&["builtin".to_owned()]).expect("the built-in library is always there").0
}

/// How long each rule takes.
fn by_rule(sources: &Sources) -> Vec<(&'static str, Duration)> {
    let (model, _) = parse(sources);
    let figures = figures(&model, TODAY);
    let evidence = Evidence { sources, model: &model, figures: &figures };
    let rules = RULES.iter().map(|rule| {
        let mut found = Vec::new();
        (rule.code.name, timed(|| (rule.find)(&evidence, &mut found)).1)
    });
    rules.collect()
}

/// Lists the rules that cost most in the largest site, beside what they cost for each animal of the smallest.
fn write_rules(table: &mut String, rules: &[(usize, Vec<(&'static str, Duration)>)]) {
    let (Some((few, small)), Some((many, large))) = (rules.first(), rules.last()) else { return };
    let mut costs: Vec<_> = small.iter().zip(large).collect();
    costs.sort_by_key(|(_, (_, took))| std::cmp::Reverse(*took));
    writeln!(table, "\nof {} rules, those that cost most with {many} animals\n", costs.len())
        .expect("memory");
    for ((_, before), (name, took)) in costs.into_iter().take(LISTED) {
        let each = |took: &Duration, animals: usize| took.as_secs_f64() / animals as f64;
        let ratio = each(took, *many) / each(before, *few);
        writeln!(table, "{name:28} {:9.1} ms {ratio:8.2}", took.as_secs_f64() * 1e3)
            .expect("memory");
    }
}

/// Gives every animal heat, light, probes and a companion, so that the rules have something to look at.
fn equip(folder: &Path, animals: usize) {
    for number in 0..animals {
        let path = folder.join(format!("animals/animal-{number}.toml"));
        let bare = std::fs::read_to_string(&path).expect("it has just been written");
        // The fourth from here is of the same species; the first four of every eight pair with the last four.
        let other = if number % 8 < 4 { number + 4 } else { number - 4 };
        let company =
            if other < animals { format!("with = \"animal-{other}\"\n") } else { String::new() };
        let equipped = format!(
            "{company}{bare}\n\
             [[heater]]\nkind = \"ceramic\"\nwatts = \"60 W\"\nat = \"20 cm\"\nthermostat = \"pulse\"\nset_point = \"28 C\"\n\
             set_night = \"20 C\"\nguard = true\n\n\
             [[lamp]]\nkind = \"UV tube\"\nwatts = \"24 W\"\nat = \"30 cm\"\nhours = \"11 hours\"\nfitted = 2026-07-01\n\
             replace_after = \"12 months\"\nguard = true\n\n\
             [[probe]]\nname = \"warm\"\nat = \"25 cm\"\nday = \"28 C\"\nnight = \"24 C\"\nhumidity = \"45 %\"\n\n\
             [[probe]]\nname = \"cool\"\nat = \"140 cm\"\nday = \"24 C\"\nnight = \"22 C\"\nhumidity = \"50 %\"\n"
        );
        std::fs::write(&path, equipped).expect("a file");
    }
}
