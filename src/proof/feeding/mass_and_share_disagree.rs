//! A stage whose meal by mass and by share cannot both be meant.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::Species;
use crate::proof::{Evidence, Rule};
use crate::quantity::Mass;

use super::{grams, shown};

static CODE: Code = Code {
    name: "mass-and-share-disagree",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Feeding,
    summary: "a stage's meal by mass and its meal by share cannot both be meant",
    page: include_str!("mass_and_share_disagree.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for species in evidence.model.species.values() {
        let mut from = species.size.birth_mass.as_ref().and_then(|birth| birth.value.low());
        for (number, stage) in species.feeding.iter().enumerate() {
            let is_last = number + 1 == species.feeding.len();
            let until = stage.until_mass.or_else(|| heaviest(species).filter(|_| is_last));
            let lightest = std::mem::replace(&mut from, stage.until_mass);
            let (Some(mass), Some(share)) = (&stage.mass, &stage.share) else { continue };
            let (Some(lightest), Some(until)) = (lightest, until) else { continue };
            let low = share.value.low().map(|low| lightest.grams() * low.fraction());
            let high = share.value.high().map(|high| until.grams() * high.fraction());
            let (Some(low), Some(high)) = (low, high) else { continue };
            let above = mass.value.low().is_some_and(|least| least.grams() > high);
            let below = mass.value.high().is_some_and(|most| most.grams() < low);
            if !(above || below) {
                continue;
            }
            let message = format!(
                "the stage `{}` is fed {} at a meal, and {} of an animal of {} to {} is {} to {}",
                stage.name,
                shown(&mass.value, system),
                shown(&share.value, system),
                grams(lightest.grams(), system),
                grams(until.grams(), system),
                grams(low, system),
                grams(high, system)
            );
            let help = "correct one of the two, or leave the one out that is not known";
            found.push(
                Finding::new(&CODE, mass.place, message)
                    .help(help)
                    .also_at(share.place, "the share"),
            );
        }
    }
}

/// The top of the adult mass, of either sex.
fn heaviest(species: &Species) -> Option<Mass> {
    let size = &species.size;
    let masses = [&size.mass, &size.mass_female, &size.mass_male];
    let tops = masses.into_iter().flatten().filter_map(|mass| mass.value.high());
    tops.max_by(|a, b| a.grams().total_cmp(&b.grams()))
}
