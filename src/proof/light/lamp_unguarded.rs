//! A lamp that the animal can touch.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "lamp-unguarded",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Light,
    summary: "a lamp within reach has no guard",
    page: include_str!("lamp_unguarded.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        for lamp in &housed.housing.lamps {
            let name = &housed.animal.name;
            let (message, place) = match lamp.guard {
                Some((true, _)) => continue,
                Some((false, place)) => {
                    (format!("the {} of {name} has no guard", lamp.kind), place)
                }
                None if is_hot(&lamp.kind) => (
                    format!("the {} of {name} is hot and is not said to have a guard", lamp.kind),
                    lamp.place,
                ),
                None => continue,
            };
            found.push(
                Finding::new(&CODE, place, message)
                    .help("fit a guard, or hang it out of reach, then write guard = true"),
            );
        }
    }
}

/// Lamps that heat, though they were written down as lamps.
fn is_hot(kind: &str) -> bool {
    let kind = kind.to_lowercase();
    ["halogen", "basking", "mercury", "spot", "incandescent", "infrared", "ceramic"]
        .iter()
        .any(|word| kind.contains(word))
}
