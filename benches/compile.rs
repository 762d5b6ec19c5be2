//! How long a compile takes beside what cannot be avoided, and beside a short script.
//!
//! `cargo bench --bench compile` lays out sites of 100, 1 000 and 10 000 animals with a log of 200 lines each, and prints a table:
//! this tool, the floor, and `benches/baseline.py`. Other numbers may stand behind `--`. Each row is a process of its own, so
//! that its memory is its own. The floor is the bare libraries on the same cores: a tera template rendered to the size of each
//! page, minify-html over it, and the same bytes written. Time on the processor counts beside the time that passes, since it
//! hardly moves when other programs run.

#![expect(
    clippy::disallowed_methods,
    reason = "a bench lays out a site on the disk and reads the memory that was used"
)]

mod site;

use std::io::Write as _;
use std::path::Path;
use std::process::Command;
use std::time::Instant;

use rayon::prelude::*;
use serde::Serialize;
use wardsheet::compile::{Halt, Pages, check};
use wardsheet::figures::figures;
use wardsheet::finding::stops;
use wardsheet::parse::parse;
use wardsheet::render::Look;
use wardsheet::source::{Folder, Sources};
use wardsheet::write::Stage;

use site::{LOG_LINES, TODAY, lay_out};

const SIZES: [usize; 3] = [100, 1000, 10_000];

fn main() {
    let words: Vec<String> =
        std::env::args().skip(1).filter(|word| !word.starts_with("--")).collect();
    let folder = words.get(1).map(Path::new);
    match (words.first().map(String::as_str), folder) {
        (Some("tool"), Some(folder)) => told(|| tool(folder)),
        (Some("floor"), Some(folder)) => told(|| floor(folder)),
        (Some("fits"), Some(folder)) => told(|| fits(folder)),
        _ => {
            let asked: Vec<usize> = words.iter().filter_map(|word| word.parse().ok()).collect();
            table(if asked.is_empty() { &SIZES } else { &asked });
        }
    }
}

/// What one process took: seconds, seconds on the processor, megabytes at the peak.
struct Took([f64; 3]);

fn table(sizes: &[usize]) {
    let mut out = std::io::stdout().lock();
    let mut line = |text: String| writeln!(out, "{text}").expect("standard output is open");
    line(format!("{LOG_LINES} log lines an animal, {} threads", rayon::current_num_threads()));
    line(format!(
        "{:>7}  {:28} {:>9} {:>7} {:>10} {:>7} {:>9} {:>10}",
        "animals", "", "seconds", "ratio", "processor", "ratio", "peak MB", "an animal"
    ));
    let folder_of =
        |size: &usize| Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("bench-compile-{size}"));
    for size in sizes {
        let folder = &folder_of(size);
        lay_out(folder, *size);
        let tool = of_bench("tool", folder);
        let again = of_bench("tool", folder);
        let floor = of_bench("floor", folder);
        let rows = [
            ("this tool, first compile", tool),
            ("this tool, nothing changed", again),
            ("the floor", floor.as_ref().map(|took| Took(took.0))),
            ("parse and figures alone", of_bench("fits", folder)),
            ("script: jinja2, markdown", of_script(folder)),
        ];
        for (what, took) in rows {
            let (Some(Took([wall, processor, peak])), Some(Took(floor))) = (took, &floor) else {
                line(format!("{size:>7}  {what:28} skipped: it does not run on this machine"));
                continue;
            };
            line(format!(
                "{size:>7}  {what:28} {wall:>9.2} {:>7.2} {processor:>10.2} {:>7.2} {peak:>9.0} {:>7.2} ms",
                wall / floor[0],
                processor / floor[1],
                1000.0 * wall / *size as f64
            ));
        }
    }
    // A disk may be slow to make new files for half a minute after many were removed, so that none goes before the last row.
    for size in sizes {
        let _ = std::fs::remove_dir_all(folder_of(size));
    }
}

fn of_bench(what: &str, folder: &Path) -> Option<Took> {
    read(Command::new(std::env::current_exe().ok()?).arg(what).arg(folder))
}

fn of_script(folder: &Path) -> Option<Took> {
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("benches/baseline.py");
    read(Command::new("python3").arg(script).arg(folder).arg(env!("CARGO_MANIFEST_DIR")))
}

/// Runs a row, whose last line is its three numbers. What else it says goes to standard error.
fn read(command: &mut Command) -> Option<Took> {
    let output = command.stderr(std::process::Stdio::inherit()).output().ok()?;
    let text = String::from_utf8_lossy(&output.stdout).into_owned();
    let numbers: Vec<f64> =
        text.lines().last()?.split(' ').filter_map(|number| number.parse().ok()).collect();
    numbers.try_into().ok().map(Took)
}

/// Does the work of a row and prints what it took.
fn told(work: impl FnOnce() -> (Instant, f64)) {
    let (start, idle) = work();
    let wall = start.elapsed().as_secs_f64();
    let mut out = std::io::stdout().lock();
    writeln!(out, "{wall} {} {}", processor_seconds() - idle, peak_megabytes())
        .expect("standard output is open");
}

fn read_site(folder: &Path) -> (Sources, Vec<wardsheet::finding::Finding>) {
    let folder = Folder::find(Some(folder), folder).expect("the site has been laid out");
    folder.read(&["builtin".to_owned()]).expect("the built-in library is always there")
}

/// The whole compile, as the command does it.
fn tool(folder: &Path) -> (Instant, f64) {
    let start = Instant::now();
    let (sources, read) = read_site(folder);
    let checked = check(&sources, read, TODAY);
    assert!(!stops(&checked.findings), "{:?}", checked.findings.first());
    let look = Look::new(&sources).expect("the built-in templates");
    let pages = Pages::new(&sources, &checked, &look);
    let stage = Stage::open(&folder.join("out")).expect("the output can be written");
    let stand = |files: &[String], made_from| stage.keep(files, made_from);
    let set = pages.each_but(|_| true, stand, |file| stage.put(&file).map(|_| ()));
    assert!(!matches!(set, Err(Halt::Broken(_) | Halt::Refused(_))), "the pages can be set");
    stage.swap().expect("the output can be written");
    (start, 0.0)
}

/// Reading, parsing and the figures, the growth of every animal among them, without checks or pages.
fn fits(folder: &Path) -> (Instant, f64) {
    let start = Instant::now();
    let (sources, _) = read_site(folder);
    let (model, _) = parse(&sources);
    assert!(!figures(&model, TODAY).animals.is_empty());
    (start, 0.0)
}

#[derive(Serialize)]
struct Row {
    label: &'static str,
    value: String,
    note: Option<String>,
}

/// A page of facts, as plain as templates are.
const BARE: &str = "<!doctype html>\n<html lang=\"en\">\n<head>\n<title>{{ title }}</title>\n</head>\n<body>\n<table>\n{% for row in rows -%}\n<tr class=\"fact\">\n  <th scope=\"row\">{{ row.label }}</th>\n  <td data-label=\"{{ row.label }}\">{{ row.value }}{% if row.note %} <span class=\"note\">({{ row.note }})</span>{% endif %}</td>\n</tr>\n{% endfor -%}\n</table>\n</body>\n</html>\n";

/// Renders, minifies and writes with the bare libraries as much as the tool has written.
fn floor(folder: &Path) -> (Instant, f64) {
    let (from, to) = (folder.join("out"), folder.join("bare"));
    let files: Vec<_> = walkdir::WalkDir::new(&from)
        .into_iter()
        .filter_map(Result::ok)
        .filter(|entry| entry.file_type().is_file())
        .map(|entry| entry.into_path())
        .collect();
    let contents: Vec<Vec<u8>> =
        files.iter().map(|file| std::fs::read(file).expect("a file of the output")).collect();
    let mut tera = tera::Tera::default();
    tera.add_raw_template("bare.html", BARE).expect("a template");
    let render = |count: usize| {
        let row = |number: usize| Row {
            label: "Measured",
            value: format!("{number} cm"),
            note: number.is_multiple_of(2).then(|| format!("{number} in")),
        };
        let mut context = tera::Context::new();
        context.insert("title", "A page");
        context.insert("rows", &(0..count).map(row).collect::<Vec<_>>());
        tera.render("bare.html", &context).expect("a page")
    };
    let minified = |page: &str| {
        let mut settings = minify_html::Cfg::new();
        settings.keep_closing_tags = true;
        settings.keep_html_and_head_opening_tags = true;
        minify_html::minify(page.as_bytes(), &settings)
    };
    // As many rows as make a page of the same size once it is minified.
    let a_row =
        (minified(&render(2000)).len() as f64 - minified(&render(1000)).len() as f64) / 1000.0;
    let (start, idle) = (Instant::now(), processor_seconds());
    let made: usize = files
        .par_iter()
        .zip(&contents)
        .map(|(file, bytes)| {
            let is_page = file.extension().is_some_and(|ending| ending == "html");
            let page = if is_page {
                minified(&render((bytes.len() as f64 / a_row) as usize)).len()
            } else {
                0
            };
            let place = to.join(file.strip_prefix(&from).expect("below the folder"));
            std::fs::create_dir_all(place.parent().expect("below the folder")).expect("a folder");
            std::fs::write(place, bytes).expect("a file");
            page
        })
        .sum();
    let written: usize = contents.iter().map(Vec::len).sum();
    let mut err = std::io::stderr().lock();
    writeln!(
        err,
        "{} files, {:.1} MB; the floor rendered {:.1} MB",
        files.len(),
        written as f64 / 1e6,
        made as f64 / 1e6
    )
    .expect("standard error is open");
    (start, idle)
}

/// The time that this process has had on the processors, where the system tells.
fn processor_seconds() -> f64 {
    let about = std::fs::read_to_string("/proc/self/stat").unwrap_or_default();
    let fields: Vec<&str> =
        about.rsplit(')').next().unwrap_or_default().split_whitespace().collect();
    let ticks =
        |at: usize| fields.get(at).and_then(|field| field.parse::<f64>().ok()).unwrap_or(0.0);
    // User and system time, in hundredths of a second.
    (ticks(11) + ticks(12)) / 100.0
}

/// The largest memory that this process has held, where the system tells.
fn peak_megabytes() -> f64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:")).unwrap_or_default();
    line.trim().trim_end_matches("kB").trim().parse::<f64>().unwrap_or(0.0) / 1024.0
}
