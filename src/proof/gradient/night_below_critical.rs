//! A night at which the species comes to harm.

use crate::finding::{Code, Finding, Severity, Subject};

use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "night-below-critical",
    severity: Severity::Error,
    safety: true,
    subject: Subject::Heat,
    summary: "a probe reads by night less than the species bears",
    page: include_str!("night_below_critical.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for housed in evidence.housed() {
        let Some(critical) = &housed.species.temperature.critical_low else { continue };
        let Some(least) = critical.value.low().or(critical.value.high()) else { continue };
        for read in housed.readings() {
            let Some((reads, place)) = read.night else { continue };
            if reads >= least || housed.winters_at(reads) {
                continue;
            }
            let message = format!(
                "the probe `{}` of {} reads {} by night, and its species ({}) comes to harm below {}",
                read.probe.name,
                housed.animal.name,
                housed.one(reads),
                housed.species.name,
                housed.one(least)
            );
            found.push(
                Finding::new(&CODE, place, message)
                    .help("warm the room or add a heater without light on a thermostat, tonight")
                    .also_at(critical.place, "harm below this"),
            );
        }
    }
}
