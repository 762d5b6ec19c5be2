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
    if spans.is_empty() && !matches!(file.role, Role::Animal | Role::Log) {
        return Vec::new();
    }
    let lines: Vec<usize> =
        std::iter::once(0).chain(text.match_indices('\n').map(|(at, _)| at + 1)).collect();
    if matches!(file.role, Role::Animal | Role::Log) {
        let mut alone = amounts(text);
        alone.retain(|alone| {
            // Doses stand in the order of the text, none inside another.
            let next = spans.partition_point(|dose| dose.end <= alone.start);
            let in_dose = spans.get(next).is_some_and(|dose| dose.start < alone.end);
            !in_dose && !is_mass(file, &lines, alone.start)
        });
        spans.extend(alone);
    }
    spans.retain(|span| !in_comment(file, &lines, span.start));
    spans.into_iter().map(|span| (Place::new(file.id, span.clone()), &text[span])).collect()
}

/// How far is looked for what an amount is of, in bytes: a line may be of many megabytes.
const REACH: usize = 200;

/// The line up to a place, by the starts of all lines.
fn line_before<'a>(file: &'a SourceFile, lines: &[usize], at: usize) -> &'a str {
    let number = lines.partition_point(|start| *start <= at);
    &file.text[number.checked_sub(1).and_then(|last| lines.get(last)).copied().unwrap_or(0)..at]
}

/// Whether an amount is the mass of an animal or its meal: small ones are weighed in milligrams.
fn is_mass(file: &SourceFile, lines: &[usize], at: usize) -> bool {
    let line = line_before(file, lines, at);
    if file.role == Role::Log {
        let head = &line[..line.floor_char_boundary(REACH)];
        let mut cells = head.split(',').map(str::trim);
        // The cell is whole only where a third one follows.
        return matches!(cells.nth(1), Some("weight" | "meal")) && cells.next().is_some();
    }
    let near = &line[line.ceil_char_boundary(line.len().saturating_sub(REACH))..];
    let key = near.rsplit_once('=').map_or("", |(before, _)| before.trim_end());
    key.ends_with("mass") || key.ends_with("meal")
}

/// Whether a place stands in a line that nobody is shown.
fn in_comment(file: &SourceFile, lines: &[usize], at: usize) -> bool {
    let line = line_before(file, lines, at);
    let line = &line[..line.floor_char_boundary(REACH)];
    line.trim_start().starts_with('#') && file.role != Role::Words && file.role != Role::Page
}
