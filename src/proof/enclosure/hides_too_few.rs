//! An enclosure with fewer hides than the species needs.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::housed;

static CODE: Code = Code {
    name: "hides-too-few",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Enclosure,
    summary: "an enclosure has fewer hides than the species needs",
    page: include_str!("hides_too_few.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in housed(evidence) {
        let Some(least) = housed.species.fittings.hides else { continue };
        // Animals that share an enclosure share its hides, and one of their files lists them.
        let of_companions = housed.animal.company.iter().filter_map(|companion| {
            let companion = evidence.model.animals.get(&companion.name)?;
            companion.housing.as_ref().map(|housing| housing.hides.len())
        });
        let hides = of_companions.fold(housed.housing.hides.len(), usize::max);
        if hides >= least as usize {
            continue;
        }
        let message = match hides {
            0 => format!("this enclosure lists no hide, and {} needs {least}", housed.species.name),
            1 => format!("this enclosure has 1 hide, and {} needs {least}", housed.species.name),
            _ => format!(
                "this enclosure has {hides} hides, and {} needs {least}",
                housed.species.name
            ),
        };
        let help = "add one at each end and list it: [[hide]] with at = \"20 cm\"";
        found.push(Finding::new(&CODE, housed.housing.place, message).help(help));
    }
}
