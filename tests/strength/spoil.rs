//! Ways of spoiling a file.

use proptest::prelude::*;

/// One way of spoiling a file: where, how far, and what.
#[derive(Debug, Clone)]
pub(crate) enum Spoil {
    Flip(usize, u8),
    Delete(usize, usize),
    Double(usize, usize),
    Splice(usize, usize, usize),
    Put(usize, &'static str),
}

/// What is put into files: figures beyond all bounds, and signs that mean something to one of the readers.
const PUT: [&str; 16] = [
    "1e308 C",
    "-1e308 C",
    "1e-308 g",
    "999999-01-01",
    "9999-12-31",
    "-9999-01-01",
    "\"",
    "'''",
    "[[",
    "]]",
    "{{",
    "}}",
    "\n\n",
    "\u{feff}",
    "9999999999999999999999999999999999999999",
    "é",
];

pub(crate) fn spoil() -> impl Strategy<Value = Spoil> {
    let at = 0..6000_usize;
    prop_oneof![
        (at.clone(), any::<u8>()).prop_map(|(at, byte)| Spoil::Flip(at, byte)),
        (at.clone(), 1..200_usize).prop_map(|(at, length)| Spoil::Delete(at, length)),
        (at.clone(), 1..400_usize).prop_map(|(at, length)| Spoil::Double(at, length)),
        (at.clone(), at.clone(), 1..400_usize)
            .prop_map(|(a, b, length)| Spoil::Splice(a, b, length)),
        (at, proptest::sample::select(&PUT[..])).prop_map(|(at, text)| Spoil::Put(at, text)),
    ]
}

/// Does one thing to a file; `other` lends bytes to a splice.
pub(crate) fn spoilt(mut bytes: Vec<u8>, other: &[u8], spoil: &Spoil) -> Vec<u8> {
    let within = |at: usize, length: usize| if length == 0 { 0 } else { at % length };
    match *spoil {
        Spoil::Flip(at, byte) => {
            let at = within(at, bytes.len());
            if let Some(found) = bytes.get_mut(at) {
                *found ^= byte;
            }
        }
        Spoil::Delete(at, length) => {
            let at = within(at, bytes.len());
            bytes.drain(at..(at + length).min(bytes.len()));
        }
        Spoil::Double(at, length) => {
            let at = within(at, bytes.len());
            let part = bytes[at..(at + length).min(bytes.len())].to_vec();
            bytes.splice(at..at, part);
        }
        Spoil::Splice(at, from, length) => {
            let (at, from) = (within(at, bytes.len()), within(from, other.len()));
            let part = other[from..(from + length).min(other.len())].to_vec();
            bytes.splice(at..at, part);
        }
        Spoil::Put(at, text) => {
            let at = within(at, bytes.len());
            bytes.splice(at..at, text.bytes());
        }
    }
    bytes
}
