//! The `wardsheet` command: reads the command line, the clock and the environment, calls, and chooses an exit status.

use std::io::{IsTerminal, Write};
use std::process::ExitCode;

use clap::Parser;
use wardsheet::command::{Command, Outside};

fn main() -> ExitCode {
    let start = std::time::Instant::now();
    let command = Command::parse();
    // Standard error is not locked: the bar that shows progress is drawn from the threads that do the work.
    let (mut out, mut err) = (std::io::stdout().lock(), std::io::stderr());
    let here = match std::env::current_dir() {
        Ok(here) => here,
        Err(error) => {
            let _ = writeln!(err, "wardsheet: this folder cannot be opened: {error}");
            return ExitCode::from(2);
        }
    };
    let terminal = err.is_terminal();
    let colour = terminal && std::env::var_os("NO_COLOR").is_none_or(|value| value.is_empty());
    let mut input = std::io::stdin().lock();
    let asks = std::io::stdin().is_terminal() && terminal;
    let answers = asks.then_some(&mut input as &mut dyn std::io::BufRead);
    let elapsed = || start.elapsed();
    let mut outside = Outside {
        today: today(),
        here,
        out: &mut out,
        err: &mut err,
        answers,
        colour,
        terminal,
        elapsed: &elapsed,
    };
    let outcome = command.run(&mut outside);
    ExitCode::from(outcome as u8)
}

/// The day of `SOURCE_DATE_EPOCH` where that is set, else today where this machine is.
fn today() -> jiff::civil::Date {
    let seconds =
        std::env::var_os("SOURCE_DATE_EPOCH").and_then(|value| value.to_str()?.parse::<i64>().ok());
    match seconds.and_then(|seconds| jiff::Timestamp::from_second(seconds).ok()) {
        Some(moment) => moment.to_zoned_datetime(jiff::tz::TimeZone::UTC).date(),
        None => jiff::ZonedDateTime::now().date(),
    }
}
