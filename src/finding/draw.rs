//! Findings drawn for people: the line of the file, a mark under the fault, and the help.

use annotate_snippets::renderer::DecorStyle;
use annotate_snippets::{AnnotationKind, Group, Level, Renderer, Snippet};

use super::{FileId, Finding, Place, Severity};

/// A file as it is shown: the path that the user knows it by, and its text.
#[derive(Debug, Clone, Copy)]
pub struct Shown<'a> {
    /// The path, as shown.
    pub path: &'a str,
    /// The whole text.
    pub text: &'a str,
}

/// Draws findings, one after another, with a blank line between.
///
/// `colour` is for terminals only. `file` gives the path and text of a file by its number.
pub fn draw<'a>(
    findings: &'a [Finding],
    colour: bool,
    file: &dyn Fn(FileId) -> Shown<'a>,
) -> String {
    let renderer = if colour { Renderer::styled() } else { Renderer::plain() };
    let renderer = renderer.decor_style(DecorStyle::Ascii);
    let mut drawn = String::new();
    for finding in findings {
        drawn.push_str(&renderer.render(&[group(finding, file)]));
        drawn.push_str("\n\n");
    }
    drawn
}

fn group<'a>(finding: &'a Finding, file: &dyn Fn(FileId) -> Shown<'a>) -> Group<'a> {
    let level = match finding.severity {
        Severity::Error => Level::ERROR,
        Severity::Warning => Level::WARNING,
        Severity::Note => Level::NOTE,
    };
    let mut group =
        Group::with_title(level.primary_title(finding.message.as_str()).id(finding.code.name));
    if let Some(place) = finding.place {
        group = group.element(snippet(place, file(place.file), AnnotationKind::Primary, None));
    }
    for (place, why) in &finding.related {
        group =
            group.element(snippet(*place, file(place.file), AnnotationKind::Context, Some(why)));
    }
    if let Some(help) = &finding.help {
        group = group.element(Level::HELP.message(help.as_str()));
    }
    group
}

fn snippet<'a>(
    place: Place,
    shown: Shown<'a>,
    kind: AnnotationKind,
    label: Option<&'a str>,
) -> Snippet<'a, annotate_snippets::Annotation<'a>> {
    let span = printable_span(shown.text, place);
    Snippet::source(shown.text).path(shown.path).annotation(kind.span(span).label(label))
}

/// Keeps a span inside its text, on whole characters and on one line, so that a drawing always has something to mark.
fn printable_span(text: &str, place: Place) -> std::ops::Range<usize> {
    let whole = |mut byte: usize| {
        byte = byte.min(text.len());
        while !text.is_char_boundary(byte) {
            byte -= 1;
        }
        byte
    };
    let start = whole(place.start);
    let end = whole(place.end).max(start);
    let first_line_end = text[start..].find('\n').map_or(text.len(), |newline| start + newline);
    start..end.min(first_line_end.max(start))
}

/// Says how many findings there are and the one next step.
pub fn count(findings: &[Finding]) -> String {
    let of = |severity| findings.iter().filter(|finding| finding.severity == severity).count();
    let parts: Vec<String> =
        [(Severity::Error, "error"), (Severity::Warning, "warning"), (Severity::Note, "note")]
            .into_iter()
            .filter(|(severity, _)| of(*severity) > 0)
            .map(|(severity, word)| match of(severity) {
                1 => format!("1 {word}"),
                n => format!("{n} {word}s"),
            })
            .collect();
    if parts.is_empty() {
        return "no findings".to_owned();
    }
    // The first of the gravest: what comes after it may well follow from it.
    let gravest = findings.iter().map(|finding| finding.severity).max();
    let next = findings.iter().find(|finding| Some(finding.severity) == gravest);
    let next = next.map_or("", |finding| finding.code.name);
    format!("{}; `wardsheet explain {next}` says more", parts.join(", "))
}
