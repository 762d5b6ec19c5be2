//! Style sheets made smaller without a change in what they say.

/// A style sheet without its comments and without the white space that means nothing.
///
/// What stands in quotation marks is left as it is. White space goes beside `{`, `}`, `;`, `,` and `>`, and after `:`, where CSS
/// gives it no meaning; before `:` it parts two selectors and stays.
///
/// Source: CSS Syntax Module Level 3, W3C 2021, section 4 (comments, white space and strings as tokens).
pub(super) fn smaller(css: &str) -> String {
    let mut small = String::with_capacity(css.len());
    let mut rest = css;
    while let Some(letter) = rest.chars().next() {
        if let Some(comment) = rest.strip_prefix("/*") {
            rest = comment.find("*/").map_or("", |end| &comment[end + 2..]);
            space(&mut small);
        } else if letter == '"' || letter == '\'' {
            let end = end_of_string(rest, letter);
            small.push_str(&rest[..end]);
            rest = &rest[end..];
        } else if letter.is_ascii_whitespace() {
            space(&mut small);
            rest = rest.trim_start_matches(|c: char| c.is_ascii_whitespace());
        } else {
            if matches!(letter, '{' | '}' | ';' | ',' | '>') && small.ends_with(' ') {
                small.pop();
            }
            if letter == '}' && small.ends_with(';') {
                small.pop();
            }
            small.push(letter);
            rest = &rest[letter.len_utf8()..];
        }
    }
    small
}

/// A single space, but for a place where it would mean nothing.
fn space(small: &mut String) {
    if !small.is_empty() && !small.ends_with([' ', '{', '}', ';', ',', '>', ':']) {
        small.push(' ');
    }
}

/// Where a text in quotation marks ends, after its last mark.
fn end_of_string(text: &str, mark: char) -> usize {
    let mut escaped = false;
    for (at, letter) in text.char_indices().skip(1) {
        match letter {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            _ if letter == mark => return at + 1,
            _ => {}
        }
    }
    text.len()
}

#[cfg(test)]
mod tests {
    use super::smaller;

    #[test]
    fn what_means_nothing_goes_and_what_means_something_stays() {
        let css = "/* Ink. */\n:root {\n  --face: Charter, \"Noto  Serif\";\n}\n\n.a > .b :is(h1, h2)::before { content: \" /* not */ \"; width: calc(1px + 2%); }\n";
        assert_eq!(
            smaller(css),
            ":root{--face:Charter,\"Noto  Serif\"}.a>.b :is(h1,h2)::before{content:\" /* not */ \";width:calc(1px + 2%)}"
        );
    }

    #[test]
    fn a_style_sheet_that_breaks_off_is_no_panic() {
        for css in ["/* no end", "a { content: \"no end", "é", "\"\\"] {
            smaller(css);
        }
    }
}
