//! A data logger whose table or map is not there.

use crate::finding::{Code, Finding, Severity, Subject, did_you_mean};
use crate::proof::{Evidence, Rule};
use crate::source::Role;

static CODE: Code = Code {
    name: "logger-unknown",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Names,
    summary: "a data logger's table or map is not there",
    page: include_str!("logger_unknown.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let loggers = evidence.model.animals.values().flat_map(|animal| &animal.loggers);
    for logger in loggers {
        for (named, role, folder, ending) in [
            (&logger.readings, Role::Readings, "readings", "csv"),
            (&logger.map, Role::Map, "maps", "toml"),
        ] {
            if evidence.sources.named(role, &named.name).is_some() {
                continue;
            }
            let known = evidence.sources.of(role).map(|file| file.name.as_str());
            let help = did_you_mean(&named.name, known)
                .unwrap_or_else(|| format!("put it there as {folder}/{}.{ending}", named.name));
            let message = format!("there is no `{}` in {folder}/", named.name);
            found.push(Finding::new(&CODE, named.place, message).help(help));
        }
    }
}
