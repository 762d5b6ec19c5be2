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

/// The longest label that is looked for, in bytes: what is longer is no link.
const LONGEST: usize = 4096;

/// Finds every link and picture whose target stands in round brackets behind it, in order.
pub(super) fn links(text: &str) -> Vec<Link<'_>> {
    let mut found = Vec::new();
    let mut from = 0;
    // The signs of code between the start of a line and a byte of it, so that no line is counted twice.
    let (mut counted, mut ticks) = (0, 0);
    // The next byte at which a target ends.
    let mut close = 0;
    while let Some(joint) = text[from..].find("](").map(|at| from + at) {
        let start = joint + 2;
        from = start;
        if close < start {
            let Some(next) = text[start..].find([')', '\n']) else { break };
            close = start + next;
        }
        let back = text.ceil_char_boundary(joint.saturating_sub(LONGEST));
        let Some(open) = text[back..joint].rfind('[').map(|at| back + at) else { continue };
        for byte in text.as_bytes().get(counted..open).unwrap_or_default() {
            match byte {
                b'\n' => ticks = 0,
                b'`' => ticks += 1,
                _ => {}
            }
        }
        counted = counted.max(open);
        if !text[close..].starts_with(')') || ticks % 2 == 1 {
            continue;
        }
        // A title may stand behind the target, in quotes.
        let target = text[start..close].split_whitespace().next().unwrap_or("");
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
