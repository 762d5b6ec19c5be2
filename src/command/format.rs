//! How findings are told: drawn for people, or as one document for programs.

use clap::ValueEnum;
use serde_json::Value;

use crate::finding::{Finding, draw, json, sarif};
use crate::proof::codes;
use crate::source::Sources;

use super::{Failure, Outside};

/// How findings are told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(super) enum Format {
    /// Drawn for people, on standard error
    Human,
    /// One JSON list, on standard output
    Json,
    /// One SARIF 2.1.0 log, on standard output
    Sarif,
}

impl Format {
    /// Tells findings, and how many there are.
    pub(super) fn tell(
        self,
        findings: &[Finding],
        sources: &Sources,
        outside: &mut Outside<'_>,
    ) -> Result<(), Failure> {
        match self.document(findings, sources) {
            Some(document) => {
                let text = serde_json::to_string_pretty(&document).unwrap_or_default();
                writeln!(outside.out, "{text}")?;
            }
            None => {
                let drawn = draw::draw(findings, outside.colour, &|file| sources.shown(file));
                write!(outside.err, "{drawn}")?;
            }
        }
        writeln!(outside.err, "{}", draw::count(findings))?;
        Ok(())
    }

    fn document(self, findings: &[Finding], sources: &Sources) -> Option<Value> {
        match self {
            Format::Human => None,
            Format::Json => Some(json::json(findings, &|file| sources.shown(file))),
            Format::Sarif => {
                let codes: Vec<_> = codes().into_values().collect();
                Some(sarif::sarif(findings, &codes, &|file| sources.shown(file)))
            }
        }
    }

    /// Says what was done: a result for people, and beside a document a word on progress, so that the document stands alone.
    pub(super) fn say(self, words: &str, outside: &mut Outside<'_>) -> Result<(), Failure> {
        match self {
            Format::Human => writeln!(outside.out, "{words}")?,
            Format::Json | Format::Sarif => writeln!(outside.err, "{words}")?,
        }
        Ok(())
    }
}
