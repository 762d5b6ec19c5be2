//! An override with nothing below it to override.

use crate::finding::{Code, Finding, Severity, Subject, did_you_mean};
use crate::model::overriding::Outcome;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "override-species-unknown",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Species,
    summary: "an override stands above no library that defines its species",
    page: include_str!("override_species_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for entry in &evidence.model.overrides {
        let (message, help) = match &entry.outcome {
            Outcome::NoSpecies => {
                let known = evidence.model.species.keys().map(String::as_str);
                let near = did_you_mean(&entry.species, known);
                let help = near.unwrap_or_else(|| {
                    "name the file after the species file that it corrects: species/corn-snake.override.toml".to_owned()
                });
                (format!("no library defines the species `{}`", entry.species), help)
            }
            Outcome::WholeSpecies => (
                format!(
                    "`{}` is defined as a whole here or in a nearer folder, so that this entry has no effect",
                    entry.species
                ),
                "change the figure in the species file itself, or remove that file to follow the library again".to_owned(),
            ),
            _ => continue,
        };
        found.push(Finding::new(&CODE, entry.figure.place, message).help(help));
    }
}
