//! A care sheet without something that the law of a jurisdiction asks for.

use crate::figures::owed::{in_force, of_species};
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::law::Item;
use crate::proof::{Evidence, Rule};

use super::article;

static CODE: Code = Code {
    name: "care-sheet-item-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Law,
    summary: "a care sheet lacks something that the law of a jurisdiction asks for",
    page: include_str!("care_sheet_item_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for law in in_force(evidence.model) {
        for (key, species) in &evidence.model.species {
            let Some(of) = evidence.figures.species.get(key) else { continue };
            let mut lacking = Vec::new();
            let mut fields = Vec::new();
            // A wording that the law sets is one matter for the whole site, and a rule of its own.
            let items = law.law.items.iter().filter(|(item, _)| **item != Item::NoRelease);
            for (item, ask) in items {
                let missing = of_species(*item, law.law, species, of);
                if !missing.is_empty() {
                    lacking.push(format!("{} ({})", item.label(), article(&ask.ground)));
                    fields.extend(missing);
                }
            }
            if lacking.is_empty() {
                continue;
            }
            let message = format!(
                "the care sheet of {} lacks what {} asks for: {}",
                species.name,
                law.law.name,
                lacking.join(", ")
            );
            fields.dedup();
            let help = format!("give it: {}; local law decides", fields.join(", "));
            let place = evidence.field(species.file, "name");
            found.push(
                Finding::new(&CODE, place, message)
                    .help(help)
                    .also_at(law.named.place, "its law is asked for here"),
            );
        }
    }
}
