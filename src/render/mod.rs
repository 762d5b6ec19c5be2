//! Sheets to bytes: templates, Markdown, and pages closed up.
//!
//! A [`Look`] is made once from the templates and the theme; it then sets any number of sheets, on any number of threads.
//! Nothing here decides what a page says.

pub mod prose;

mod calendar;
mod square;
mod style;
mod theme;
mod tight;

use std::collections::BTreeMap;
use std::sync::OnceLock;

use tera::{Context, Tera};

use crate::finding::{Finding, Place};
use crate::language::{Catalogue, Value};
use crate::proof::TEMPLATE_BROKEN;
use crate::sheets::{Sheet, Wanted};
use crate::source::{Layer, Role, Sources};

pub use calendar::calendar;
pub use theme::theme;

/// The templates, ready to set sheets in any language that has labels.
pub struct Look {
    templates: Tera,
    /// The same with the labels of one language each, made when the first page in it is set.
    spoken: BTreeMap<&'static str, OnceLock<Tera>>,
}

/// One file of the output.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct File {
    /// Its path below the output folder, with forward slashes.
    pub path: String,
    /// What stands in it.
    pub bytes: Vec<u8>,
    /// What it was made from, as a number that changes with it; only of what is costly to make.
    pub made_from: Option<u64>,
}

impl File {
    /// A file that is made anew every time.
    pub fn new(path: impl Into<String>, bytes: Vec<u8>) -> File {
        File { path: path.into(), bytes, made_from: None }
    }
}

impl Look {
    /// Reads the templates: the site's own where it has them, the built-in ones elsewhere.
    ///
    /// # Errors
    /// A finding for every template that cannot be read.
    pub fn new(sources: &Sources) -> Result<Look, Vec<Finding>> {
        let templates = sources.nearest(Role::Template);
        let mut tera = Tera::default();
        speak(&mut tera, Catalogue::nearest(""));
        tera.register_filter("prose", prose_filter);
        tera.register_filter("line", |words: &str, _: tera::Kwargs, _: &tera::State<'_>| {
            prose::line(words)
        });
        // Unlike `capitalize`, it leaves the other letters as they are: a language may write its nouns with a capital.
        tera.register_filter("capital", |words: &str, _: tera::Kwargs, _: &tera::State<'_>| {
            crate::sheets::animal::capital(words)
        });
        tera.register_filter("square", |address: &str, _: tera::Kwargs, _: &tera::State<'_>| {
            square::path(address)
        });
        tera.register_filter(
            "square_side",
            |address: &str, _: tera::Kwargs, _: &tera::State<'_>| square::side(address).to_string(),
        );
        let all: Vec<(&str, &str)> =
            templates.iter().map(|(name, file)| (*name, file.text.as_str())).collect();
        match tera.add_raw_templates(all) {
            Ok(()) => {
                let spoken = Catalogue::tags().map(|tag| (tag, OnceLock::new()));
                Ok(Look { templates: tera, spoken: spoken.collect() })
            }
            Err(error) => Err(vec![broken(sources, &error)]),
        }
    }

    /// The templates with the labels of a language.
    fn in_language(&self, language: &str) -> &Tera {
        let catalogue = Catalogue::nearest(language);
        let Some(spoken) = self.spoken.get(catalogue.tag()) else { return &self.templates };
        spoken.get_or_init(|| {
            let mut tera = self.templates.clone();
            speak(&mut tera, catalogue);
            tera
        })
    }

    /// Sets a sheet in its template, with the labels of a language, and closes the page up.
    ///
    /// # Errors
    /// A finding where the template asks for something that the sheet does not have.
    pub fn set(
        &self,
        sources: &Sources,
        language: &str,
        wanted: &Wanted,
        sheet: &Sheet,
    ) -> Result<File, Finding> {
        let html = Context::from_serialize(sheet)
            .and_then(|context| self.in_language(language).render(wanted.template(), &context))
            .map_err(|error| broken(sources, &error))?;
        let path = wanted.path();
        let bytes = if path.ends_with(".html") { tight::tight(&html) } else { html.into_bytes() };
        Ok(File::new(path, bytes))
    }
}

/// Gives templates the labels of a language: `say(id="care-seconds")`, with whatever is to be put into it beside the name.
fn speak(tera: &mut Tera, catalogue: &'static Catalogue) {
    tera.register_function("say", move |given: tera::Kwargs, _: &tera::State<'_>| {
        let name: &str = given.must_get("id")?;
        let mut values: Vec<(&str, Value<'_>)> = Vec::new();
        for (key, value) in given.iter() {
            let Some(key) = key.as_str().filter(|key| *key != "id") else { continue };
            values.push((key, put(value)));
        }
        let said =
            if values.is_empty() { catalogue.say(name) } else { catalogue.put(name, values) };
        tera::TeraResult::Ok(said)
    });
}

/// A value of a template as a label takes it.
fn put(value: &tera::Value) -> Value<'_> {
    match (value.as_str(), value.as_i64()) {
        (Some(text), _) => text.into(),
        (None, Some(number)) => number.into(),
        (None, None) => value.to_string().into(),
    }
}

/// Words as HTML. In a document of many sheets, `prefix` keeps the anchors of one sheet apart from those of another, `from` is
/// where the sheet's own page stands, and `deeper` tells that the sheet's heading is not the first of the page.
fn prose_filter(
    words: &str,
    arguments: tera::Kwargs,
    _: &tera::State<'_>,
) -> tera::TeraResult<String> {
    let place = prose::Within {
        prefix: arguments.get("prefix")?.unwrap_or_default(),
        from: arguments.get("from")?.unwrap_or_default(),
        deeper: arguments.get("deeper")?.unwrap_or_default(),
    };
    Ok(prose::html_within(words, place))
}

/// Turns a template's error into a finding at the template, where it is one of the site's own.
fn broken(sources: &Sources, error: &tera::Error) -> Finding {
    let text = error.to_string();
    let named = sources
        .of(Role::Template)
        .filter(|file| file.layer == Layer::Own)
        .find(|file| text.contains(&file.name));
    let (message, place) = match error.kind() {
        tera::ErrorKind::SyntaxError(report) | tera::ErrorKind::RenderingError(report) => {
            let file = sources.named(Role::Template, report.filename());
            (
                report.message().to_owned(),
                file.map(|file| Place::new(file.id, report.span().range.clone())),
            )
        }
        _ => (
            text.lines().next().unwrap_or_default().to_owned(),
            named.map(|file| Place::start_of(file.id)),
        ),
    };
    let message = format!("the template does not work: {}", message.trim_end_matches('.'));
    let finding = Finding { place, ..Finding::of_site(&TEMPLATE_BROKEN, message) };
    finding.help("compare it with the built-in template of the same name")
}
