//! A weight that does not go with the animal's length.

use crate::figures::calendar::days_between;
use crate::figures::growth::adult_range_cm;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{cm, grams, lengths, weights};

static CODE: Code = Code {
    name: "weight-against-length",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Body,
    summary: "an animal's weight does not go with its length",
    page: include_str!("weight_against_length.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How many times heavier or lighter than its build is impossible: the fattest and the thinnest lie well within.
const TIMES: f64 = 4.0;
/// How many days may lie between the two: a young animal soon outgrows its last length.
const APART_DAYS: i32 = 60;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let (system, as_of) = (evidence.model.site.units, evidence.figures.as_of);
    for animal in evidence.model.animals.values() {
        let Some(species) = evidence.model.species.get(&animal.species.name) else { continue };
        let size = &species.size;
        let masses = [&size.mass, &size.mass_female, &size.mass_male];
        let ends =
            masses.into_iter().flatten().filter_map(|mass| mass.value.low().zip(mass.value.high()));
        let (low, high) = ends.fold((f64::MAX, 0.0_f64), |(low, high), (least, most)| {
            (low.min(least.grams()), high.max(most.grams()))
        });
        let form = animal.form.as_ref().map(|form| form.name.as_str());
        let Some((shortest, longest)) = adult_range_cm(species, animal.sex, form) else { continue };
        let (weights, lengths) = (weights(animal, as_of), lengths(animal, as_of));
        let (Some((weighed, mass)), Some((measured, length))) = (weights.last(), lengths.last())
        else {
            continue;
        };
        let apart = days_between(measured.date, weighed.date).abs();
        if high == 0.0 || apart > APART_DAYS {
            continue;
        }
        // A body of one shape weighs as the cube of its length.
        let scaled =
            |mass: f64, adult: f64| mass * (length / adult) * (length / adult) * (length / adult);
        let (lightest, heaviest) = (scaled(low, longest), scaled(high, shortest));
        if *mass <= heaviest * TIMES && *mass >= lightest / TIMES {
            continue;
        }
        let message = format!(
            "{} weighs {} at a length of {}; one of its kind would weigh {} to {}",
            animal.name,
            grams(*mass, system),
            cm(*length, system),
            grams(lightest, system),
            grams(heaviest, system)
        );
        let help = "look for a wrong unit or a wrong point in the weight or the length";
        found.push(
            Finding::new(&CODE, weighed.place, message)
                .help(help)
                .also_at(measured.place, "the length"),
        );
    }
}
