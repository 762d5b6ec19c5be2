//! A disinfectant that does not work on what it is named for.

use crate::figures::disinfection::{Effect, Fails, effect};
use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "disinfectant-without-effect",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Hygiene,
    summary: "a disinfectant does not work on the organism it is named for",
    page: include_str!("disinfectant_without_effect.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for mix in &evidence.model.site.disinfectants {
        for against in &mix.against {
            let Some((Effect::None, trial)) = effect(&mix.name, mix.strength, &against.name) else {
                continue;
            };
            let message = match trial.fails {
                Fails::UpTo(percent) => format!(
                    "`{}` does not work on `{}` at this strength: {percent} % and less failed in trials",
                    mix.name, against.name
                ),
                _ => format!("`{}` does not work on `{}`", mix.name, against.name),
            };
            let help = format!(
                "{}; wash first, and ask a vet when the organism is in the house",
                trial.instead
            );
            found.push(
                Finding::new(&CODE, against.place, message)
                    .help(help)
                    .also_at(mix.place, "the mix"),
            );
        }
    }
}
