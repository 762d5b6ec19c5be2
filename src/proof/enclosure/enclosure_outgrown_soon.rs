//! An enclosure that an animal will outgrow with little more growth.

use crate::figures::enclosure::{Fit, fits};
use crate::figures::lifetime::inside_cm;
use crate::figures::space::{in_force, need, satisfied};
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{cm, housed, shortfalls};

static CODE: Code = Code {
    name: "enclosure-outgrown-soon",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Enclosure,
    summary: "an animal will soon outgrow its enclosure",
    page: include_str!("enclosure_outgrown_soon.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How much more length counts as soon: a growing animal puts it on within a season or two.
const SOON: f64 = 1.15;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for housed in housed(evidence) {
        let (Some(inside), Some((_, place))) = (inside_cm(housed.housing), housed.housing.inside)
        else {
            continue;
        };
        let figures = housed.figures;
        let (Some(Ok(())), Some(grown)) = (&figures.fits, &figures.grown) else { continue };
        let (Some(length), Some(adult)) = (figures.body.length_cm, figures.growth.adult) else {
            continue;
        };
        let soon = (length * SOON).min(adult.estimate_cm);
        if satisfied(inside, grown).is_ok() || soon <= length {
            continue;
        }
        let short = in_force(evidence.model, housed.species).into_iter().find_map(|standard| {
            let need = need(housed.species, standard, "", soon, false, figures.animals, None);
            match fits(inside, need.least.as_ref().ok()?) {
                Fit::Short(short) => Some((standard, short)),
                Fit::Enough => None,
            }
        });
        let Some((standard, short)) = short else { continue };
        let message = format!(
            "{}, now {} long, will have outgrown this enclosure at {}: by the standard `{}` {}",
            housed.animal.name,
            cm(length, system),
            cm(soon, system),
            standard.name,
            shortfalls(&short, system)
        );
        let help = format!(
            "plan for the grown animal, about {}: its record says what to build",
            cm(adult.estimate_cm, system)
        );
        found.push(Finding::new(&CODE, place, message).help(help));
    }
}
