//! A site that is looked at while it is edited: what a browser is shown, and who is shown nothing.

#![expect(
    clippy::disallowed_methods,
    reason = "these tests edit a site on the disk and speak to the preview as a browser would"
)]

use std::fs;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

/// The day for which the built-in library counts as reviewed.
const DAY: &str = "2026-11-25";
/// How long a change is waited for. It takes far less; a busy machine is given time.
const PATIENCE: Duration = Duration::from_secs(60);

/// A preview of a site of its own, ended with the test.
struct Preview {
    folder: PathBuf,
    child: Child,
    port: u16,
}

struct Answer {
    status: u16,
    head: String,
    body: String,
}

impl Preview {
    /// A preview of a new site, with what was changed in it before.
    fn of(name: &str, before: impl FnOnce(&Path)) -> Preview {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
        let _ = fs::remove_dir_all(&folder);
        let started = Command::new(env!("CARGO_BIN_EXE_wardsheet"))
            .arg("start")
            .arg(&folder)
            .output()
            .expect("the program runs");
        assert!(started.status.success());
        before(&folder);
        Preview::over(folder, 0)
    }

    fn over(folder: PathBuf, port: u16) -> Preview {
        let mut child = Command::new(env!("CARGO_BIN_EXE_wardsheet"))
            .args(["preview", "--as-of", DAY, "--port", &port.to_string(), "--site"])
            .arg(&folder)
            .env_remove("SOURCE_DATE_EPOCH")
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .expect("the program runs");
        let mut line = String::new();
        let out = child.stdout.as_mut().expect("its output is caught");
        BufReader::new(out).read_line(&mut line).expect("it says where it is");
        let port = line
            .strip_prefix("http://127.0.0.1:")
            .and_then(|rest| rest.split('/').next()?.parse().ok())
            .unwrap_or_else(|| panic!("it says its address on this machine: {line}"));
        Preview { folder, child, port }
    }

    fn ask(&self, request: &str) -> Answer {
        let mut stream = TcpStream::connect(("127.0.0.1", self.port)).expect("it listens");
        stream.set_read_timeout(Some(PATIENCE)).expect("a time to wait can be set");
        stream.write_all(request.as_bytes()).expect("it can be asked");
        let mut bytes = Vec::new();
        stream.read_to_end(&mut bytes).expect("it answers");
        let text = String::from_utf8_lossy(&bytes).into_owned();
        let (head, body) = text.split_once("\r\n\r\n").expect("an answer has a head");
        let status = head.split(' ').nth(1).and_then(|word| word.parse().ok());
        Answer { status: status.expect("a status"), head: head.to_owned(), body: body.to_owned() }
    }

    fn get(&self, path: &str) -> Answer {
        self.ask(&format!(
            "GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{}\r\nConnection: close\r\n\r\n",
            self.port
        ))
    }

    /// Asks for a page until it is as wished.
    #[track_caller]
    fn until(&self, path: &str, wished: impl Fn(&Answer) -> bool) -> Answer {
        let start = Instant::now();
        loop {
            let answer = self.get(path);
            if wished(&answer) {
                return answer;
            }
            assert!(
                start.elapsed() < PATIENCE,
                "{path} never became as wished: {} {}",
                answer.status,
                answer.body.chars().take(3000).collect::<String>()
            );
            std::thread::sleep(Duration::from_millis(20));
        }
    }

    fn write(&self, file: &str, text: &str) {
        fs::write(self.folder.join(file), text).expect("the file can be written");
    }

    fn text(&self, file: &str) -> String {
        fs::read_to_string(self.folder.join(file)).expect("the file is there")
    }

    /// The name of the one animal that a new site has.
    fn animal(&self) -> String {
        animal(&self.folder)
    }
}

impl Drop for Preview {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

fn animal(folder: &Path) -> String {
    let files = fs::read_dir(folder.join("animals")).expect("a new site has animals");
    let names = files.filter_map(|file| {
        Some(file.ok()?.file_name().to_str()?.strip_suffix(".toml")?.to_owned())
    });
    names.min().expect("a new site has an animal")
}

#[test]
fn the_pages_and_the_private_sheets_are_shown_and_nothing_is_written() {
    let preview = Preview::of("preview-pages", |_| {});
    let start = preview.get("/");
    assert_eq!(start.status, 200);
    assert!(start.body.contains("href=\"/public/index.html\""));
    let animal = preview.animal();
    let record = format!("/private/animals/{animal}/record.html");
    assert!(start.body.contains(&record), "the list of private sheets");
    for path in ["/public/index.html", "/public/", "/public/species/corn-snake/", &record] {
        let page = preview.get(path);
        assert_eq!(page.status, 200, "{path}");
        assert!(page.body.contains("/-preview/follow.js"), "{path} follows edits");
        assert!(page.head.contains("Cache-Control: no-store"), "{path}");
    }
    assert_eq!(preview.get("/public/assets/sheet.css").status, 200);
    assert_eq!(preview.get("/public/species/no-such-species/").status, 404);
    assert!(!preview.folder.join("out").exists(), "a preview writes nothing");
}

#[test]
fn an_edit_is_shown_and_whoever_waits_is_told() {
    let preview = Preview::of("preview-edit", |_| {});
    let file = format!("animals/{}.toml", preview.animal());
    let record = format!("/private/animals/{}/record.html", preview.animal());
    let page = preview.get(&record);
    let seen = page.body.split("data-seen=\"").nth(1).and_then(|rest| rest.split('"').next());
    let seen = seen.expect("the page knows which change it has seen").to_owned();
    std::thread::scope(|scope| {
        let waiting = scope.spawn(|| preview.get(&format!("/-preview/next?after={seen}")).body);
        let text = preview.text(&file);
        preview.write(&file, &text.replacen("name = \"", "name = \"Marmalade ", 1));
        let told = waiting.join().expect("the page waits without fault");
        assert_ne!(told, format!("{{\"changes\":{seen}}}"));
    });
    preview.until(&record, |page| page.body.contains("Marmalade "));
}

#[test]
fn a_broken_edit_keeps_the_last_good_page_with_the_finding_above_it() {
    let preview = Preview::of("preview-broken", |_| {});
    let file = format!("animals/{}.toml", preview.animal());
    let record = format!("/private/animals/{}/record.html", preview.animal());
    let good = preview.text(&file);
    preview.write(&file, &good.replacen("species = ", "species 0 = ", 1));
    let held = preview.until(&record, |page| page.body.contains("preview-held"));
    assert_eq!(held.status, 200);
    assert!(held.body.contains(&file), "the finding names the file");
    assert!(held.body.contains("<h1"), "the page itself is still there");
    preview.write(&file, &good);
    preview.until(&record, |page| !page.body.contains("preview-held"));
}

#[test]
fn a_site_that_is_broken_from_the_start_says_so_and_comes_up_when_it_is_put_right() {
    let preview = Preview::of("preview-broken-start", |folder| {
        let file = folder.join(format!("animals/{}.toml", animal(folder)));
        let text = fs::read_to_string(&file).expect("the file is there");
        fs::write(&file, format!("]\n{text}")).expect("the file can be written");
    });
    let page = preview.get("/public/index.html");
    assert_eq!(page.status, 404);
    assert!(page.body.contains("No page yet") && page.body.contains("preview-findings"));
    let file = format!("animals/{}.toml", preview.animal());
    let text = preview.text(&file);
    preview.write(&file, text.trim_start_matches("]\n"));
    preview.until("/public/index.html", |page| page.status == 200);
}

#[test]
fn new_removed_and_renamed_files_are_followed() {
    let preview = Preview::of("preview-files", |_| {});
    let first = preview.animal();
    let text = preview.text(&format!("animals/{first}.toml"));
    preview.write("animals/newcomer.toml", &text);
    preview.until("/private/animals/newcomer/record.html", |page| page.status == 200);
    fs::remove_file(preview.folder.join("animals/newcomer.toml")).expect("it can be removed");
    preview.until("/private/animals/newcomer/record.html", |page| page.status == 404);
    // Many editors write beside the file and put the new one in its place.
    preview.write("animals/.swap", &text.replacen("name = \"", "name = \"Renamed ", 1));
    fs::rename(
        preview.folder.join("animals/.swap"),
        preview.folder.join(format!("animals/{first}.toml")),
    )
    .expect("it can be renamed");
    preview.until(&format!("/private/animals/{first}/record.html"), |page| {
        page.body.contains("Renamed ")
    });
}

#[test]
fn templates_and_the_theme_are_followed_and_a_broken_template_keeps_the_page() {
    let preview = Preview::of("preview-look", |folder| {
        fs::create_dir_all(folder.join("templates")).expect("a folder can be made");
        fs::create_dir_all(folder.join("theme")).expect("a folder can be made");
        let built_in = Path::new(env!("CARGO_MANIFEST_DIR")).join("templates/index.html");
        fs::copy(built_in, folder.join("templates/index.html")).expect("it can be copied");
        fs::write(folder.join("theme/own.css"), "").expect("it can be written");
    });
    let template = preview.text("templates/index.html");
    let heading = template.replacen("<h1", "<p>Set by ourselves</p><h1", 1);
    assert_ne!(heading, template, "the index has a heading to stand before");
    preview.write("templates/index.html", &heading);
    preview.until("/public/index.html", |page| page.body.contains("Set by ourselves"));
    preview.write("templates/index.html", "{% if %}");
    let held = preview.until("/public/index.html", |page| page.body.contains("preview-held"));
    assert!(held.body.contains("Set by ourselves"), "the last good page");
    assert!(held.body.contains("templates/index.html"), "the finding names the template");
    preview.write("templates/index.html", &template);
    preview.until("/public/index.html", |page| !page.body.contains("preview-held"));
    preview.write("theme/own.css", ":root { --ink: #123456; }\n");
    preview.until("/public/assets/own.css", |page| page.body.contains("#123456"));
}

#[test]
fn foreign_names_other_origins_and_paths_upwards_are_refused() {
    let preview = Preview::of("preview-refused", |_| {});
    let ask = |line: &str, headers: &str| {
        preview.ask(&format!("{line}\r\n{headers}Connection: close\r\n\r\n"))
    };
    let own = format!("Host: 127.0.0.1:{}\r\n", preview.port);
    let foreign = ask("GET /public/index.html HTTP/1.1", "Host: quillmere.example\r\n");
    assert_eq!(foreign.status, 403);
    assert!(!foreign.body.contains("<h1"), "nothing of the site is shown");
    for origin in ["Origin: http://quillmere.example\r\n", "Sec-Fetch-Site: cross-site\r\n"] {
        let answer = ask("GET /public/index.html HTTP/1.1", &format!("{own}{origin}"));
        assert_eq!(answer.status, 403, "{origin}");
    }
    for path in [
        "/../private.toml",
        "/public/../../private.toml",
        "/%2e%2e/private.toml",
        "/..\\private.toml",
    ] {
        let answer = ask(&format!("GET {path} HTTP/1.1"), &own);
        assert_eq!(answer.status, 400, "{path}");
    }
    for path in ["/private.toml", "/animals/", "//etc/passwd", "/.git/config"] {
        let answer = ask(&format!("GET {path} HTTP/1.1"), &own);
        assert_eq!(answer.status, 404, "{path}");
    }
    assert_eq!(
        ask("POST /public/index.html HTTP/1.1", &format!("{own}Content-Length: 0\r\n")).status,
        405
    );
    let listening = fs::read_to_string("/proc/net/tcp").unwrap_or_default();
    let mine = listening.lines().filter(|line| line.contains(&format!(":{:04X} ", preview.port)));
    for line in mine.filter(|line| line.contains(" 0A ")) {
        assert!(line.contains("0100007F:"), "it listens on the loopback address alone: {line}");
    }
}

#[test]
fn a_port_that_is_taken_is_said_and_the_next_is_used() {
    let first = Preview::of("preview-port", |_| {});
    let mut second = Preview::over(first.folder.clone(), first.port);
    assert!(second.port > first.port, "{} {}", first.port, second.port);
    assert_eq!(second.get("/").status, 200);
    second.child.kill().expect("it can be ended");
    let mut said = String::new();
    let mut err = second.child.stderr.take().expect("its words are caught");
    err.read_to_string(&mut said).expect("its words are text");
    assert!(said.contains(&format!("port {} is taken", first.port)), "{said}");
}

#[cfg(unix)]
#[test]
fn an_interrupt_ends_it_cleanly_even_while_pages_wait() {
    let mut preview = Preview::of("preview-interrupt", |_| {});
    let mut waiting = TcpStream::connect(("127.0.0.1", preview.port)).expect("it listens");
    let ask =
        format!("GET /-preview/next?after=0 HTTP/1.1\r\nHost: 127.0.0.1:{}\r\n\r\n", preview.port);
    waiting.write_all(ask.as_bytes()).expect("it can be asked");
    let interrupted = Command::new("kill")
        .args(["-INT", &preview.child.id().to_string()])
        .status()
        .expect("a signal can be sent");
    assert!(interrupted.success());
    let start = Instant::now();
    loop {
        if let Some(status) = preview.child.try_wait().expect("it can be asked") {
            assert_eq!(status.code(), Some(0), "it ends as something that is done");
            return;
        }
        assert!(start.elapsed() < PATIENCE, "it does not end");
        std::thread::sleep(Duration::from_millis(20));
    }
}
