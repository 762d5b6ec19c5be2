//! A law that sets the language of a care sheet, and pages that are in another.

use crate::figures::owed::in_force;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::language::is_same;
use crate::proof::{Evidence, Rule};

use super::{article, help};

static CODE: Code = Code {
    name: "sheet-in-another-language",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Law,
    summary: "the law asks for the care sheet in a language that the pages are not in",
    page: include_str!("sheet_in_another_language.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let site = &evidence.model.site;
    for law in in_force(evidence.model) {
        let Some(rule) = &law.law.delivery else { continue };
        let Some(language) = &rule.about.language else { continue };
        if site.all_languages().into_iter().any(|other| is_same(other, language)) {
            continue;
        }
        let message = format!(
            "{} asks for the care sheet in the language `{language}`, and these pages say that they are in `{}` ({})",
            law.law.name,
            site.language,
            article(&rule.ground)
        );
        let what =
            "add the language to languages in wardsheet.toml, or hand a sheet in it over as well";
        found.push(Finding::new(&CODE, law.named.place, message).help(help(
            what,
            rule.says.as_ref(),
            &rule.ground,
        )));
    }
}
