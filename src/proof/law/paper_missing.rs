//! An animal that is to be handed on without a paper that the law asks for.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::law::Ground;
use crate::proof::{Evidence, Rule};

use super::{Handed, article, help, over_seeking};

static CODE: Code = Code {
    name: "paper-missing",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Law,
    summary: "an animal is to be handed on without a paper that the law asks for",
    page: include_str!("paper_missing.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    over_seeking(evidence, found, check);
}

pub(super) fn check(handed: Handed<'_>, found: &mut Vec<Finding>) {
    let animal = handed.animal;
    let holds = |wanted: &str| {
        let wanted = wanted.to_lowercase();
        animal.papers.iter().any(|paper| paper.to_lowercase().contains(&wanted))
    };
    let mut lack = |paper: &str, says: Option<&String>, ground: &Ground| {
        let message = format!(
            "{} has no `{paper}` among its papers, and {} asks for it ({})",
            animal.name,
            handed.law.name,
            article(ground)
        );
        let first = format!("get it, and write it in papers = [\"{paper}\"]");
        let place = handed.field("papers");
        let place = if place.end > place.start { place } else { handed.field("name") };
        found.push(Finding::new(&CODE, place, message).help(help(&first, says, ground)));
    };
    for rule in &handed.law.papers {
        let (paper, concerns) = &rule.about;
        let of_size = handed.is_of_size(concerns).0;
        if handed.is_concerned(concerns) && of_size && !holds(paper) {
            lack(paper, rule.says.as_ref(), &rule.ground);
        }
    }
    // Papers that the species' own file names for the place, unless the law's file tells more of them.
    for rule in
        handed.species.legal.rules.iter().filter(|rule| handed.law.is_place(&rule.jurisdiction))
    {
        let Some(paper) = &rule.paper else { continue };
        let told = handed.law.papers.iter().any(|of_law| {
            let (name, concerns) = &of_law.about;
            let under = concerns.with_paper.as_ref().unwrap_or(name);
            under.eq_ignore_ascii_case(paper)
        });
        if !told && !holds(paper) {
            let article = Some("by the species' own file, which names no article".to_owned());
            let ground = Ground { article, ..Ground::default() };
            lack(paper, Some(&rule.says), &ground);
        }
    }
}
