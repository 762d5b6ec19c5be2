//! An enclosure smaller than a standard in force asks for.

use crate::figures::enclosure::{Fit, fits};
use crate::figures::lifetime::inside_cm;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Status;
use crate::proof::{Evidence, Rule};

use super::{cm, housed, shortfalls};

static CODE: Code = Code {
    name: "enclosure-too-small",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Enclosure,
    summary: "an enclosure is smaller than a standard in force asks for",
    page: include_str!("enclosure_too_small.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for housed in housed(evidence) {
        let (Some(inside), Some((_, place))) = (inside_cm(housed.housing), housed.housing.inside)
        else {
            continue;
        };
        let Some(now) = &housed.figures.now else { continue };
        let mut short: Vec<_> = now
            .needs
            .iter()
            .filter_map(|need| match fits(inside, need.least.as_ref().ok()?) {
                Fit::Short(short) => Some((need, short)),
                Fit::Enough => None,
            })
            .collect();
        // The standard that asks for most is the one to tell; the others are told beside it.
        short.sort_by_key(|(need, _)| need.standard != now.strictest().standard);
        let Some(((need, worst), others)) = short.split_first() else { continue };
        let message = format!(
            "the enclosure is too small for an animal of {} by the standard `{}`: {}",
            cm(need.reference_length_cm, system),
            need.standard,
            shortfalls(worst, system)
        );
        let mut finding = Finding::new(&CODE, place, message)
            .help("plan a larger enclosure; the record says what can be bought or built");
        // Plain small boxes are the rule in quarantine, and last for weeks.
        if housed.animal.status == Status::Quarantine {
            finding.severity = Severity::Note;
        }
        for (need, short) in others {
            if let Some(rule) = housed.species.enclosure.get(&need.standard) {
                finding = finding.also_at(rule.place, shortfalls(short, system));
            }
        }
        found.push(finding);
    }
}
