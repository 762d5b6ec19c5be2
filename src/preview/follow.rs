//! The loop: files change, are read, are looked at in part and then whole, and every open page is told.

use std::path::PathBuf;
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::sync::{PoisonError, RwLock};
use std::time::Duration;

use crate::compile::Checked;
use crate::finding::Finding;
use crate::source::Sources;

use super::bell::Bell;
use super::serve::Served;
use super::watch::Watch;
use super::watched::{Change, Watched};

/// How long the files must have been quiet before they are read: an editor saves in several steps.
const QUIET: Duration = Duration::from_millis(8);
/// How many of those waits there are at most, so that a program that writes without end does not hold the preview up.
const WAITS: usize = 12;

/// What the loop is told.
pub(super) enum News {
    /// Files may have changed.
    Files,
    /// The whole site has been looked at, as it was at that reading.
    Whole(u64, Box<Checked>),
    /// It is to end.
    End,
}

/// What a preview is given to work with.
pub struct Following<'a> {
    /// The folders to watch: the site's, and its libraries'.
    pub folders: Vec<PathBuf>,
    /// Reads the files as they are; a sentence where that cannot be done at all.
    pub read: &'a dyn Fn() -> Result<(Sources, Vec<Finding>), String>,
    /// Is called once edits are followed and Ctrl-C is heard.
    pub ready: &'a mut dyn FnMut(),
    /// Is told what is wrong each time it changes.
    pub tell: &'a mut dyn FnMut(&[Finding], &Sources),
    /// Is told a sentence that is no finding.
    pub say: &'a mut dyn FnMut(&str),
}

/// Why a preview could not begin.
#[derive(Debug)]
pub enum PreviewError {
    /// The system does not let the folders be watched.
    Watch(notify::Error),
    /// The system does not let Ctrl-C be heard.
    Interrupt(ctrlc::Error),
}

impl std::fmt::Display for PreviewError {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            PreviewError::Watch(error) => {
                write!(out, "the site's folder cannot be watched: {error}")
            }
            PreviewError::Interrupt(error) => write!(out, "Ctrl-C cannot be heard: {error}"),
        }
    }
}

impl std::error::Error for PreviewError {}

/// Serves the site and follows its files until Ctrl-C.
///
/// # Errors
/// When the folders cannot be watched or Ctrl-C cannot be heard.
pub fn follow(
    watched: Watched,
    served: &Served,
    mut following: Following<'_>,
) -> Result<(), PreviewError> {
    let (sender, news) = channel();
    let _watch = Watch::over(&following.folders, sender.clone()).map_err(PreviewError::Watch)?;
    // What was saved between the first reading and now has gone unseen.
    let _ = sender.send(News::Files);
    let interrupt = sender.clone();
    ctrlc::set_handler(move || drop(interrupt.send(News::End))).map_err(PreviewError::Interrupt)?;
    (following.ready)();
    let (watched, bell) = (RwLock::new(watched), Bell::default());
    std::thread::scope(|scope| {
        scope.spawn(|| served.run(&watched, &bell));
        listen(&news, &sender, &watched, &bell, &mut following);
        bell.close();
        served.end();
    });
    Ok(())
}

fn listen(
    news: &Receiver<News>,
    sender: &Sender<News>,
    watched: &RwLock<Watched>,
    bell: &Bell,
    following: &mut Following<'_>,
) {
    let mut failure = None;
    let mut waiting = Vec::new();
    loop {
        let next = waiting.pop().or_else(|| news.recv().ok()).unwrap_or(News::End);
        match next {
            News::End => return,
            News::Files => {
                waiting.extend(until_quiet(news));
                match (following.read)() {
                    Ok((sources, read)) => {
                        failure = None;
                        take(sources, read, sender, watched, bell, following);
                    }
                    // Said once, not at every event: the folder may be away for a while.
                    Err(sentence) if failure.as_ref() == Some(&sentence) => {}
                    Err(sentence) => {
                        (following.say)(&sentence);
                        failure = Some(sentence);
                    }
                }
            }
            News::Whole(reading, checked) => {
                let mut watched = watched.write().unwrap_or_else(PoisonError::into_inner);
                let before = watched.findings();
                if watched.take_whole(reading, *checked) {
                    bell.ring();
                    tell(&watched, &before, following);
                }
            }
        }
    }
}

/// Takes what was read, rings, and has the whole site looked at on another thread.
fn take(
    sources: Sources,
    read: Vec<Finding>,
    sender: &Sender<News>,
    watched: &RwLock<Watched>,
    bell: &Bell,
    following: &mut Following<'_>,
) {
    let mut watched = watched.write().unwrap_or_else(PoisonError::into_inner);
    let before = watched.findings();
    match watched.take(sources, read) {
        Change::Nothing => return,
        Change::Part => {
            bell.ring();
            tell(&watched, &before, following);
        }
        Change::Unknown => {}
    }
    let (reading, look) = watched.whole();
    let sender = sender.clone();
    std::thread::spawn(move || drop(sender.send(News::Whole(reading, Box::new(look())))));
}

fn tell(watched: &Watched, before: &[Finding], following: &mut Following<'_>) {
    let now = watched.findings();
    if now != before {
        (following.tell)(&now, watched.sources());
    }
}

/// Waits until no file has changed for a moment. What else was told meanwhile is handed back, the newest first.
fn until_quiet(news: &Receiver<News>) -> Vec<News> {
    let mut others = Vec::new();
    for _ in 0..WAITS {
        match news.recv_timeout(QUIET) {
            Ok(News::Files) => {}
            Ok(other) => others.insert(0, other),
            Err(RecvTimeoutError::Timeout | RecvTimeoutError::Disconnected) => break,
        }
    }
    others
}
