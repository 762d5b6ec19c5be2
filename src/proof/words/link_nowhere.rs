//! A link that leads nowhere.

use crate::finding::{Code, Finding, Place, Severity, Subject, did_you_mean};
use crate::model::species::Words;
use crate::proof::{Evidence, Rule};
use crate::source::name::suggest;

use super::headings::headings;
use super::links::links;

static CODE: Code = Code {
    name: "link-nowhere",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Words,
    summary: "a link leads nowhere",
    page: include_str!("link_nowhere.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let model = evidence.model;
    for species in model.species.values() {
        for words in species.all_words() {
            check(evidence, words, true, found);
        }
    }
    for page in model.pages.values() {
        for words in page.all_words() {
            check(evidence, words, false, found);
        }
    }
}

fn check(evidence: &Evidence<'_>, words: &Words, of_species: bool, found: &mut Vec<Finding>) {
    let model = evidence.model;
    for link in links(&words.text) {
        if link.is_picture {
            continue;
        }
        let place = Place::new(words.file, link.span.clone());
        let mut report = |message: String, help: Option<String>| {
            let help = help.unwrap_or_else(|| "correct the link or take it out".to_owned());
            found.push(Finding::new(&CODE, place, message).help(help));
        };
        if link.target.is_empty() {
            report(format!("the link `{}` has no target", link.label), None);
        } else if let Some(anchor) = link.target.strip_prefix('#') {
            let titles: Vec<String> =
                headings(&words.text).iter().map(|heading| suggest(heading.title)).collect();
            if !anchor.is_empty() && !titles.iter().any(|title| title == anchor) {
                let near = did_you_mean(anchor, titles.iter().map(String::as_str));
                report(format!("there is no section `#{anchor}` in this text"), near);
            }
        } else if let Some(name) = leads_to(link.target, "species", of_species) {
            if !model.species.contains_key(name) {
                let near = did_you_mean(name, model.species.keys().map(String::as_str));
                report(
                    format!("this link leads to the species `{name}`, which there is not"),
                    near,
                );
            }
        } else if let Some(name) = leads_to(link.target, "animals", false)
            && !model.animals.get(name).is_some_and(|animal| animal.publish)
        {
            report(
                format!("this link leads to the animal `{name}`, which has no public page"),
                None,
            );
        }
    }
}

/// The name of the page that a relative link leads to: `../NAME/` from one species to another, `…/species/NAME/` from elsewhere.
fn leads_to<'a>(target: &'a str, folder: &str, from_sister: bool) -> Option<&'a str> {
    if target.contains(':') || target.starts_with('/') {
        return None;
    }
    let path = target.split(['#', '?']).next().unwrap_or("");
    let steps: Vec<&str> =
        path.split('/').filter(|step| !step.is_empty() && *step != ".").collect();
    let name = match steps.as_slice() {
        [.., parent, name] if *parent == folder => name,
        [.., parent, name, "index.html" | "card.html"] if *parent == folder => name,
        ["..", name] | ["..", name, "index.html" | "card.html"] if from_sister => name,
        _ => return None,
    };
    (!name.contains('.')).then_some(name)
}
