//! The links and pictures of a text.

use std::ops::Range as Bytes;

/// A link or a picture, `[label](target)` or `![label](target)`.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Link<'a> {
    /// Whether it is a picture.
    pub(super) is_picture: bool,
    /// The words between the square brackets.
    pub(super) label: &'a str,
    /// Where it leads.
    pub(super) target: &'a str,
    /// The bytes of the target.
    pub(super) span: Bytes<usize>,
}

/// Finds every link and picture whose target stands in round brackets behind it, in order.
pub(super) fn links(text: &str) -> Vec<Link<'_>> {
    let mut found = Vec::new();
    let mut from = 0;
    while let Some(joint) = text[from..].find("](").map(|at| from + at) {
        let start = joint + 2;
        from = start;
        let Some(close) = text[start..].find([')', '\n']).map(|at| start + at) else { break };
        let Some(open) = text[..joint].rfind('[') else { continue };
        // A title may stand behind the target, in quotes.
        let target = text[start..close].split_whitespace().next().unwrap_or("");
        let is_code = text[..open].rsplit('\n').next().unwrap_or("").matches('`').count() % 2 == 1;
        if !text[close..].starts_with(')') || is_code {
            continue;
        }
        let at = text[start..close].find(target).map_or(start, |at| start + at);
        found.push(Link {
            is_picture: text[..open].ends_with('!'),
            label: text[open + 1..joint].trim(),
            target,
            span: at..at + target.len(),
        });
    }
    found
}
