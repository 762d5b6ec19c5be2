//! The theme's files, copied into both parts of the output.

use crate::source::{Role, Sources};

use super::{File, style};

/// The theme: the site's own files where it has them, the built-in ones elsewhere, for the public and the private part. Style
/// sheets lose their comments on the way: they are read in `theme/`, not in the output.
pub fn theme(sources: &Sources) -> Vec<File> {
    let files = sources.nearest(Role::Theme);
    let copies = files.iter().flat_map(|(name, file)| {
        ["public", "private"].map(|part| {
            let bytes = if name.ends_with(".css") {
                style::smaller(&file.text).into_bytes()
            } else {
                sources.bytes(file).to_vec()
            };
            File::new(format!("{part}/assets/{name}"), bytes)
        })
    });
    copies.collect()
}
