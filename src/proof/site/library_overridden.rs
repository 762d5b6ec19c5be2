//! A species that two folders define, and not alike.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::source::{Role, SourceFile};

static CODE: Code = Code {
    name: "library-overridden",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Site,
    summary: "two folders define one species and differ",
    page: include_str!("library_overridden.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let sources = evidence.sources;
    for role in [Role::Species, Role::Standard, Role::Law] {
        for (name, nearest) in sources.nearest(role) {
            let farther =
                sources.of(role).filter(|file| file.name == name && file.layer > nearest.layer);
            for other in farther.filter(|other| !alike(nearest, other)) {
                let message = format!(
                    "`{name}` is defined in {} and in {}, and they differ; {} is used",
                    nearest.path, other.path, nearest.path
                );
                let help = "nothing, if this one is meant to take its place; remove it to follow the other again";
                found.push(
                    Finding::new(&CODE, Place::start_of(nearest.id), message)
                        .help(help)
                        .also_at(Place::start_of(other.id), "not used"),
                );
            }
        }
    }
}

/// Whether two files say the same, comments and blank lines left aside.
fn alike(one: &SourceFile, other: &SourceFile) -> bool {
    let lines = |file: &SourceFile| {
        let said = file
            .text
            .lines()
            .map(str::trim)
            .filter(|line| !line.is_empty() && !line.starts_with('#'));
        said.map(str::to_owned).collect::<Vec<_>>()
    };
    lines(one) == lines(other)
}
