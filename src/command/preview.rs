//! `wardsheet preview`: the site as it would be, on this machine only, following every edit.

use clap::Args;

use crate::finding::draw;
use crate::preview::{Following, Served, Watched, follow};

use super::format::Format;
use super::open::find;
use super::{Ended, Failure, Outcome, Outside, Whereabouts};

/// The port that is tried first. It has no meaning elsewhere.
const PORT: u16 = 8317;

#[derive(Debug, Args)]
pub(super) struct Arguments {
    #[command(flatten)]
    at: Whereabouts,
    /// The port to answer on; where it is taken, the next that is free
    #[arg(long, value_name = "NUMBER", default_value_t = PORT)]
    port: u16,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let site = find(&arguments.at, outside)?;
    let (sources, read) = site.read()?;
    let folders = site.folders();
    let watched = Watched::new(sources, read, arguments.at.as_of.unwrap_or(outside.today));
    let served = Served::listen(arguments.port)
        .map_err(|error| Failure::Said(format!("cannot listen on this machine: {error}")))?;
    if arguments.port != 0 && served.port() != arguments.port {
        writeln!(
            outside.err,
            "port {} is taken; this preview is on {}",
            arguments.port,
            served.port()
        )?;
    }
    let first = watched.findings();
    if !first.is_empty() {
        Format::Human.tell(&first, watched.sources(), outside)?;
    }
    let read = || site.read().map_err(|error| error.to_string());
    let words = std::cell::RefCell::new(outside);
    // Where the terminal has gone there is nobody left to tell.
    let following = Following {
        folders,
        read: &read,
        ready: &mut || {
            let mut outside = words.borrow_mut();
            let _ = writeln!(
                outside.out,
                "http://127.0.0.1:{}/ shows this site to this machine only and follows every edit; Ctrl-C ends it",
                served.port()
            );
            let _ = outside.out.flush();
        },
        tell: &mut |new, all, sources| {
            let mut outside = words.borrow_mut();
            let drawn = draw::draw(new, outside.colour, &|file| sources.shown(file));
            let _ = writeln!(outside.err, "{drawn}{}", draw::count(all));
        },
        say: &mut |sentence| {
            let _ = writeln!(words.borrow_mut().err, "wardsheet: {sentence}");
        },
    };
    follow(watched, &served, following).map_err(|error| Failure::Said(error.to_string()))?;
    let _ = writeln!(words.borrow_mut().err, "the preview has ended");
    Ok(Outcome::Done)
}
