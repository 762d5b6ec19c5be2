//! A hide that stands outside its enclosure or is larger than it.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

use super::{cm, housed};

static CODE: Code = Code {
    name: "hide-outside-box",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Enclosure,
    summary: "a hide stands outside its enclosure or is larger than it",
    page: include_str!("hide_outside_box.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for housed in housed(evidence) {
        let Some((box_, box_place)) = housed.housing.inside else { continue };
        let longest = box_.length.cm().max(box_.width.cm());
        for hide in &housed.housing.hides {
            if let Some((at, place)) = hide.at.filter(|(at, _)| at.cm() > longest) {
                let message = format!(
                    "this hide stands {} from the warm end of an enclosure that is {} long",
                    cm(at.cm(), system),
                    cm(longest, system)
                );
                found.push(
                    Finding::new(&CODE, place, message)
                        .help("measure from the warm end")
                        .also_at(box_place, "the inside"),
                );
            }
            let too_long = |side: f64| side > longest;
            let size = hide
                .inside
                .filter(|(inside, _)| too_long(inside.length.cm()) || too_long(inside.width.cm()));
            if let Some((inside, place)) = size {
                let message = format!(
                    "this hide is {} long and stands in an enclosure {} long",
                    cm(inside.length.cm().max(inside.width.cm()), system),
                    cm(longest, system)
                );
                found.push(
                    Finding::new(&CODE, place, message)
                        .help("correct the measure or its unit")
                        .also_at(box_place, "the inside"),
                );
            }
        }
    }
}
