//! What the preview puts around a page: what is wrong, and the script that waits for the next edit.

use std::cmp::Reverse;
use std::collections::BTreeSet;

use crate::finding::{FileId, Finding, Severity, draw};
use crate::source::Sources;

/// The script that has a page set anew when the site has changed. It is the only one, and only here.
pub(super) const SCRIPT: &str = include_str!("follow.js");
/// How what is wrong is shown.
pub(super) const STYLE: &str = include_str!("preview.css");

/// So many findings are drawn above a page. A large site has thousands, which nobody reads there, and drawing them takes longer
/// than everything else that an edit asks for.
const MOST_DRAWN: usize = 50;

/// What is wrong, as it is shown above a page.
pub(super) struct Above<'a> {
    /// The findings, sorted.
    pub(super) findings: &'a [Finding],
    /// The files that they are in.
    pub(super) sources: &'a Sources,
    /// Of them those that were edited last.
    pub(super) newest: &'a BTreeSet<FileId>,
    /// Whether the page is that of an earlier edit.
    pub(super) held_back: bool,
    /// How many changes the page has seen.
    pub(super) changes: u64,
}

impl Above<'_> {
    /// Puts the findings above a page, and the script into its head.
    pub(super) fn page(&self, html: &str) -> String {
        let head_end = html.find("</head>").unwrap_or(0);
        let after_head = html[head_end..]
            .strip_prefix("</head>")
            .map_or(head_end, |rest| html.len() - rest.len());
        // A page whose body begins without a tag of its own begins after the head.
        let body = html[after_head..]
            .find("<body")
            .and_then(|start| Some(after_head + start + html[after_head + start..].find('>')? + 1))
            .unwrap_or(after_head);
        let (head, tail) = html.split_at(head_end);
        let (between, rest) = tail.split_at(body - head_end);
        format!("{head}{}{between}{}{rest}", self.in_head(), self.panel())
    }

    fn in_head(&self) -> String {
        format!(
            "<link rel=\"stylesheet\" href=\"/-preview/preview.css\"><script src=\"/-preview/follow.js\" data-seen=\"{}\" defer></script>",
            self.changes
        )
    }

    /// The findings: open where one holds the page back or is doubtful, folded where there are only notes.
    fn panel(&self) -> String {
        if self.findings.is_empty() {
            return String::new();
        }
        let heading = if self.held_back {
            "This page is as it was before the last edit, which cannot be taken"
        } else {
            "What is doubtful in the files"
        };
        let open = if self.findings.iter().any(|finding| finding.severity > Severity::Note) {
            " open"
        } else {
            ""
        };
        let foremost = self.foremost();
        let drawn = draw::draw(&foremost, false, &|file| self.sources.shown(file));
        let rest = match self.findings.len() - foremost.len() {
            0 => String::new(),
            rest => format!("<p>{rest} more are told by <code>wardsheet proof</code>.</p>"),
        };
        format!(
            "<aside class=\"preview-findings{}\" aria-label=\"Findings\"><details{open}><summary>{heading}: {}</summary><pre>{}</pre>{rest}</details></aside>",
            if self.held_back { " preview-held" } else { "" },
            escape(&draw::count(self.findings)),
            escape(drawn.trim_end()),
        )
    }

    /// The findings that are drawn, in the order of all: errors before others, then what is in the files edited last, then the
    /// graver.
    fn foremost(&self) -> Vec<Finding> {
        let rank = |finding: &Finding| {
            let is_new = finding.place.is_some_and(|place| self.newest.contains(&place.file));
            Reverse((finding.severity == Severity::Error, is_new, finding.severity))
        };
        let mut numbers: Vec<usize> = (0..self.findings.len()).collect();
        numbers.sort_by_key(|number| rank(&self.findings[*number]));
        numbers.truncate(MOST_DRAWN);
        numbers.sort_unstable();
        numbers.into_iter().map(|number| self.findings[number].clone()).collect()
    }

    /// The page that lists what there is to look at.
    pub(super) fn start<'p>(
        &self,
        title: Option<&str>,
        paths: impl Iterator<Item = &'p str>,
    ) -> String {
        let mut private = String::new();
        for path in paths.filter(|path| path.starts_with("private/") && path.ends_with(".html")) {
            let name =
                path.trim_start_matches("private/").trim_end_matches(".html").replace('/', ", ");
            private.push_str(&format!(
                "<li><a href=\"/{0}\">{1}</a></li>",
                escape(path),
                escape(&name)
            ));
        }
        let shown = match title {
            Some(title) => format!(
                "<h1>{}</h1><p><a href=\"/public/index.html\">The public site</a></p><h2>Private sheets</h2><ul>{private}</ul>",
                escape(title)
            ),
            None => "<h1>No page yet</h1><p>The files have errors. As soon as they are put right, the pages are here.</p>".to_owned(),
        };
        self.page(&format!(
            "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>Preview</title></head><body class=\"preview-start\"><main>{shown}</main></body></html>"
        ))
    }
}

fn escape(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::finding::Place;
    use crate::source::{Role, codes::FILE_EMPTY};

    #[test]
    fn of_many_findings_errors_and_those_of_the_newest_edit_are_drawn() {
        let mut sources = Sources::default();
        let file = |name: &str, sources: &mut Sources| {
            let layer = crate::source::Layer::Own;
            sources.add(format!("animals/{name}.toml"), Role::Animal, name, layer, "a\n".to_owned())
        };
        let (other, edited) = (file("ditto", &mut sources), file("juniper", &mut sources));
        let finding = |file, severity, message: String| Finding {
            severity,
            ..Finding::new(&FILE_EMPTY, Place::new(file, 0..1), message)
        };
        let mut findings: Vec<Finding> = (0..200)
            .map(|number| finding(other, Severity::Warning, format!("number {number}.")))
            .collect();
        findings.push(finding(edited, Severity::Note, "the newest".to_owned()));
        findings.push(finding(other, Severity::Error, "the gravest".to_owned()));
        let newest = BTreeSet::from([edited]);
        let above = Above {
            findings: &findings,
            sources: &sources,
            newest: &newest,
            held_back: true,
            changes: 1,
        };
        let panel = above.panel();
        assert!(panel.contains("the newest") && panel.contains("the gravest"), "{panel}");
        assert!(panel.contains("number 47.") && !panel.contains("number 48."), "{panel}");
        assert!(panel.contains("<p>152 more are told by"), "{panel}");
    }
}
