//! How long a year of a data logger takes: half a million lines read through a map and summed up.
//!
//! `cargo bench --bench readings` makes the table in memory, three probes at one reading a minute, and times both steps.

use std::fmt::Write as _;
use std::io::Write as _;
use std::time::Instant;

use wardsheet::figures::logger::{Asked, logger};
use wardsheet::finding::FileId;
use wardsheet::parse::{map_of, recordings};
use wardsheet::source::{Layer, Role, Sources};

const MAP: &str = "separator = \";\"\ndecimal = \",\"\ndate = \"DD.MM.YYYY hh:mm\"\ntime = \"Time\"\n\
    [[probe]]\nname = \"warm\"\ntemperature = \"Warm (C)\"\n\
    [[probe]]\nname = \"cool\"\ntemperature = \"Cool (C)\"\nhumidity = \"Cool (%)\"\n";
const MINUTES: usize = 525_600;

fn main() {
    let mut text = String::from("Time;Warm (C);Cool (C);Cool (%)\n");
    let mut date = jiff::civil::date(2025, 11, 25);
    for minute in 0..MINUTES {
        let of_day = minute % 1440;
        if minute > 0 && of_day == 0 {
            date = date.tomorrow().expect("a day");
        }
        let wave = libm::sin(of_day as f64 / 1440.0 * std::f64::consts::TAU);
        let cells = (28.0 + 2.0 * wave, 22.5 + 1.5 * wave, 55.0 + 12.0 * wave);
        let cells = format!("{:.1};{:.1};{:.1}", cells.0, cells.1, cells.2).replace('.', ",");
        let clock = format!("{:02}:{:02}", of_day / 60, of_day % 60);
        let day = format!("{:02}.{:02}.{}", date.day(), date.month(), date.year());
        writeln!(text, "{day} {clock};{cells}").expect("memory can be written");
    }
    let bytes = text.len();
    let (map, found) = map_of(FileId(0), MAP);
    assert!(found.is_empty(), "{found:?}");
    let mut sources = Sources::default();
    sources.add("readings/year.csv", Role::Readings, "year", Layer::Own, text);
    let started = Instant::now();
    let (made, found) = recordings(&sources.files()[0], &map);
    let read = started.elapsed();
    assert!(found.is_empty(), "{found:?}");
    let started = Instant::now();
    let asked = Asked { ceiling_percent: Some(60.0), ..Asked::default() };
    let sums: Vec<_> = made.iter().filter_map(|recording| logger(recording, &asked)).collect();
    let summed = started.elapsed();
    assert_eq!(sums.iter().map(|one| one.readings).sum::<usize>(), 2 * MINUTES);
    let mut out = std::io::stdout().lock();
    let _ = writeln!(
        out,
        "{MINUTES} lines, {:.1} MB: read {:.3} s, summed up {:.3} s",
        bytes as f64 / 1e6,
        read.as_secs_f64(),
        summed.as_secs_f64()
    );
}
