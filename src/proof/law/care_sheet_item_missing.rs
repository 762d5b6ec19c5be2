//! A care sheet without something that the law of a jurisdiction asks for.

use crate::figures::SpeciesFigures;
use crate::figures::owed::{InForce, in_force, of_species};
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::Species;
use crate::model::law::Item;
use crate::proof::words::headings::said_under;
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

/// Up to how many species lack an item before it is said once for all of them: then the cause is the site's, not a species'.
const ONE_BY_ONE: usize = 3;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let laws = in_force(evidence.model);
    let sheets = if laws.is_empty() { Vec::new() } else { told(evidence) };
    for law in laws {
        // A wording that the law sets is one matter for the whole site, and a rule of its own.
        for (item, ask) in law.law.items.iter().filter(|(item, _)| **item != Item::NoRelease) {
            let lacking = lacking(&sheets, law, *item);
            let asks = format!("which {} asks for ({})", law.law.name, article(&ask.ground));
            let Some((_, fields)) = lacking.first() else { continue };
            let help = format!("give it: {}; local law decides", fields.join(", "));
            if lacking.len() > ONE_BY_ONE {
                let names: Vec<&str> =
                    lacking.iter().take(ONE_BY_ONE).map(|(one, _)| one.name.as_str()).collect();
                let message = format!(
                    "{} care sheets lack the {}, {asks}: {} and {} more",
                    lacking.len(),
                    item.label(),
                    names.join(", "),
                    lacking.len() - names.len()
                );
                found.push(Finding::new(&CODE, law.named.place, message).help(help));
                continue;
            }
            for (species, fields) in lacking {
                let message = format!(
                    "the care sheet of {} lacks the {}, {asks}",
                    species.name,
                    item.label()
                );
                let place = evidence.field(species.file, "name");
                let help = format!("give it: {}; local law decides", fields.join(", "));
                found.push(
                    Finding::new(&CODE, place, message)
                        .help(help)
                        .also_at(law.named.place, "its law is asked for here"),
                );
            }
        }
    }
}

/// A species as its care sheet tells of it.
struct Told<'a> {
    species: &'a Species,
    figures: &'a SpeciesFigures,
    /// The headings under which its words say anything.
    said: Vec<&'static str>,
}

/// Every species that has figures.
fn told<'a>(evidence: &Evidence<'a>) -> Vec<Told<'a>> {
    let told = evidence.model.species.iter().filter_map(|(key, species)| {
        let figures = evidence.figures.species.get(key)?;
        let language = species.language_in(&evidence.model.site);
        let words = species.words.as_ref();
        let said = words.map(|words| said_under(&words.text, language)).unwrap_or_default();
        Some(Told { species, figures, said })
    });
    told.collect()
}

/// The species whose care sheet lacks an item, each with what would answer it.
fn lacking<'a>(
    sheets: &[Told<'a>],
    law: InForce<'_>,
    item: Item,
) -> Vec<(&'a Species, Vec<&'static str>)> {
    let lacking = sheets.iter().map(|told| {
        (told.species, of_species(item, law.law, told.species, told.figures, &told.said))
    });
    lacking.filter(|(_, fields)| !fields.is_empty()).collect()
}
