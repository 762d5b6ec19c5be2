//! A first length or weight that no animal of its kind has.

use crate::figures::growth::adult_range_cm;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Sex;
use crate::proof::{Evidence, Rule};
use crate::quantity::{Length, Mass};

use super::{cm, grams, lengths, meant, weights};

static CODE: Code = Code {
    name: "size-beyond-species",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Body,
    summary: "a log begins with a length or weight that no animal of its kind has",
    page: include_str!("size_beyond_species.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How many times the longest adult no animal reaches; and how many times shorter than a hatchling none is.
const TIMES_LENGTH: f64 = 2.0;
/// The same for weights, which differ more.
const TIMES_MASS: f64 = 5.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let (system, as_of) = (evidence.model.site.units, evidence.figures.as_of);
    for animal in evidence.model.animals.values() {
        let Some(species) = evidence.model.species.get(&animal.species.name) else { continue };
        let size = &species.size;
        // Later ones are held against the one before them.
        if let (Some((entry, length)), Some((_, most))) =
            (lengths(animal, as_of).first(), adult_range_cm(species, Sex::Unknown, None))
        {
            let least = size.birth.as_ref().and_then(|birth| Some(birth.value.low()?.cm()));
            if *length > most * TIMES_LENGTH
                || least.is_some_and(|least| *length < least / TIMES_LENGTH)
            {
                let grown = cm(most, system);
                let message = format!(
                    "a length of {} is beyond its species ({}), which grows to {grown}",
                    cm(*length, system),
                    species.name
                );
                found.push(
                    Finding::new(&CODE, entry.place, message)
                        .help(meant::<Length>(evidence, entry, most)),
                );
            }
        }
        let masses = [&size.mass, &size.mass_female, &size.mass_male];
        let most = masses
            .into_iter()
            .flatten()
            .filter_map(|mass| Some(mass.value.high()?.grams()))
            .reduce(f64::max);
        if let (Some((entry, mass)), Some(most)) = (weights(animal, as_of).first(), most) {
            let least = size.birth_mass.as_ref().and_then(|birth| Some(birth.value.low()?.grams()));
            if *mass > most * TIMES_MASS || least.is_some_and(|least| *mass < least / TIMES_MASS) {
                let grown = grams(most, system);
                let message = format!(
                    "a weight of {} is beyond its species ({}), which grows to {grown}",
                    grams(*mass, system),
                    species.name
                );
                found.push(
                    Finding::new(&CODE, entry.place, message)
                        .help(meant::<Mass>(evidence, entry, most)),
                );
            }
        }
    }
}
