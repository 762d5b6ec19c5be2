//! Any bytes in any file of a small site: findings, and no panic.
//!
//! The first byte chooses the file, the rest is what stands in it.

#![no_main]

#[path = "../../tests/strength/readers.rs"]
mod readers;

libfuzzer_sys::fuzz_target!(|data: &[u8]| {
    if let Some((first, bytes)) = data.split_first() {
        let (path, _) = readers::BASE[usize::from(*first) % readers::BASE.len()];
        readers::read_all(path, bytes.to_vec());
    }
});
