//! How long a compile takes beside what cannot be avoided: minifying and writing the same bytes.
//!
//! `cargo bench --bench compile -- 1000` lays out a site of a thousand animals with a log of 200 lines each, reads it, checks
//! it, sets its pages and writes them, and then does the two bare jobs in the same run and on the same number of threads.
//! Without a number there are 200 animals.

#![expect(
    clippy::disallowed_methods,
    reason = "a bench lays out a site on the disk and reads the memory that was used"
)]

mod site;

use std::fmt::Write as _;
use std::io::Write as _;
use std::path::Path;
use std::time::{Duration, Instant};

use rayon::prelude::*;
use wardsheet::compile::{check, compile};
use wardsheet::render::File;
use wardsheet::source::Folder;
use wardsheet::write::write;

use site::{LOG_LINES, TODAY, lay_out};

const ANIMALS: usize = 200;

fn main() {
    let animals = std::env::args().skip(1).find_map(|word| word.parse().ok()).unwrap_or(ANIMALS);
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("bench-site");
    let _ = std::fs::remove_dir_all(&folder);
    lay_out(&folder, animals);

    let mut rows = Vec::new();
    let mut whole = Duration::ZERO;
    let mut step = |what: &'static str, took: Duration| {
        whole += took;
        rows.push((what, took));
    };
    let ((sources, read), took) = timed(|| {
        let folder = Folder::find(Some(&folder), &folder).expect("the site has just been laid out");
        folder.read(&["builtin".to_owned()]).expect("the built-in library is always there")
    });
    step("read", took);
    let (checked, took) = timed(|| check(&sources, read, TODAY));
    step("parse, figures, proof", took);
    let (files, took) = timed(|| compile(&sources, &checked));
    step("sheets, render", took);
    let files = files.unwrap_or_else(|broken| {
        panic!("the site has faults: {:?} {broken:?}", checked.findings.first())
    });
    let (written, took) = timed(|| write(&folder.join("out"), &files));
    step("write", took);
    written.expect("the output can be written");
    rows.push(("the whole compile", whole));

    // The floor comes second, and so with warm caches: the ratio errs against the compiler.
    let (_, minifying) = timed(|| files.par_iter().map(minified).sum::<usize>());
    let bare = folder.join("bare");
    let (_, writing) = timed(|| files.par_iter().for_each(|file| write_bare(&bare, file)));
    let floor = minifying + writing;
    rows.extend([("bare minifying", minifying), ("bare writing", writing), ("the floor", floor)]);

    let bytes: usize = files.iter().map(|file| file.bytes.len()).sum();
    let mut out = std::io::stdout().lock();
    let mut table = format!(
        "{animals} animals with {LOG_LINES} log lines each, {} files of {:.1} MB, {} threads\n\n",
        files.len(),
        bytes as f64 / 1e6,
        rayon::current_num_threads()
    );
    for (what, took) in rows {
        let ratio = took.as_secs_f64() / floor.as_secs_f64();
        writeln!(table, "{what:24} {:10.1} ms {ratio:8.2} of the floor", took.as_secs_f64() * 1e3)
            .expect("memory");
    }
    if let Some(peak) = peak_memory() {
        writeln!(table, "\npeak memory: {peak}").expect("memory");
    }
    write!(out, "{table}").expect("standard output is open");
    let _ = std::fs::remove_dir_all(&folder);
}

fn timed<T>(work: impl FnOnce() -> T) -> (T, Duration) {
    let start = Instant::now();
    let done = work();
    (done, start.elapsed())
}

/// Minifies a page as the compiler does.
fn minified(file: &File) -> usize {
    if !file.path.ends_with(".html") {
        return file.bytes.len();
    }
    let mut settings = minify_html::Cfg::new();
    settings.keep_closing_tags = true;
    settings.keep_html_and_head_opening_tags = true;
    minify_html::minify(&file.bytes, &settings).len()
}

fn write_bare(folder: &Path, file: &File) {
    let place = folder.join(&file.path);
    std::fs::create_dir_all(place.parent().expect("below the folder")).expect("a folder");
    std::fs::write(place, &file.bytes).expect("a file");
}

/// The largest memory that this run has held, where the system tells.
fn peak_memory() -> Option<String> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
    let kilobytes: f64 = line.trim().strip_suffix("kB")?.trim().parse().ok()?;
    Some(format!("{:.0} MB", kilobytes / 1024.0))
}
