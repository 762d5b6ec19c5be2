//! Findings as one JSON document, for programs: a list in the order in which people are shown them.

use serde_json::{Value, json};

use super::draw::Shown;
use super::place::line_and_column;
use super::{FileId, Finding, Place};

/// Puts findings into one JSON list.
///
/// Each has `code`, `severity`, `message`, `help`, `file`, `line`, `column`, `end_line`, `end_column` and `related`. Lines and
/// columns are counted from 1, columns in characters, and the end is the column after the last character. What a finding does
/// not have is `null`; one that concerns the site as a whole has no place. `file` gives the path and text of a file by its
/// number.
pub fn json<'a>(findings: &[Finding], file: &dyn Fn(FileId) -> Shown<'a>) -> Value {
    findings.iter().map(|finding| entry(finding, file)).collect()
}

fn entry<'a>(finding: &Finding, file: &dyn Fn(FileId) -> Shown<'a>) -> Value {
    let mut entry = json!({
        "code": finding.code.name,
        "severity": finding.severity.word(),
        "message": finding.message,
        "help": finding.help,
    });
    put_place(&mut entry, finding.place, file);
    let related = finding.related.iter().map(|(place, why)| {
        let mut related = json!({ "message": why });
        put_place(&mut related, Some(*place), file);
        related
    });
    entry["related"] = related.collect();
    entry
}

fn put_place<'a>(entry: &mut Value, place: Option<Place>, file: &dyn Fn(FileId) -> Shown<'a>) {
    let shown = place.map(|place| (place, file(place.file)));
    let start = shown.map(|(place, shown)| line_and_column(shown.text, place.start));
    let end = shown.map(|(place, shown)| line_and_column(shown.text, place.end));
    entry["file"] = json!(shown.map(|(_, shown)| shown.path));
    entry["line"] = json!(start.map(|(line, _)| line));
    entry["column"] = json!(start.map(|(_, column)| column));
    entry["end_line"] = json!(end.map(|(line, _)| line));
    entry["end_column"] = json!(end.map(|(_, column)| column));
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::finding::{Code, Severity, Subject};

    static CODE: Code = Code {
        name: "too-warm",
        severity: Severity::Warning,
        safety: false,
        subject: Subject::Heat,
        summary: "it is too warm",
        page: "",
    };

    #[test]
    fn columns_count_characters_and_the_end_is_the_column_after_the_last() {
        // The degree sign is two bytes and one character.
        let text = "a = 1\nwarm = \"40 °C\" # too warm\n";
        let start = text.find('"').unwrap_or_default();
        let place = Place::new(FileId(0), start..text.find(" #").unwrap_or_default());
        let finding = Finding::new(&CODE, place, "it is 40 °C")
            .also_at(Place::new(FileId(0), 0..1), "see here");
        let found = json(&[finding], &|_| Shown { path: "animals/pip.toml", text });
        assert_eq!(
            found,
            json!([{
                "code": "too-warm", "severity": "warning", "message": "it is 40 °C", "help": null,
                "file": "animals/pip.toml", "line": 2, "column": 8, "end_line": 2, "end_column": 15,
                "related": [{
                    "message": "see here", "file": "animals/pip.toml",
                    "line": 1, "column": 1, "end_line": 1, "end_column": 2,
                }],
            }])
        );
    }

    #[test]
    fn a_finding_of_the_site_as_a_whole_has_no_place() {
        let found = json(&[Finding::of_site(&CODE, "x")], &|_| Shown { path: "", text: "" });
        assert_eq!(found[0]["file"], Value::Null);
        assert_eq!(found[0]["line"], Value::Null);
    }
}
