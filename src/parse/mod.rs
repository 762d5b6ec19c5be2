//! TOML, CSV and Markdown into the model, field by field, every fault reported.
//!
//! Parsing never fails: a record with a fault is left out or kept without the faulty field, and the rest goes on.

pub mod codes;

mod animal;
mod bibliography;
mod figure;
mod housing;
pub mod import;
mod law;
pub mod log;
mod map;
mod moment;
mod overrides;
mod photo;
mod recording;
mod site;
mod species;
mod standard;
mod store;
mod table;
mod words;

use rayon::prelude::*;

use crate::finding::{Finding, Place};
use crate::model::species::Translation;
use crate::model::{Animal, Model};
use crate::source::{Layer, Role, SourceFile, Sources, in_language};

pub use map::map_of;
pub use photo::told as photo_fault;
pub use recording::recordings;
pub use site::libraries;
pub use words::is_safe_address;

/// Reads every text into the model; where several layers hold a name, the nearest is used.
pub fn parse(sources: &Sources) -> (Model, Vec<Finding>) {
    let mut model = Model::default();
    let mut findings = Vec::new();

    if let Some(file) = present(sources.named(Role::Site, "wardsheet"), &mut findings) {
        model.site = gather(&mut findings, site::site(file));
    }
    if let Some(file) = present(sources.named(Role::Private, "private"), &mut findings) {
        model.private = gather(&mut findings, site::private(file));
    }
    // Far layers first, so that a nearer entry of the same key takes the place of a farther one.
    let mut bibliographies: Vec<&SourceFile> = sources.of(Role::Bibliography).collect();
    bibliographies.sort_by_key(|file| std::cmp::Reverse(file.layer));
    for file in bibliographies {
        model.sources.extend(gather(&mut findings, bibliography::bibliography(file)));
    }
    for (name, file) in sources.nearest(Role::Standard) {
        let Some(file) = present(Some(file), &mut findings) else { continue };
        if let Some(standard) = gather(&mut findings, standard::standard(name, file)) {
            model.standards.insert(name.to_owned(), standard);
        }
    }
    for (name, file) in sources.nearest(Role::Law) {
        let Some(file) = present(Some(file), &mut findings) else { continue };
        if let Some(law) = gather(&mut findings, law::law(file)) {
            model.laws.insert(name.to_owned(), law);
        }
    }
    for words in &model.site.wordings {
        if let Some(law) = model.laws.get_mut(&words.named.name) {
            law.take_words(words.notice.clone(), words.release.clone());
        }
    }
    for (name, file) in sources.nearest(Role::Species) {
        let Some(file) = present(Some(file), &mut findings) else { continue };
        if let Some(mut read) = gather(&mut findings, species::species(file)) {
            read.words = sources
                .named(Role::Words, name)
                .map(|file| gather(&mut findings, words::words(file)));
            // What is built in is written in English, whatever the language of the site.
            if file.layer == Layer::BuiltIn && read.language.is_none() {
                read.language = Some("en".to_owned());
            }
            model.species.insert(name.to_owned(), read);
        }
    }
    for (name, file) in sources.nearest(Role::Words) {
        let (owner, Some(language)) = in_language(name) else { continue };
        let Some(species) = model.species.get_mut(owner) else { continue };
        let read = gather(&mut findings, words::translation(file));
        species.translations.insert(language.to_owned(), read);
    }
    model.overrides = gather(&mut findings, overrides::overrides(sources, &mut model.species));
    for (name, file) in sources.nearest(Role::Map) {
        let Some(file) = present(Some(file), &mut findings) else { continue };
        let map = gather(&mut findings, map::map_of(file.id, &file.text));
        model.maps.insert(name.to_owned(), map);
    }
    // There are far more animals than anything else: they are read on all cores, and taken up in the order of their names.
    let animals: Vec<_> = sources.nearest(Role::Animal).into_iter().collect();
    let read: Vec<_> =
        animals.par_iter().map(|(name, file)| (*name, with_log(sources, name, file))).collect();
    for (name, animal) in read {
        if let Some(animal) = gather(&mut findings, animal) {
            model.animals.insert(name.to_owned(), animal);
        }
    }
    findings.extend(recording::loggers(sources, &mut model));
    for (name, file) in sources.nearest(Role::Page) {
        if name.is_empty() {
            continue; // A place in the folder that could not be read stands in for a file.
        }
        // A page in a further language belongs to the page whose name it bears; the names come in order, the page first.
        match in_language(name) {
            (owner, Some(language)) if model.pages.contains_key(owner) => {
                let read = gather(&mut findings, words::page(owner, file));
                let (title, summary, words) = (Some(read.title), None, read.words);
                let read = Translation { title, summary, words };
                if let Some(page) = model.pages.get_mut(owner) {
                    page.translations.insert(language.to_owned(), read);
                }
            }
            _ => drop(
                model.pages.insert(name.to_owned(), gather(&mut findings, words::page(name, file))),
            ),
        }
    }
    let named: Vec<_> = photo::named(&model).collect();
    for photo in named {
        photo::measure(&photo, sources, &mut model.photos, &mut findings);
    }
    (model, findings)
}

/// Reads an animal with its log.
fn with_log(sources: &Sources, name: &str, file: &SourceFile) -> (Option<Animal>, Vec<Finding>) {
    let mut findings = Vec::new();
    let Some(file) = present(Some(file), &mut findings) else { return (None, findings) };
    let Some(mut animal) = gather(&mut findings, animal::animal(file)) else {
        return (None, findings);
    };
    if let Some(file) = sources.named(Role::Log, name) {
        animal.log = gather(&mut findings, log::log(file));
    }
    (Some(animal), findings)
}

fn gather<T>(findings: &mut Vec<Finding>, (made, found): (T, Vec<Finding>)) -> T {
    findings.extend(found);
    made
}

/// Passes a file on unless it is empty, which is reported.
fn present<'a>(
    file: Option<&'a SourceFile>,
    findings: &mut Vec<Finding>,
) -> Option<&'a SourceFile> {
    let file = file?;
    if file.text.trim().is_empty() && !matches!(file.role, Role::Private | Role::Site) {
        let message = format!("{} `{}` has nothing in it", file.role.noun(), file.name);
        let finding =
            Finding::new(&crate::source::codes::FILE_EMPTY, Place::start_of(file.id), message);
        let help = match file.role {
            Role::Species => {
                "begin with name = \"…\" and run proof again: it asks for the rest; or remove the file"
            }
            _ => "fill the file in or remove it",
        };
        findings.push(finding.help(help));
        return None;
    }
    Some(file)
}
