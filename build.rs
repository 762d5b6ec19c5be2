//! Has the crate built anew when a file is added to a folder that is held in the binary.

fn main() {
    for folder in ["species", "templates", "theme", "languages", "src/command/start"] {
        println!("cargo::rerun-if-changed={folder}");
    }
}
