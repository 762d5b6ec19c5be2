//! A wall of a material whose conductivity is not known.

use std::collections::BTreeSet;

use crate::figures::formula::materials::{MATERIALS, material};
use crate::finding::{Code, Finding, Severity, Subject, did_you_mean};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "material-unknown",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Heat,
    summary: "an enclosure is made of a material whose conductivity is not known",
    page: include_str!("material_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let walls = &housed.housing.walls;
        let faces =
            [&walls.walls, &walls.front, &walls.back, &walls.sides, &walls.top, &walls.floor];
        let mut told = BTreeSet::new();
        for layer in faces.into_iter().flatten() {
            if material(&layer.material).is_some() || !told.insert(&layer.material) {
                continue;
            }
            let message = format!(
                "the conductivity of `{}` is not known, so the heat loss of {}'s enclosure is not worked out",
                layer.material, housed.animal.name
            );
            let known = MATERIALS.iter().map(|known| known.name);
            let near = did_you_mean(&layer.material, known.clone());
            let near = near.unwrap_or_else(|| {
                format!("write the nearest of: {}", known.collect::<Vec<_>>().join(", "))
            });
            found.push(Finding::new(&CODE, layer.place, message).help(near));
        }
    }
}
