//! What does not agree, is unsafe or is doubtful: one rule a file over the model and its figures, its page beside it.
//!
//! A rule looks at the [`Evidence`] and adds findings. It writes nothing and changes nothing. Adding one touches its own
//! file, its page, and one line of [`RULES`].

mod feeding;
mod log;
mod names;
mod site;
mod words;

use std::collections::BTreeMap;

use crate::figures::Figures;
use crate::finding::{self, Code, Finding, Severity};
use crate::model::Model;
use crate::source::Sources;

/// What a rule may look at.
#[derive(Debug, Clone, Copy)]
pub struct Evidence<'a> {
    /// The files: which exist, in which layer.
    pub sources: &'a Sources,
    /// What they say.
    pub model: &'a Model,
    /// What was worked out, and for which day.
    pub figures: &'a Figures,
}

/// One rule.
#[derive(Debug)]
pub struct Rule {
    /// What it finds.
    pub code: &'static Code,
    /// Finds it.
    pub find: fn(&Evidence<'_>, &mut Vec<Finding>),
}

/// Every rule, by subject. A rule runs once and sees everything.
pub static RULES: &[&Rule] = &[
    &names::companion_unknown::RULE,
    &names::form_unknown::RULE,
    &names::owner_missing::RULE,
    &names::photo_missing::RULE,
    &names::source_unknown::RULE,
    &names::species_unknown::RULE,
    &names::standard_unknown::RULE,
    &log::log_out_of_order::RULE,
    &log::log_in_future::RULE,
    &feeding::stage_bounds::RULE,
    &words::quote_unknown::RULE,
    &site::code_unknown::RULE,
    &site::safety_lowered::RULE,
];

/// Every code that a finding can have, by name.
pub fn codes() -> BTreeMap<&'static str, &'static Code> {
    let reading = crate::source::codes::ALL.iter().copied();
    let parsing = crate::parse::codes::ALL.iter().copied();
    let rendering = std::iter::once(&TEMPLATE_BROKEN);
    reading
        .chain(parsing)
        .chain(rendering)
        .chain(RULES.iter().map(|rule| rule.code))
        .map(|code| (code.name, code))
        .collect()
}

/// A template of the site's own that does not work. It is found when a page is rendered, and listed here with the rest.
pub static TEMPLATE_BROKEN: Code = Code {
    name: "template-broken",
    severity: Severity::Error,
    safety: false,
    subject: finding::Subject::Site,
    summary: "a template of the site's own does not work",
    page: include_str!("site/template_broken.md"),
};

/// Runs every rule, and returns what was found with the severities that the site wishes.
pub fn proof(evidence: &Evidence<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for rule in RULES {
        (rule.find)(evidence, &mut found);
    }
    found
}

/// Gives every finding the severity that the site wishes. A safety error stays an error whatever the site says.
pub fn with_site_severities(model: &Model, found: Vec<Finding>) -> Vec<Finding> {
    let wishes: BTreeMap<&str, Option<Severity>> = model
        .site
        .severities
        .iter()
        .map(|(code, severity)| (code.name.as_str(), *severity))
        .collect();
    let mut kept = Vec::new();
    for mut finding in found {
        match wishes.get(finding.code.name) {
            Some(wish) if finding.code.safety => {
                finding.severity = wish.unwrap_or(finding.severity).max(finding.severity)
            }
            Some(Some(severity)) => finding.severity = *severity,
            Some(None) => continue,
            None => {}
        }
        kept.push(finding);
    }
    finding::sort(&mut kept);
    kept
}
