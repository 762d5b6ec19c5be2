//! Has the crate built anew when a file is added to a folder that is held in the binary, and tells it which crates it is made of.

#![expect(clippy::disallowed_methods, reason = "a build reads the list of its crates")]

use std::hash::{DefaultHasher, Hash as _, Hasher as _};

fn main() {
    // Another version of the crate that encodes pictures may encode them otherwise.
    let crates = std::fs::read("Cargo.lock").unwrap_or_default();
    let mut hasher = DefaultHasher::new();
    crates.hash(&mut hasher);
    println!("cargo::rerun-if-changed=Cargo.lock");
    println!("cargo::rustc-env=WARDSHEET_CRATES={:016x}", hasher.finish());
    for folder in ["species", "templates", "theme", "languages", "src/command/start"] {
        println!("cargo::rerun-if-changed={folder}");
    }
}
