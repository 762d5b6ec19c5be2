//! A disinfectant that is weaker than what was shown to work.

use crate::figures::disinfection::{Effect, effect};
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "disinfectant-strength-unproven",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Hygiene,
    summary: "a disinfectant is weaker than the strength that was shown to work",
    page: include_str!("disinfectant_strength_unproven.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for mix in &evidence.model.site.disinfectants {
        for against in &mix.against {
            let Some((Effect::Unproven { percent, works_from }, trial)) =
                effect(&mix.name, mix.strength, &against.name)
            else {
                continue;
            };
            let percent = (percent * 100.0).round() / 100.0;
            let message = format!(
                "`{}` is mixed at {percent} %, and {works_from} % is the least that was shown to work on `{}`",
                mix.name, against.name
            );
            let help = format!("mix it at {works_from} % or more; {}", trial.instead);
            found.push(
                Finding::new(&CODE, against.place, message)
                    .help(help)
                    .also_at(mix.place, "the mix"),
            );
        }
    }
}
