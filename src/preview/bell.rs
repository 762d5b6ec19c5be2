//! Tells everybody who waits that the site has changed.

use std::sync::{Condvar, Mutex, PoisonError};
use std::time::Duration;

/// A count of changes that can be waited for.
#[derive(Debug, Default)]
pub(super) struct Bell {
    state: Mutex<State>,
    rung: Condvar,
}

#[derive(Debug, Default, Clone, Copy)]
struct State {
    changes: u64,
    closed: bool,
}

impl Bell {
    /// How many changes there have been.
    pub(super) fn changes(&self) -> u64 {
        self.state.lock().unwrap_or_else(PoisonError::into_inner).changes
    }

    /// One more change.
    pub(super) fn ring(&self) {
        self.state.lock().unwrap_or_else(PoisonError::into_inner).changes += 1;
        self.rung.notify_all();
    }

    /// Nobody is to wait any longer.
    pub(super) fn close(&self) {
        self.state.lock().unwrap_or_else(PoisonError::into_inner).closed = true;
        self.rung.notify_all();
    }

    /// Waits until the count is another than `seen`, at most for `patience`, and tells the count.
    ///
    /// A page that was set by an earlier run has a count that may be higher than today's: it has to be set anew as well.
    pub(super) fn wait(&self, seen: u64, patience: Duration) -> u64 {
        let state = self.state.lock().unwrap_or_else(PoisonError::into_inner);
        let unchanged = |state: &mut State| state.changes == seen && !state.closed;
        match self.rung.wait_timeout_while(state, patience, unchanged) {
            Ok((state, _)) => state.changes,
            Err(poisoned) => poisoned.into_inner().0.changes,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn whoever_has_seen_an_older_page_is_told_at_once() {
        let bell = Bell::default();
        bell.ring();
        assert_eq!(bell.wait(0, Duration::from_secs(60)), 1);
        assert_eq!(bell.wait(7, Duration::from_secs(60)), 1, "a page of an earlier run");
    }

    #[test]
    fn whoever_has_seen_the_newest_page_waits_until_it_changes() {
        let bell = Bell::default();
        std::thread::scope(|scope| {
            let waiting = scope.spawn(|| bell.wait(0, Duration::from_secs(60)));
            bell.ring();
            assert_eq!(waiting.join().expect("it waits without fault"), 1);
        });
    }

    #[test]
    fn nobody_waits_once_it_is_closed() {
        let bell = Bell::default();
        bell.close();
        assert_eq!(bell.wait(0, Duration::from_secs(60)), 0);
    }
}
