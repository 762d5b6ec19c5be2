//! How far long work has come: a bar on a terminal, nothing anywhere else.

use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};

/// A bar on standard error, which is gone when the work is done.
pub(super) struct Progress(ProgressBar);

impl Progress {
    /// Starts a bar of so many steps; it is drawn only where it is shown.
    pub(super) fn new(steps: usize, shown: bool) -> Progress {
        let target =
            if shown { ProgressDrawTarget::stderr() } else { ProgressDrawTarget::hidden() };
        let bar = ProgressBar::with_draw_target(Some(steps as u64), target);
        // A template that indicatif cannot read would only cost the words beside the bar.
        if let Ok(style) = ProgressStyle::with_template("{wide_bar} {pos} of {len} pages") {
            bar.set_style(style);
        }
        Progress(bar)
    }

    /// Tells that one step is done; from any thread.
    pub(super) fn step(&self) {
        self.0.inc(1);
    }

    /// Takes the bar away.
    pub(super) fn end(&self) {
        self.0.finish_and_clear();
    }
}
