//! What is answered to what is asked.

use std::sync::{PoisonError, RwLock};
use std::time::Duration;

use crate::finding::Finding;

use super::address::Asked;
use super::around::{Above, SCRIPT, STYLE};
use super::bell::Bell;
use super::watched::Watched;

/// How long a page waits for the next edit before it asks again.
const PATIENCE: Duration = Duration::from_secs(20);

/// An answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Answer {
    /// 200, 302, 403, …
    pub(super) status: u16,
    /// The media type.
    pub(super) media: &'static str,
    /// The bytes.
    pub(super) body: Vec<u8>,
}

const HTML: &str = "text/html; charset=utf-8";
const PLAIN: &str = "text/plain; charset=utf-8";

impl Answer {
    fn of(status: u16, media: &'static str, body: impl Into<Vec<u8>>) -> Answer {
        Answer { status, media, body: body.into() }
    }
}

/// Answers one request, on any thread.
pub(super) fn answer(asked: &Asked, port: u16, watched: &RwLock<Watched>, bell: &Bell) -> Answer {
    let path = match asked.path(port) {
        Ok(path) => path,
        Err((status, sentence)) => return Answer::of(status, PLAIN, format!("{sentence}\n")),
    };
    match path {
        "-preview/follow.js" => Answer::of(200, "text/javascript; charset=utf-8", SCRIPT),
        "-preview/preview.css" => Answer::of(200, "text/css; charset=utf-8", STYLE),
        "-preview/next" => {
            let changes = bell.wait(asked.number("after").unwrap_or(u64::MAX), PATIENCE);
            Answer::of(200, "application/json", format!("{{\"changes\":{changes}}}"))
        }
        "" => start(watched, bell),
        _ => page(path, watched, bell),
    }
}

/// What stands above a page.
fn above<'a>(
    watched: &'a Watched,
    findings: &'a [Finding],
    held_back: bool,
    changes: u64,
) -> Above<'a> {
    let (sources, newest) = (watched.sources(), watched.newest());
    Above { findings, sources, newest, held_back, changes }
}

fn start(watched: &RwLock<Watched>, bell: &Bell) -> Answer {
    let watched = watched.read().unwrap_or_else(PoisonError::into_inner);
    let findings = watched.findings();
    let above = above(&watched, &findings, watched.is_held_back(), bell.changes());
    Answer::of(200, HTML, above.start(watched.title(), watched.paths()))
}

fn page(path: &str, watched: &RwLock<Watched>, bell: &Bell) -> Answer {
    // The count is taken before the page is set: a change in between makes the page ask once more, never once too few.
    let changes = bell.changes();
    let watched = watched.read().unwrap_or_else(PoisonError::into_inner);
    let path = if path.ends_with('/') { format!("{path}index.html") } else { path.to_owned() };
    let found = watched.file(&path).map(|found| (200, found));
    let missing = || Some((404, watched.file("public/404.html")?));
    let Some((status, (bytes, broken))) = found.or_else(missing) else {
        return start_if_nothing(&watched, changes);
    };
    let media = media(if status == 404 { "404.html" } else { &path });
    if media != HTML {
        return Answer::of(status, media, bytes);
    }
    let mut findings = watched.findings();
    let held_back = watched.is_held_back() || broken.is_some();
    findings.extend(broken);
    let above = above(&watched, &findings, held_back, changes);
    Answer::of(status, media, above.page(&String::from_utf8_lossy(&bytes)))
}

/// Where the site has never been free of errors there is no page at all: the findings stand alone.
fn start_if_nothing(watched: &Watched, changes: u64) -> Answer {
    let findings = watched.findings();
    let above = above(watched, &findings, false, changes);
    Answer::of(404, HTML, above.start(watched.title(), watched.paths()))
}

fn media(path: &str) -> &'static str {
    match path.rsplit_once('.').map_or("", |(_, ending)| ending) {
        "html" => HTML,
        "css" => "text/css; charset=utf-8",
        "svg" => "image/svg+xml",
        "xml" => "application/xml",
        "ics" => "text/calendar; charset=utf-8",
        "jpg" => "image/jpeg",
        "png" => "image/png",
        "webp" => "image/webp",
        "woff2" => "font/woff2",
        "txt" => PLAIN,
        _ => "application/octet-stream",
    }
}
