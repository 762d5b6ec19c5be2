//! Tells when a file of the site has changed.

use std::path::{Path, PathBuf};
use std::sync::mpsc::Sender;

use notify::event::{AccessKind, AccessMode};
use notify::{EventKind, RecommendedWatcher, RecursiveMode, Watcher};

use super::follow::News;

/// Watches the site's folder and the libraries' for as long as it is kept.
pub(super) struct Watch {
    _watcher: RecommendedWatcher,
}

impl Watch {
    /// Watches these folders with everything in them.
    ///
    /// The output, and folders whose names begin with a dot, are none of the site's sources: what happens there is no news.
    pub(super) fn over(folders: &[PathBuf], news: Sender<News>) -> notify::Result<Watch> {
        let roots: Vec<PathBuf> = folders.to_vec();
        let mut watcher =
            notify::recommended_watcher(move |event: notify::Result<notify::Event>| {
                let told = match &event {
                    Ok(event) => {
                        changes(&event.kind)
                            && event.paths.iter().any(|path| concerns(&roots, path))
                    }
                    // Events were lost: reading everything again finds what they were about.
                    Err(_) => true,
                };
                if told {
                    // Where nobody listens any longer the preview has ended.
                    let _ = news.send(News::Files);
                }
            })?;
        for folder in folders {
            watcher.watch(folder, RecursiveMode::Recursive)?;
        }
        Ok(Watch { _watcher: watcher })
    }
}

/// Whether a file may have another text after it. Reading is no change, and this program reads.
fn changes(kind: &EventKind) -> bool {
    match kind {
        EventKind::Access(AccessKind::Close(AccessMode::Write)) => true,
        EventKind::Access(_) => false,
        _ => true,
    }
}

fn concerns(roots: &[PathBuf], path: &Path) -> bool {
    let inside = roots.iter().filter_map(|root| path.strip_prefix(root).ok());
    inside.into_iter().any(|inside| {
        let first = inside.components().next().map(|part| part.as_os_str().to_string_lossy());
        first.is_none_or(|first| first != "out" && !first.starts_with('.'))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_into_the_output_or_by_git_is_no_news() {
        let roots = [PathBuf::from("/site"), PathBuf::from("/club")];
        assert!(concerns(&roots, Path::new("/site/animals/juniper.toml")));
        assert!(concerns(&roots, Path::new("/club/species/testing-snake.toml")));
        assert!(!concerns(&roots, Path::new("/site/out/public/index.html")));
        assert!(!concerns(&roots, Path::new("/site/.git/index")));
        assert!(!concerns(&roots, Path::new("/elsewhere/animals/juniper.toml")));
    }
}
