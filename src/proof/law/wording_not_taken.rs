//! A wording that the law sets, and that nobody has taken from it.

use crate::figures::owed::in_force;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::law::{Ground, Item};
use crate::proof::{Evidence, Rule};

use super::{article, help};

static CODE: Code = Code {
    name: "wording-not-taken",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Law,
    summary: "the law sets the words of a warning or notice, and nobody has taken them from it",
    page: include_str!("wording_not_taken.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for law in in_force(evidence.model) {
        let mut open = |what: &str, field: &str, ground: &Ground| {
            let message = format!(
                "{} sets the words of its {what}, or may set them, and they are not given ({})",
                law.law.name,
                article(ground)
            );
            let first = format!(
                "take them from the law and write them in wardsheet.toml, under [wording.{}]: {field} = \"…\"",
                law.key
            );
            found.push(
                Finding::new(&CODE, law.named.place, message).help(help(&first, None, ground)),
            );
        };
        for (item, ask) in &law.law.items {
            if *item == Item::NoRelease && ask.wording_set && ask.wording.is_none() {
                open(item.label(), "release", &ask.ground);
            }
        }
        if let Some(notice) = &law.law.notice
            && notice.wording_set
            && notice.wording.is_none()
        {
            open("public-health notice", "notice", &notice.ground);
        }
    }
}
