//! The built-in library, templates and theme, held in the binary.

use include_dir::{Dir, include_dir};

use super::{Layer, Role, Sources};

static SPECIES: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/species");
static TEMPLATES: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/templates");
static THEME: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/theme");

/// Adds the built-in species, standards and bibliography.
pub fn add_species(sources: &mut Sources) {
    add(sources, "species", &SPECIES);
}

/// Adds the built-in templates and theme.
pub fn add_look(sources: &mut Sources) {
    add(sources, "templates", &TEMPLATES);
    add(sources, "theme", &THEME);
}

fn add(sources: &mut Sources, folder: &str, dir: &Dir<'_>) {
    let mut files: Vec<_> = dir.files().collect();
    files.sort_by_key(|file| file.path());
    for file in files {
        let inside = format!("{folder}/{}", file.path().to_string_lossy().replace('\\', "/"));
        let Some((role, name)) = role_of(&inside) else { continue };
        let name = name.to_owned();
        let shown = format!("built-in {inside}");
        if is_face(&inside) {
            sources.add_face(shown, &name, Layer::BuiltIn, file.contents().to_vec());
            continue;
        }
        let Some(text) = file.contents_utf8() else { continue };
        sources.add(shown, role, &name, Layer::BuiltIn, text.to_owned());
    }
    let mut folders: Vec<_> = dir.dirs().collect();
    folders.sort_by_key(|folder| folder.path());
    for inner in folders {
        add(sources, folder, inner);
    }
}

/// How the name of a file ends that replaces single figures of a species.
const OVERRIDE: &str = ".override";
/// Whether a file of that path is a face, which is no text.
pub(super) fn is_face(path: &str) -> bool {
    path.ends_with(".woff2")
}

/// The built-in templates and theme as they stand: path and bytes, by path.
pub fn look() -> Vec<(String, &'static [u8])> {
    let mut files = Vec::new();
    for (folder, dir) in [("templates", &TEMPLATES), ("theme", &THEME)] {
        files.extend(dir.files().map(|file| {
            let path = format!("{folder}/{}", file.path().to_string_lossy().replace('\\', "/"));
            (path, file.contents())
        }));
    }
    files.retain(|(path, _)| role_of(path).is_some());
    files.sort();
    files
}

/// The name of words without the language that ends it, and that language: `boa` and `de` of `boa.de`.
///
/// # Examples
/// ```
/// use wardsheet::source::in_language;
/// assert_eq!(in_language("boa.de"), ("boa", Some("de")));
/// assert_eq!(in_language("boa.pt-BR"), ("boa", Some("pt-BR")));
/// assert_eq!(in_language("boa"), ("boa", None));
/// ```
pub fn in_language(name: &str) -> (&str, Option<&str>) {
    match name.rsplit_once('.') {
        Some((owner, tag)) if is_language_tag(tag) => (owner, Some(tag)),
        _ => (name, None),
    }
}

/// Whether a text has the form of a language's tag: two or three letters, and those of a place or a script behind a stroke.
pub fn is_language_tag(text: &str) -> bool {
    let letters = |part: &str, lengths: std::ops::RangeInclusive<usize>| {
        lengths.contains(&part.len()) && part.chars().all(|c| c.is_ascii_alphabetic())
    };
    let (language, place) = text.split_once('-').unwrap_or((text, "AA"));
    letters(language, 2..=3) && letters(place, 2..=4)
}

/// Tells from a path inside a site or library what a file is for, and its name.
///
/// Species and animals may be sorted into folders of their own under `species/` and `animals/`.
pub fn role_of(path: &str) -> Option<(Role, &str)> {
    let (folder, rest) = path.split_once('/').unwrap_or(("", path));
    let file = rest.rsplit('/').next().unwrap_or(rest);
    let (stem, ending) = file.rsplit_once('.').unwrap_or((file, ""));
    let role = match (folder, ending) {
        ("", "toml") if file == "wardsheet.toml" => Role::Site,
        ("", "toml") if file == "private.toml" => Role::Private,
        ("", "toml") | ("species", "toml") if rest == "sources.toml" => Role::Bibliography,
        ("species", "toml") if rest.starts_with("standards/") => Role::Standard,
        ("species", "toml") if rest.starts_with("law/") => Role::Law,
        ("species", "toml") if stem.ends_with(OVERRIDE) => {
            return Some((Role::Override, stem.trim_end_matches(OVERRIDE)));
        }
        ("species", "toml") => Role::Species,
        ("species", "md") => Role::Words,
        ("animals", "toml") => Role::Animal,
        ("animals", "csv") => Role::Log,
        ("readings", "csv" | "txt") => Role::Readings,
        ("maps", "toml") => Role::Map,
        ("pages", "md") => Role::Page,
        ("templates", "html" | "xml") => return Some((Role::Template, file)),
        ("theme", "css" | "svg" | "txt" | "woff2") => return Some((Role::Theme, file)),
        _ => return None,
    };
    Some((role, stem))
}
