//! Findings as a SARIF log, for the services that show them beside a change.
//!
//! Source: Static Analysis Results Interchange Format (SARIF) Version 2.1.0, OASIS Standard, 27 March 2020.

use serde_json::{Value, json};

use super::draw::Shown;
use super::place::line_and_column;
use super::{Code, FileId, Finding, Place, Severity};

/// The head of the path of a file that lies in the program and on no disk.
const BUILT_IN: &str = "built-in ";

/// Puts findings into one SARIF log with one run.
///
/// `codes` are all the codes there are, in the order of their names: they become the rules, so that a service can say what
/// was looked for as well as what was found. Lines and columns are counted from 1, columns in characters. Addresses of files
/// are relative to the site's folder; those of the built-in library have a base of their own, `BUILTIN`. `file` gives the
/// path and text of a file by its number.
pub fn sarif<'a>(
    findings: &[Finding],
    codes: &[&Code],
    file: &dyn Fn(FileId) -> Shown<'a>,
) -> Value {
    let rules: Vec<Value> = codes.iter().map(|code| rule(code)).collect();
    let results: Vec<Value> = findings.iter().map(|finding| result(finding, codes, file)).collect();
    json!({
        "$schema": "https://json.schemastore.org/sarif-2.1.0.json",
        "version": "2.1.0",
        "runs": [{
            "tool": { "driver": {
                "name": "wardsheet",
                "version": env!("CARGO_PKG_VERSION"),
                "rules": rules,
            } },
            "columnKind": "unicodeCodePoints",
            "originalUriBaseIds": {
                "BUILTIN": { "description": { "text": "The library that is built into wardsheet." } },
            },
            "results": results,
        }],
    })
}

fn level(severity: Severity) -> &'static str {
    match severity {
        Severity::Error => "error",
        Severity::Warning => "warning",
        Severity::Note => "note",
    }
}

fn rule(code: &Code) -> Value {
    let page = code.page.trim();
    let first = page.split("\n\n").next().unwrap_or(page).replace('\n', " ");
    let mut tags = vec![code.subject.heading().to_lowercase()];
    if code.safety {
        tags.push("safety".to_owned());
    }
    json!({
        "id": code.name,
        "shortDescription": { "text": code.summary },
        "fullDescription": { "text": first },
        "help": { "text": page, "markdown": page },
        "defaultConfiguration": { "level": level(code.severity) },
        "properties": { "tags": tags },
    })
}

fn result<'a>(finding: &Finding, codes: &[&Code], file: &dyn Fn(FileId) -> Shown<'a>) -> Value {
    let text = match &finding.help {
        Some(help) => format!("{}\nhelp: {help}", finding.message),
        None => finding.message.clone(),
    };
    let mut result = json!({
        "ruleId": finding.code.name,
        "level": level(finding.severity),
        "message": { "text": text },
    });
    if let Some(index) = codes.iter().position(|code| code.name == finding.code.name) {
        result["ruleIndex"] = json!(index);
    }
    // A result without a place is allowed, one with an empty list of related places would only be noise.
    let places: Vec<Value> = finding.place.iter().map(|place| location(*place, file)).collect();
    result["locations"] = places.into();
    if !finding.related.is_empty() {
        let related = finding.related.iter().enumerate().map(|(number, (place, why))| {
            let mut location = location(*place, file);
            location["id"] = json!(number + 1);
            location["message"] = json!({ "text": why });
            location
        });
        result["relatedLocations"] = related.collect();
    }
    result
}

fn location<'a>(place: Place, file: &dyn Fn(FileId) -> Shown<'a>) -> Value {
    let shown = file(place.file);
    let (start_line, start_column) = line_and_column(shown.text, place.start);
    let (end_line, end_column) = line_and_column(shown.text, place.end);
    let artifact = match shown.path.strip_prefix(BUILT_IN) {
        Some(path) => json!({ "uri": relative_address(path), "uriBaseId": "BUILTIN" }),
        // A library may lie anywhere on the disk.
        None if shown.path.starts_with('/') => {
            json!({ "uri": format!("file://{}", relative_address(shown.path)) })
        }
        None => json!({ "uri": relative_address(shown.path) }),
    };
    json!({ "physicalLocation": {
        "artifactLocation": artifact,
        "region": {
            "startLine": start_line,
            "startColumn": start_column,
            "endLine": end_line,
            "endColumn": end_column,
        },
    } })
}

/// A path as a relative reference: every byte but letters, digits and `-._~/` is written as `%` and two digits.
///
/// Source: RFC 3986 (2005), sections 2.1 and 2.3.
fn relative_address(path: &str) -> String {
    let mut address = String::new();
    for byte in path.bytes() {
        match byte {
            b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' | b'-' | b'.' | b'_' | b'~' | b'/' => {
                address.push(char::from(byte))
            }
            _ => address.push_str(&format!("%{byte:02X}")),
        }
    }
    address
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_with_spaces_and_accents_is_an_address() {
        assert_eq!(relative_address("club files/é.toml"), "club%20files/%C3%A9.toml");
    }

    #[test]
    fn a_file_of_the_program_itself_has_a_base_of_its_own() {
        let shown = |_| Shown { path: "built-in species/corn-snake.toml", text: "x" };
        let found = location(Place::start_of(FileId(0)), &shown);
        let artifact = &found["physicalLocation"]["artifactLocation"];
        assert_eq!(artifact["uri"], "species/corn-snake.toml");
        assert_eq!(artifact["uriBaseId"], "BUILTIN");
    }
}
