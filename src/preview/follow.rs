//! The loop: files change, are read, are looked at in part and then whole, and every open page is told.

use std::collections::BTreeSet;
use std::path::PathBuf;
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::sync::{Arc, PoisonError, RwLock, RwLockReadGuard, RwLockWriteGuard};
use std::time::Duration;

use rayon::{ThreadPool, ThreadPoolBuilder};

use crate::compile::Checked;
use crate::finding::{Finding, Place, Severity};
use crate::source::Sources;

use super::bell::Bell;
use super::serve::Served;
use super::watch::Watch;
use super::watched::{Change, Watched};

/// How long the files must have been quiet before they are read: an editor saves in several steps.
const QUIET: Duration = Duration::from_millis(8);
/// How many of those waits there are at most, so that a program that writes without end does not hold the preview up.
const WAITS: usize = 12;

/// How long nothing must have been saved before the whole site is looked at: until then the page that was edited is shown, and
/// whoever saves again would have all of it done again.
const STILL: Duration = Duration::from_millis(300);

/// What the loop is told.
pub(super) enum News {
    /// Files may have changed.
    Files,
    /// The whole site has been looked at, as it was at that reading.
    Whole(u64, Box<Checked>),
    /// It is to end.
    End,
}

/// Is told findings that are new, all there are, and the files that they are in.
pub type Tell<'a> = dyn FnMut(&[Finding], &[Finding], &Sources) + 'a;

/// What a preview is given to work with.
pub struct Following<'a> {
    /// The folders to watch: the site's, and its libraries'.
    pub folders: Vec<PathBuf>,
    /// Reads the files as they are; a sentence where that cannot be done at all.
    pub read: &'a dyn Fn() -> Result<(Sources, Vec<Finding>), String>,
    /// Is called once edits are followed and Ctrl-C is heard.
    pub ready: &'a mut dyn FnMut(),
    /// Is told what is wrong each time it changes: what was not told before, and all there is.
    pub tell: &'a mut Tell<'a>,
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
        let cores = rayon::current_num_threads().saturating_sub(1).max(1);
        let cores = ThreadPoolBuilder::new().num_threads(cores).build().ok().map(Arc::new);
        Loop {
            news: &news,
            sender: &sender,
            watched: &watched,
            bell: &bell,
            following: &mut following,
            cores,
            is_due: false,
            told: Vec::new(),
        }
        .listen();
        bell.close();
        served.end();
    });
    Ok(())
}

/// The loop, with what it has to remember.
struct Loop<'a, 'f> {
    news: &'a Receiver<News>,
    sender: &'a Sender<News>,
    watched: &'a RwLock<Watched>,
    bell: &'a Bell,
    following: &'a mut Following<'f>,
    /// The cores for looking at the whole site: all but one, which is left to the next edit. None where there are no threads.
    cores: Option<Arc<ThreadPool>>,
    /// Whether the whole site is to be looked at once it is still.
    is_due: bool,
    /// What was told last.
    told: Vec<Finding>,
}

impl Loop<'_, '_> {
    fn listen(mut self) {
        let told = self.now().findings();
        self.told = told;
        let mut failure = None;
        let mut waiting = Vec::new();
        loop {
            match waiting.pop().map_or_else(|| self.hear(), Some) {
                Some(News::End) => return,
                Some(News::Files) => {
                    waiting.extend(until_quiet(self.news));
                    match (self.following.read)() {
                        Ok((sources, read)) => {
                            failure = None;
                            self.take(sources, read);
                        }
                        // Said once, not at every event: the folder may be away for a while.
                        Err(sentence) if failure.as_ref() == Some(&sentence) => {}
                        Err(sentence) => {
                            (self.following.say)(&sentence);
                            failure = Some(sentence);
                        }
                    }
                }
                Some(News::Whole(reading, checked)) => {
                    if self.anew().take_whole(reading, *checked) {
                        self.bell.ring();
                    }
                    self.tell();
                }
                None => {
                    self.tell();
                    self.look_at_all();
                }
            }
        }
    }

    /// The next news; none once it has been still for long enough.
    fn hear(&self) -> Option<News> {
        if !self.is_due {
            return Some(self.news.recv().unwrap_or(News::End));
        }
        match self.news.recv_timeout(STILL) {
            Ok(news) => Some(news),
            Err(RecvTimeoutError::Timeout) => None,
            Err(RecvTimeoutError::Disconnected) => Some(News::End),
        }
    }

    fn now(&self) -> RwLockReadGuard<'_, Watched> {
        self.watched.read().unwrap_or_else(PoisonError::into_inner)
    }

    fn anew(&self) -> RwLockWriteGuard<'_, Watched> {
        self.watched.write().unwrap_or_else(PoisonError::into_inner)
    }

    /// Takes what was read and rings. What was edited is told at the next stillness: drawing it is not to hold up the page.
    fn take(&mut self, sources: Sources, read: Vec<Finding>) {
        let change = self.anew().take(sources, read);
        match change {
            Change::Nothing => {}
            Change::Part => {
                self.bell.ring();
                self.is_due = true;
            }
            Change::Unknown => self.look_at_all(),
        }
    }

    /// Has the whole site looked at on other threads.
    fn look_at_all(&mut self) {
        self.is_due = false;
        let (reading, look) = self.now().whole();
        let (sender, cores) = (self.sender.clone(), self.cores.clone());
        std::thread::spawn(move || {
            let checked = match cores {
                Some(cores) => cores.install(look),
                None => look(),
            };
            drop(sender.send(News::Whole(reading, Box::new(checked))));
        });
    }

    fn tell(&mut self) {
        let watched = self.watched.read().unwrap_or_else(PoisonError::into_inner);
        let now = watched.findings();
        if now == self.told {
            return;
        }
        let known: BTreeSet<_> = self.told.iter().map(told_by).collect();
        let is_new = |finding: &&Finding| !known.contains(&told_by(finding));
        let new: Vec<Finding> = now.iter().filter(is_new).cloned().collect();
        (self.following.tell)(&new, &now, watched.sources());
        self.told = now;
    }
}

/// What tells a finding from others.
fn told_by(finding: &Finding) -> (Option<Place>, Severity, &str) {
    (finding.place, finding.severity, &finding.message)
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
