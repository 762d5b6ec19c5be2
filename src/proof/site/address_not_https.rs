//! A site's address that is not a secure one.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::proof::{Evidence, Rule};

static CODE: Code = Code {
    name: "address-not-https",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Site,
    summary: "the site's address is not a secure one",
    page: include_str!("address_not_https.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let site = &evidence.model.site;
    let insecure = site.address.as_ref().filter(|address| !address.starts_with("https://"));
    if let Some(address) = insecure {
        let message =
            format!("the site's address is {address}, which does not begin with https://");
        let help = "write it as address = \"https://…\": whoever stands between can change a page that is sent openly";
        found.push(Finding::new(&CODE, evidence.field(site.file, "address"), message).help(help));
    }
}
