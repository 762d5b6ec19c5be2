//! How long an edit takes to the screen, beside looking at the whole site anew.
//!
//! `cargo bench --bench preview -- 1000` lays out a site of a thousand animals with a log of 200 lines each, starts the
//! preview of it and saves one animal's file again and again. Each time it waits as an open page does until it is told, and
//! asks for the page. In the same run `proof` looks at the whole site from nothing.

#![expect(
    clippy::disallowed_methods,
    reason = "a bench edits a site on the disk and speaks to the preview as a browser would"
)]

mod site;

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

const ANIMALS: usize = 1000;
const EDITS: usize = 41;

fn main() {
    let animals = std::env::args().skip(1).find_map(|word| word.parse().ok()).unwrap_or(ANIMALS);
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("bench-preview");
    site::lay_out(&folder, animals);
    let whole = proof(&folder);
    let (mut child, port) = preview(&folder);
    let mut edits: Vec<Duration> = (0..EDITS).map(|number| edit(&folder, port, number)).collect();
    let _ = child.kill();
    let _ = child.wait();
    edits.sort();
    let (median, slowest) = (edits[EDITS / 2], edits[EDITS - 1]);
    let ratio = median.as_secs_f64() / whole.as_secs_f64();
    let table = format!(
        "{animals} animals, {EDITS} edits of one animal's file, from the save to the page\n\n\
         median      {:>9.1} ms\nslowest     {:>9.1} ms\na whole proof {:>7.1} ms\n\
         the median edit takes {ratio:.3} of a whole proof\n",
        milliseconds(median),
        milliseconds(slowest),
        milliseconds(whole),
    );
    std::io::stdout().write_all(table.as_bytes()).expect("standard output is open");
}

fn milliseconds(time: Duration) -> f64 {
    time.as_secs_f64() * 1000.0
}

fn proof(folder: &Path) -> Duration {
    let start = Instant::now();
    let run = Command::new(env!("CARGO_BIN_EXE_wardsheet"))
        .args(["proof", "--as-of", &site::TODAY.to_string(), "--format", "json", "--site"])
        .arg(folder)
        .output()
        .expect("the program runs");
    assert!(run.status.success(), "the site has faults: {}", String::from_utf8_lossy(&run.stderr));
    start.elapsed()
}

fn preview(folder: &Path) -> (Child, u16) {
    let mut child = Command::new(env!("CARGO_BIN_EXE_wardsheet"))
        .args(["preview", "--as-of", &site::TODAY.to_string(), "--port", "0", "--site"])
        .arg(folder)
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .expect("the program runs");
    let mut line = String::new();
    let out = child.stdout.as_mut().expect("its output is caught");
    BufReader::new(out).read_line(&mut line).expect("it says where it is");
    let port = line
        .strip_prefix("http://127.0.0.1:")
        .and_then(|rest| rest.split('/').next()?.parse().ok());
    (child, port.expect("it says its port"))
}

/// Saves one animal's file under another name for the animal, waits until the preview tells of it, and asks for the page until
/// it shows the name.
fn edit(folder: &Path, port: u16, number: usize) -> Duration {
    let file = folder.join(format!("animals/animal-{number}.toml"));
    let page = format!("/private/animals/animal-{number}/record.html");
    let before = get(port, &page);
    let mut seen: u64 = before
        .split("data-seen=\"")
        .nth(1)
        .and_then(|rest| rest.split('"').next()?.parse().ok())
        .expect("a page knows which change it has seen");
    let text = std::fs::read_to_string(&file).expect("the file is there");
    let name = format!("Edited {number}");
    let edited: Vec<String> = text
        .lines()
        .map(|line| {
            if line.starts_with("name = ") { format!("name = \"{name}\"") } else { line.to_owned() }
        })
        .collect();
    let start = Instant::now();
    std::fs::write(&file, edited.join("\n") + "\n").expect("the file can be written");
    loop {
        let told = get(port, &format!("/-preview/next?after={seen}"));
        seen =
            told.chars().filter(char::is_ascii_digit).collect::<String>().parse().expect("a count");
        if get(port, &page).contains(&name) {
            break;
        }
    }
    let took = start.elapsed();
    // The whole site is looked at after each edit; the next one comes when a person would make it.
    std::thread::sleep(Duration::from_millis(400));
    took
}

fn get(port: u16, path: &str) -> String {
    let mut stream = TcpStream::connect(("127.0.0.1", port)).expect("it listens");
    let ask = format!("GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nConnection: close\r\n\r\n");
    stream.write_all(ask.as_bytes()).expect("it can be asked");
    let mut bytes = Vec::new();
    stream.read_to_end(&mut bytes).expect("it answers");
    let text = String::from_utf8_lossy(&bytes).into_owned();
    text.split_once("\r\n\r\n").map(|(_, body)| body.to_owned()).unwrap_or_default()
}
