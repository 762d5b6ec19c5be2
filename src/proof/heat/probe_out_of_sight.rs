//! A heater with no probe near it.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "probe-out-of-sight",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Heat,
    summary: "no probe reads the temperature near a heater",
    page: include_str!("probe_out_of_sight.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let near = super::near_cm(housed.housing);
        let probes: Vec<f64> = housed
            .housing
            .probes
            .iter()
            .filter_map(|probe| probe.at.map(|(at, _)| at.cm()))
            .collect();
        for heater in housed.housing.heaters.iter().filter(|heater| super::has_a_place(heater.kind))
        {
            let Some((at, place)) = heater.at else { continue };
            let nearest = probes.iter().map(|probe| (probe - at.cm()).abs()).reduce(f64::min);
            let Some(nearest) = nearest.filter(|nearest| *nearest > near) else { continue };
            let message = format!(
                "the nearest probe is {} from the {} of {}",
                housed.one(crate::quantity::Length::from_cm(nearest)),
                super::noun(heater.kind),
                housed.animal.name
            );
            found.push(Finding::new(&CODE, place, message).help(
                "put a probe where the animal rests nearest to that heater, and write its place",
            ));
        }
    }
}
