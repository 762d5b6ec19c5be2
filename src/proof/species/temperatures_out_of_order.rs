//! Temperatures that contradict one another: a cool side warmer than the warm side, and the like.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{lies_above, shown};

static CODE: Code = Code {
    name: "temperatures-out-of-order",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Species,
    summary: "a species' temperatures contradict one another",
    page: include_str!("temperatures_out_of_order.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for species in evidence.model.species.values() {
        let of = &species.temperature;
        let pairs = [
            ("cool side", &of.cool, "warm side", &of.warm),
            ("cool side", &of.cool, "basking spot", &of.basking),
            ("warm side", &of.warm, "basking spot", &of.basking),
            ("night", &of.night, "warm side", &of.warm),
            ("night", &of.night, "basking spot", &of.basking),
            ("brumation", &of.brumation, "warm side", &of.warm),
        ];
        for (lower_name, lower, upper_name, upper) in pairs {
            let (Some(lower), Some(upper)) = (lower, upper) else { continue };
            if !lies_above(lower, upper) {
                continue;
            }
            let message = format!(
                "the {lower_name} of {}, {}, is warmer than its {upper_name}, {}",
                species.name,
                shown(&lower.value, system),
                shown(&upper.value, system)
            );
            found.push(
                Finding::new(&CODE, lower.place, message)
                    .help("correct one of the two; they may have changed places")
                    .also_at(upper.place, format!("the {upper_name}")),
            );
        }
    }
}
