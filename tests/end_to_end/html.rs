//! The elements of a page and their attributes, read as a browser reads them.

use std::collections::BTreeMap;

/// One opening tag.
#[derive(Debug)]
pub(crate) struct Element {
    pub(crate) name: String,
    pub(crate) attributes: BTreeMap<String, String>,
}

impl Element {
    pub(crate) fn attribute(&self, name: &str) -> Option<&str> {
        self.attributes.get(name).map(String::as_str)
    }
}

/// Every opening tag of a page, in order. Comments are passed over, and what a browser takes for plain text in a title, a
/// style or a text field.
pub(crate) fn elements(page: &str) -> Vec<Element> {
    let mut found = Vec::new();
    let mut rest = page;
    while let Some(start) = rest.find('<') {
        rest = &rest[start + 1..];
        if let Some(comment) = rest.strip_prefix("!--") {
            rest = comment.find("-->").map_or("", |end| &comment[end + 3..]);
        } else if rest.starts_with(|c: char| c.is_ascii_alphabetic()) {
            let element = element(&mut rest);
            if ["style", "title", "textarea"].contains(&element.name.as_str()) {
                let end = rest.to_ascii_lowercase().find(&format!("</{}", element.name));
                rest = end.map_or("", |end| &rest[end..]);
            }
            found.push(element);
        }
    }
    found
}

/// Reads a tag from after its `<` to after its `>`.
fn element(rest: &mut &str) -> Element {
    let name = take(rest, |c| !c.is_whitespace() && c != '>' && c != '/').to_ascii_lowercase();
    let mut attributes = BTreeMap::new();
    loop {
        take(rest, |c| c.is_whitespace() || c == '/');
        if rest.is_empty() || rest.starts_with('>') {
            *rest = rest.get(1..).unwrap_or("");
            return Element { name, attributes };
        }
        let key = take(rest, |c| !c.is_whitespace() && c != '=' && c != '>' && c != '/')
            .to_ascii_lowercase();
        take(rest, char::is_whitespace);
        let mut value = "";
        if let Some(after) = rest.strip_prefix('=') {
            *rest = after.trim_start();
            value = match rest.chars().next() {
                Some(quote @ ('"' | '\'')) => {
                    *rest = &rest[1..];
                    let value = take(rest, |c| c != quote);
                    *rest = rest.get(1..).unwrap_or("");
                    value
                }
                _ => take(rest, |c| !c.is_whitespace() && c != '>'),
            };
        } else if key.is_empty() {
            *rest = rest.get(1..).unwrap_or(""); // A stray sign.
        }
        attributes.entry(key).or_insert_with(|| decoded(value));
    }
}

fn take<'a>(rest: &mut &'a str, fits: impl Fn(char) -> bool) -> &'a str {
    let end = rest.find(|c| !fits(c)).unwrap_or(rest.len());
    let (taken, left) = rest.split_at(end);
    *rest = left;
    taken
}

/// Text with its character references put in. Only those are known that an address can hide behind.
pub(crate) fn decoded(text: &str) -> String {
    let mut plain = String::new();
    let mut rest = text;
    while let Some(start) = rest.find('&') {
        plain.push_str(&rest[..start]);
        rest = &rest[start + 1..];
        let end = rest.find(|c: char| !c.is_ascii_alphanumeric() && c != '#').unwrap_or(rest.len());
        let name = &rest[..end];
        let number =
            name.strip_prefix('#').and_then(|number| match number.strip_prefix(['x', 'X']) {
                Some(hexadecimal) => u32::from_str_radix(hexadecimal, 16).ok(),
                None => number.parse().ok(),
            });
        let named = match name {
            "amp" => Some('&'),
            "lt" => Some('<'),
            "gt" => Some('>'),
            "quot" => Some('"'),
            "colon" => Some(':'),
            "Tab" => Some('\t'),
            "NewLine" => Some('\n'),
            _ => number.and_then(char::from_u32),
        };
        match named {
            Some(character) => {
                plain.push(character);
                rest = rest[end..].strip_prefix(';').unwrap_or(&rest[end..]);
            }
            None => plain.push('&'),
        }
    }
    plain + rest
}

#[test]
fn tags_are_read_as_a_browser_reads_them() {
    let page = "<!doctype html><a href=x.html#a class='b c'>1 < 2</a><!-- <p id=no> --><IMG src=\"a&amp;b.svg\" hidden/><style>a<b</style><title><b></TITLE>";
    let found: Vec<String> = elements(page)
        .iter()
        .map(|element| format!("{} {:?}", element.name, element.attributes))
        .collect();
    let expected = [
        r##"a {"class": "b c", "href": "x.html#a"}"##,
        r#"img {"hidden": "", "src": "a&b.svg"}"#,
        "style {}",
        "title {}",
    ];
    assert_eq!(found, expected);
    assert_eq!(decoded("&#106;ava&#x73;cript&colon;a & b &copy;"), "javascript:a & b &copy;");
}

/// What a reader sees of the body of a page, white space as one space; no-break spaces stay.
pub(crate) fn text_of(page: &str) -> String {
    let body = page.find("<body").map_or(page, |at| &page[at..]);
    let mut text = String::new();
    let mut inside = false;
    for letter in body.chars() {
        match letter {
            '<' => inside = true,
            '>' if inside => {
                inside = false;
                text.push(' ');
            }
            _ if inside => {}
            _ => text.push(letter),
        }
    }
    let words = text.split([' ', '\n', '\t', '\r']).filter(|word| !word.is_empty());
    decoded(&words.collect::<Vec<_>>().join(" "))
}
