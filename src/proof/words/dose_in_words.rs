//! A dose of medicine that is written out.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::source::{Role, SourceFile};

use super::doses::{amounts, doses};

static CODE: Code = Code {
    name: "dose-in-words",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Words,
    summary: "a dose of medicine is written out",
    page: include_str!("dose_in_words.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for role in [
        Role::Site,
        Role::Species,
        Role::Override,
        Role::Words,
        Role::Animal,
        Role::Log,
        Role::Page,
    ] {
        for file in evidence.sources.nearest(role).into_values() {
            for (place, told) in told(file) {
                let message = format!("`{told}` is a dose of medicine, and no sheet may carry one");
                let help = "leave the amount out: write what was given, by whom and until when; the vet's own label says how much";
                found.push(Finding::new(&CODE, place, message).help(help));
            }
        }
    }
}

/// The doses of a file. In an animal's own files an amount by itself is one too: its records speak of treatments.
fn told(file: &SourceFile) -> Vec<(Place, &str)> {
    let text = &file.text;
    let mut spans = doses(text);
    if matches!(file.role, Role::Animal | Role::Log) {
        let mut alone = amounts(text);
        alone.retain(|alone| {
            let in_dose = spans.iter().any(|dose| dose.start < alone.end && alone.start < dose.end);
            !in_dose && !is_mass(file, alone.start)
        });
        spans.extend(alone);
    }
    spans.retain(|span| !in_comment(file, span.start));
    spans.into_iter().map(|span| (Place::new(file.id, span.clone()), &text[span])).collect()
}

/// The line up to a place.
fn line_before(file: &SourceFile, at: usize) -> &str {
    file.text[..at].rsplit('\n').next().unwrap_or("")
}

/// Whether an amount is the mass of an animal or its meal: small ones are weighed in milligrams.
fn is_mass(file: &SourceFile, at: usize) -> bool {
    let line = line_before(file, at);
    let cells: Vec<&str> = line.split(',').map(str::trim).collect();
    let in_log = matches!(cells.as_slice(), [_, "weight" | "meal", ..]);
    let key = line.rsplit_once('=').map_or("", |(before, _)| before.trim_end());
    if file.role == Role::Log { in_log } else { key.ends_with("mass") || key.ends_with("meal") }
}

/// Whether a place stands in a line that nobody is shown.
fn in_comment(file: &SourceFile, at: usize) -> bool {
    let line = line_before(file, at);
    line.trim_start().starts_with('#') && file.role != Role::Words && file.role != Role::Page
}
