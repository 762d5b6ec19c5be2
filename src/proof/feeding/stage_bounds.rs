//! Feeding stages that leave a gap or never end.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::species::Stage;
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "stage-bounds",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Feeding,
    summary: "feeding stages do not follow one another to the end of life",
    page: include_str!("stage_bounds.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for species in evidence.model.species.values() {
        let Some((last, earlier)) = species.feeding.split_last() else { continue };
        for stage in earlier.iter().filter(|stage| bounds(stage) == [None; 3]) {
            let message = format!(
                "the stage `{}` never ends, so the stages after it never begin",
                stage.name
            );
            let help = "say when it ends: until_age = \"6 months\", until_length or until_mass";
            found.push(Finding::new(&CODE, stage.place, message).help(help));
        }
        if bounds(last) != [None; 3] {
            let message = format!(
                "the last stage `{}` ends, and nothing is said of what is fed after it",
                last.name
            );
            found.push(
                Finding::new(&CODE, last.place, message)
                    .help("leave its bound out, or add a stage after it"),
            );
        }
        for pair in species.feeding.windows(2) {
            let [before, after] = pair else { continue };
            let backwards = bounds(before).into_iter().zip(bounds(after)).any(|(before, after)| matches!((before, after), (Some(before), Some(after)) if after <= before));
            if backwards {
                let message = format!(
                    "the stage `{}` ends before the stage `{}` does",
                    after.name, before.name
                );
                found.push(
                    Finding::new(&CODE, after.place, message)
                        .help("put the stages in the order of life")
                        .also_at(before.place, "ends later"),
                );
            }
        }
    }
}

fn bounds(stage: &Stage) -> [Option<f64>; 3] {
    [
        stage.until_age.map(|age| age.days()),
        stage.until_length.map(|length| length.cm()),
        stage.until_mass.map(|mass| mass.grams()),
    ]
}
