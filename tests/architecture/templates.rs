//! Templates work nothing out, and let no text through unescaped that could run in a reader's browser.

/// Every break of that in one template.
pub(crate) fn breaks(file: &str, text: &str) -> Vec<String> {
    let mut found = Vec::new();
    for (number, tag) in tags(text) {
        let words: Vec<&str> = tag.split_whitespace().collect();
        let is_part = tag.trim_start().starts_with('<');
        let sign = words.iter().find(|word| ["+", "-", "*", "/", "%"].contains(word));
        if let (Some(sign), false) = (sign, is_part) {
            found.push(format!("{file}:{number}: works something out with `{sign}`"));
        }
        let filters: Vec<&str> = tag.split('|').map(str::trim).collect();
        for pair in filters.windows(2) {
            let name = pair[0].split('(').next().unwrap_or_default();
            if pair[1].starts_with("safe") && !["prose", "line"].contains(&name) {
                found.push(format!("{file}:{number}: `safe` stands behind `{}`", pair[0]));
            }
        }
        if words.first() == Some(&"autoescape") {
            found.push(format!("{file}:{number}: turns escaping off"));
        }
    }
    found
}

/// What stands inside `{{ }}` and `{% %}`, without its quoted texts, and the number of its line.
fn tags(text: &str) -> Vec<(usize, String)> {
    let mut found = Vec::new();
    let mut from = 0;
    while let Some(start) = text[from..].find('{').map(|start| from + start) {
        let closing = match text.as_bytes().get(start + 1) {
            Some(b'{') => "}}",
            Some(b'%') => "%}",
            Some(b'#') => "#}",
            _ => {
                from = start + 1;
                continue;
            }
        };
        let end = text[start..].find(closing).map_or(text.len(), |end| start + end);
        if closing != "#}" {
            let inside = text[start + 2..end].trim_matches('-');
            let plain: String = inside.split('"').step_by(2).collect();
            found.push((text[..start].lines().count().max(1), plain));
        }
        from = end;
    }
    found
}
