//! The labels of a language.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use include_dir::{Dir, include_dir};

/// What is put into a label: text, or a number where the label has to agree with it.
pub use fluent_bundle::FluentValue as Value;

static LANGUAGES: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/languages");

/// The language whose catalogue has every label, and which stands in for the others.
const FALLBACK: &str = "en";

/// The labels of one language.
pub struct Catalogue {
    tag: String,
    bundle: FluentBundle<FluentResource>,
    pub(super) decimal_mark: String,
    pub(super) group_mark: String,
}

impl std::fmt::Debug for Catalogue {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.debug_tuple("Catalogue").field(&self.tag).finish()
    }
}

static CATALOGUES: LazyLock<BTreeMap<String, Catalogue>> = LazyLock::new(|| {
    let named = |folder: &'static Dir<'static>| {
        let tag = folder.path().to_string_lossy().into_owned();
        let texts = folder.files().filter_map(|file| file.contents_utf8());
        (tag.clone(), Catalogue::new(&tag, texts))
    };
    LANGUAGES.dirs().map(named).collect()
});

/// The first part of a tag: `de` of `de-AT`.
pub fn primary(tag: &str) -> &str {
    tag.split(['-', '_']).next().unwrap_or(tag)
}

/// Whether two tags name the same language, wherever it is spoken: `de` and `de-AT`.
pub fn is_same(one: &str, other: &str) -> bool {
    primary(one).eq_ignore_ascii_case(primary(other))
}

impl Catalogue {
    fn new<'t>(tag: &str, texts: impl Iterator<Item = &'t str>) -> Catalogue {
        // What is wrong with a catalogue is found by `tests/languages.rs`; the rest of it still serves.
        let language = tag.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
        bundle.set_use_isolating(false);
        for text in texts {
            let resource = match FluentResource::try_new(text.to_owned()) {
                Ok(resource) | Err((resource, _)) => resource,
            };
            let _ = bundle.add_resource(resource);
        }
        let mut catalogue = Catalogue {
            tag: tag.to_owned(),
            bundle,
            decimal_mark: String::new(),
            group_mark: String::new(),
        };
        catalogue.decimal_mark = catalogue.find("number-decimal-mark").unwrap_or_default();
        catalogue.group_mark = catalogue.find("number-group-mark").unwrap_or_default();
        catalogue
    }

    /// The catalogue of a language: of that very tag, or of its first part.
    pub fn of(tag: &str) -> Option<&'static Catalogue> {
        CATALOGUES.get(tag).or_else(|| CATALOGUES.get(&primary(tag).to_lowercase()))
    }

    /// The catalogue of a language, or the English one where there is none.
    pub fn nearest(tag: &str) -> &'static Catalogue {
        static NONE: LazyLock<Catalogue> =
            LazyLock::new(|| Catalogue::new(FALLBACK, [].into_iter()));
        Catalogue::of(tag).or_else(|| Catalogue::of(FALLBACK)).unwrap_or(&NONE)
    }

    /// The tags of all languages that have a catalogue.
    pub fn tags() -> impl Iterator<Item = &'static str> {
        CATALOGUES.keys().map(String::as_str)
    }

    /// The tag of its language.
    pub fn tag(&self) -> &str {
        &self.tag
    }

    /// Whether it is the language in which figures are printed.
    pub(super) fn is_as_printed(&self) -> bool {
        self.tag == FALLBACK
    }

    /// A label, where the catalogue has it.
    pub fn find(&self, name: &str) -> Option<String> {
        self.format(name, None)
    }

    fn format(&self, name: &str, values: Option<&FluentArgs<'_>>) -> Option<String> {
        let pattern = self.bundle.get_message(name)?.value()?;
        let mut faults = Vec::new();
        Some(self.bundle.format_pattern(pattern, values, &mut faults).into_owned())
    }

    /// A label; the English one where this catalogue lacks it, and its name where both do.
    pub fn say(&self, name: &str) -> String {
        self.found(name, None)
    }

    /// A label with what is put into it.
    ///
    /// # Examples
    /// ```
    /// use wardsheet::language::Catalogue;
    /// let german = Catalogue::of("de-AT").expect("there is a German catalogue");
    /// assert_eq!(german.tell("date-long", [("day", 2.into()), ("month", "Mai".into()), ("year", "2026".into())]), "2. Mai 2026");
    /// ```
    pub fn tell<'v, const N: usize>(
        &self,
        name: &str,
        values: [(&'v str, Value<'v>); N],
    ) -> String {
        self.put(name, values)
    }

    /// The same, with any number of values.
    pub fn put<'v>(
        &self,
        name: &str,
        values: impl IntoIterator<Item = (&'v str, Value<'v>)>,
    ) -> String {
        let values: FluentArgs<'v> = values.into_iter().collect();
        self.found(name, Some(&values))
    }

    fn found(&self, name: &str, values: Option<&FluentArgs<'_>>) -> String {
        let found = self.format(name, values);
        found
            .or_else(|| Catalogue::nearest(FALLBACK).format(name, values))
            .unwrap_or_else(|| name.to_owned())
    }
}
