//! A figure without a source where the site wants one.

use std::collections::BTreeSet;

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::source::{Layer, Role};

static CODE: Code = Code {
    name: "figure-without-source",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Species,
    summary: "a figure has no source, and the site asks for one",
    page: include_str!("figure_without_source.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let asked = &evidence.model.site.figures_need_source;
    if asked.is_empty() {
        return;
    }
    let kept = evidence.model.animals.values().filter(|animal| animal.is_kept());
    let lived_by: BTreeSet<&str> = kept.map(|animal| animal.species.name.as_str()).collect();
    for (name, species) in &evidence.model.species {
        // The built-in library is not this site's own: its figures count where an animal lives by them.
        let file = evidence.sources.named(Role::Species, name);
        let built_in = file.is_some_and(|file| file.layer == Layer::BuiltIn);
        if built_in && !lived_by.contains(name.as_str()) {
            continue;
        }
        for stated in species.stated() {
            let asks = asked.iter().find(|asks| {
                let rest = stated.name.strip_prefix(asks.name.as_str());
                asks.name == "all"
                    || rest.is_some_and(|rest| rest.is_empty() || rest.starts_with('.'))
            });
            let Some(asks) = asks.filter(|_| stated.sources.is_empty()) else { continue };
            let message = format!(
                "`{}` of {} has no source, and this site asks for one",
                stated.name, species.name
            );
            found.push(
                Finding::new(&CODE, stated.place, message)
                    .help("name one: { value = \"…\", source = \"…\" }; or take the figure out of figures_need_source")
                    .also_at(asks.place, "asked for here"),
            );
        }
    }
}
