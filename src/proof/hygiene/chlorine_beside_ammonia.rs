//! Chlorine and ammonia among a site's disinfectants.

use crate::figures::disinfection::{Substance, substance};
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "chlorine-beside-ammonia",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Hygiene,
    summary: "chlorine and ammonia are both mixed in one place",
    page: include_str!("chlorine_beside_ammonia.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let mixes = &evidence.model.site.disinfectants;
    let first = |wanted| mixes.iter().find(|mix| substance(&mix.name) == Some(wanted));
    let (Some(chlorine), Some(ammonia)) = (first(Substance::Chlorine), first(Substance::Ammonia))
    else {
        return;
    };
    let message = format!(
        "`{}` and `{}` are mixed in one place, and together they give off a poisonous gas",
        chlorine.name, ammonia.name
    );
    found.push(
        Finding::new(&CODE, ammonia.place, message)
            .help("keep one of the two; if both are needed, keep them in different rooms with buckets of their own, and rinse between them")
            .also_at(chlorine.place, "holds chlorine"),
    );
}
