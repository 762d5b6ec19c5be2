//! Which room may use what, and the search for what does not keep to it.

use std::collections::BTreeSet;

use crate::code::{blanked, led_to, tokens};

/// A room, the rooms it may use and the crates from outside. The rooms stand in the order of the flow, and a row names only
/// rooms above it. Where a file has a row of its own, that row counts for it.
pub(crate) type Row = (&'static str, &'static [&'static str], &'static [&'static str]);

pub(crate) const ROWS: &[Row] = &[
    ("quantity", &["quantity"], &["strsim", "proptest"]),
    ("finding", &["finding"], &["strsim"]),
    ("finding/draw.rs", &["finding"], &["annotate_snippets"]),
    ("finding/json.rs", &["finding"], &["serde_json"]),
    ("finding/sarif.rs", &["finding"], &["serde_json"]),
    ("language", &["language"], &["fluent_bundle", "include_dir", "jiff"]),
    ("photo", &["photo"], &["image"]),
    ("source", &["finding", "source"], &[]),
    ("source/git.rs", &["finding", "source"], &["jiff"]),
    ("source/library.rs", &["finding", "source"], &["include_dir"]),
    ("source/read.rs", &["finding", "source"], &["toml", "walkdir"]),
    ("model", &["quantity", "finding", "model"], &["jiff"]),
    (
        "parse",
        &["quantity", "finding", "photo", "source", "model", "parse"],
        &["csv", "jiff", "pulldown_cmark", "rayon", "toml"],
    ),
    ("schema", &["quantity", "finding", "model", "schema"], &["serde_json"]),
    ("figures", &["quantity", "model", "figures"], &["jiff", "libm", "proptest"]),
    ("figures/mod.rs", &["quantity", "model", "figures"], &["jiff", "rayon"]),
    (
        "figures/formula",
        &["quantity", "figures"],
        &["jiff", "levenberg_marquardt", "libm", "nalgebra", "proptest"],
    ),
    ("figures/document.rs", &["figures"], &["jiff", "serde_json"]),
    (
        "proof",
        &["quantity", "finding", "language", "source", "model", "parse", "figures", "proof"],
        &["jiff", "proptest", "rayon", "strsim"],
    ),
    ("changes", &["quantity", "model", "figures", "changes"], &["jiff", "serde_json"]),
    (
        "sheets",
        &["quantity", "language", "model", "parse", "figures", "sheets"],
        &["jiff", "serde"],
    ),
    (
        "render",
        &["finding", "language", "source", "parse", "proof", "sheets", "render"],
        &["jiff", "pulldown_cmark", "qrcode", "tera"],
    ),
    ("write", &["render", "write"], &[]),
    (
        "compile",
        &[
            "finding", "photo", "source", "model", "parse", "figures", "proof", "sheets", "render",
            "compile",
        ],
        &["jiff", "rayon"],
    ),
    ("preview", &["finding", "source", "sheets", "render", "compile", "preview"], &["jiff"]),
    (
        "preview/follow.rs",
        &["finding", "source", "compile", "preview"],
        &["ctrlc", "notify", "rayon"],
    ),
    ("preview/watch.rs", &["preview"], &["notify"]),
    ("preview/serve.rs", &["preview"], &["tiny_http"]),
    (
        "command",
        &[
            "finding", "language", "source", "model", "parse", "schema", "figures", "proof",
            "changes", "render", "write", "compile", "preview",
        ],
        &["clap", "jiff", "include_dir", "indicatif", "serde_json"],
    ),
    ("lib.rs", &[], &[]),
    ("main.rs", &["command"], &["clap", "jiff"]),
];

/// What must not stand in the source, as runs of tokens; why; and the files that may all the same.
const BANS: &[(&[&str], &str, &[&str])] = &[
    (
        &["println !", "eprintln !", "print !", "eprint !", "dbg !"],
        "prints; words go to the writers that main hands out",
        &[],
    ),
    (&["io :: stdout", "io :: stderr", "io :: stdin"], "opens a standard stream", &["main.rs"]),
    (
        &["std :: fs", "fs ::", "File :: create", "File :: open", "OpenOptions"],
        "touches the disk",
        &["source/read.rs", "write"],
    ),
    (
        &[". exists (", ". is_file (", ". is_dir (", ". canonicalize (", ". metadata ("],
        "asks the disk",
        &["source/read.rs", "source/git.rs", "write"],
    ),
    (&["std :: net"], "leaves this program", &[]),
    (
        &["process :: Command", "process :: {", "process :: Child"],
        "starts another program; only the git program is, to read a revision",
        &["source/git.rs"],
    ),
    (&["std :: env", "env :: var", "env :: current_dir"], "reads the environment", &["main.rs"]),
    (&["SystemTime", "Instant", ":: now ( )"], "reads the clock", &["main.rs"]),
    (&["HashMap", "HashSet"], "has no order of its own", &[]),
    (&["[ allow (", ", allow ("], "silences a lint without a reason; use expect", &[]),
    (&["super :: super"], "reaches two modules up; name the module from the crate", &[]),
];

/// Functions of `f64` that do not give the same bits on every machine.
const INEXACT: &[&str] = &[
    "powf", "powi", "exp", "exp2", "exp_m1", "ln", "ln_1p", "log", "log2", "log10", "cbrt",
    "hypot", "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sin_cos", "sinh", "cosh",
    "tanh",
];

fn is_in(file: &str, place: &str) -> bool {
    file == place || file.strip_prefix(place).is_some_and(|rest| rest.starts_with('/'))
}

fn row_of(file: &str) -> Option<&'static Row> {
    ROWS.iter().filter(|(place, ..)| is_in(file, place)).max_by_key(|(place, ..)| place.len())
}

/// Every break of an invariant in one file of `src/`, as `file:line: what`.
pub(crate) fn breaks(file: &str, text: &str, outside: &BTreeSet<String>) -> Vec<String> {
    let Some((_, rooms, crates)) = row_of(file) else {
        return vec![format!("{file}: belongs to no room")];
    };
    let code = blanked(text, true);
    let tokens = tokens(&code);
    let at = |place: usize| tokens.get(place).map_or("", |(_, text)| *text);
    let mut found = Vec::new();
    let mut report = |line: usize, what: String| found.push(format!("{file}:{line}: {what}"));
    // At the top of a room, the module above is the crate itself.
    let top = !file.contains('/') || (file.matches('/').count() == 1 && file.ends_with("/mod.rs"));
    for (place, (line, word)) in tokens.iter().enumerate() {
        let before = if place > 0 { at(place - 1) } else { "" };
        let parent = if before == "::" && place > 1 { at(place - 2) } else { "" };
        let keyword = ["use", "return", "in", "as", "dyn", "impl"].contains(&parent);
        let inner = !keyword && parent.starts_with(|c: char| c.is_alphanumeric() || c == '_');
        let leads = if at(place + 1) == "::" { led_to(&tokens, place + 2) } else { Vec::new() };
        match *word {
            "crate" | "std" | "super" if at(place + 1) == "as" => {
                report(*line, format!("hides `{word}` under another name"));
            }
            "crate" | "wardsheet" => {
                let strange = leads.iter().filter(|room| !rooms.contains(room));
                strange.for_each(|room| report(*line, format!("may not use the room `{room}`")));
            }
            "super" if top => {
                let is_room = |name: &&&str| {
                    ROWS.iter().any(|(room, ..)| room.trim_end_matches(".rs") == **name)
                };
                let strange = leads.iter().filter(is_room).filter(|room| !rooms.contains(room));
                strange.for_each(|room| report(*line, format!("may not use the room `{room}`")));
            }
            "std" if at(place + 2) == "{" => {
                let strange = leads.iter().filter(|name| matches!(**name, "fs" | "env" | "net"));
                strange.for_each(|name| report(*line, format!("`std::{name}` in braces")));
            }
            "extern" if at(place + 1) == "crate" => {
                report(*line, "names a crate by `extern`".to_owned())
            }
            name if outside.contains(name) && !inner && before != "." => {
                let used = at(place + 1) == "::" || before == "use" || parent == "use";
                if used && !crates.contains(&name) {
                    report(*line, format!("may not use the crate `{name}`"));
                }
            }
            "use" if at(place + 1) == "{" => {
                let strange =
                    led_to(&tokens, place + 1).into_iter().filter(|name| outside.contains(*name));
                let strange = strange.filter(|name| !crates.contains(name));
                strange.for_each(|name| report(*line, format!("may not use the crate `{name}`")));
            }
            name if INEXACT.contains(&name)
                && ((before == "." && at(place + 1) == "(") || parent == "f64") =>
            {
                report(*line, format!("`{name}` gives other bits on other machines; use libm"));
            }
            _ => {}
        }
        for (patterns, why, may) in BANS {
            let fits = |pattern: &&&str| {
                pattern.split(' ').enumerate().all(|(step, sign)| at(place + step) == sign)
            };
            if let Some(pattern) = patterns.iter().find(fits)
                && !may.iter().any(|place| is_in(file, place))
            {
                report(*line, format!("`{}` {why}", pattern.replace(' ', "")));
            }
        }
    }
    if is_in(file, "sheets") || is_in(file, "figures") || is_in(file, "proof") {
        for (number, line) in
            blanked(text, false).lines().enumerate().filter(|(_, line)| line.contains("</"))
        {
            report(number + 1, format!("knows HTML: {}", line.trim()));
        }
    }
    found
}
