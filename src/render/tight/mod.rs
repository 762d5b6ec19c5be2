//! A page with nothing in it that neither a reader nor a checker would miss, in one pass over its bytes.
//!
//! White space is closed up to one space and left out where the element beside it starts a line of its own, comments go, and
//! an attribute loses the quotes it does not need, and so does an end tag that HTML lets be left out. What stands in `pre`, `textarea`, `script` and `style` is kept as it is.
//! A general minifier builds a tree of every page; for pages from templates that are tidy already, that took longer than
//! everything else in a compile (`cargo bench --bench compile` shows it as part of the floor).

mod elements;

use elements::{AROUND, implied_before, is_alone, is_kept, is_void};

/// Closes a page up.
pub(super) fn tight(page: &str) -> Vec<u8> {
    let mut set = Closing {
        page: page.as_bytes(),
        at: 0,
        out: Vec::with_capacity(page.len()),
        space: false,
        glued: true,
    };
    while set.at < set.page.len() {
        if set.page[set.at] == b'<' { set.tag() } else { set.text() }
    }
    set.out
}

struct Closing<'a> {
    page: &'a [u8],
    at: usize,
    out: Vec<u8>,
    /// White space has been passed over and not set yet.
    space: bool,
    /// White space would show nothing here.
    glued: bool,
}

impl<'a> Closing<'a> {
    fn rest(&self) -> &'a [u8] {
        &self.page[self.at..]
    }

    /// Sets the space that was passed over, where it shows.
    fn settle(&mut self) {
        if self.space && !self.glued {
            self.out.push(b' ');
        }
        self.space = false;
    }

    /// Sets text up to the next tag.
    fn text(&mut self) {
        while self.at < self.page.len() && self.page[self.at] != b'<' {
            let rest = &self.page[self.at..];
            let blank = rest.iter().take_while(|byte| is_space(**byte)).count();
            if blank > 0 {
                self.space = true;
                self.at += blank;
                continue;
            }
            self.settle();
            self.glued = false;
            let rest = &self.page[self.at..];
            let plain = rest.iter().take_while(|byte| !ENDS_TEXT[usize::from(**byte)]).count();
            self.out.extend_from_slice(&rest[..plain]);
            self.at += plain;
            if plain == 0 && rest[0] == b'&' {
                self.at += reference(rest, &mut self.out, true);
            }
        }
    }

    fn tag(&mut self) {
        let rest = self.rest();
        if rest.starts_with(b"<!--") {
            self.at += find(rest, b"-->").map_or(rest.len(), |end| end + 3);
            return;
        }
        if rest.starts_with(b"<!") || rest.starts_with(b"<?") {
            let end = find(rest, b">").map_or(rest.len(), |end| end + 1);
            self.out.extend_from_slice(&self.page[self.at..self.at + end]);
            self.at += end;
            (self.space, self.glued) = (false, true);
            return;
        }
        let closes = rest.get(1) == Some(&b'/');
        let from = self.at + 1 + usize::from(closes);
        let length = self.page[from..].iter().take_while(|byte| is_of_name(**byte)).count();
        if length == 0 || !self.page[from].is_ascii_alphabetic() {
            // Not a tag: a sign of its own in the text.
            self.settle();
            self.glued = false;
            self.out.push(b'<');
            self.at += 1;
            return;
        }
        let name = Name::of(&self.page[from..from + length]);
        let name = name.letters();
        let alone = is_alone(name);
        if alone {
            self.space = false;
        } else {
            self.settle();
        }
        if closes && self.is_implied(name, from + length) {
            self.at = from + length + 1;
            self.glued = true;
            return;
        }
        self.out.extend_from_slice(&self.page[self.at..from + length]);
        self.at = from + length;
        self.attributes(is_void(name));
        self.glued = alone;
        if !closes && is_kept(name) {
            self.kept(name);
        }
    }

    /// Whether an end tag says nothing that the next tag does not say. Nothing but white space may stand between the two.
    fn is_implied(&self, name: &[u8], after: usize) -> bool {
        let Some(before) = implied_before(name) else { return false };
        let [b'>', rest @ ..] = &self.page[after..] else { return false };
        let blank = rest.iter().take_while(|byte| is_space(**byte)).count();
        let [b'<', rest @ ..] = &rest[blank..] else { return false };
        let (ends, rest) = match rest {
            [b'/', rest @ ..] => (true, rest),
            _ => (false, rest),
        };
        let next = rest.iter().take_while(|byte| is_of_name(**byte)).count();
        let is = |one: &&str| one.as_bytes() == &rest[..next];
        match (ends, name) {
            (true, b"dt") => false,
            (true, b"p") => AROUND.iter().any(is),
            (true, _) => next > 0,
            (false, _) => before.iter().any(is),
        }
    }

    /// Sets what stands between the name of a tag and its end.
    fn attributes(&mut self, void: bool) {
        let mut bare = false;
        loop {
            self.at += self.rest().iter().take_while(|byte| is_space(**byte)).count();
            match self.rest() {
                [] => return,
                [b'>', ..] => {
                    self.out.push(b'>');
                    self.at += 1;
                    return;
                }
                [b'/', b'>', ..] => {
                    if !void {
                        self.out.extend_from_slice(if bare { b" />" } else { b"/>" });
                    } else {
                        self.out.push(b'>');
                    }
                    self.at += 2;
                    return;
                }
                [b'/', ..] => self.at += 1,
                _ => bare = self.attribute(),
            }
        }
    }

    /// Sets one attribute, and tells whether its value stands without quotes.
    fn attribute(&mut self) -> bool {
        let ends = |byte: u8| is_space(byte) || matches!(byte, b'=' | b'>' | b'/');
        let name = 1 + self.rest()[1..].iter().take_while(|byte| !ends(**byte)).count();
        self.out.push(b' ');
        self.out.extend_from_slice(&self.page[self.at..self.at + name]);
        self.at += name;
        let blank = self.rest().iter().take_while(|byte| is_space(**byte)).count();
        if self.page.get(self.at + blank) != Some(&b'=') {
            return false;
        }
        self.at += blank + 1;
        self.at += self.rest().iter().take_while(|byte| is_space(**byte)).count();
        let rest = self.rest();
        let (value, length, mark) = match rest.first() {
            Some(mark @ (b'"' | b'\'')) => {
                let inner =
                    rest[1..].iter().position(|byte| byte == mark).unwrap_or(rest.len() - 1);
                (&rest[1..1 + inner], (inner + 2).min(rest.len()), *mark)
            }
            _ => {
                let inner =
                    rest.iter().take_while(|byte| !is_space(**byte) && **byte != b'>').count();
                (&rest[..inner], inner, b'"')
            }
        };
        if value.is_empty() {
            self.at += length;
            return false;
        }
        let needs_quotes =
            value.ends_with(b"/") || value.iter().any(|byte| NEEDS_QUOTES[usize::from(*byte)]);
        self.out.push(b'=');
        if needs_quotes {
            self.out.push(mark);
            let mut at = 0;
            while at < value.len() {
                let plain = value[at..].iter().take_while(|byte| **byte != b'&').count();
                self.out.extend_from_slice(&value[at..at + plain]);
                at += plain;
                if at < value.len() {
                    at += reference(&value[at..], &mut self.out, false);
                }
            }
            self.out.push(mark);
        } else {
            self.out.extend_from_slice(value);
        }
        self.at += length;
        !needs_quotes
    }

    /// Sets what an element holds as it stands, up to its end.
    fn kept(&mut self, name: &[u8]) {
        let rest = self.rest();
        let end = (0..rest.len())
            .find(|at| {
                rest[*at..].starts_with(b"</")
                    && rest
                        .get(at + 2..at + 2 + name.len())
                        .is_some_and(|found| found.eq_ignore_ascii_case(name))
            })
            .unwrap_or(rest.len());
        self.out.extend_from_slice(&self.page[self.at..self.at + end]);
        self.at += end;
    }
}

/// The name of an element in small letters, on the stack: a page has thousands of tags.
struct Name([u8; Name::LONGEST], usize);

impl Name {
    /// No element of which anything is known has a longer name.
    const LONGEST: usize = 10;

    fn of(written: &[u8]) -> Name {
        let mut letters = [0; Name::LONGEST];
        let length = if written.len() > Name::LONGEST { 0 } else { written.len() };
        letters[..length].copy_from_slice(&written[..length]);
        letters.make_ascii_lowercase();
        Name(letters, length)
    }

    /// The letters; none where the name is too long to be known.
    fn letters(&self) -> &[u8] {
        &self.0[..self.1]
    }
}

/// Sets a reference to a character, or the sign itself where that can stand for itself. Returns how much was read.
fn reference(rest: &[u8], out: &mut Vec<u8>, in_text: bool) -> usize {
    const PLAIN: [(&[u8], u8, bool); 4] = [
        (b"&#x27;", b'\'', true),
        (b"&#39;", b'\'', true),
        (b"&#x2F;", b'/', false),
        (b"&quot;", b'"', true),
    ];
    for (written, sign, only_in_text) in PLAIN {
        if rest.starts_with(written) && (in_text || !only_in_text) {
            out.push(sign);
            return written.len();
        }
    }
    out.push(b'&');
    1
}

/// Letters of text that end what can be copied as it stands.
const ENDS_TEXT: [bool; 256] = table(b" \n\t\r\x0c<&");
/// Letters that a value without quotes may not have.
const NEEDS_QUOTES: [bool; 256] = table(b" \n\t\r\x0c\"'=<>`&");

/// Some bytes among all: what is asked of every byte of a page is looked up.
const fn table(bytes: &[u8]) -> [bool; 256] {
    let mut table = [false; 256];
    let mut at = 0;
    while at < bytes.len() {
        table[bytes[at] as usize] = true;
        at += 1;
    }
    table
}

fn is_space(byte: u8) -> bool {
    matches!(byte, b' ' | b'\n' | b'\t' | b'\r' | b'\x0c')
}

fn is_of_name(byte: u8) -> bool {
    byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b':')
}

fn find(text: &[u8], wanted: &[u8]) -> Option<usize> {
    text.windows(wanted.len()).position(|window| window == wanted)
}

#[cfg(test)]
mod tests;
