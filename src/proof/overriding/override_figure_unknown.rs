//! An override of a figure that the species does not state.

use crate::finding::{Code, Finding, Severity, Subject, did_you_mean};
use crate::model::overriding::Outcome;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "override-figure-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Species,
    summary: "an override names a figure that its species does not state",
    page: include_str!("override_figure_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for entry in &evidence.model.overrides {
        let Outcome::NoFigure(stated) = &entry.outcome else { continue };
        let message = format!("`{}` states no figure `{}`", entry.species, entry.figure.name);
        let near = did_you_mean(&entry.figure.name, stated.iter().map(String::as_str));
        let help = near.unwrap_or_else(|| {
            "name it as words do, by its table and its field: humidity.ceiling, feeding.adult.every"
                .to_owned()
        });
        found.push(Finding::new(&CODE, entry.figure.place, message).help(help));
    }
}
