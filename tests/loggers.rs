//! A data logger of an animal: read through its map, on the record, in the figures and in the findings.

#![expect(clippy::disallowed_methods, reason = "these tests read the base site and its output")]

use std::path::Path;

use wardsheet::compile::{Checked, check, compile};
use wardsheet::source::library::{add_look, role_of};
use wardsheet::source::{Layer, Sources};

const MAP: &str = "date = \"MM/DD/YYYY hh:mm AM\"\ntime = [\"Day\", \"Clock\"]\n\
    [[probe]]\nname = \"cool\"\ntemperature = \"Cool (°F)\"\nhumidity = \"RH\"\n";

/// The clean base site with a logger that recorded the rows.
fn site(rows: &str) -> (Sources, Checked) {
    site_of(MAP, "\n[[logger]]\nreadings = \"hall\"\nmap = \"hall\"\n", rows)
}

/// The clean base site with a map, loggers of an animal, and the rows of the table in the hall.
fn site_of(map: &str, loggers: &str, rows: &str) -> (Sources, Checked) {
    let base = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/base");
    let mut sources = Sources::default();
    let mut add = |path: &str, text: String| {
        let Some((role, name)) = role_of(path) else { return };
        sources.add(path, role, name, Layer::Own, text);
    };
    for entry in walkdir::WalkDir::new(&base).sort_by_file_name() {
        let entry = entry.expect("the base site can be walked");
        if !entry.file_type().is_file() {
            continue;
        }
        let path = entry.path().strip_prefix(&base).expect("below the folder");
        let path = path.to_string_lossy().replace('\\', "/");
        // A photo is no text.
        let Ok(mut text) = std::fs::read_to_string(entry.path()) else { continue };
        if path == "animals/juniper.toml" {
            text.push_str(loggers);
        }
        add(&path, text);
    }
    add("maps/hall.toml", map.to_owned());
    add("readings/hall.csv", format!("Day,Clock,Cool (°F),RH\n{rows}"));
    add_look(&mut sources);
    let checked = check(&sources, Vec::new(), jiff::civil::date(2026, 11, 25));
    (sources, checked)
}

/// Rows of a day, one an hour; the humidity of each hour.
fn day(humidity: impl Fn(u32) -> u32) -> String {
    let row = |hour: u32| {
        let half = if hour < 12 { "AM" } else { "PM" };
        let clock = (hour + 11) % 12 + 1;
        format!("11/20/2026,{clock}:00 {half},73.4,{}\n", humidity(hour))
    };
    (0..24).map(row).collect()
}

fn codes(checked: &Checked) -> Vec<&str> {
    checked.findings.iter().map(|finding| finding.code.name).collect()
}

#[test]
fn degrees_fahrenheit_and_half_days_are_read() {
    let (_, checked) = site(&day(|_| 50));
    assert_eq!(codes(&checked), Vec::<&str>::new());
    let loggers = &checked.figures.animals["juniper"].loggers;
    assert_eq!(loggers.len(), 1);
    // 73.4 °F is 23 °C: in the range by day (22–24), above that by night (19–22).
    let (_, shares) = loggers[0].day.expect("the species has a cool side");
    assert_eq!(shares.percent(), Some([0.0, 100.0, 0.0]));
    let (_, shares) = loggers[0].night.expect("the species has a night");
    assert_eq!(shares.percent(), Some([0.0, 0.0, 100.0]));
    assert_eq!(loggers[0].ceiling_percent, Some(70.0));
}

#[test]
fn thirteen_damp_hours_are_found_and_eleven_are_borne() {
    let (_, checked) = site(&day(|hour| if (4..17).contains(&hour) { 80 } else { 50 }));
    assert_eq!(codes(&checked), ["recorded-too-damp"]);
    let message = &checked.findings[0].message;
    assert!(message.contains("2026-11-20 04:00") && message.contains("13 hours"), "{message}");
    let (_, checked) = site(&day(|hour| if (4..15).contains(&hour) { 80 } else { 50 }));
    assert_eq!(codes(&checked), Vec::<&str>::new());
}

#[test]
fn the_record_shows_what_was_recorded_with_its_numbers_in_tables() {
    let (sources, checked) = site(&day(|hour| if hour == 5 { 72 } else { 50 }));
    let files = compile(&sources, &checked).expect("the site compiles");
    let record = files.iter().find(|file| file.path == "private/animals/juniper/record.html");
    let record = String::from_utf8_lossy(&record.expect("there is a record").bytes).into_owned();
    for said in [
        "Recorded by data loggers",
        "1 hour above",
        "recorded-1-temperature",
        "<polyline",
        "2026-11",
    ] {
        assert!(record.contains(said), "the record says `{said}`");
    }
    let public = files.iter().filter(|file| file.path.starts_with("public/"));
    for file in public {
        let text = String::from_utf8_lossy(&file.bytes);
        assert!(!text.contains("Recorded by data loggers"), "{} is public", file.path);
    }
}

#[test]
fn rows_out_of_order_and_rows_of_another_form_are_counted_and_told() {
    let rows = format!(
        "{}11/20/2026,1:00 AM,73.4,50\nyesterday,noon,73.4,50\n11/21/2026,1:00 AM,n/a,50\n",
        day(|_| 50)
    );
    let (_, checked) = site(&rows);
    assert_eq!(codes(&checked), ["readings-row", "readings-row"]);
    let told: Vec<&str> = checked.findings.iter().map(|finding| finding.message.as_str()).collect();
    assert!(told.iter().any(|said| said.starts_with("2 rows") && said.contains("on line 27: `yesterday noon`")), "{told:?}");
    assert!(
        told.iter().any(|said| said.starts_with("1 row of") && said.contains("on line 26")),
        "{told:?}"
    );
}

#[test]
fn a_logger_that_several_animals_share_is_read_once() {
    let rows = day(|_| 50) + "yesterday,noon,73.4,50\n";
    let (sources, alone) = site(&rows);
    let mut sources = sources;
    for name in ["sedge", "rush"] {
        let of_juniper =
            sources.named(wardsheet::source::Role::Animal, "juniper").expect("it is there");
        let text = of_juniper.text.replace("name = \"Juniper\"", &format!("name = \"{name}\""));
        let path = format!("animals/{name}.toml");
        sources.add_bytes(&path, Layer::Own, text.into_bytes()).expect("an animal");
    }
    let shared = check(&sources, Vec::new(), jiff::civil::date(2026, 11, 25));
    let rows =
        |checked: &Checked| codes(checked).iter().filter(|code| **code == "readings-row").count();
    assert_eq!((rows(&alone), rows(&shared)), (1, 1), "one broken row is told once");
    for name in ["juniper", "sedge", "rush"] {
        assert_eq!(shared.figures.animals[name].loggers, alone.figures.animals["juniper"].loggers);
    }
}

#[test]
fn of_a_thousand_loggers_the_first_are_read_and_the_rest_are_told() {
    let logger = "\n[[logger]]\nreadings = \"hall\"\nmap = \"hall\"\n";
    let (_, checked) = site_of(MAP, &logger.repeat(1000), &day(|_| 50));
    assert_eq!(codes(&checked), ["list-too-long"]);
    assert!(checked.findings[0].message.contains("`logger` lists 1000; 64 are read"));
    assert_eq!(checked.figures.animals["juniper"].loggers.len(), 64);
}

#[test]
fn a_heading_far_below_the_end_of_a_table_is_told_as_columns_that_are_not_there() {
    let map = format!("heading = 4000000000\n{MAP}");
    let (_, checked) =
        site_of(&map, "\n[[logger]]\nreadings = \"hall\"\nmap = \"hall\"\n", &day(|_| 50));
    assert!(codes(&checked).iter().all(|code| *code == "readings-column"), "{:?}", codes(&checked));
    assert!(!checked.findings.is_empty());
}
