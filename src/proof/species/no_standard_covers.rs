//! A grown animal for which no standard in force gives a figure.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::source::{Layer, Role};

static CODE: Code = Code {
    name: "no-standard-covers",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Species,
    summary: "no standard in force gives a figure for the grown animal",
    page: include_str!("no_standard_covers.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for (name, species) in &evidence.model.species {
        let Some(figures) = evidence.figures.species.get(name) else { continue };
        if figures.enclosure.iter().any(|need| need.least.is_ok()) {
            continue;
        }
        // The library is not this site's to mend: its gaps are told where an animal lives with them.
        let own = evidence
            .sources
            .named(Role::Species, name)
            .is_some_and(|file| file.layer == Layer::Own);
        if !own
            && !evidence
                .model
                .animals
                .values()
                .any(|animal| animal.is_kept() && animal.species.name == *name)
        {
            continue;
        }
        let reasons = figures.enclosure.iter().filter_map(|need| {
            Some(format!("`{}`: {}", need.standard, need.least.as_ref().err()?))
        });
        let reason = reasons.reduce(|all, one| format!("{all}; {one}"));
        let message = match reason {
            Some(reason) => format!(
                "no standard in force says how large the enclosure of a grown {} must be: {reason}",
                species.name
            ),
            None => format!("no standard in force names {}", species.name),
        };
        let help = "name a standard and its row: [enclosure.de-1997] row = \"…\"; without one the page gives no size";
        found.push(Finding::new(&CODE, evidence.field(species.file, "name"), message).help(help));
    }
}
