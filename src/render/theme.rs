//! The theme's files, copied into both parts of the output.

use crate::source::{Role, Sources};

use super::File;

/// The theme: the site's own files where it has them, the built-in ones elsewhere, for the public and the private part.
pub fn theme(sources: &Sources) -> Vec<File> {
    let files = sources.nearest(Role::Theme);
    let copies = files.iter().flat_map(|(name, file)| {
        ["public", "private"].map(|part| File {
            path: format!("{part}/assets/{name}"),
            bytes: file.text.clone().into_bytes(),
        })
    });
    copies.collect()
}
