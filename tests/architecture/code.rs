//! Rust text as words and signs: enough to see which paths it names.

/// Rust text with its comments, and if wished its strings, blanked out. Lines keep their numbers.
pub(crate) fn blanked(text: &str, strings: bool) -> String {
    let bytes = text.as_bytes();
    let mut kept = Vec::with_capacity(bytes.len());
    let mut at = 0;
    while at < bytes.len() {
        let rest = &text[at..];
        let raw = rest.trim_start_matches('b');
        let hashes =
            raw.strip_prefix('r').map_or(0, |raw| raw.len() - raw.trim_start_matches('#').len());
        let word_before =
            at > 0 && (bytes[at - 1].is_ascii_alphanumeric() || bytes[at - 1] == b'_');
        let (length, hide) = if rest.starts_with("//") {
            (rest.find('\n').unwrap_or(rest.len()), true)
        } else if rest.starts_with("/*") {
            (rest.find("*/").map_or(rest.len(), |end| end + 2), true)
        } else if !word_before
            && raw.strip_prefix('r').is_some_and(|raw| raw[hashes..].starts_with('"'))
        {
            let opening = rest.len() - raw.len() + 2 + hashes;
            let closing = format!("\"{}", "#".repeat(hashes));
            let end = rest[opening..]
                .find(&closing)
                .map_or(rest.len(), |end| opening + end + closing.len());
            (end, strings)
        } else if rest.starts_with('"') {
            let mut end = 1;
            while end < rest.len() && rest.as_bytes()[end] != b'"' {
                end += if rest.as_bytes()[end] == b'\\' { 2 } else { 1 };
            }
            ((end + 1).min(rest.len()), strings)
        } else if let Some(character) = rest.strip_prefix('\'') {
            let mut chars = character.char_indices();
            match (chars.next(), chars.next()) {
                (Some((_, '\\')), _) => {
                    (character[2..].find('\'').map_or(1, |end| end + 4), strings)
                }
                (Some(_), Some((end, '\''))) => (end + 2, strings),
                _ => (1, false), // A lifetime.
            }
        } else {
            (rest.chars().next().map_or(1, char::len_utf8), false)
        };
        let blank = |byte: &u8| if hide && *byte != b'\n' { b' ' } else { *byte };
        kept.extend(bytes[at..at + length].iter().map(blank));
        at += length;
    }
    String::from_utf8(kept).expect("whole characters are blanked out")
}

/// The words and signs of a text, each with the number of its line; `::` is one sign.
pub(crate) fn tokens(code: &str) -> Vec<(usize, &str)> {
    let mut found = Vec::new();
    for (number, line) in code.lines().enumerate() {
        let mut rest = line.trim_start();
        while let Some(first) = rest.chars().next() {
            let is_word = |c: char| c.is_alphanumeric() || c == '_';
            let length = match first {
                first if is_word(first) => rest.find(|c| !is_word(c)).unwrap_or(rest.len()),
                ':' if rest.starts_with("::") => 2,
                first => first.len_utf8(),
            };
            found.push((number + 1, &rest[..length]));
            rest = rest[length..].trim_start();
        }
    }
    found
}

/// What a path leads to from `start`, the token after its `::`: one name, or every first name of a braced group.
pub(crate) fn led_to<'a>(tokens: &[(usize, &'a str)], start: usize) -> Vec<&'a str> {
    let text = |at: usize| tokens.get(at).map_or("", |(_, text)| *text);
    if text(start) != "{" {
        return vec![text(start)];
    }
    let (mut depth, mut names) = (0, Vec::new());
    for at in start..tokens.len() {
        match text(at) {
            "{" => depth += 1,
            "}" if depth == 1 => break,
            "}" => depth -= 1,
            name if depth == 1 && matches!(text(at - 1), "{" | ",") => names.push(name),
            _ => {}
        }
    }
    names
}
