//! Catalogues: every language says all that English says, with the same values put in, and nothing else; what code and templates
//! ask for is there; and a site in several languages is in each of them what it is in its own.

#![expect(
    clippy::disallowed_methods,
    reason = "this test reads catalogues, source and compiled sites"
)]

#[path = "languages/labels.rs"]
mod labels;

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// A label: its text as it stands in the file, and the values that are put into it.
struct Label {
    text: String,
    values: BTreeSet<String>,
}

/// The texts of all files below a folder whose names end so.
fn texts(folder: &str, endings: &[&str]) -> Vec<(String, String)> {
    let walk = walkdir::WalkDir::new(root().join(folder)).sort_by_file_name().into_iter();
    let files = walk.map(|entry| entry.expect("the tree can be read").into_path());
    let named = files.filter(|path| {
        path.is_file() && endings.iter().any(|end| path.to_string_lossy().ends_with(end))
    });
    let read = |path: std::path::PathBuf| {
        let text = std::fs::read_to_string(&path).expect("UTF-8");
        (path.to_string_lossy().into_owned(), text)
    };
    named.map(read).collect()
}

/// The labels of a language.
fn catalogue(language: &str) -> BTreeMap<String, Label> {
    let mut labels = BTreeMap::new();
    for (file, text) in texts(&format!("languages/{language}"), &[".ftl"]) {
        let resource = fluent_syntax::parser::parse(text.as_str())
            .unwrap_or_else(|(_, faults)| panic!("{file}: {faults:?}"));
        for entry in resource.body {
            let Entry::Message(message) = entry else { continue };
            let pattern = message.value.expect("every label says something");
            let mut values = BTreeSet::new();
            let mut says = String::new();
            walk(&pattern, &mut values, &mut says);
            let name = message.id.name.to_owned();
            let twice = labels.insert(name, Label { text: says, values });
            assert!(twice.is_none(), "{file}: {} stands twice", message.id.name);
        }
    }
    labels
}

fn walk(pattern: &Pattern<&str>, values: &mut BTreeSet<String>, says: &mut String) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => says.push_str(value),
            PatternElement::Placeable { expression } => match expression {
                Expression::Inline(inline) => inline_value(inline, values, says),
                Expression::Select { selector, variants } => {
                    inline_value(selector, values, &mut String::new());
                    for variant in variants {
                        walk(&variant.value, values, says);
                        says.push(' ');
                    }
                }
            },
        }
    }
}

fn inline_value(inline: &InlineExpression<&str>, values: &mut BTreeSet<String>, says: &mut String) {
    match inline {
        InlineExpression::VariableReference { id } => {
            values.insert(id.name.to_owned());
            says.push('…');
        }
        InlineExpression::StringLiteral { value } => says.push_str(value),
        InlineExpression::FunctionReference { arguments, .. } => {
            for argument in &arguments.positional {
                inline_value(argument, values, says);
            }
        }
        _ => {}
    }
}
