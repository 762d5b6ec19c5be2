//! `wardsheet explain CODE`: what a finding means and how to put it right.

use std::collections::BTreeMap;

use clap::Args;

use crate::finding::{Code, did_you_mean};
use crate::proof::codes;

use super::{Ended, Failure, Outcome, Outside};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// The finding's code; without one, all are listed
    code: Option<String>,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let codes = codes();
    let Some(name) = &arguments.code else {
        write!(outside.out, "{}", list(&codes))?;
        return Ok(Outcome::Done);
    };
    let Some(code) = codes.get(name.as_str()) else {
        let near = did_you_mean(name, codes.keys().copied());
        let near = near.unwrap_or_else(|| "`wardsheet explain` lists every code".to_owned());
        return Err(Failure::Said(format!("there is no finding `{name}`; {near}")));
    };
    let safety = if code.safety { ", a safety error: a site cannot lower it" } else { "" };
    writeln!(outside.out, "{}: {} ({}{safety})\n", code.name, code.summary, code.severity.word())?;
    writeln!(outside.out, "{}", code.page.trim())?;
    Ok(Outcome::Done)
}

/// Every code by subject, one line each.
fn list(codes: &BTreeMap<&str, &'static Code>) -> String {
    let mut by_subject: BTreeMap<_, Vec<&Code>> = BTreeMap::new();
    for code in codes.values() {
        by_subject.entry(code.subject).or_default().push(code);
    }
    let width = codes.keys().map(|name| name.len()).max().unwrap_or(0);
    let mut text = String::new();
    for (subject, codes) in by_subject {
        text.push_str(subject.heading());
        text.push('\n');
        for code in codes {
            text.push_str(&format!(
                "  {:width$}  {:7}  {}\n",
                code.name,
                code.severity.word(),
                code.summary
            ));
        }
        text.push('\n');
    }
    text
}
