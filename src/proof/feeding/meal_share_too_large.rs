//! A meal that is a larger share of the animal than it can be expected to digest.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::shown;

static CODE: Code = Code {
    name: "meal-share-too-large",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Feeding,
    summary: "a meal is a larger share of the animal than it can digest",
    page: include_str!("meal_share_too_large.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// The most that a young animal's meal may be, per cent of its mass: newly hatched snakes take prey of half their mass.
const YOUNG: f64 = 50.0;
/// The most for the last stage of life.
const GROWN: f64 = 25.0;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for species in evidence.model.species.values() {
        for (number, stage) in species.feeding.iter().enumerate() {
            let most = if number + 1 == species.feeding.len() { GROWN } else { YOUNG };
            let Some(share) = &stage.share else { continue };
            let Some(high) = share.value.high() else { continue };
            if high.fraction() * 100.0 <= most {
                continue;
            }
            let message = format!(
                "the stage `{}` is fed {} of its own mass at a meal, and {most} % is the most that is usual at that age",
                stage.name,
                shown(&share.value, system)
            );
            let help = "check the figure: a share is the meal's mass over the animal's";
            found.push(Finding::new(&CODE, share.place, message).help(help));
        }
    }
}
