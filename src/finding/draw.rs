//! Findings drawn for people: the line of the file, a mark under the fault, and the help.

use annotate_snippets::renderer::DecorStyle;
use annotate_snippets::{AnnotationKind, Element, Group, Level, Origin, Renderer, Snippet};

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

/// The longest line that is drawn, in bytes. Of one that is longer only the place is told.
const LONGEST_LINE: usize = 2000;

fn snippet<'a>(
    place: Place,
    shown: Shown<'a>,
    kind: AnnotationKind,
    label: Option<&'a str>,
) -> Element<'a> {
    let text = shown.text;
    let span = printable_span(text, place);
    let (start, end) = line_of(text, span.start);
    let number = text.as_bytes()[..start].iter().filter(|byte| **byte == b'\n').count() + 1;
    if end - start > LONGEST_LINE {
        let column = text[start..span.start].chars().count() + 1;
        return Origin::path(shown.path).line(number).char_column(column).into();
    }
    // The line alone: a whole file for each of its findings would take the square of its size.
    let annotation = kind.span(span.start - start..span.end - start).label(label);
    Snippet::source(&text[start..end])
        .line_start(number)
        .path(shown.path)
        .annotation(annotation)
        .into()
}

/// Where the line of a byte begins and ends, its line end included.
fn line_of(text: &str, byte: usize) -> (usize, usize) {
    let start = text[..byte].rfind('\n').map_or(0, |newline| newline + 1);
    let end = text[byte..].find('\n').map_or(text.len(), |newline| byte + newline + 1);
    (start, end)
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
